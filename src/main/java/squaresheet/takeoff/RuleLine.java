package squaresheet.takeoff;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import squaresheet.finding.Where;

/** A line of a rulebook's table. */
final class RuleLine {

  static final List<String> COLUMNS = List.of(
      "name", "per", "kind", "formula", "unit", "choices", "orders", "label", "source", "note");

  private final NamedCsvRecord line;
  private final String file;

  private RuleLine(NamedCsvRecord line, String file) {
    this.line = line;
    this.file = file;
  }

  /** The lines of a table, whose heading line must name what it holds. */
  static List<RuleLine> of(String text, String file) throws IOException {
    List<RuleLine> lines = new ArrayList<>();
    try (CsvReader<NamedCsvRecord> csv = CsvReader.builder()
        .commentStrategy(CommentStrategy.SKIP)
        .ofNamedCsvRecord(text.replace("\uFEFF", ""))) {
      csv.forEach(line -> lines.add(new RuleLine(line, file)));
    }
    return lines;
  }

  boolean has(String column) {
    return line.getHeader().contains(column);
  }

  String text(String column) {
    return line.findField(column).orElse("").strip();
  }

  Where at(String column) {
    return new Where.InLine(file, line.getStartingLineNumber(), column);
  }
}
