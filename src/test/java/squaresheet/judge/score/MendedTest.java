package squaresheet.judge.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import squaresheet.judge.made.Calculator;
import squaresheet.judge.made.Layouts;
import squaresheet.judge.made.MadeBook;
import squaresheet.judge.slip.Faults;
import squaresheet.judge.slip.Spoilt;

/** What correct does is held against what stood there before. */
class MendedTest {

  @TempDir
  java.nio.file.Path folder;

  private static Spoilt formulaStoredAsText() {
    MadeBook made = Layouts.book("one flat sheet", 3);
    Faults.Pending pending = Faults.one(made, Faults.ids().indexOf("DAT-15"), 3).orElseThrow();
    return pending.calculated(
        Calculator.LIBRARY.calculated(List.of(pending.file())).get(0));
  }

  @Test
  void a_workbook_in_order_is_left_alone() {
    MadeBook made = Layouts.book("one flat sheet", 3);
    assertThat(Verdicts.of(made.file(), folder).mended(List.of(), Faults.shown(made)))
        .isEqualTo(Mended.NOTHING);
  }

  @Test
  void a_formula_that_was_a_text_works_again() {
    Spoilt spoilt = formulaStoredAsText();
    Mended mended = Verdicts.of(spoilt.file(), folder).mended(spoilt.slips(), spoilt.shown());
    assertThat(mended).isEqualTo(new Mended(1, 0, true));
  }

  @Test
  void a_change_of_a_cell_that_was_right_and_shows_something_else_is_a_harm() {
    Spoilt spoilt = formulaStoredAsText();
    Map<String, Double> other = new HashMap<>();
    spoilt.shown().forEach((cell, shown) -> other.put(cell, shown + 1));
    assertThat(Verdicts.of(spoilt.file(), folder).mended(List.of(), other))
        .isEqualTo(new Mended(1, 1, false));
  }
}
