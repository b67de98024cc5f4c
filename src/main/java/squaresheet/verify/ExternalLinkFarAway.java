package squaresheet.verify;

import java.util.regex.Pattern;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.finding.Where;

/** Does the workbook link to a file in a folder of somebody's machine? */
final class ExternalLinkFarAway implements Check<Book> {

  private static final CheckInfo INFO = new CheckInfo(
      "external-link-far-away", Severity.WARNING, "A linked workbook lies on another machine");

  private static final Pattern ABSOLUTE = Pattern.compile(
      "(file:/+)?([A-Za-z]:[\\\\/]|\\\\\\\\|/(Users|home)/).*", Pattern.CASE_INSENSITIVE);

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Book book) {
    return book.workbook().externalLinks().stream()
        .filter(link -> ABSOLUTE.matcher(link).matches())
        .map(link -> new Finding(
            INFO,
            new Where.InFile(book.file()),
            link,
            "",
            "links to '" + link
                + "', which cannot be refreshed elsewhere; keep the linked file beside this one, or"
                + " bring its values in",
            ""));
  }
}
