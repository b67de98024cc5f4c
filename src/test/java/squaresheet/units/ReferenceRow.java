package squaresheet.units;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A row of a table of published values. */
record ReferenceRow(
    String id,
    String quantity,
    String inputs,
    String published,
    String unit,
    String exact,
    String check,
    String source) {

  private static final Pattern MIXED = Pattern.compile("(?:(-?\\d+) )?(\\d+)/(\\d+)");

  static List<ReferenceRow> of(String table) {
    Path file = Path.of("src/test/cases/reference", table + ".csv");
    try (CsvReader<NamedCsvRecord> rows = CsvReader.builder().ofNamedCsvRecord(file);
        Stream<NamedCsvRecord> stream = rows.stream()) {
      return stream.map(ReferenceRow::of).toList();
    } catch (IOException unreadable) {
      throw new AssertionError(unreadable);
    }
  }

  private static ReferenceRow of(NamedCsvRecord row) {
    return new ReferenceRow(
        row.getField("id"),
        row.getField("quantity"),
        row.getField("inputs"),
        row.getField("published_value"),
        row.getField("unit"),
        row.getField("computed_exact"),
        row.getField("check"),
        row.getField("source"));
  }

  /** The published value, whether printed as a decimal or as a fraction. */
  double publishedValue() {
    Matcher mixed = MIXED.matcher(published);
    if (!mixed.matches()) {
      return Double.parseDouble(published);
    }
    double whole = mixed.group(1) == null ? 0 : Double.parseDouble(mixed.group(1));
    return whole + Double.parseDouble(mixed.group(2)) / Double.parseDouble(mixed.group(3));
  }

  /** Half a unit of the last printed place; nothing for a plain fraction, which is exact. */
  double halfLastPlace() {
    Matcher mixed = MIXED.matcher(published);
    if (mixed.matches()) {
      return mixed.group(1) == null ? 0 : 0.5 / Double.parseDouble(mixed.group(3));
    }
    int point = published.indexOf('.');
    int places = point < 0 ? 0 : published.length() - point - 1;
    return 0.5 * Math.pow(10, -places);
  }
}
