package squaresheet.takeoff;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import squaresheet.finding.Where;

/**
 * A rule as a line of a table, as written: what stands in each column, and where.
 *
 * @param texts what stands there, by column; see {@link #columns()}
 * @param place where a column of this line is
 */
public record RuleLine(Map<String, String> texts, Function<String, Where> place) {

  private static final List<String> COLUMNS = List.of(
      "name", "per", "kind", "formula", "unit", "choices", "orders", "label", "source", "note");

  public RuleLine {
    texts = Map.copyOf(texts);
  }

  /** The columns of a rulebook's table, in order. */
  public static List<String> columns() {
    return COLUMNS;
  }

  /** What stands for a rule in the columns. */
  public static List<String> texts(Rule rule) {
    return List.of(
        rule.name(),
        rule.per().toString(),
        rule.kind().toString(),
        rule.formula(),
        RuleReader.written(rule),
        String.join("|", rule.choices()),
        rule.orders(),
        rule.label(),
        rule.source(),
        rule.note());
  }

  /** The lines of a table, whose heading line must name what it holds. */
  static List<RuleLine> of(String text, String file) throws IOException {
    List<RuleLine> lines = new ArrayList<>();
    try (CsvReader<NamedCsvRecord> csv = CsvReader.builder()
        .commentStrategy(CommentStrategy.SKIP)
        .ofNamedCsvRecord(text.replace("\uFEFF", ""))) {
      csv.forEach(line -> lines.add(of(line, file)));
    }
    return lines;
  }

  private static RuleLine of(NamedCsvRecord line, String file) {
    Map<String, String> texts = new LinkedHashMap<>();
    line.getHeader().forEach(column -> texts.put(column, line.findField(column).orElse("")));
    long number = line.getStartingLineNumber();
    return new RuleLine(texts, column -> new Where.InLine(file, number, column));
  }

  boolean has(String column) {
    return texts.containsKey(column);
  }

  String text(String column) {
    return texts.getOrDefault(column, "").strip();
  }

  Where at(String column) {
    return place.apply(column);
  }
}
