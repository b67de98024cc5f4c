package squaresheet.finding;

import java.util.regex.Pattern;

/**
 * The card of a check or of a reader's complaint.
 *
 * @param id two to six lower-case words joined by hyphens; for ever
 * @param severity how much its findings weigh
 * @param title one line, no final period
 */
public record CheckInfo(String id, Severity severity, String title) {

  private static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+){1,5}");

  public CheckInfo {
    if (!ID.matcher(id).matches()) {
      throw new IllegalArgumentException(
          "a check's id must be two to six lower-case words, but is '" + id + "'");
    }
  }
}
