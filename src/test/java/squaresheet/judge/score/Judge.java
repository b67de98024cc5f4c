package squaresheet.judge.score;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import squaresheet.judge.made.Calculator;
import squaresheet.judge.made.MadeBook;
import squaresheet.judge.slip.Faults;
import squaresheet.judge.slip.Spoilt;

/** Runs the verify pass over made workbooks, clean and with faults, and scores what it says. */
final class Judge {

  private final Path folder;
  private final List<Score> scores = new ArrayList<>();
  private final List<Clean> clean = new ArrayList<>();
  private final StringBuilder record =
      new StringBuilder("workbook|fault|check|cell|severity|should be\n");

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
    Clean first = new Clean(made, Verdicts.of(made, made.file(), folder));
    clean.add(first);
    record(made, "none", first.heard());
    Random random = new Random(seed * 31 + made.layout().hashCode());
    List<Faults.Pending> pending = random
        .ints(0, Faults.kinds())
        .distinct()
        .limit(Faults.kinds())
        .mapToObj(kind -> Faults.one(made, kind, seed))
        .flatMap(Optional::stream)
        .limit(faults)
        .toList();
    Calculator calculator = made.own() ? Calculator.office(folder) : Calculator.LIBRARY;
    List<byte[]> files =
        calculator.calculated(pending.stream().map(Faults.Pending::file).toList());
    for (int i = 0; i < files.size(); i++) {
      Spoilt spoilt = pending.get(i).calculated(files.get(i));
      List<Heard> heard = Verdicts.of(made, spoilt.file(), folder);
      scores.add(Score.of(spoilt, first.heard(), heard));
      record(
          made,
          spoilt.slips().get(0).id() + " at " + spoilt.slips().get(0).cells().get(0),
          heard);
    }
  }

  /** Every finding but notes, a line each, to be compared with those of another build. */
  String record() {
    return record.toString();
  }

  private void record(MadeBook made, String fault, List<Heard> heard) {
    heard.stream()
        .filter(Heard::isLoud)
        .map(each -> String.join(
            "|", made.name(), fault, each.id(), each.cell(), each.severity().name(), each.should()))
        .sorted()
        .forEach(line -> record.append(line).append('\n'));
  }

  Path folder() {
    return folder;
  }

  List<Score> scores() {
    return scores;
  }

  List<Clean> clean() {
    return clean;
  }
}
