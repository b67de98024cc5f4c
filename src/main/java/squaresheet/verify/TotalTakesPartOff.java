package squaresheet.verify;

import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Node;

/** Does a total take off what is to be added: labor, material, tax or a markup? */
final class TotalTakesPartOff implements Check<FormulaCell> {

  private static final CheckInfo INFO = new CheckInfo(
      "total-takes-part-off", Severity.WARNING, "A total takes off what should be added");

  private static final Pattern ADDED = Pattern.compile(
      "(?<!\\p{L})(labou?r|materials?|tax|vat|gst|mark-?up|overhead|profit)(?!\\p{L})",
      Pattern.CASE_INSENSITIVE);
  private static final Pattern LESS = Pattern.compile(
      "(?<!\\p{L})(before|without|less|excl|excluding|balance|rest|remaining|due|margin|difference|change|profit|"
          + "exempt|saving|savings)(?!\\p{L})",
      Pattern.CASE_INSENSITIVE);

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(FormulaCell cell) {
    boolean total = Words.isTotal(cell.label())
        && !LESS.matcher(cell.label()).find()
        && !Words.saysCredit(cell.label());
    return total && cell.tree() instanceof Node.Binary binary
        ? why(cell, binary).stream()
            .map(why -> Says.about(INFO, cell.book(), cell.at(), "is " + cell.shown() + why))
        : Stream.empty();
  }

  private static Optional<String> why(FormulaCell cell, Node.Binary binary) {
    return switch (binary.operator()) {
      case MINUS ->
        RateWords.cell(cell, binary.right())
            .filter(at -> isAdded(RateWords.label(cell.book(), at)))
            .filter(at -> cell.book().number(at).orElse(0) > 0)
            .map(at -> ", which takes off '" + RateWords.label(cell.book(), at) + "' at " + at
                + "; it belongs into the total");
      case TIMES -> share(cell, binary);
      default -> Optional.empty();
    };
  }

  private static boolean isAdded(String label) {
    return ADDED.matcher(label).find()
        && !Words.saysCredit(label)
        && !LESS.matcher(label).find();
  }

  /** An amount times a markup alone, or times one less the markup. */
  private static Optional<String> share(FormulaCell cell, Node.Binary times) {
    Optional<String> alone = RateWords.rate(cell, times.right())
        .filter(rate -> !RateWords.saysTax(RateWords.label(cell.book(), rate)))
        .map(rate -> ", which is the share '" + RateWords.label(cell.book(), rate)
            + "' alone, without the amount that it is put on");
    return alone.or(() -> times.right() instanceof Node.Binary less
            && less.operator() == Node.Operator.MINUS
            && AmountParts.isOneAnd(less)
        ? RateWords.rate(cell, less.right())
            .map(rate -> ", which takes '" + RateWords.label(cell.book(), rate) + "' at " + rate
                + " off instead of putting it on")
        : Optional.empty());
  }
}
