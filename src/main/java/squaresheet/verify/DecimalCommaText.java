package squaresheet.verify;

import java.util.regex.Pattern;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Fix;
import squaresheet.finding.Severity;
import squaresheet.sheet.Content;

/** Is a number with a decimal comma kept as text among numbers? */
final class DecimalCommaText implements Check<TypedCell> {

  private static final CheckInfo INFO = new CheckInfo(
      "decimal-comma-text", Severity.WARNING, "A decimal comma made a number into text");

  private static final Pattern COMMA = Pattern.compile("[-+]?\\d+,\\d{1,2}|[-+]?\\d+,\\d{4,}");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(TypedCell cell) {
    boolean comma = cell.cell().stored() instanceof Content.Text
        && COMMA.matcher(cell.text()).matches();
    return comma && TextInNumbers.isAmong(cell) ? Stream.of(says(cell)) : Stream.empty();
  }

  private static Finding says(TypedCell cell) {
    String point = cell.text().replace(',', '.');
    String says = "is the text '" + cell.text()
        + "', which this workbook does not take as a number; it must be " + point;
    return Says.about(INFO, cell.book(), cell.at(), point, says)
        .with(Fix.number(cell.at(), Double.parseDouble(point)));
  }
}
