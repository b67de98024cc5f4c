package squaresheet.binding;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import squaresheet.finding.Finding;
import squaresheet.finding.Where;
import squaresheet.sheet.Workbook;

/**
 * The formats in which job workbooks and bindings are kept, each a whole number that grows when a reader of before would read
 * something wrong. It stands in the document's properties, which other programs keep.
 */
final class Format {

  /** The property of a job workbook. */
  static final String JOB = "Squaresheet job workbook";
  /** The property of a workbook that a binding was kept in; it stays when the hidden sheet is deleted. */
  static final String BINDING = "Squaresheet binding";

  private static final int KNOWN = 1;
  private static final Pattern NUMBER = Pattern.compile("format (\\d{1,9})");

  private Format() {}

  /** What is written. */
  static String current() {
    return "format " + KNOWN;
  }

  /** What there is to say of a workbook whose property names a newer format; a workbook without one is as old as any. */
  static Optional<Finding> newer(Workbook book, String property, Where where) {
    return newer(book.properties().getOrDefault(property, ""), where);
  }

  /** The same of a text that says {@code format 2}. */
  static Optional<Finding> newer(String text, Where where) {
    Matcher number = NUMBER.matcher(text);
    return number.find() && Integer.parseInt(number.group(1)) > KNOWN
        ? Optional.of(Complaint.FORMAT_NEWER.at(
            where,
            "the format must be " + KNOWN + " or older to be read for certain, but is "
                + number.group(1) + ", of a newer version of this program; what is known of it is"
                + " read, and no totals are given, because something may be missing"))
        : Optional.empty();
  }
}
