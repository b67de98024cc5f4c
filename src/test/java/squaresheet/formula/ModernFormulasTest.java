package squaresheet.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import squaresheet.sheet.Ref;

/** What newer spreadsheet programs take is never called a mistake: it is read, printed back as it was and not followed. */
class ModernFormulasTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "LAMBDA(x,x+1)(5)",
        "(LAMBDA(x,x+1))(5)",
        "LAMBDA(x,LAMBDA(y,x*y))(3)(4)",
        "LAMBDA(x,[y],IF(ISOMITTED(y),x,x+y))(A1)",
        "_xlfn.LAMBDA(_xlpm.x,_xlpm.x+1)(5)",
        "LET(waste,LAMBDA(a,a*1.1),waste(A1))",
        "IF(A1>0,SUM,MAX)(B1:B9)",
        "INDEX(rules,2)(A1)",
        "own_rule(A1)(2)",
        "own_rule({1,2;3,4})(2)",
        "Rules!gross(CEILING({1,2;3,4},1))",
        "Rules!gross(A1)",
        "'My rules'!gross(A1,2)",
        "[1]!gross(A1)",
        "'[rules.xlam]Sheet1'!gross(A1)",
        "A1#",
        "$A$1#",
        "Planes!A1#",
        "'Main roof'!A1#",
        "planes#",
        "INDEX(A1:A9,2)#",
        "OFFSET(A1,1,0)#",
        "(A1)#",
        "SORT(A1:A9)#",
        "SUM(A1#)",
        "SUM(A1#*B1#)",
        "A1#:B9",
        "SUM(A1# B1:B9)",
        "TAKE(A1#,-2)",
        "A.:.A",
        "A.:A",
        "A:.A",
        "$A:.$C",
        "1.:.5",
        "1:.5",
        "A1.:.E10",
        "A1:.E10",
        "$A$1.:E$10",
        "Planes!A.:.D",
        "Planes!A1:.D9",
        "INDEX(A1:A9,1):.B9",
        "SUM(A:.A)",
        "SUM(A1.:.A9,B1:.B9)",
        "A1.[Market cap]",
        "Lines[@Stock].[Price]",
        "BYROW(A1:C3,LAMBDA(r,SUM(r)))",
        "BYROW(A1:C3,SUM)",
        "MAP(A1:A3,B1:B3,LAMBDA(a,b,a*b))",
        "REDUCE(0,A1:A9,LAMBDA(a,b,a+b))",
        "GROUPBY(A1:A9,B1:B9,SUM)",
        "PY(\"df\",0)",
        "TRIMRANGE(A:A)",
        "FILTER(A1:B9,B1:B9>0,\"\")",
        "VSTACK(A1:A3,\"x\",{1;2})",
        "Jan:Dec!B5",
        "SUM('Jan:Dec'!B5:B9)",
        "[1]Prices!$B$7",
        "[1]!markup",
        "[1]!'the item'",
        "[1]Jan:Dec!B5",
        "'[other book.xlsx]Main roof'!B5",
        "[other.xlsx]!Lines[Length]",
        "[1]!Lines[[#This Row],[Length]]"
      })
  void is_read_and_not_followed(String text) {
    assertThat(Formula.diagnose(text)).isEmpty();
    Formula formula = Formula.of(text);
    assertThat(Formula.of(formula.toString())).isEqualTo(formula);
    assertThat(Formula.of(formula.toFile())).isEqualTo(formula);
    assertThat(FormulaTest.evaluate(text, Map.of("A1", new Value.Number(1))))
        .as(text)
        .isInstanceOf(Value.NotChecked.class);
    assertThat(formula.evaluateArray(cell -> new Value.Number(1))).isNotNull();
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      A1#                   | _xlfn.ANCHORARRAY(A1)
      Planes!$A$1#          | _xlfn.ANCHORARRAY(Planes!$A$1)
      INDEX(A1:A9,2)#       | _xlfn.ANCHORARRAY(INDEX(A1:A9,2))
      A.:.A                 | _xlfn._TRO_ALL(A:A)
      A1:.E10               | _xlfn._TRO_TRAILING(A1:E10)
      2.:9                  | _xlfn._TRO_LEADING(2:9)
      @A1:A9                | _xlfn.SINGLE(A1:A9)
      """)
  void is_spelled_for_people_and_for_the_file(String people, String file) {
    assertThat(Formula.of(people)).isEqualTo(Formula.of(file));
    assertThat(Formula.of(file)).hasToString(people);
    assertThat(Formula.of(people).toFile()).isEqualTo(file);
  }

  @Test
  void what_it_reads_is_known_and_a_fill_moves_it() {
    Formula formula = Formula.of("SUM(A1#)+SUM(B1.:.B9)+LAMBDA(x,x)(C1)");
    assertThat(formula.references()).hasSize(3);
    Formula below = formula.filled(Ref.parse("F1"), Ref.parse("F2"));
    assertThat(below).hasToString("SUM(A2#)+SUM(B2.:.B10)+LAMBDA(x,x)(C2)");
    assertThat(below.relative(Ref.parse("F2"))).isEqualTo(formula.relative(Ref.parse("F1")));
    assertThat(Formula.of("A1:.B2").relative(Ref.parse("F1")))
        .isNotEqualTo(Formula.of("A1:B2").relative(Ref.parse("F1")));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "#REF!A1",
        "#REF!$B$2:$B$9",
        "SUM(#REF!B2:B9)",
        "#REF!#REF!",
        "Planes!#REF!",
        "#FIELD!",
        "#BLOCKED!",
        "#SPILL!"
      })
  void an_error_left_behind_is_an_error_and_no_slip_of_typing(String text) {
    assertThat(Formula.diagnose(text)).isEmpty();
    assertThat(FormulaTest.evaluate(text, Map.of())).isInstanceOf(Value.Fault.class);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "SUM(A1:A9)(B1)",
        "ROUND(A1,0)(2)",
        "IF(A1>0,1,2)(B1)",
        "INDEX(A1:A9,2)(B1)",
        "(A1+2)(B1)",
        "A1(5)+",
        "5(A1)",
        "5#",
        "\"x\"#",
        "A1 #",
        "A1:..B2"
      })
  void an_operator_left_out_is_still_a_slip(String text) {
    assertThat(Formula.diagnose(text)).isNotEmpty();
  }
}
