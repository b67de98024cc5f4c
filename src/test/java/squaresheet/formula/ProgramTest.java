package squaresheet.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import squaresheet.sheet.Address;

class ProgramTest {

  @Test
  void threads_that_share_a_formula_do_not_disturb_each_other() {
    Formula formula = Formula.of("(A1*2+B1)/C1-A1");
    long wrong = IntStream.range(0, 200_000)
        .parallel()
        .filter(i -> !formula.evaluate(scope(i)).equals(expected(i)))
        .count();
    assertThat(wrong).isZero();
  }

  private static Value expected(int i) {
    return new Value.Number((i * 2.0 + 3) / 4 - i);
  }

  private static Scope scope(int i) {
    return new Scope() {
      @Override
      public Value cell(Address cell) {
        return new Value.Number(cell.ref().column() == 0 ? i : cell.ref().column() == 1 ? 3 : 4);
      }
    };
  }

  @Test
  void formulas_of_one_relative_form_share_one_program() {
    assertThat(Program.of("(v0()*v1())", 2)).isSameAs(Program.of("(v0()*v1())", 2));
    assertThat(ProgramText.write(Formula.of("B7*C7").tree(), new java.util.ArrayList<>()))
        .isEqualTo(ProgramText.write(Formula.of("B8*C8").tree(), new java.util.ArrayList<>()));
  }
}
