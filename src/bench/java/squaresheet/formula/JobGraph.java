package squaresheet.formula;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.apache.poi.ss.formula.WorkbookEvaluator;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import squaresheet.binding.JobWorkbook;
import squaresheet.estimate.PriceList;
import squaresheet.estimate.Rates;
import squaresheet.estimate.Terms;
import squaresheet.job.Company;
import squaresheet.job.JobCard;
import squaresheet.job.JobInput;
import squaresheet.job.JobResult;
import squaresheet.product.Catalogue;
import squaresheet.roof.PlaneNotes;
import squaresheet.roof.RoofNotes;
import squaresheet.roof.Shape;
import squaresheet.sheet.Address;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.sheet.Ref;
import squaresheet.takeoff.Rulebook;
import squaresheet.tape.TapeUnit;
import squaresheet.units.Length;
import squaresheet.units.Pitch;
import squaresheet.xlsx.Xlsx;

/**
 * The file of a job workbook as the library writes it, its formulas worked out by ours and by POI's evaluator. What
 * POI cannot work out (see {@link #left()}) is left out of the file for both: the stored values stay.
 */
final class JobGraph {

  /** A small gable roof; its workbook has more formulas than the 600 that the speed is asked of. */
  private static final int PLANES = 2;

  private static final Set<String> KNOWN = Set.copyOf(WorkbookEvaluator.getSupportedFunctionNames());

  private final Map<String, Integer> left = new TreeMap<>();
  private final Calculation calculation;
  private final XSSFWorkbook book;
  private final FormulaEvaluator evaluator;
  private final Address last;

  JobGraph() {
    JobInput input = input();
    Draft draft = JobWorkbook.write(input, JobResult.of(input).value().orElseThrow());
    leaveOut(draft);
    byte[] bytes = Xlsx.bytes(draft);
    try {
      Path file = Files.createTempFile("job", ".xlsx");
      Files.write(file, bytes);
      calculation = Calculation.of(Xlsx.read(file).value().orElseThrow());
      Files.delete(file);
      book = new XSSFWorkbook(new ByteArrayInputStream(bytes));
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
    evaluator = book.getCreationHelper().createFormulaEvaluator();
    last = calculation.order().get(calculation.order().size() - 1);
    check();
  }

  private static JobInput input() {
    PlaneNotes[] planes = new PlaneNotes[PLANES];
    for (int i = 0; i < PLANES; i++) {
      Shape shape = new Shape.Rectangle(Length.parse(20 + i + "' 6\""), Length.parse(12 + i % 5 + "'"));
      planes[i] = new PlaneNotes("P" + (i + 1), shape, PlaneNotes.Measured.ON_SLOPE, Pitch.of(4 + i % 6));
    }
    JobCard card = new JobCard("Alder Lane house", "Foreman", "2026-05-04", TapeUnit.FEET);
    return new JobInput(card, RoofNotes.of(planes), company());
  }

  private static Company company() {
    return new Company(
        Catalogue.read(Path.of("demo-data/products.csv")).value().orElseThrow(),
        Rulebook.standard(),
        PriceList.read(text("demo-data/prices.csv"), "prices.csv", "USD").value().orElseThrow(),
        Rates.read(text("demo-data/rates.csv"), "rates.csv", "USD").value().orElseThrow(),
        Terms.read(text("demo-data/terms.csv"), "terms.csv").value().orElseThrow());
  }

  private static String text(String file) {
    try {
      return Files.readString(Path.of(file));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private void leaveOut(Draft draft) {
    draft.workbook().sheets().forEach(sheet -> sheet
        .cells()
        .filter(placed -> placed.cell().isFormula())
        .forEach(placed -> missing(placed.cell().formula()).ifPresent(what -> {
          left.merge(what, 1, Integer::sum);
          typed(draft.find(sheet.name()).orElseThrow(), placed.ref());
        })));
  }

  private static void typed(DraftSheet sheet, Ref cell) {
    Entry old = sheet.entry(cell).orElseThrow();
    sheet.put(cell, new Entry(old.stored(), "", old.role(), old.format()));
  }

  /** What in a formula POI cannot work out: a function it has not, or comparisons and functions of many values in SUMPRODUCT. */
  private static Optional<String> missing(String formula) {
    List<String> found = new ArrayList<>();
    Trees.walk(Formula.of(formula).tree(), node -> {
      if (node instanceof Node.Call call && !KNOWN.contains(call.function())) {
        found.add(call.function());
      } else if (node instanceof Node.Call call && call.function().equals("SUMPRODUCT")) {
        call.arguments().forEach(part -> Trees.walk(part, inner -> {
          if (inner instanceof Node.Call || isComparison(inner)) {
            found.add("SUMPRODUCT of comparisons or functions");
          }
        }));
      }
    });
    return found.stream().findFirst();
  }

  private static boolean isComparison(Node node) {
    return node instanceof Node.Binary binary
        && binary.operator().strength() < Node.Operator.PLUS.strength();
  }

  /** Every number is the same by both engines, and so is every text and truth; otherwise the comparison means nothing. */
  private void check() {
    List<String> wrong = new ArrayList<>();
    for (Address cell : calculation.order()) {
      Cell other = book.getSheet(cell.sheet()).getRow(cell.ref().row()).getCell(cell.ref().column());
      String theirs = shown(other);
      if (!isSame(calculation.value(cell), theirs)) {
        wrong.add(cell + ": " + calculation.formulas().get(cell) + " is " + calculation.value(cell) + ", by POI " + theirs);
      }
    }
    if (!wrong.isEmpty()) {
      throw new IllegalStateException(String.join("\n", wrong));
    }
  }

  private String shown(Cell cell) {
    try {
      CellValue value = evaluator.evaluate(cell);
      return switch (value.getCellType()) {
        case NUMERIC -> Double.toString(value.getNumberValue());
        case STRING -> value.getStringValue();
        case BOOLEAN -> Boolean.toString(value.getBooleanValue());
        default -> value.formatAsString();
      };
    } catch (IllegalStateException | org.apache.poi.ss.formula.eval.NotImplementedException cannot) {
      return cannot.getMessage();
    }
  }

  private static boolean isSame(Value ours, String theirs) {
    if (ours instanceof Value.Number number) {
      try {
        double other = Double.parseDouble(theirs);
        return Math.abs(number.value() - other) <= 1e-9 * Math.max(1, Math.abs(other));
      } catch (NumberFormatException none) {
        return false;
      }
    }
    return ours instanceof Value.Text text && text.value().equals(theirs)
        || ours instanceof Value.Truth truth && Boolean.toString(truth.value()).equals(theirs);
  }

  /** How many formulas both work out. */
  int size() {
    return calculation.order().size();
  }

  /** What POI cannot work out, and how many formulas are left out for each. */
  Map<String, Integer> left() {
    return left;
  }

  /** All formulas by ours. */
  Value ours() {
    calculation.again();
    return calculation.value(last);
  }

  /** All formulas by POI, with the evaluator it already has. */
  FormulaEvaluator theirs() {
    evaluator.clearAllCachedResultValues();
    evaluator.evaluateAll();
    return evaluator;
  }
}
