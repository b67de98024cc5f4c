package squaresheet.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import squaresheet.sheet.Address;

/** Formulas that ask for far too much come to an answer soon, and to the one that is documented where there is one. */
class HostileFormulasTest {

  @ParameterizedTest
  @CsvSource(quoteCharacter = '`', delimiter = '|', textBlock = """
      # pieces: start, one piece, how often, end, value, source
        SEARCH("             | *a       |   40 | b",REPT("a",20000))   | #VALUE! | no b is there
        MATCH("              | a*       |   40 | b",{"aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa"},0) | #N/A | no b is there
        ISERROR(SEARCH("     | *a       | 2000 | ","a"))               | TRUE    | one a is not 2000
        FIXED(1,1E           | 9        |    1 | )                     | #VALUE! | documentation of FIXED: at most 127 decimals
        SUBSTITUTE(REPT("a",32767),"a",REPT( | "b" | 1 | ,32767))      | #VALUE! | a cell holds 32,767 characters (limits of the file format)
        LEN(REPT("a",32767)& | "b"      |    1 | )                     | #VALUE! | the same
        CEILING(1E300,1E-30  | 0        |    1 | )                     | #NUM!   | 1E600 is no double
        MROUND(1E300,1E-30   | 0        |    1 | )                     | #NUM!   | 1E600 is no double
        VALUE("              | 1,       | 3000 | 1")                   | #VALUE! | no number has so many commas
        MATCH(1,0+           | MATCH(1,0+ | 60 | 1                     | NOT     | never ends where each is worked out twice
        SUM(                 | 1+       |  900 | 1)                    | 901     | counted
      """)
  void too_much_is_answered_soon(
      String start, String piece, int times, String end, String value, String source) {
    String closed = value.equals("NOT") ? end + ",0)".repeat(times + 1) : end;
    Formula formula = Formula.of(start + piece.repeat(times) + closed);
    Value found =
        assertTimeoutPreemptively(Duration.ofSeconds(5), () -> formula.evaluate(new NoCells()));
    assertThat(formula).isEqualTo(Formula.of(formula.toString()));
    if (!value.equals("NOT")) {
      assertThat(spelled(found)).as(source).isEqualTo(value);
    }
  }

  private static String spelled(Value value) {
    return value instanceof Value.Fault fault ? fault.code() : Coercion.text(value);
  }

  private static final class NoCells implements Scope {
    @Override
    public Value cell(Address cell) {
      return new Value.Blank();
    }
  }
}
