package squaresheet.finding;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * A text table: a heading line and lines under it, commas between the values; lines that begin with # are left out. What is
 * wrong with one is said in words of our own.
 *
 * @param headings the values of the first line
 * @param lines the lines under it with as many values as there are headings
 */
public record TextTable(List<String> headings, List<Line> lines) {

  private static final String MARK = "\uFEFF";

  public TextTable {
    headings = List.copyOf(headings);
    lines = List.copyOf(lines);
  }

  /**
   * A line of it.
   *
   * @param number the line of the file that it starts on, 1 and up
   * @param values the values
   */
  public record Line(long number, List<String> values) {

    public Line {
      values = List.copyOf(values);
    }
  }

  /**
   * Reads the text of a file of that name. Lines with too many or too few values are left out and said.
   *
   * @param what what the table is called
   * @param card what is said of a table or a line that cannot be read
   */
  public static Read<TextTable> read(String text, String file, String what, CheckInfo card) {
    String plain = text.startsWith(MARK) ? text.substring(1) : text;
    Optional<String> fault = fault(plain);
    if (fault.isPresent()) {
      return Read.nothing(new Finding(
          card,
          new Where.InFile(file),
          what + " must be a table of comma-separated values with one heading line, but "
              + fault.get()));
    }
    List<Line> all = records(plain);
    List<String> headings = all.isEmpty() ? List.of() : all.get(0).values();
    List<Line> under = all.subList(Math.min(1, all.size()), all.size());
    List<Finding> crooked = under.stream()
        .filter(line -> line.values().size() != headings.size())
        .map(line -> crooked(line, headings, file, card))
        .toList();
    List<Line> straight =
        under.stream().filter(line -> line.values().size() == headings.size()).toList();
    return Read.of(new TextTable(headings, straight), crooked);
  }

  private static Optional<String> fault(String text) {
    OptionalLong open = openQuote(text);
    if (open.isPresent()) {
      return Optional.of("has a quote on line " + open.getAsLong()
          + " that is never closed and takes in all lines after it");
    }
    try {
      List<String> headings =
          records(text).stream().findFirst().map(Line::values).orElse(List.of());
      return headings.stream().distinct().count() < headings.size()
          ? Optional.of("has a heading twice: " + String.join(", ", headings))
          : Optional.empty();
    } catch (IllegalArgumentException tooLong) {
      return Optional.of("has a value too long for any table");
    }
  }

  private static Finding crooked(Line line, List<String> headings, String file, CheckInfo card) {
    return new Finding(
        card,
        new Where.InLine(file, line.number(), ""),
        "a line must have a value for each of the " + headings.size() + " headings, but has "
            + line.values().size()
            + "; a comma within a value needs quotes around it, as in \"1,200\"; the line is left out");
  }

  /** What stands under each heading. */
  public Map<String, String> cells(Line line) {
    Map<String, String> cells = new LinkedHashMap<>();
    for (int at = 0; at < headings.size(); at++) {
      cells.put(headings.get(at), line.values().get(at));
    }
    return cells;
  }

  private static List<Line> records(String text) {
    try (CsvReader<CsvRecord> records = CsvReader.builder()
        .commentStrategy(CommentStrategy.SKIP)
        .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
        .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
        .ofCsvRecord(text)) {
      return records.stream()
          .map(record -> new Line(record.getStartingLineNumber(), record.getFields()))
          .toList();
    } catch (IOException | UncheckedIOException | CsvParseException broken) {
      throw new IllegalArgumentException("has a value too long for any table", broken);
    }
  }

  /** The line of a quote that is never closed: it takes in all lines after it, and nobody would miss them. */
  private static OptionalLong openQuote(String text) {
    long line = 1;
    long opened = 0;
    boolean mayOpen = true;
    for (int at = 0; at < text.length(); at++) {
      char it = text.charAt(at);
      if (it == '"' && (opened > 0 || mayOpen)) {
        opened = opened > 0 ? 0 : line;
        mayOpen = opened == 0;
      } else if (opened == 0) {
        mayOpen = it == ',' || it == '\n' || it == '\r';
        at = it == '#' && isLineStart(text, at) ? endOfLine(text, at) - 1 : at;
      }
      line += it == '\n' ? 1 : 0;
    }
    return opened > 0 ? OptionalLong.of(opened) : OptionalLong.empty();
  }

  private static int endOfLine(String text, int from) {
    int end = text.indexOf('\n', from);
    return end < 0 ? text.length() : end;
  }

  private static boolean isLineStart(String text, int at) {
    return at == 0 || text.charAt(at - 1) == '\n';
  }
}
