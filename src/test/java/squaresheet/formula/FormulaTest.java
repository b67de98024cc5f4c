package squaresheet.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import squaresheet.sheet.Address;
import squaresheet.sheet.Ref;

class FormulaTest {

  static Value evaluate(String text, Map<String, Value> cells) {
    return Formula.of(text).evaluate(new Scope() {
      @Override
      public Value cell(Address cell) {
        return cells.getOrDefault(cell.ref().toString(), new Value.Blank());
      }

      @Override
      public Value name(String name) {
        return cells.getOrDefault(name, new Value.Fault("#NAME?"));
      }

      @Override
      public Optional<Address> here() {
        return Optional.of(Address.of("Sheet1", "Z9"));
      }
    });
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
      -2^2              | -2^2
      2 ^ 3 ^ 2         | 2^3^2
      2^(3^2)           | 2^(3^2)
      (2^3)^2           | 2^3^2
      -(2^2)            | -(2^2)
      -(2%)             | -(2%)
      (-2)%             | -2%
      (1+2)*3           | (1+2)*3
      1+(2*3)           | 1+2*3
      1-(2-3)           | 1-(2-3)
      sum(a1:b2, $C$3)  | SUM(A1:B2,$C$3)
      _xlfn.IFS(A1>1,2) | IFS(A1>1,2)
      'Main roof'!b7    | 'Main roof'!B7
      Planes!$B$7:$B$9  | Planes!$B$7:$B$9
      A:A               | A:A
      $2:$5             | $2:$5
      "a""b"&"c"        | "a""b"&"c"
      {1,2;-3,TRUE}     | {1,2;-3,TRUE}
      Lines[Length]     | Lines[Length]
      Lines[[#Totals],[Length]] | Lines[[#Totals],[Length]]
      SUM((A1,B2))      | SUM((A1,B2))
      A1:B3 B2:C4       | A1:B3 B2:C4
      IF(A1,,2)         | IF(A1,,2)
      1e-20*550E2       | 1E-20*55000
      [1]Prices!A1+1    | [1]Prices!A1+1
      LOG10(100)        | LOG10(100)
      """)
  void prints_what_it_reads_in_one_way(String written, String printed) {
    assertThat(Formula.parse(written).findings()).isEmpty();
    assertThat(Formula.of(written)).hasToString(printed);
    assertThat(Formula.of(printed)).isEqualTo(Formula.of(written));
  }

  @Test
  void a_filled_column_has_one_relative_form() {
    Formula first = Formula.of("C7*B7/Inputs!$B$2");
    Formula second = Formula.of("C8*B8/Inputs!$B$2");
    assertThat(first.relative(Ref.parse("D7"))).isEqualTo(second.relative(Ref.parse("D8")));
    assertThat(first.relative(Ref.parse("D7"))).hasToString("RC[-1]*RC[-2]/Inputs!R2C2");
    assertThat(first.filled(Ref.parse("D7"), Ref.parse("D8"))).isEqualTo(second);
    assertThat(Formula.of("A1").filled(Ref.parse("B2"), Ref.parse("B1"))).hasToString("#REF!");
  }

  @Test
  void names_become_references_and_back() {
    Formula rule = Formula.of("ROUNDUP(SUM(plane_area)*(1+waste_rate)/100,0)");
    Formula live = rule.respelled(new Respelling() {
      @Override
      public Node name(Node.Name name, boolean many) {
        if (!name.name().equals("plane_area")) {
          return name;
        }
        return Formula.of(many ? "C7:C9" : "C7").tree();
      }
    });
    assertThat(live).hasToString("ROUNDUP(SUM(C7:C9)*(1+waste_rate)/100,0)");
  }

  @Test
  void evaluates_names_and_cells() {
    Map<String, Value> cells = Map.of(
        "net_area", new Value.Number(2000),
        "waste_rate", new Value.Number(0.1),
        "B2", new Value.Text("7"),
        "B3", new Value.Fault("#REF!"),
        "B4", new Value.NotChecked("why"));
    assertThat(evaluate("ROUNDUP(net_area*(1+waste_rate)/100*3,0)", cells))
        .isEqualTo(new Value.Number(66));
    assertThat(evaluate("B2+1", cells)).isEqualTo(new Value.Number(8));
    assertThat(evaluate("B3+1", cells)).isEqualTo(new Value.Fault("#REF!"));
    assertThat(evaluate("1/0+B3", cells)).isEqualTo(new Value.Fault("#DIV/0!"));
    assertThat(evaluate("IFERROR(B4,1)", cells)).isEqualTo(new Value.NotChecked("why"));
    assertThat(evaluate("IF(TRUE,1,B4)", cells)).isEqualTo(new Value.Number(1));
    assertThat(evaluate("eaves", cells)).isEqualTo(new Value.Fault("#NAME?"));
    assertThat(evaluate("SUM(B1:B2)", cells)).isEqualTo(new Value.Number(0));
    assertThat(evaluate("CUBEVALUE(1)", cells))
        .isEqualTo(new Value.NotChecked("function CUBEVALUE is not followed"));
  }

  @Test
  void a_text_that_is_no_formula_is_pointed_at() {
    assertThat(Formula.diagnose("=ROUND(A1,0")).isEqualTo("""
        ROUND(A1,0
             ^
        the bracket that opens here is never closed: write ')' at its end""");
    assertThat(Formula.parse("=1+2)").findings().get(0).says())
        .isEqualTo("this bracket closes nothing: take it out, or write '(' where it should open"
            + " (character 4 of '1+2)')");
  }
}
