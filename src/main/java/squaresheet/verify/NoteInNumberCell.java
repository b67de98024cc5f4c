package squaresheet.verify;

import java.util.regex.Pattern;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;

/** Does a word stand beside a number in a cell that formulas compute with? */
final class NoteInNumberCell implements Check<TypedCell> {

  private static final CheckInfo INFO = new CheckInfo(
      "note-in-number-cell", Severity.WARNING, "A note stands in a cell for a number");

  private static final Pattern NOTED = Pattern.compile(
      "(approx\\.?|about|abt\\.?|ca\\.?|~|\\$)? ?[-+]?\\d[\\d.,]* ?(ft|feet|lf|sf|sq ?ft|sq|sqs|squares?|in|inches|m|m2|m²|sqm|sq ?m|mm|cm|pcs?|ea|each|bundles?|rolls?|\\?)?\\.?",
      Pattern.CASE_INSENSITIVE);

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(TypedCell cell) {
    String text = cell.text();
    boolean noted = NOTED.matcher(text).matches() && !text.matches("[-+]?[\\d.,]+");
    return noted && TextInNumbers.isAmong(cell) ? Stream.of(says(cell)) : Stream.empty();
  }

  private static Finding says(TypedCell cell) {
    String number =
        cell.text().replaceAll("^[^\\d+-]*|(?<=\\d) ?[^\\d.,].*$|,", "").replaceAll("\\.$", "");
    String says =
        "is the text '" + cell.text() + "', not a number: SUM leaves it out and other formulas"
            + " fail; type the number alone and keep the word for the heading or a note";
    return Says.about(INFO, cell.book(), cell.at(), number, says)
        .with(TextInNumbers.put(cell, number));
  }
}
