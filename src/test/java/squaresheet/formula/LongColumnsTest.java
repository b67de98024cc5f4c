package squaresheet.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.junit.jupiter.api.Test;
import squaresheet.sheet.Address;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Content;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Ref;
import squaresheet.sheet.SheetBuilder;
import squaresheet.sheet.Workbook;

/**
 * Columns long enough to be looked up by index and added up from where the last sum ended come to what another engine, Apache
 * POI's, makes of them cell by cell; and a workbook with some cells put to other values to what it is with these typed in.
 */
class LongColumnsTest {

  private static final int ROWS = 40;

  /** What is looked for and what is looked through: duplicates, other cases, texts like numbers, marks that stand for any letters. */
  @Provide
  Arbitrary<List<Value>> keys() {
    return key().list().ofSize(ROWS);
  }

  @Provide
  Arbitrary<Value> key() {
    return Arbitraries.of(
        new Value.Number(7),
        new Value.Number(6.5),
        new Value.Number(-2),
        new Value.Number(0),
        new Value.Text("7"),
        new Value.Text("ridge"),
        new Value.Text("Ridge"),
        new Value.Text("RIDGE CAP"),
        new Value.Text("rid"),
        new Value.Text("hip"),
        new Value.Truth(true),
        new Value.Blank());
  }

  /** A condition in a blank cell asks for 0, as spreadsheet programs document; the other engine asks for nothing. */
  @Provide
  Arbitrary<Value> filled() {
    return key().filter(it -> !(it instanceof Value.Blank));
  }

  @Provide
  Arbitrary<List<Value>> amounts() {
    Arbitrary<Value> numbers =
        Arbitraries.doubles().between(-1e6, 1e6).ofScale(3).map(Value.Number::new);
    return Arbitraries.frequencyOf(
            Tuple.of(12, numbers),
            Tuple.of(1, Arbitraries.of(new Value.Text("12"), new Value.Truth(true))),
            Tuple.of(1, Arbitraries.just(new Value.Blank())))
        .list()
        .ofSize(ROWS);
  }

  @Provide
  Arbitrary<String> wanted() {
    return Arbitraries.of(
        "7",
        "6.5",
        "0",
        "\"7\"",
        "\"ridge\"",
        "\"RIDGE\"",
        "\"ri*\"",
        "\"?ip\"",
        "\"*cap\"",
        "TRUE",
        "\"valley\"",
        "D1");
  }

  @Provide
  Arbitrary<String> formulas() {
    return Arbitraries.of(
        "MATCH(%s,A$1:A$40,0)",
        "VLOOKUP(%s,A$1:B$40,2,FALSE)",
        "INDEX(B$1:B$40,MATCH(%s,A$1:A$40,0))",
        "COUNTIF(A$1:A$40,%s)",
        "SUMIF(A$1:A$40,%s,B$1:B$40)",
        "SUMIFS(B$1:B$40,A$1:A$40,%s,B$1:B$40,\">0\")",
        "COUNTIFS(A$1:A$40,%s,B$1:B$40,\"<1000\")");
  }

  @Property(tries = 400, seed = "20260914")
  void lookups_in_a_long_column_come_to_what_another_engine_finds_cell_by_cell(
      @ForAll("keys") List<Value> keys,
      @ForAll("amounts") List<Value> amounts,
      @ForAll("formulas") String formula,
      @ForAll("wanted") String wanted,
      @ForAll("filled") Value typed)
      throws IOException {
    Map<String, Value> cells = columns(keys, amounts);
    cells.put("D1", typed);
    String text = formula.formatted(wanted);
    Calculation ours = Calculation.of(book(cells, Map.of("E1", text)));
    same(text + " in " + cells, value(ours, "E1"), theirs(cells, List.of(text)).get(0));
  }

  @Property(tries = 60, seed = "20260915")
  void running_totals_come_to_what_another_engine_adds_up_from_the_top(
      @ForAll("amounts") List<Value> amounts) throws IOException {
    Map<String, Value> cells = columns(List.of(), amounts);
    Map<String, String> formulas = new HashMap<>();
    List<String> texts = new ArrayList<>();
    for (int row = 1; row <= ROWS; row++) {
      texts.add("SUM(B$1:B" + row + ")");
      formulas.put("C" + row, texts.get(row - 1));
      formulas.put("D" + row, "SUM(B$1:B" + row + ",F1)");
    }
    Calculation ours = Calculation.of(book(cells, formulas));
    List<Value> theirs = theirs(cells, texts);
    for (int row = 1; row <= ROWS; row++) {
      same(texts.get(row - 1) + " of " + amounts, value(ours, "C" + row), theirs.get(row - 1));
      assertThat(value(ours, "C" + row)).isEqualTo(value(ours, "D" + row));
    }
  }

  @Property(tries = 100, seed = "20260916")
  void cells_put_to_other_values_make_what_they_make_typed_in(
      @ForAll("keys") List<Value> keys,
      @ForAll("amounts") List<Value> amounts,
      @ForAll("key") Value key,
      @ForAll("wanted") String wanted) {
    Map<String, String> formulas = new HashMap<>();
    for (int row = 1; row <= ROWS; row++) {
      formulas.put("C" + row, "SUM(B$1:B" + row + ")");
      formulas.put("D" + row, "SUMIF(A$1:A$40,A" + row + ",C$1:C$40)");
      formulas.put(
          "E" + row, "IFERROR(MATCH(" + wanted.replace("D1", "A1") + ",A$1:A$40,0),0)+D" + row);
    }
    Workbook book = book(columns(keys, amounts), formulas);
    Map<Address, Value> put = Map.of(
        cell("A7"), key, cell("A30"), new Value.Number(7), cell("B20"), new Value.Number(17));
    List<Edit> edits = put.entrySet().stream()
        .<Edit>map(it -> new Edit.SetContent(it.getKey(), it.getValue().content()))
        .toList();
    Calculation before = Calculation.of(book);
    List<Value> stood = before.order().stream().map(before::value).toList();
    Calculation so = before.putting(put);
    Calculation typed = Calculation.of(book.after(edits));
    assertThat(before.order())
        .allSatisfy(at -> assertThat(so.value(at)).isEqualTo(typed.value(at)));
    assertThat(before.order().stream().map(before::value).toList()).isEqualTo(stood);
  }

  /** 10,000 formulas that each look at 20,000 cells: the first are worked out, the last are said to be left. */
  @Test
  void a_workbook_whose_formulas_look_at_too_many_cells_is_worked_out_in_part_and_says_so() {
    Map<String, Value> cells = new HashMap<>();
    Map<String, String> formulas = new HashMap<>();
    for (int row = 1; row <= 20_000; row++) {
      cells.put("A" + row, new Value.Number(row));
      if (row <= 10_000) {
        formulas.put("C" + row, "COUNTIF(A$1:A$20000,\">" + row + "\")");
      }
    }
    Calculation ours = Calculation.of(book(cells, formulas));
    assertThat(ours.isCutShort()).isTrue();
    assertThat(value(ours, "C1")).isEqualTo(new Value.Number(19_999));
    assertThat(ours.isLeft(cell("C1"))).isFalse();
    assertThat(value(ours, "C10000")).isInstanceOf(Value.NotChecked.class);
    assertThat(ours.isLeft(cell("C10000"))).isTrue();
  }

  private static void same(String what, Value ours, Value theirs) {
    if (ours instanceof Value.Number a && theirs instanceof Value.Number b) {
      double size = Math.max(1, Math.max(Math.abs(a.value()), Math.abs(b.value())));
      assertThat(Math.abs(a.value() - b.value()) / size).as(what).isLessThan(1e-9);
    } else if (!(ours instanceof Value.NotChecked)) {
      assertThat(ours).as(what).isEqualTo(theirs);
    }
  }

  private static Address cell(String ref) {
    return Address.of("Sheet1", ref);
  }

  private static Value value(Calculation calculation, String ref) {
    return calculation.value(cell(ref));
  }

  private static Map<String, Value> columns(List<Value> keys, List<Value> amounts) {
    Map<String, Value> cells = new HashMap<>();
    for (int row = 1; row <= ROWS; row++) {
      if (!keys.isEmpty()) {
        cells.put("A" + row, keys.get(row - 1));
      }
      cells.put("B" + row, amounts.get(row - 1));
    }
    return cells;
  }

  private static Workbook book(Map<String, Value> cells, Map<String, String> formulas) {
    TreeMap<Ref, Cell> all = new TreeMap<>();
    cells.forEach((ref, value) -> all.put(Ref.parse(ref), Cell.of(value.content())));
    formulas.forEach(
        (ref, text) -> all.put(Ref.parse(ref), new Cell(new Content.Blank(), text, "General")));
    SheetBuilder sheet = squaresheet.sheet.Sheet.builder("Sheet1");
    all.forEach((ref, cell) -> {
      sheet.content(ref.row(), ref.column(), "General", cell.stored());
      if (cell.isFormula()) {
        sheet.formula(ref.row(), ref.column(), cell.formula());
      }
    });
    return new Workbook(
        List.of(sheet.build()), List.of(), false, Workbook.Calculation.USUAL, List.of(), Map.of());
  }

  private static List<Value> theirs(Map<String, Value> cells, List<String> formulas)
      throws IOException {
    try (HSSFWorkbook workbook = new HSSFWorkbook()) {
      Sheet sheet = workbook.createSheet("Sheet1");
      cells.forEach((place, value) -> put(sheet, place, value));
      FormulaEvaluator engine = workbook.getCreationHelper().createFormulaEvaluator();
      List<Value> all = new ArrayList<>();
      for (String formula : formulas) {
        org.apache.poi.ss.usermodel.Cell cell =
            sheet.createRow(100 + all.size()).createCell(9);
        cell.setCellFormula(formula);
        all.add(value(engine.evaluate(cell)));
      }
      return all;
    }
  }

  private static Value value(CellValue value) {
    return switch (value.getCellType()) {
      case NUMERIC -> Value.of(value.getNumberValue());
      case STRING -> new Value.Text(value.getStringValue());
      case BOOLEAN -> new Value.Truth(value.getBooleanValue());
      case ERROR -> new Value.Fault(FormulaError.forInt(value.getErrorValue()).getString());
      default -> new Value.Blank();
    };
  }

  private static void put(Sheet sheet, String place, Value value) {
    Ref ref = Ref.parse(place);
    Row row =
        sheet.getRow(ref.row()) == null ? sheet.createRow(ref.row()) : sheet.getRow(ref.row());
    if (value instanceof Value.Number number) {
      row.createCell(ref.column()).setCellValue(number.value());
    } else if (value instanceof Value.Text text) {
      row.createCell(ref.column()).setCellValue(text.value());
    } else if (value instanceof Value.Truth truth) {
      row.createCell(ref.column()).setCellValue(truth.value());
    }
  }
}
