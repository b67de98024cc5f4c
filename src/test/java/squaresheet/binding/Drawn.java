package squaresheet.binding;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import squaresheet.sheet.Block;
import squaresheet.sheet.Content;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.SheetBuilder;
import squaresheet.sheet.Workbook;

/**
 * Sheets drawn as text: cells between bars, {@code =} before a formula, {@code ~ 7} behind it for its stored value,
 * {@code >} for a cell merged with the one on its left. Rows count from 1, the first column is A.
 */
final class Drawn {

  private Drawn() {}

  static Sheet sheet(String name, String drawing) {
    SheetBuilder sheet = Sheet.builder(name);
    List<String> lines = drawing.lines().filter(line -> line.contains("|")).toList();
    for (int row = 0; row < lines.size(); row++) {
      String[] cells = lines.get(row).strip().split("\\|", -1);
      for (int column = 1; column < cells.length; column++) {
        put(sheet, row, column - 1, cells[column].strip());
      }
      merge(sheet, row, cells);
    }
    return sheet.build();
  }

  private static void merge(SheetBuilder sheet, int row, String[] cells) {
    for (int column = 1; column < cells.length; column++) {
      int end = column;
      while (end + 1 < cells.length && cells[end + 1].strip().equals(">")) {
        end++;
      }
      if (end > column) {
        sheet.merged(Block.parse(new squaresheet.sheet.Ref(row, column - 1) + ":"
            + new squaresheet.sheet.Ref(row, end - 1)));
      }
      column = end;
    }
  }

  private static void put(SheetBuilder sheet, int row, int column, String text) {
    if (text.isEmpty() || text.equals(">")) {
      return;
    }
    if (text.startsWith("=")) {
      String[] parts = text.substring(1).split("~");
      sheet.content(row, column, "General", content(parts.length > 1 ? parts[1].strip() : "0"));
      sheet.formula(row, column, parts[0].strip());
    } else {
      String format = text.matches("-?[\\d.]+%") ? "0%" : "General";
      sheet.content(row, column, format, content(text));
    }
  }

  private static Content content(String text) {
    if (text.matches("-?\\d+(\\.\\d+)?")) {
      return new Content.Numeric(Double.parseDouble(text));
    }
    return text.matches("-?\\d+(\\.\\d+)?%")
        ? new Content.Numeric(Double.parseDouble(text.replace("%", "")) / 100)
        : new Content.Text(text.replaceFirst("^'", ""));
  }

  static Workbook workbook(Sheet... sheets) {
    return new Workbook(
        List.of(sheets), List.of(), false, Workbook.Calculation.USUAL, List.of(), Map.of());
  }

  /** What each column was taken for, as {@code property [unit]}, by its letter; behind it {@code ?} where it is unsure. */
  static Map<String, String> columns(FoundTable table) {
    Map<String, String> drawn = new LinkedHashMap<>();
    table
        .columns()
        .forEach(column -> drawn.put(
            table
                .grid()
                .address(table.heading(), column.at())
                .orElseThrow()
                .ref()
                .toString(),
            column.property()
                + column.unit().map(unit -> " [" + unit + "]").orElse("")
                + (column.isSure() ? "" : "?")));
    return drawn;
  }

  /** The names of the rows that were taken for items. */
  static List<String> items(FoundTable table) {
    List<String> names = new ArrayList<>();
    String key = table.columns().stream()
        .filter(column -> column.meaning().role() == Meaning.Role.KEY)
        .map(FoundColumn::property)
        .findFirst()
        .orElse("");
    table.rows(FoundTable.Row.DATA).forEach(row -> names.add(table.text(row, key)));
    return names;
  }
}
