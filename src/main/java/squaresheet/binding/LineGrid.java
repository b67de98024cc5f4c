package squaresheet.binding;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import squaresheet.finding.Finding;
import squaresheet.finding.Where;
import squaresheet.sheet.Address;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Content;

/** The lines of a text file with separated values; all cells are text. */
final class LineGrid implements Grid {

  private final String file;
  private final List<CsvRecord> lines;
  /** The lines on which a quotation mark stood that would have taken rows into one cell. */
  private final List<Long> openQuotes;

  private LineGrid(String file, List<CsvRecord> lines, List<Long> openQuotes) {
    this.file = file;
    this.lines = lines;
    this.openQuotes = List.copyOf(openQuotes);
  }

  /**
   * Reads the text with the separator that people's programs put between values: comma, semicolon or tab, whichever makes
   * the most of it.
   *
   * @throws IllegalArgumentException with a sentence, if the text is no such file
   */
  static LineGrid of(String file, String text) {
    String plain = text.replace("\uFEFF", "");
    LineGrid widest = new LineGrid(file, List.of(), List.of());
    IllegalArgumentException refused = null;
    for (char separator : new char[] {',', ';', '\t'}) {
      try {
        OpenQuotes mended = new OpenQuotes(plain, separator);
        LineGrid grid = new LineGrid(file, lines(mended.text(), separator), mended.lines());
        widest = grid.cells() > widest.cells() ? grid : widest;
      } catch (IllegalArgumentException broken) {
        refused = refused == null ? broken : refused;
      }
    }
    if (widest.rows() == 0 && refused != null) {
      throw refused;
    }
    return widest;
  }

  private static List<CsvRecord> lines(String text, char separator) {
    try (CsvReader<CsvRecord> lines = CsvReader.builder()
        .fieldSeparator(separator)
        .skipEmptyLines(false)
        .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
        .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
        .ofCsvRecord(text)) {
      return lines.stream().toList();
    } catch (IOException | CsvParseException | UncheckedIOException broken) {
      throw new IllegalArgumentException(
          "the file must be a table of separated values, but has a value too long for any table",
          broken);
    }
  }

  /** What there is to say of the text as a whole. */
  List<Finding> findings() {
    return openQuotes.stream()
        .map(line -> Complaint.QUOTE_OPEN.at(
            new Where.InLine(file, line, ""),
            "a quotation mark that opens a cell must close it too, but this one does not; it is left out, and the lines"
                + " under it are read as rows of their own"))
        .toList();
  }

  private long cells() {
    return lines.stream().mapToLong(CsvRecord::getFieldCount).sum();
  }

  @Override
  public String name() {
    return file;
  }

  @Override
  public Stream<Place> filled() {
    return IntStream.range(0, rows())
        .boxed()
        .flatMap(row -> IntStream.range(0, lines.get(row).getFieldCount())
            .mapToObj(column -> new Place(row, column)))
        .filter(place -> !isBlank(place.row(), place.column()));
  }

  @Override
  public int rows() {
    return lines.size();
  }

  @Override
  public int columns() {
    return lines.stream().mapToInt(CsvRecord::getFieldCount).max().orElse(0);
  }

  @Override
  public Cell cell(int row, int column) {
    boolean there = row < lines.size() && column < lines.get(row).getFieldCount();
    String text = there ? lines.get(row).getField(column) : "";
    return text.isBlank() ? Cell.EMPTY : Cell.of(new Content.Text(text));
  }

  @Override
  public Where where(int row, int column) {
    return where(row, column, "");
  }

  @Override
  public Where where(int row, int column, String heading) {
    long line = row < lines.size() ? lines.get(row).getStartingLineNumber() : row + 1L;
    return new Where.InLine(file, line, heading);
  }

  @Override
  public Optional<Address> address(int row, int column) {
    return Optional.empty();
  }
}
