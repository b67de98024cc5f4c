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
  private int put;
  private int told;
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
    Clean first = new Clean(made, Verdicts.of(made.file(), folder));
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
    List<Score> alone = new ArrayList<>();
    for (int i = 0; i < files.size(); i++) {
      Spoilt spoilt = pending.get(i).calculated(files.get(i));
      List<Heard> heard = Verdicts.of(spoilt.file(), folder);
      alone.add(Score.of(spoilt, first.heard(), heard));
      record(
          made,
          spoilt.slips().get(0).id() + " at " + spoilt.slips().get(0).cells().get(0),
          heard);
    }
    scores.addAll(alone);
    together(made, alone, seed, 2);
    together(made, alone, seed, 5);
  }

  /** Puts several of the faults that were told at their cells alone into one workbook, and counts those that still are. */
  private void together(MadeBook made, List<Score> alone, long seed, int count) {
    List<Integer> kinds = alone.stream()
        .filter(score -> score.exact() && !score.slip().harmless())
        .map(score -> Faults.kind(score.slip()))
        .limit(count)
        .toList();
    if (made.own() || kinds.size() < count) {
      return;
    }
    Faults.several(made, kinds, seed).ifPresent(pending -> {
      byte[] file = Calculator.LIBRARY.calculated(List.of(pending.file())).get(0);
      List<Heard> heard = Verdicts.of(file, folder);
      pending.slips().forEach(slip -> {
        put++;
        told += heard.stream().anyMatch(each -> slip.cells().contains(each.cell())) ? 1 : 0;
      });
    });
  }

  /** How many of the faults put in together are still told at their cells. */
  Share kept() {
    return new Share(told, put);
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
