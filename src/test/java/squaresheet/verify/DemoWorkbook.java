package squaresheet.verify;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import squaresheet.binding.FieldSheet;
import squaresheet.binding.JobWorkbook;
import squaresheet.estimate.PriceList;
import squaresheet.estimate.Rates;
import squaresheet.estimate.Terms;
import squaresheet.formula.Value;
import squaresheet.job.Company;
import squaresheet.job.JobCard;
import squaresheet.job.JobInput;
import squaresheet.job.JobResult;
import squaresheet.product.Catalogue;
import squaresheet.roof.RoofNotes;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Workbook;
import squaresheet.takeoff.Rulebook;
import squaresheet.tape.TapeUnit;

/** The job workbook of the demo house, to be spoilt one cell at a time. */
final class DemoWorkbook {

  private static final JobInput INPUT = input();
  private static final JobResult RESULT = JobResult.of(INPUT).value().orElseThrow();

  private final Draft draft;

  DemoWorkbook() {
    this(RESULT);
  }

  /** The workbook of another job. */
  DemoWorkbook(JobResult job) {
    draft = JobWorkbook.write(job.input(), job);
  }

  private static String text(String file) {
    try {
      return Files.readString(Path.of(file));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** Another roof, worked out with the products and prices of the demo house. */
  static JobInput job(RoofNotes roof, Rulebook rules) {
    JobCard card = new JobCard("Alder Lane house", "Foreman", "2026-05-04", TapeUnit.FEET);
    return new JobInput(card, roof, company(rules));
  }

  private static Company company(Rulebook rules) {
    return new Company(
        Catalogue.read(Path.of("demo-data/products.csv")).value().orElseThrow(),
        rules,
        PriceList.read(text("demo-data/prices.csv"), "prices.csv", "USD")
            .value()
            .orElseThrow(),
        Rates.read(text("demo-data/rates.csv"), "rates.csv", "USD").value().orElseThrow(),
        Terms.read(text("demo-data/terms.csv"), "terms.csv").value().orElseThrow());
  }

  /** The job of the demo house. */
  static JobInput demo() {
    return INPUT;
  }

  private static JobInput input() {
    var notes = FieldSheet.read(text("demo-data/tape-sheet.csv"), "tape-sheet.csv", Locale.ENGLISH)
        .value()
        .orElseThrow();
    return job(notes.roof(), Rulebook.standard()).with("eave_overhang", 18);
  }

  /** The cell of a defined name; of a column the row of that number, 0 and up. */
  Address at(String name, int row) {
    Address first = draft
        .workbook()
        .name(name)
        .flatMap(Workbook.Name::cell)
        .orElseThrow(() -> new AssertionError(name));
    return new Address(first.sheet(), first.ref().plus(row, 0));
  }

  String formula(Address cell) {
    return entry(cell).formula();
  }

  private Entry entry(Address cell) {
    return sheet(cell).entry(cell.ref()).orElse(Entry.blank());
  }

  private DraftSheet sheet(Address cell) {
    return draft.find(cell.sheet()).orElseThrow();
  }

  DemoWorkbook type(Address cell, Content content) {
    Entry old = entry(cell);
    sheet(cell).put(cell.ref(), new Entry(content, "", old.role(), old.format()));
    return this;
  }

  DemoWorkbook type(Address cell, double number) {
    return type(cell, new Content.Numeric(number));
  }

  DemoWorkbook typeDate(Address cell, double serial) {
    Entry old = entry(cell);
    sheet(cell).put(cell.ref(), new Entry(new Content.Numeric(serial), "", old.role(), "d-mmm"));
    return this;
  }

  DemoWorkbook enter(Address cell, String formula) {
    Entry old = entry(cell);
    sheet(cell).put(cell.ref(), new Entry(old.stored(), formula, old.role(), old.format()));
    return this;
  }

  /** The total row's sum under a column: the formula cell below the block that adds it up. */
  Address totalOf(String name) {
    Address first = at(name, 0);
    for (int down = 1; down < 60; down++) {
      Address cell = new Address(first.sheet(), first.ref().plus(down, 0));
      if (formula(cell).startsWith("SUM(")) {
        return cell;
      }
    }
    throw new AssertionError("no sum under " + name);
  }

  /** The workbook as saved by a program that has recalculated it. */
  Workbook saved() {
    Book book = Book.of("demo.xlsx", draft.workbook());
    Map<Address, Value> values = new LinkedHashMap<>();
    book.formulas().keySet().forEach(cell -> values.put(cell, book.value(cell)));
    values.forEach((cell, value) -> {
      Entry old = entry(cell);
      sheet(cell)
          .put(cell.ref(), new Entry(value.content(), old.formula(), old.role(), old.format()));
    });
    return draft.workbook();
  }

  /** The workbook with the values it had before it was spoilt. */
  Workbook stale() {
    return draft.workbook();
  }

  static Ref below(Address cell) {
    return cell.ref().plus(1, 0);
  }
}
