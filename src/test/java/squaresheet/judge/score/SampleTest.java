package squaresheet.judge.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import squaresheet.judge.made.Layouts;

/** A small sample of what the judge runs at length: enough to see that neither the pass nor the judge has gone blind. */
class SampleTest {

  @TempDir
  Path folder;

  @Test
  void most_of_a_few_faults_are_caught_and_plain_workbooks_are_left_in_peace() {
    Judge judge = new Judge(folder);
    for (String layout : List.of("one flat sheet", "planes across", "trapezoids, three tabs")) {
      judge.book(Layouts.book(layout, 2), 6, 2);
    }
    List<Score> known =
        judge.scores().stream().filter(score -> score.slip().identifiable()).toList();
    assertThat(judge.clean()).noneMatch(Judge.Clean::isFlagged);
    assertThat(known).hasSizeGreaterThan(6);
    assertThat(known.stream().filter(Score::caught).count())
        .isGreaterThanOrEqualTo(known.size() / 2);
    assertThat(known.stream().filter(Score::exact).count())
        .isGreaterThanOrEqualTo(known.size() / 2);
    assertThat(Results.table(judge)).contains("other layouts, seen | " + known.size());
  }
}
