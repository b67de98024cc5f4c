package squaresheet.binding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.formula.Formula;
import squaresheet.formula.Node;
import squaresheet.sheet.Address;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Content;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Role;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.Workbook;

/**
 * The agreed binding, kept in the workbook on a hidden sheet. Each row points to its cell by a formula, so every program
 * moves it along when rows and columns are inserted and sheets are renamed; no number is kept.
 */
final class StoredBinding {

  static final String SHEET = "Squaresheet binding";
  /** The first cell says what the sheet is, whatever its tab is called. */
  private static final String MARK = "squaresheet binding, " + Format.current();

  private static final int FIRST = 2;

  private StoredBinding() {}

  static boolean isOne(Sheet sheet) {
    return Cells.text(sheet.cell("A1")).startsWith("squaresheet binding");
  }

  /** The binding in the workbook; empty where there is none. */
  static Optional<Read<List<Guess>>> read(Workbook book, String file) {
    return book.sheets().stream()
        .filter(StoredBinding::isOne)
        .findFirst()
        .map(sheet -> read(book, sheet, file));
  }

  private static Read<List<Guess>> read(Workbook book, Sheet sheet, String file) {
    List<Guess> guesses = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    Format.newer(
            Cells.text(sheet.cell("A1")),
            new Where.InCell(file, new Address(sheet.name(), new Ref(0, 0))))
        .ifPresent(findings::add);
    sheet.rows().filter(row -> row >= FIRST).forEach(row -> {
      String property = text(sheet, row, 1);
      Optional<Address> at = target(book, sheet.cell(new Ref(row, 4)));
      if (at.isPresent() && !property.isEmpty()) {
        guesses.add(new Guess(
            text(sheet, row, 0),
            property,
            text(sheet, row, 2),
            at.get(),
            text(sheet, row, 3).equals("across"),
            1,
            "agreed before"));
      } else if (!property.isEmpty()) {
        findings.add(Complaint.BINDING_STALE.at(
            new Where.InCell(file, new Address(sheet.name(), new Ref(row, 4))),
            "the stored binding of " + text(sheet, row, 0) + "." + property
                + " must point to a cell, but points to '"
                + sheet.cell(new Ref(row, 4)).formula() + "'; it is not checked"));
      }
    });
    return Read.of(guesses, findings);
  }

  private static String text(Sheet sheet, int row, int column) {
    return Cells.text(sheet.cell(new Ref(row, column)));
  }

  private static Optional<Address> target(Workbook book, Cell cell) {
    return Formula.parse(cell.formula())
        .value()
        .filter(formula -> cell.isFormula())
        .flatMap(formula -> formula.tree() instanceof Node.Reference reference && reference.isCell()
            ? Optional.of(new Address(reference.sheet(), reference.block().first()))
            : Optional.empty())
        .filter(at -> book.sheet(at.sheet()).isPresent());
  }

  /** The edits that keep the binding in the workbook. */
  static List<Edit> store(Workbook book, List<Guess> agreed) {
    Optional<Sheet> before = book.sheets().stream().filter(StoredBinding::isOne).findFirst();
    List<Edit> edits = new ArrayList<>(
        before.map(sheet -> renew(sheet, agreed)).orElseGet(() -> add(book, agreed)));
    edits.add(new Edit.SetProperty(Format.BINDING, Format.current()));
    return edits;
  }

  /** What there is to say where a binding was kept once, but its sheet was deleted. */
  static List<Finding> gone(Workbook book, String file) {
    return book.properties().containsKey(Format.BINDING)
        ? List.of(Complaint.BINDING_GONE.at(
            new Where.InFile(file),
            "the workbook was bound once, but the hidden sheet '" + SHEET
                + "' with the binding is gone; what its cells are is guessed anew, so look it over with"
                + " bind and keep it again"))
        : List.of();
  }

  private static List<Edit> add(Workbook book, List<Guess> agreed) {
    DraftSheet sheet = Draft.sheetFor(book, SHEET);
    sheet.put(new Ref(0, 0), Entry.text(MARK).as(Role.TITLE));
    List<String> headings = List.of("Table", "Property", "Unit", "Items", "Cell");
    for (int at = 0; at < headings.size(); at++) {
      sheet.put(new Ref(1, at), Entry.text(headings.get(at)).as(Role.HEADING));
    }
    for (int i = 0; i < agreed.size(); i++) {
      Guess guess = agreed.get(i);
      List<String> texts = texts(guess);
      for (int at = 0; at < texts.size(); at++) {
        sheet.put(new Ref(FIRST + i, at), Entry.text(texts.get(at)));
      }
      sheet.put(
          new Ref(FIRST + i, 4),
          Entry.formula(pointer(guess), book.cell(guess.at()).stored()));
    }
    sheet.visibility(Sheet.Visibility.HIDDEN);
    return List.of(new Edit.AddSheet(sheet));
  }

  private static List<String> texts(Guess guess) {
    return List.of(
        guess.table(), guess.property(), guess.unit(), guess.across() ? "across" : "down");
  }

  private static String pointer(Guess guess) {
    Ref ref = guess.at().ref();
    return Address.quoted(guess.at().sheet()) + "!" + TableDraft.dollars(ref);
  }

  private static List<Edit> renew(Sheet sheet, List<Guess> agreed) {
    List<Edit> edits = new ArrayList<>();
    edits.add(
        new Edit.SetContent(new Address(sheet.name(), new Ref(0, 0)), new Content.Text(MARK)));
    int last = sheet.used().map(block -> block.last().row()).orElse(FIRST);
    for (int row = FIRST; row <= Math.max(last, FIRST + agreed.size() - 1); row++) {
      int item = row - FIRST;
      for (int column = 0; column < 5; column++) {
        Address cell = new Address(sheet.name(), new Ref(row, column));
        edits.add(
            item >= agreed.size()
                ? new Edit.SetContent(cell, new Content.Blank())
                : column < 4
                    ? new Edit.SetContent(
                        cell, new Content.Text(texts(agreed.get(item)).get(column)))
                    : new Edit.SetFormula(cell, pointer(agreed.get(item)), new Content.Blank()));
      }
    }
    return edits;
  }
}
