package squaresheet.verify;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Node;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;

/** Does a conditional sum leave out a row whose flag says yes in another word? */
final class FlagSpelledOtherwise implements Check<FormulaCell> {

  private static final CheckInfo INFO = new CheckInfo(
      "flag-spelled-otherwise",
      Severity.WARNING,
      "A flag is spelled otherwise than the formula asks");

  private static final List<List<String>> ALIKE = List.of(
      List.of("y", "yes", "yes.", "ye", "x", "true", "incl", "included"),
      List.of("n", "no", "no.", "false", "excl", "excluded"));

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(FormulaCell cell) {
    return Keys.asked(cell).flatMap(key -> odd(cell, key)).limit(1);
  }

  private static Stream<Finding> odd(FormulaCell cell, Keys key) {
    return family(key.key()).stream()
        .flatMap(family ->
            key.list().each().filter(at -> isOdd(cell.book().value(at), key.key(), family)))
        .filter(at -> !isAskedFor(cell.book(), Shown.of(cell.book().value(at))))
        .limit(1)
        .map(at -> says(cell, key.key(), at));
  }

  private static Optional<List<String>> family(String key) {
    return ALIKE.stream().filter(words -> words.contains(lower(key))).findFirst();
  }

  private static boolean isOdd(Value value, String key, List<String> family) {
    String flag = value instanceof Value.Text text
        ? text.value()
        : value instanceof Value.Truth truth ? String.valueOf(truth.value()) : "";
    return !lower(flag).equals(lower(key)) && family.contains(lower(flag));
  }

  /** Whether some formula asks for that word too. */
  private static boolean isAskedFor(Book book, String shown) {
    String word = lower(shown.replace("'", ""));
    return book.formulas().values().stream()
        .anyMatch(formula -> Nodes.all(formula.tree(), Node.Text.class)
            .anyMatch(text -> lower(text.value()).equals(word)));
  }

  private static String lower(String text) {
    return text.replace('\u00A0', ' ').strip().toLowerCase(Locale.ROOT);
  }

  private static Finding says(FormulaCell cell, String key, Address at) {
    String says = "is " + Shown.of(cell.book().value(at)) + ", but the formula at " + cell.at()
        + " takes in rows with '" + key + "' only, so this row is left out of it";
    return Says.about(INFO, cell.book(), at, "'" + key + "'", says);
  }
}
