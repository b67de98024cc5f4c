package squaresheet.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import squaresheet.sheet.Address;
import squaresheet.sheet.Ref;

/**
 * What spreadsheet programs do not agree on has no value here. LibreOffice 7.4 and Apache POI 5 worked the formulas out; what
 * Excel gives is from its documentation where a column says so, else from memory.
 */
class DisagreementsTest {

  @ParameterizedTest
  @CsvSource(quoteCharacter = '`', delimiter = '|', textBlock = """
      # formula                        | one program          | another
        MATCH(8,C1:C5,-1)              | LibreOffice 3        | POI 2
        SUM(ROW(A1:A3))                | LibreOffice 6        | POI 1
        MATCH(1,(A1:A5>50)*1,0)        | LibreOffice 4        | Excel the row of the formula's own cell
        COUNTIF(B1:B5,5)               | LibreOffice 0        | POI 1
        INDEX((A1:A5,C1:C5),2,1,2)     | LibreOffice 8        | POI fails
        SUM(INDEX(A1:A5,{1,2}))        | LibreOffice 8.5      | Excel before 365 12
        MOD(1E16,3)                    | LibreOffice 0        | POI 1; Excel documents #NUM!
        "é"<"f"                        | LibreOffice TRUE     | POI FALSE
        "a:b"<"a1"                     | by language          | by code
        TEXT(-0.001,"0.00")            | LibreOffice 0.00     | POI -0.00
        TEXT(60,"yyyy-mm-dd")          | LibreOffice 1900-02-28 | POI 1900-03-01
        TEXT(1,"dddd")                 | LibreOffice Sunday   | POI Monday
        TEXT(-1,"yyyy")                | LibreOffice 1899     | Excel documents #VALUE!
        TEXT("x","@@")                 | LibreOffice xx       | POI x
        TEXTJOIN({",",";"},TRUE,1,2,3) | one separator after another | only the first
        VALUE("5-")                    | LibreOffice -5       | POI #VALUE!
        VALUE("(5%)")                  | LibreOffice #VALUE!  | Excel -0.05
        VALUE("1,2345")                | LibreOffice #VALUE!  | POI 12345
        VALUE("15-Jan")                | LibreOffice #VALUE!  | POI 15 January of this year
        VALUE("15-Jan-24")             | LibreOffice 45306    | POI #VALUE!
        VALUE("2024-01-15 12:30")      | LibreOffice 45306.52 | POI #VALUE!
        DATEVALUE("1899-12-31")        | LibreOffice 1        | POI 0
      """)
  void what_programs_disagree_on_is_not_checked(String formula, String one, String another) {
    assertThat(Formula.of(formula).evaluate(new Cells()))
        .as(one + ", " + another)
        .isInstanceOf(Value.NotChecked.class);
  }

  private static final class Cells implements Scope {
    private static final List<Double> NUMBERS = List.of(12.0, -3.5, 0.0, 100.0, 33.3);
    private static final List<String> TEXTS = List.of(" 5 ", "5%", "$5", "1,234", "1e3");
    private static final List<Double> FALLING = List.of(12.0, 8.0, 8.0, 4.0, 1.0);

    @Override
    public Value cell(Address cell) {
      Ref ref = cell.ref();
      if (ref.row() >= 5 || ref.column() > 2) {
        return new Value.Blank();
      }
      return switch (ref.column()) {
        case 0 -> new Value.Number(NUMBERS.get(ref.row()));
        case 1 -> new Value.Text(TEXTS.get(ref.row()));
        default -> new Value.Number(FALLING.get(ref.row()));
      };
    }

    @Override
    public Optional<Address> here() {
      return Optional.of(Address.of("Sheet1", "Z9"));
    }
  }
}
