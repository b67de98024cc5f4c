package squaresheet.verify;

import java.util.regex.Pattern;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.sheet.Content;

/** Is a number kept as text where formulas add or compute? */
final class NumberStoredAsText implements Check<TypedCell> {

  private static final CheckInfo INFO =
      new CheckInfo("number-stored-as-text", Severity.WARNING, "A number is stored as text");

  private static final Pattern NUMBER = Pattern.compile("[-+]?(\\d+|\\d{1,3}(,\\d{3})+)(\\.\\d+)?");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(TypedCell cell) {
    boolean number = cell.cell().stored() instanceof Content.Text text
        && NUMBER.matcher(text.value().replace('\u00A0', ' ').strip()).matches();
    return number && TextInNumbers.isAmong(cell) ? Stream.of(says(cell)) : Stream.empty();
  }

  private static Finding says(TypedCell cell) {
    String bare = cell.text().replace(",", "");
    String says =
        "is the text '" + cell.text() + "', not a number: SUM leaves it out while other formulas"
            + " compute with it; type the number again in a cell with a number format";
    return Says.about(INFO, cell.book(), cell.at(), bare, says).with(TextInNumbers.put(cell, bare));
  }
}
