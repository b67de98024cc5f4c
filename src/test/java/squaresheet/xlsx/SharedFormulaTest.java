package squaresheet.xlsx;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.formula.FormulaParser;
import org.apache.poi.ss.formula.FormulaRenderer;
import org.apache.poi.ss.formula.FormulaType;
import org.apache.poi.ss.formula.SharedFormula;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.xssf.usermodel.XSSFEvaluationWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import squaresheet.sheet.Ref;

class SharedFormulaTest {

  private static String moved(String formula, String home, String to) {
    return new squaresheet.xlsx.SharedFormula(formula, Ref.parse(home)).apply(Ref.parse(to));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
      # formula                  | home | cell | moved                    | why
        B2*C2                    | D2   | D5   | B5*C5                    | both move
        $B2*C$2*$D$2             | E2   | F4   | $B4*D$2*$D$2             | a dollar sign holds
        SUM(B2:B9)/LOG10(C2)     | D2   | E3   | SUM(C3:C10)/LOG10(D3)    | a function's name is no cell
        IF(A1="A1",'A1'!A1,A1B)  | B1   | B2   | IF(A2="A1",'A1'!A2,A1B)  | text, sheets and words stand still
        SUM(A:A)+SUM($3:4)       | C1   | D2   | SUM(B:B)+SUM($3:5)       | whole columns and rows
        Table1[A1]+A1            | B1   | B3   | Table1[A1]+A3            | a column of a table is no cell
        A1                       | B2   | A1   | XFD1048576               | wraps around at the edges
        rate_1*AB12              | A1   | A2   | rate_1*AB13              | a name is no cell
        [1]Roof!B2+1E5           | A1   | A2   | [1]Roof!B3+1E5           | another file's cell moves, a number does not
      """)
  void references_move_with_the_cell(
      String formula, String home, String cell, String moved, String why) {
    assertThat(moved(formula, home, cell)).as(why).isEqualTo(moved);
  }

  /** Expected texts are those of POI's own shared formulas. */
  @Property(tries = 60)
  void references_move_as_the_object_model_moves_them(
      @ForAll @IntRange(max = 400) int down, @ForAll @IntRange(max = 60) int right)
      throws Exception {
    for (String formula : new String[] {
      "B2*$C2+D$2-$E$2", "SUM(B2:D9,$F$1:F2)*2", "IF(A1>=10,\"A1\",ROUND(B3/7,2))", "MAX(A:A)+B2"
    }) {
      Ref cell = new Ref(1 + down, 5 + right);
      assertThat(new squaresheet.xlsx.SharedFormula(formula, new Ref(1, 5)).apply(cell))
          .isEqualTo(ofPoi(formula, down, right));
    }
  }

  private static String ofPoi(String formula, int down, int right) throws java.io.IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      workbook.createSheet("Roof");
      XSSFEvaluationWorkbook book = XSSFEvaluationWorkbook.create(workbook);
      Ptg[] parsed = FormulaParser.parse(formula, book, FormulaType.CELL, 0, 1);
      Ptg[] moved = new SharedFormula(SpreadsheetVersion.EXCEL2007)
          .convertSharedFormulas(parsed, down, right);
      return FormulaRenderer.toFormulaString(book, moved);
    }
  }

  @Property(tries = 500)
  void numbers_read_as_java_reads_them(@ForAll double value) {
    for (String text : new String[] {
      Double.toString(value), Long.toString((long) value), Float.toString((float) value)
    }) {
      Optional<Double> finite = Optional.of(Double.parseDouble(text)).filter(Double::isFinite);
      finite.ifPresent(expected ->
          assertThat(Digits.parse(text.toCharArray(), 0, text.length())).isEqualTo(expected));
    }
  }
}
