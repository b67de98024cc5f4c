package squaresheet.judge.score;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import squaresheet.judge.made.MadeBook;
import squaresheet.judge.slip.Faults;
import squaresheet.judge.slip.Spoilt;

/** Runs the verify pass over made workbooks, clean and with faults, and scores what it says. */
final class Judge {

  private final Path folder;
  private final List<Score> scores = new ArrayList<>();
  private final List<Clean> clean = new ArrayList<>();

  Judge(Path folder) {
    this.folder = folder;
  }

  /**
   * A workbook in order.
   *
   * @param book the workbook
   * @param heard what was said of it
   */
  record Clean(MadeBook book, List<Heard> heard) {

    boolean isFlagged() {
      return heard.stream().anyMatch(Heard::isLoud);
    }

    boolean hasError() {
      return heard.stream().anyMatch(each -> each.severity() == squaresheet.finding.Severity.ERROR);
    }
  }

  /** Verifies a clean workbook, then so many copies of it with one fault each. */
  void book(MadeBook made, int faults, long seed) {
    Clean first = new Clean(made, Verdicts.of(made.file(), folder));
    clean.add(first);
    Random random = new Random(seed * 31 + made.layout().hashCode());
    int[] kinds =
        random.ints(0, Faults.kinds()).distinct().limit(Faults.kinds()).toArray();
    IntStream.of(kinds)
        .mapToObj(kind -> Faults.one(made, kind, seed))
        .flatMap(Optional::stream)
        .limit(faults)
        .forEach(spoilt -> score(spoilt, first));
  }

  private void score(Spoilt spoilt, Clean first) {
    scores.add(Score.of(spoilt, first.heard(), Verdicts.of(spoilt.file(), folder)));
  }

  List<Score> scores() {
    return scores;
  }

  List<Clean> clean() {
    return clean;
  }
}
