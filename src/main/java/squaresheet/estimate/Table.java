package squaresheet.estimate;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Neighbours;
import squaresheet.finding.Read;
import squaresheet.finding.TextTable;
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

  /**
   * What a table is like.
   *
   * @param what what it is called
   * @param card what is said of one that cannot be read
   * @param needed the columns it must have
   * @param others the columns it may have besides; what else stands there is said and not read
   */
  record Shape(String what, CheckInfo card, List<String> needed, List<String> others) {}

  /** The lines of a table of that shape. */
  static Read<List<Line>> read(String text, String file, Shape shape) {
    return TextTable.read(text, file, shape.what(), shape.card())
        .flatMap(table -> checked(
            table.lines().stream()
                .map(line -> new Line(
                    table.cells(line), column -> new Where.InLine(file, line.number(), column)))
                .toList(),
            new Where.InFile(file),
            shape));
  }

  /** The same of rows that stand elsewhere than in a text file, such as on a sheet. */
  static Read<List<Line>> of(List<Catalogue.Row> rows, Where table, Shape shape) {
    List<Line> lines =
        rows.stream().map(row -> new Line(row.cells(), row.places())).toList();
    return checked(lines, table, shape);
  }

  private static Read<List<Line>> checked(List<Line> lines, Where table, Shape shape) {
    Set<String> there = lines.isEmpty() ? Set.of() : lines.get(0).cells().keySet();
    List<String> missing =
        shape.needed().stream().filter(column -> !there.contains(column)).toList();
    return missing.isEmpty()
        ? Read.of(List.copyOf(lines), strangers(there, table, shape))
        : Read.nothing(new Finding(
            shape.card(),
            table,
            shape.what() + " must have a line or more under the columns "
                + String.join(", ", shape.needed()) + ", but lacks "
                + String.join(" and ", missing)));
  }

  private static List<Finding> strangers(Set<String> there, Where table, Shape shape) {
    List<String> known =
        Stream.concat(shape.needed().stream(), shape.others().stream()).toList();
    return there.stream()
        .filter(column -> !column.isBlank() && !known.contains(column.strip()))
        .sorted()
        .map(column -> new Finding(
            Complaints.COLUMN_UNKNOWN,
            table,
            "no column '" + column + "' of " + shape.what() + ", so it is not read"
                + Neighbours.sentence(column, known)))
        .toList();
  }
}
