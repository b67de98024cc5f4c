package squaresheet.judge.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import squaresheet.finding.Severity;

class TranscriptTest {

  private static Heard heard(String id, String cell, Severity severity, String should) {
    return new Heard(id, cell, severity, should, "", "");
  }

  private static String of(List<Heard> heard) {
    Transcript transcript = new Transcript();
    transcript.add("flat, 1", "none", List.of());
    transcript.add("flat, 1", "MEC-01 typed over", heard);
    return transcript.text("1 workbooks a layout, 1 faults a workbook, 0 own workbooks");
  }

  @Test
  void a_finding_that_is_gone_new_or_other_than_before_is_told() {
    String kept = of(List.of(
        heard("typed-over-formula", "Roof!C5", Severity.ERROR, "480"),
        heard("error-value", "Roof!C6", Severity.ERROR, ""),
        heard("pitch-blank", "Roof!C7", Severity.NOTE, "")));
    String now = of(List.of(
        heard("typed-over-formula", "Roof!C5", Severity.WARNING, "480"),
        heard("error-value", "Roof!C9", Severity.ERROR, "")));
    assertThat(Transcript.difference(kept, now)).isEqualTo("""
        lost     flat, 1|MEC-01 typed over|error-value|Roof!C6|ERROR|
        changed  flat, 1|MEC-01 typed over|typed-over-formula|Roof!C5|ERROR|480
             to  flat, 1|MEC-01 typed over|typed-over-formula|Roof!C5|WARNING|480
        new      flat, 1|MEC-01 typed over|error-value|Roof!C9|ERROR|
        1 lost, 1 new, 1 changed, of 2 findings on 2 workbooks
        """);
  }

  @Test
  void the_same_twice_makes_no_difference() {
    String kept = of(List.of(heard("error-value", "Roof!C6", Severity.ERROR, "")));
    assertThat(Transcript.difference(kept, kept))
        .isEqualTo("0 lost, 0 new, 0 changed, of 1 findings on 2 workbooks\n");
  }
}
