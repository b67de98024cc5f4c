package squaresheet.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import squaresheet.sheet.Address;

/** Formulas that jqwik makes up come to the same in another engine, Apache POI's. Its differences are in docs/limits.md. */
class SecondEngineTest {

  private static final Map<String, Value> CELLS = Map.ofEntries(
      Map.entry("A1", new Value.Number(12)),
      Map.entry("A2", new Value.Number(-3.5)),
      Map.entry("A3", new Value.Number(0)),
      Map.entry("B1", new Value.Number(100)),
      Map.entry("B2", new Value.Text("7")),
      Map.entry("B3", new Value.Text("ridge")),
      Map.entry("C1", new Value.Truth(true)),
      Map.entry("C2", new Value.Number(33.3)),
      Map.entry("C4", new Value.Number(0.1)));

  @Provide
  Arbitrary<Node> formulas() {
    return Generated.computable(3);
  }

  @Property(tries = 1500, seed = "20260501")
  void a_formula_comes_to_the_same_in_another_engine(@ForAll("formulas") Node tree) {
    Formula formula = Formula.of(tree);
    if (formula.toString().length() > 1500) {
      return;
    }
    Value ours = formula.evaluate(new Cells());
    Value theirs = theirs(formula.toString());
    if (theirs instanceof Value.NotChecked || ours instanceof Value.NotChecked) {
      return;
    }
    if (ours instanceof Value.Number a && theirs instanceof Value.Number b) {
      double size = Math.max(1e-9, Math.max(Math.abs(a.value()), Math.abs(b.value())));
      assertThat(Math.abs(a.value() - b.value()) / size)
          .as(formula + " is " + ours + ", elsewhere " + theirs)
          .isLessThan(1e-9);
      return;
    }
    assertThat(cut(ours)).as(formula.toString()).isEqualTo(cut(theirs));
  }

  /** Texts without the digits of numbers beyond the tenth decimal, where the other engine cuts and spreadsheets round. */
  private static Value cut(Value value) {
    return value instanceof Value.Text text
        ? new Value.Text(text.value().replaceAll("(\\.\\d{10})\\d+", "$1"))
        : value;
  }

  private static Value theirs(String formula) {
    try (HSSFWorkbook workbook = new HSSFWorkbook()) {
      Sheet sheet = workbook.createSheet("Sheet1");
      CELLS.forEach((place, value) -> put(sheet, place, value));
      Cell cell = sheet.createRow(8).createCell(25);
      try {
        cell.setCellFormula(formula);
      } catch (RuntimeException tooLong) {
        return new Value.NotChecked("not taken by the other engine");
      }
      CellValue value = workbook.getCreationHelper().createFormulaEvaluator().evaluate(cell);
      return switch (value.getCellType()) {
        case NUMERIC -> Value.of(value.getNumberValue());
        case STRING -> new Value.Text(value.getStringValue());
        case BOOLEAN -> new Value.Truth(value.getBooleanValue());
        case ERROR -> new Value.Fault(FormulaError.forInt(value.getErrorValue()).getString());
        default -> new Value.Blank();
      };
    } catch (java.io.IOException impossible) {
      throw new java.io.UncheckedIOException(impossible);
    }
  }

  private static void put(Sheet sheet, String place, Value value) {
    squaresheet.sheet.Ref ref = squaresheet.sheet.Ref.parse(place);
    Row row =
        sheet.getRow(ref.row()) == null ? sheet.createRow(ref.row()) : sheet.getRow(ref.row());
    Cell cell = row.createCell(ref.column());
    if (value instanceof Value.Number number) {
      cell.setCellValue(number.value());
    } else if (value instanceof Value.Text text) {
      cell.setCellValue(text.value());
    } else if (value instanceof Value.Truth truth) {
      cell.setCellValue(truth.value());
    }
  }

  private static final class Cells implements Scope {
    @Override
    public Value cell(Address cell) {
      return CELLS.getOrDefault(cell.ref().toString(), new Value.Blank());
    }

    @Override
    public Optional<Address> here() {
      return Optional.of(Address.of("Sheet1", "Z9"));
    }
  }
}
