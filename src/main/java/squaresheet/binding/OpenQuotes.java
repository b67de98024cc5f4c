package squaresheet.binding;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Quotation marks in a text of separated values that open a cell and are not closed on its line, so that rows would vanish into
 * one cell. Such a mark is taken out, and every line stays a row. A cell of several lines that is quoted rightly is left alone.
 */
final class OpenQuotes {

  private static final char QUOTE = '"';
  /** A line within a cell that parts so many values is rather a row. */
  private static final int SEPARATORS_OF_A_ROW = 2;

  private final String text;
  private final char separator;
  private final long usual;
  private final StringBuilder kept = new StringBuilder();
  private final List<Long> lines = new ArrayList<>();

  OpenQuotes(String text, char separator) {
    this.text = text;
    this.separator = separator;
    usual = usual();
    long line = 1;
    boolean starts = true;
    for (int at = 0; at < text.length(); at++) {
      char here = text.charAt(at);
      int end = starts && here == QUOTE ? end(at) : at;
      if (end < 0) {
        lines.add(line);
        starts = false;
        continue;
      }
      String whole = text.substring(at, end + 1);
      kept.append(whole);
      line += whole.chars().filter(it -> it == '\n').count();
      starts =
          text.charAt(end) == separator || text.charAt(end) == '\n' || text.charAt(end) == '\r';
      at = end;
    }
  }

  /** The text without them. */
  String text() {
    return kept.toString();
  }

  /** The lines on which they stand, 1 and up. */
  List<Long> lines() {
    return lines;
  }

  /** The place of the mark that closes a cell, or -1 where none does. */
  private int end(int start) {
    int at = start + 1;
    while (at < text.length()) {
      if (text.charAt(at) == QUOTE) {
        boolean doubled = at + 1 < text.length() && text.charAt(at + 1) == QUOTE;
        if (!doubled) {
          return isACell(start, at) ? at : -1;
        }
        at++;
      }
      at++;
    }
    return -1;
  }

  private boolean isACell(int start, int end) {
    boolean ends = end + 1 == text.length()
        || "\r\n".indexOf(text.charAt(end + 1)) >= 0
        || text.charAt(end + 1) == separator;
    String cell = text.substring(start + 1, end);
    boolean rows = cell.lines().skip(1).anyMatch(line -> separators(line) >= SEPARATORS_OF_A_ROW);
    return ends && (!rows || isOfUsualWidth(start, end));
  }

  /** Whether the line the cell begins on, the cell left out, and the line it ends on part as many values as lines do. */
  private boolean isOfUsualWidth(int start, int end) {
    int from = text.lastIndexOf('\n', start) + 1;
    int to = text.indexOf('\n', end);
    String after = text.substring(end + 1, to < 0 ? text.length() : to);
    return separators(text.substring(from, start)) + separators(after) == usual;
  }

  private long separators(String line) {
    return line.chars().filter(it -> it == separator).count();
  }

  /** How many separators most lines have. */
  private long usual() {
    return text
        .lines()
        .map(this::separators)
        .filter(count -> count > 0)
        .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()))
        .entrySet()
        .stream()
        .max(Map.Entry.comparingByValue())
        .map(Map.Entry::getKey)
        .orElse(0L);
  }
}
