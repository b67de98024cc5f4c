package squaresheet.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import squaresheet.sheet.Address;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Content;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.SheetBuilder;
import squaresheet.sheet.Workbook;
import squaresheet.units.Unit;

class CalculationTest {

  /** A workbook of sheets, each a name and then pairs of a place and what stands there; a formula has an equals sign. */
  static Workbook workbook(boolean date1904, List<Workbook.Name> names, String[]... sheets) {
    List<Sheet> made =
        java.util.stream.Stream.of(sheets).map(CalculationTest::sheet).toList();
    return new Workbook(made, names, date1904, Workbook.Calculation.USUAL, List.of(), Map.of());
  }

  private static Sheet sheet(String[] parts) {
    SheetBuilder builder = Sheet.builder(parts[0]);
    java.util.TreeMap<Ref, Cell> cells = new java.util.TreeMap<>();
    for (int i = 1; i < parts.length; i += 2) {
      cells.put(Ref.parse(parts[i]), cell(parts[i + 1]));
    }
    cells.forEach((ref, cell) -> put(builder, ref, cell));
    return builder.build();
  }

  private static Cell cell(String text) {
    if (text.startsWith("=")) {
      return new Cell(new Content.Blank(), text.substring(1), "General");
    }
    return Cell.of(
        text.matches("-?[0-9.]+")
            ? new Content.Numeric(Double.parseDouble(text))
            : new Content.Text(text));
  }

  private static void put(SheetBuilder builder, Ref ref, Cell cell) {
    builder.content(ref.row(), ref.column(), "General", cell.stored());
    if (cell.isFormula()) {
      builder.formula(ref.row(), ref.column(), cell.formula());
    }
  }

  private static double number(Calculation calculation, String sheet, String ref) {
    return ((Value.Number) calculation.value(Address.of(sheet, ref))).value();
  }

  @Test
  void formulas_are_worked_out_after_those_they_need_through_sheets_and_names() {
    Calculation calculation = Calculation.of(workbook(
        false,
        List.of(Workbook.Name.of("waste_rate", "Inputs!$B$2")),
        new String[] {
          "Planes", "C1", "=SUM(B1:B2)*(1+waste_rate)", "B1", "=A1*10", "A1", "3", "B2", "=B1+A1"
        },
        new String[] {"Inputs", "B2", "0.1"}));
    assertThat(number(calculation, "Planes", "C1")).isEqualTo((30 + 33) * 1.1);
    assertThat(calculation.order()).hasSize(3).endsWith(Address.of("Planes", "C1"));
    assertThat(calculation.cycles()).isEmpty();
  }

  @Test
  void a_circle_is_named_cell_by_cell_and_what_needs_it_is_not_checked() {
    Calculation calculation = Calculation.of(workbook(false, List.of(), new String[] {
      "Quote",
      "B5",
      "1",
      "B10",
      "=B5+B11",
      "B11",
      "=B12*2",
      "B12",
      "=SUM(B5:B10)",
      "C1",
      "=B11",
      "C2",
      "=B5+1"
    }));
    assertThat(calculation.cycles()).hasSize(1);
    assertThat(calculation.cycles().get(0))
        .containsExactlyInAnyOrder(
            Address.of("Quote", "B10"), Address.of("Quote", "B11"), Address.of("Quote", "B12"));
    assertThat(calculation.value(Address.of("Quote", "B10")))
        .isEqualTo(new Value.NotChecked(
            "formulas in a circle: Quote!B10 needs Quote!B11 needs Quote!B12 needs Quote!B10"));
    assertThat(calculation.value(Address.of("Quote", "C1")).isChecked()).isFalse();
    assertThat(number(calculation, "Quote", "C2")).isEqualTo(2);
  }

  @Test
  void asking_where_a_cell_is_makes_no_circle() {
    Calculation calculation = Calculation.of(workbook(
        false, List.of(), new String[] {"Lines", "A5", "=ROW(A5)", "A6", "=ROWS(A$5:A6)"}));
    assertThat(calculation.cycles()).isEmpty();
    assertThat(number(calculation, "Lines", "A5")).isEqualTo(5);
    assertThat(number(calculation, "Lines", "A6")).isEqualTo(2);
  }

  @Test
  void a_chain_of_twenty_thousand_cells_does_not_overflow() {
    String[] parts = new String[1 + 2 * 20_000];
    parts[0] = "Run";
    for (int i = 0; i < 20_000; i++) {
      parts[1 + 2 * i] = "A" + (i + 1);
      parts[2 + 2 * i] = i == 19_999 ? "1" : "=A" + (i + 2) + "+1";
    }
    Calculation calculation = Calculation.of(workbook(false, List.of(), parts));
    assertThat(number(calculation, "Run", "A1")).isEqualTo(20_000);
  }

  @Test
  void a_formula_that_cannot_be_read_is_said_and_what_needs_it_is_not_checked() {
    Calculation calculation = Calculation.of(
        "job.xlsx",
        workbook(false, List.of(), new String[] {"Lines", "A1", "=SUM(", "A2", "=A1+1"}));
    assertThat(calculation.findings()).hasSize(1);
    assertThat(calculation.findings().get(0).where()).hasToString("job.xlsx, Lines!A1");
    assertThat(calculation.value(Address.of("Lines", "A2")))
        .isEqualTo(new Value.NotChecked("the formula at Lines!A1 cannot be read"));
  }

  /** ECMA-376 Part 4, 3.17.4.1: 1 January 1904 is 0 in one system and 1462 in the other. */
  @Test
  void days_are_counted_as_the_workbook_counts_them() {
    String[] sheet = {"Days", "A1", "=DATE(1904,1,1)"};
    assertThat(number(Calculation.of(workbook(true, List.of(), sheet)), "Days", "A1"))
        .isZero();
    assertThat(number(Calculation.of(workbook(false, List.of(), sheet)), "Days", "A1"))
        .isEqualTo(1462);
  }

  @Test
  void a_value_explains_itself_with_inputs_steps_units_and_rounding() {
    Calculation calculation = Calculation.of(workbook(
        false,
        List.of(Workbook.Name.of("waste_rate", "Inputs!$B$2")),
        new String[] {
          "Planes",
          "H6",
          "1250",
          "H7",
          "750",
          "K9",
          "=IF(waste_rate>0,ROUNDUP(SUM(H6:H7)*(1+waste_rate)/Inputs!B3,0),0)"
        },
        new String[] {"Inputs", "B2", "0.1", "B3", "33.3"}));
    List<String> lines = calculation.explain(Address.of("Planes", "K9"), new Labels() {
      @Override
      public Optional<Unit> unit(Address cell) {
        return switch (cell.toString()) {
          case "Planes!H6", "Planes!H7" -> Optional.of(Unit.parse("sq ft"));
          case "Inputs!B2" -> Optional.of(Unit.RATIO);
          case "Inputs!B3" -> Optional.of(Unit.parse("sq ft/bundle"));
          default -> Optional.empty();
        };
      }
    });
    assertThat(String.join("\n", lines)).isEqualTo("""
        Planes!K9 = IF(waste_rate>0,ROUNDUP(SUM(H6:H7)*(1+waste_rate)/Inputs!B3,0),0)
          waste_rate is 0.1, from Inputs!$B$2
          H6:H7 holds 2 numbers in 2 cells
          Inputs!B3 is 33.3 sq ft/bundle
          0.1>0 = TRUE
          SUM(H6:H7) = 2000 sq ft
          1+0.1 = 1.1
          2000*1.1 = 2200 sq ft
          2200/33.3 = 66.0661 bundle
          ROUNDUP(66.0661,0) = 67 bundle (rounded up)
          IF: waste_rate>0 holds, so 67 bundle
        Planes!K9 is 67 bundle""");
  }
}
