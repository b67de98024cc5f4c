package squaresheet.estimate;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.product.Catalogue;

/** A text table of prices, rates or terms, read line by line. */
final class Table {

  private Table() {}

  /**
   * A line of a table.
   *
   * @param cells heading to text
   * @param places heading to the place of its cell
   */
  record Line(Map<String, String> cells, Function<String, Where> places) {

    String text(String column) {
      return cells.getOrDefault(column, "").strip();
    }

    Where at(String column) {
      return places.apply(column);
    }
  }

  /** The lines of a table that has these columns at least. */
  static Read<List<Line>> read(
      String text, String file, String what, CheckInfo card, List<String> needed) {
    List<Line> lines = new ArrayList<>();
    try (CsvReader<NamedCsvRecord> csv = CsvReader.builder()
        .commentStrategy(CommentStrategy.SKIP)
        .ofNamedCsvRecord(text.replace("\uFEFF", ""))) {
      csv.forEach(record -> lines.add(line(record, file)));
    } catch (IOException | CsvParseException broken) {
      return Read.nothing(new Finding(
          card,
          new Where.InFile(file),
          what + " must be a table of comma-separated values with one heading line, but is not: "
              + broken.getMessage()));
    }
    return checked(lines, new Where.InFile(file), what, card, needed);
  }

  /** The same of rows that stand elsewhere than in a text file, such as on a sheet. */
  static Read<List<Line>> of(
      List<Catalogue.Row> rows, Where table, String what, CheckInfo card, List<String> needed) {
    List<Line> lines =
        rows.stream().map(row -> new Line(row.cells(), row.places())).toList();
    return checked(lines, table, what, card, needed);
  }

  private static Read<List<Line>> checked(
      List<Line> lines, Where table, String what, CheckInfo card, List<String> needed) {
    List<String> missing = lines.isEmpty()
        ? needed
        : needed.stream()
            .filter(column -> !lines.get(0).cells().containsKey(column))
            .toList();
    return missing.isEmpty()
        ? Read.of(List.copyOf(lines))
        : Read.nothing(new Finding(
            card,
            table,
            what + " must have a line or more under the columns " + String.join(", ", needed)
                + ", but lacks " + String.join(" and ", missing)));
  }

  private static Line line(NamedCsvRecord record, String file) {
    long number = record.getStartingLineNumber();
    return new Line(record.getFieldsAsMap(), column -> new Where.InLine(file, number, column));
  }
}
