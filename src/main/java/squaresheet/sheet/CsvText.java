package squaresheet.sheet;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.regex.Pattern;

/** The one place where a csv file is written: its texts are safe for someone who opens it in a spreadsheet program. */
final class CsvText {

  private static final Pattern NUMBER = Pattern.compile("[-+]?\\d+(\\.\\d+)?%?");
  /** First characters that a program may take for the start of a formula or a command. */
  private static final String STARTS = "=+-@\t\r\n|\uFF1D\uFF0B\uFF0D\uFF20";
  /** A program that takes another sign between values may begin a cell within the text. */
  private static final Pattern WITHIN =
      Pattern.compile("([;\t\r\n][ \"]*)(?=[=+\\-@|\uFF1D\uFF0B\uFF0D\uFF20])");

  private CsvText() {}

  /** A table as the text of a csv file, comments before it, every text of it safe. */
  static String write(List<String> comments, List<List<String>> rows) {
    StringWriter text = new StringWriter();
    try (CsvWriter csv = CsvWriter.builder().build(text)) {
      comments.forEach(comment -> csv.writeComment(" " + FileText.legible(comment)));
      rows.forEach(row ->
          csv.writeRecord(row.stream().map(FileText::legible).map(CsvText::safe).toList()));
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return text.toString();
  }

  /** The text, with an apostrophe before it where a program would run it as a formula; plain numbers are left alone. */
  static String safe(String text) {
    String seen = text.stripLeading();
    boolean starts = startsFormula(text) || startsFormula(seen);
    String whole = starts && !NUMBER.matcher(text).matches() ? "'" + text : text;
    return WITHIN.matcher(whole).replaceAll("$1'");
  }

  private static boolean startsFormula(String text) {
    return !text.isEmpty() && STARTS.indexOf(text.charAt(0)) >= 0;
  }
}
