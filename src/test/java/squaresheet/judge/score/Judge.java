package squaresheet.judge.score;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import squaresheet.finding.Severity;
import squaresheet.judge.made.Calculator;
import squaresheet.judge.made.MadeBook;
import squaresheet.judge.slip.Faults;
import squaresheet.judge.slip.Spoilt;

/** Runs the verify pass over made workbooks, clean and with faults, and scores what it says. */
final class Judge {

  private final Path folder;
  private final boolean scoring;
  private final List<Score> scores = new ArrayList<>();
  private final List<Clean> clean = new ArrayList<>();
  private final Transcript record = new Transcript();
  private int put;
  private int told;

  /** A judge that scores; it works in a folder. */
  Judge(Path folder) {
    this(folder, true);
  }

  /** A judge that scores, or one that only writes down what is said. */
  Judge(Path folder, boolean scoring) {
    this.folder = folder;
    this.scoring = scoring;
  }

  /**
   * A workbook in order.
   *
   * @param book the workbook
   * @param heard what was said of it
   * @param mended what correct made of it
   */
  record Clean(MadeBook book, List<Heard> heard, Mended mended) {

    boolean isFlagged() {
      return heard.stream().anyMatch(Heard::isLoud);
    }

    boolean hasError() {
      return heard.stream().anyMatch(each -> each.severity() == Severity.ERROR);
    }
  }

  /** Verifies a clean workbook, then so many copies of it with one fault each. */
  void book(MadeBook made, int faults, long seed) {
    book(made, faults, seed, id -> true);
  }

  /** The same with faults of some ids only. */
  void book(MadeBook made, int faults, long seed, Predicate<String> ids) {
    Verdicts verdicts = Verdicts.of(made.file(), folder);
    Clean first = new Clean(
        made,
        verdicts.heard(),
        scoring ? verdicts.mended(List.of(), Faults.shown(made)) : Mended.NOTHING);
    clean.add(first);
    record.add(made.name(), "none", first.heard());
    List<Faults.Pending> pending = Faults.order(made.name(), seed).stream()
        .filter(kind -> ids.test(Faults.ids().get(kind)))
        .map(kind -> Faults.one(made, kind, seed))
        .flatMap(Optional::stream)
        .limit(faults)
        .toList();
    Calculator calculator = made.own() ? Calculator.office(folder) : Calculator.LIBRARY;
    List<byte[]> files = pending.isEmpty()
        ? List.of()
        : calculator.calculated(pending.stream().map(Faults.Pending::file).toList());
    List<Score> alone = new ArrayList<>();
    for (int i = 0; i < files.size(); i++) {
      alone.add(spoilt(pending.get(i).calculated(files.get(i)), first));
    }
    scores.addAll(alone);
    if (scoring) {
      together(made, alone, seed, 2);
      together(made, alone, seed, 5);
    }
  }

  private Score spoilt(Spoilt spoilt, Clean first) {
    Verdicts verdicts = Verdicts.of(spoilt.file(), folder);
    record.add(
        spoilt.made().name(),
        spoilt.slips().get(0).id() + " " + spoilt.slips().get(0).name(),
        verdicts.heard());
    return Score.of(
        spoilt,
        first.heard(),
        verdicts.heard(),
        scoring ? verdicts.mended(spoilt.slips(), spoilt.shown()) : Mended.NOTHING);
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
      List<Heard> heard = Verdicts.of(pending.calculated(file).file(), folder).heard();
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

  /** What was said of every workbook. */
  Transcript record() {
    return record;
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
