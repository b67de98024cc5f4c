package squaresheet.judge.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import squaresheet.finding.Severity;
import squaresheet.judge.made.Calculator;
import squaresheet.judge.made.Layouts;
import squaresheet.judge.made.MadeBook;
import squaresheet.judge.slip.Faults;
import squaresheet.judge.slip.Spoilt;

/** A finding elsewhere catches nothing, one at the fault catches it exactly, and so on. */
class ScoreTest {

  private final Spoilt spoilt = spoilt();
  private final String cell = spoilt.slips().get(0).cells().get(0);

  private static Spoilt spoilt() {
    MadeBook made = Layouts.book("hidden column of factors", 5);
    int kind = Faults.ids().indexOf("UNI-16");
    Faults.Pending pending = Faults.one(made, kind, 5).orElseThrow();
    return pending.calculated(
        Calculator.LIBRARY.calculated(List.of(pending.file())).get(0));
  }

  private Score score(String id, String at, Severity severity, String should, String worth) {
    return Score.of(
        spoilt, List.of(), List.of(new Heard(id, at, severity, should, worth, "")), Mended.NOTHING);
  }

  @Test
  void a_finding_at_a_cell_that_has_nothing_to_do_with_it_catches_nothing() {
    Score score = score("waste-typed-as-percent", "Takeoff!A1", Severity.ERROR, "", "");
    assertThat(score.caught()).isFalse();
    assertThat(score.stray()).isEqualTo(1);
  }

  @Test
  void a_finding_at_what_follows_catches_it_though_not_exactly() {
    Score score = score("stale-value", spoilt.made().total().orElseThrow(), Severity.ERROR, "", "");
    assertThat(score.caught()).isTrue();
    assertThat(score.exact()).isFalse();
    assertThat(score.named()).isFalse();
    assertThat(score.misnamed()).isTrue();
    assertThat(score.stray()).isZero();
  }

  @Test
  void a_note_catches_nothing_that_costs_something() {
    assertThat(score("waste-typed-as-percent", cell, Severity.NOTE, "", "").caught())
        .isFalse();
  }

  @Test
  void the_right_value_and_worth_are_those_of_before() {
    String right = spoilt.slips().get(0).right().get(cell);
    String money =
        String.format(java.util.Locale.ROOT, "%,.2f", spoilt.slips().get(0).money());
    Score score = score(
        "waste-typed-as-percent", cell, Severity.ERROR, right, "Total: " + money + " USD too much");
    assertThat(score.exact()).isTrue();
    assertThat(score.named()).isTrue();
    assertThat(score.rightValue()).isTrue();
    assertThat(score.worth()).isEqualTo(Score.Worth.RIGHT);
    Score other = score(
        "waste-typed-as-percent", cell, Severity.ERROR, "9", "Total: " + money + " USD too little");
    assertThat(other.rightValue()).isFalse();
    assertThat(other.worth()).isEqualTo(Score.Worth.WRONG);
  }
}
