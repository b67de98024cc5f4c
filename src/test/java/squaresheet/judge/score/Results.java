package squaresheet.judge.score;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** The tables of what the judge found, as text. */
final class Results {

  private static final String HEAD = """
      | %s | faults | caught | exact cell | slip named | named wrongly | right value | worth right | worth wrong | findings a fault | precision | mended by correct |
      |---|---|---|---|---|---|---|---|---|---|---|---|
      """;
  private static final String PEACE = """
      | | clean books flagged | with an error | look-alikes flagged | books harmed by correct |
      |---|---|---|---|---|
      """;
  private static final Map<String, String> CLASSES = Map.of(
      "MEC", "mechanical",
      "FRM", "formula",
      "UNI", "unit",
      "LOG", "logic",
      "DOM", "roof",
      "DAT", "data entry",
      "STL", "stale",
      "ACC", "money",
      "ITG", "file and sheets");

  private Results() {}

  /** All tables. */
  static String table(Judge judge) {
    List<Score> faults =
        judge.scores().stream().filter(score -> !score.slip().harmless()).toList();
    StringBuilder text = new StringBuilder(String.format(HEAD, "identifiable faults"));
    halves(faults).forEach((half, scores) -> text.append(row(half, scores)));
    text.append("\n").append(PEACE);
    halves(judge.scores()).forEach((half, scores) -> text.append(peace(half, judge, scores)));
    text.append("\nFaults that nothing in the workbook contradicts: ")
        .append(
            share(faults.stream().filter(it -> !it.slip().identifiable()).toList(), Score::caught))
        .append(" caught all the same.\n");
    text.append("\nSeveral at once: of the faults that are told at their cells alone, ")
        .append(judge.kept())
        .append(" are told there too when two or five stand in one workbook.\n");
    section(text, "class of fault", faults, Results::kind);
    section(text, "layout", faults, Results::layout);
    section(
        text, "fault", faults, score -> score.slip().id() + " " + score.slip().name());
    return text.append(lookAlikes(judge)).toString();
  }

  /** The kinds that were missed at least once in the unseen half, with how often. */
  static String missed(Judge judge) {
    StringBuilder text = new StringBuilder("\nMissed in the unseen half:\n\n");
    by(
            judge.scores().stream()
                .filter(score -> score.unseen() && score.slip().identifiable() && !score.caught())
                .toList(),
            score -> score.slip().id() + " " + score.slip().name())
        .forEach((name, scores) -> text.append("- ")
            .append(name)
            .append(": ")
            .append(scores.stream()
                .map(score -> score.layout() + " at " + place(score))
                .collect(Collectors.joining("; ")))
            .append('\n'));
    return text.toString();
  }

  private static String place(Score score) {
    String cell = score.slip().cells().get(0);
    return cell.isEmpty() ? "the workbook as a whole" : cell;
  }

  private static String layout(Score score) {
    return (score.unseen() ? "unseen: " : "seen: ") + score.layout();
  }

  private static String kind(Score score) {
    String family = score.slip().id().substring(0, 3);
    return CLASSES.getOrDefault(family, "slip of the fingers")
        + (score.unseen() ? ", unseen" : ", seen");
  }

  private static Map<String, List<Score>> halves(List<Score> scores) {
    return by(
        scores,
        score -> (score.own() ? "our own layout" : "other layouts")
            + (score.unseen() ? ", unseen" : ", seen"));
  }

  private static Map<String, List<Score>> by(List<Score> scores, Function<Score, String> key) {
    return scores.stream().collect(Collectors.groupingBy(key, TreeMap::new, Collectors.toList()));
  }

  private static void section(
      StringBuilder text, String name, List<Score> faults, Function<Score, String> key) {
    text.append("\n").append(String.format(HEAD, "by " + name));
    by(faults, key).forEach((each, scores) -> text.append(row(each, scores)));
  }

  /** Precision is of all faults, the rest of the identifiable ones. */
  private static String row(String name, List<Score> all) {
    List<Score> scores =
        all.stream().filter(score -> score.slip().identifiable()).toList();
    List<Score> caught = scores.stream().filter(Score::caught).toList();
    List<Score> valued = scores.stream().filter(Score::valued).toList();
    List<Score> worth =
        caught.stream().filter(score -> score.worth() != Score.Worth.NOTHING).toList();
    long said = all.stream().mapToInt(Score::findings).sum();
    long astray = all.stream().mapToInt(Score::stray).sum();
    return String.format(
        Locale.ROOT,
        "| %s | %d | %s | %s | %s | %s | %s | %s | %s | %.1f | %s | %s |\n",
        name,
        scores.size(),
        share(scores, Score::caught),
        share(scores, Score::exact),
        share(caught, Score::named),
        share(caught, Score::misnamed),
        share(valued, Score::rightValue),
        share(worth, score -> score.worth() == Score.Worth.RIGHT),
        share(worth, score -> score.worth() == Score.Worth.WRONG),
        caught.stream().mapToInt(Score::findings).average().orElse(0),
        new Share(said - astray, said),
        share(scores, score -> score.mended().mended()));
  }

  private static String peace(String name, Judge judge, List<Score> scores) {
    List<Judge.Clean> clean = judge.clean().stream()
        .filter(it -> it.book().own() == scores.get(0).own()
            && it.book().unseen() == scores.get(0).unseen())
        .toList();
    List<Score> alike = scores.stream().filter(score -> score.slip().harmless()).toList();
    long harmed = clean.stream().filter(it -> it.mended().harms() > 0).count()
        + scores.stream().filter(it -> it.mended().harms() > 0).count();
    return String.format(
        "| %s | %s | %s | %s | %s |\n",
        name,
        new Share(clean.stream().filter(Judge.Clean::isFlagged).count(), clean.size()),
        new Share(clean.stream().filter(Judge.Clean::hasError).count(), clean.size()),
        share(alike, Score::caught),
        new Share(harmed, clean.size() + scores.size()));
  }

  private static String lookAlikes(Judge judge) {
    StringBuilder text = new StringBuilder(
        "\n| honest edits and look-alikes | flagged | harmed by correct |\n|---|---|---|\n");
    by(
            judge.scores().stream().filter(score -> score.slip().harmless()).toList(),
            score -> score.slip().id() + " " + score.slip().name())
        .forEach((name, scores) -> text.append("| ")
            .append(name)
            .append(" | ")
            .append(share(scores, Score::caught))
            .append(" | ")
            .append(share(scores, score -> score.mended().harms() > 0))
            .append(" |\n"));
    return text.toString();
  }

  private static Share share(List<Score> scores, Predicate<Score> hit) {
    return new Share(scores.stream().filter(hit).count(), scores.size());
  }
}
