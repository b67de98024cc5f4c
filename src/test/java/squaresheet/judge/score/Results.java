package squaresheet.judge.score;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** The table of what the judge found, as text. */
final class Results {

  private static final String HEAD = """
      | | faults | caught | exact cell | right value | worth right | findings a fault | astray | clean books flagged | with an error |
      |---|---|---|---|---|---|---|---|---|---|
      """;

  private Results() {}

  /** The table of both halves, by owner, then by layout, then by kind of fault. */
  static String table(Judge judge) {
    StringBuilder text = new StringBuilder(HEAD);
    for (boolean own : new boolean[] {true, false}) {
      for (boolean unseen : new boolean[] {false, true}) {
        String name = (own ? "own layout" : "other layouts") + (unseen ? ", unseen" : ", seen");
        text.append(row(
            name,
            judge,
            score -> score.own() == own && score.unseen() == unseen,
            clean -> clean.book().own() == own && clean.book().unseen() == unseen));
      }
    }
    text.append(
        "\nBy kind of fault, identifiable ones only:\n\n| | caught | exact cell | right value |\n|---|---|---|---|\n");
    by(judge, score -> score.slip().id()).forEach((id, scores) -> text.append("| ")
        .append(id)
        .append(" ")
        .append(scores.get(0).slip().name())
        .append(" | ")
        .append(share(scores, Score::caught))
        .append(" | ")
        .append(share(scores, Score::exact))
        .append(" | ")
        .append(share(valued(scores), Score::rightValue))
        .append(" |\n"));
    text.append(
        "\nHonest edits and look-alikes, of which nothing should be said:\n\n| | flagged |\n|---|---|\n");
    judge.scores().stream()
        .filter(score -> score.slip().harmless())
        .collect(Collectors.groupingBy(
            score -> score.slip().id() + " " + score.slip().name(),
            TreeMap::new,
            Collectors.toList()))
        .forEach((name, scores) -> text.append("| ")
            .append(name)
            .append(" | ")
            .append(share(scores, Score::caught))
            .append(" |\n"));
    text.append("\nSeveral at once: of the faults that are told at their cells alone, ")
        .append(judge.kept())
        .append(" are told there too when two or five stand in one workbook.\n");
    text.append(
        "\nBy layout:\n\n| | caught | exact cell | clean books flagged |\n|---|---|---|---|\n");
    by(judge, Score::layout).forEach((layout, scores) -> text.append("| ")
        .append(layout)
        .append(" | ")
        .append(share(scores, Score::caught))
        .append(" | ")
        .append(share(scores, Score::exact))
        .append(" | ")
        .append(
            flagged(judge, clean -> clean.book().layout().equals(layout), Judge.Clean::isFlagged))
        .append(" |\n"));
    return text.toString();
  }

  private static Map<String, List<Score>> by(Judge judge, Function<Score, String> key) {
    return judge.scores().stream()
        .filter(score -> score.slip().identifiable())
        .collect(Collectors.groupingBy(key, TreeMap::new, Collectors.toList()));
  }

  private static String row(
      String name, Judge judge, Predicate<Score> half, Predicate<Judge.Clean> cleanHalf) {
    List<Score> scores = judge.scores().stream()
        .filter(half)
        .filter(score -> score.slip().identifiable())
        .toList();
    List<Score> caught = scores.stream().filter(Score::caught).toList();
    double each = caught.stream().mapToInt(Score::findings).average().orElse(0);
    long said = caught.stream().mapToInt(Score::findings).sum();
    long astray = caught.stream().mapToInt(Score::stray).sum();
    return String.format(
        Locale.ROOT,
        "| %s | %d | %s | %s | %s | %s | %.1f | %s | %s | %s |\n",
        name,
        scores.size(),
        share(scores, Score::caught),
        share(scores, Score::exact),
        share(valued(scores), Score::rightValue),
        share(caught, Score::rightWorth),
        each,
        new Share(astray, said),
        flagged(judge, cleanHalf, Judge.Clean::isFlagged),
        flagged(judge, cleanHalf, Judge.Clean::hasError));
  }

  private static List<Score> valued(List<Score> scores) {
    return scores.stream().filter(Score::valued).toList();
  }

  private static Share share(List<Score> scores, Predicate<Score> hit) {
    return new Share(scores.stream().filter(hit).count(), scores.size());
  }

  private static Share flagged(
      Judge judge, Predicate<Judge.Clean> half, Predicate<Judge.Clean> how) {
    List<Judge.Clean> books = judge.clean().stream().filter(half).toList();
    return new Share(books.stream().filter(how).count(), books.size());
  }
}
