package squaresheet.verify;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Content;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.SheetBuilder;
import squaresheet.sheet.Workbook;

/**
 * A workbook drawn as text. A row reads {@code 3 | P1 | 40 | =B3*2}; cells are numbers, {@code =formulas}, {@code TRUE}, and
 * otherwise texts. {@code 'text} keeps a number as text, {@code {d-mmm}} behind a cell is its number format, {@code -> 5}
 * behind a formula is the value stored in the file where that is not what the formula makes. {@code sheet: Name} begins
 * another sheet; further lines beginning with a word and a colon set what is not a cell. Marks: {@code <- check-id at D3}.
 */
final class DrawnBook {

  private static final Pattern ROW = Pattern.compile("\\s*(\\d+)\\s*\\|(.*)");
  private static final Pattern MARK = Pattern.compile("<- ([a-z0-9-]+) at (\\S+)");
  private static final Pattern FORMAT = Pattern.compile("(.*?)\\s*\\{([^}]*)}");

  private final Map<String, Map<Ref, String>> cells = new LinkedHashMap<>();
  private final Map<String, List<String>> settings = new LinkedHashMap<>();
  private final Set<String> marks = new TreeSet<>();
  private String sheet = "Sheet1";

  static DrawnBook of(String drawing) {
    DrawnBook drawn = new DrawnBook();
    drawing.lines().filter(line -> !line.isBlank()).forEach(drawn::line);
    return drawn;
  }

  private void line(String line) {
    Matcher marked = MARK.matcher(line);
    while (marked.find()) {
      String at = marked.group(2).replace(",", "");
      marks.add(marked.group(1) + " at "
          + (at.equals("file") || at.contains("!") ? at : Address.of(sheet, at)));
    }
    String bare = line.replaceAll("<- .*", "").stripTrailing();
    Matcher row = ROW.matcher(bare);
    if (row.matches()) {
      row(Integer.parseInt(row.group(1)) - 1, row.group(2));
    } else if (bare.strip().startsWith("sheet:")) {
      sheet = bare.strip().substring(6).strip();
      cells.putIfAbsent(sheet, new LinkedHashMap<>());
    } else if (bare.contains(":")) {
      settings.computeIfAbsent(sheet, key -> new ArrayList<>()).add(bare.strip());
    }
  }

  private void row(int row, String text) {
    String[] parts = text.split("\\|", -1);
    for (int column = 0; column < parts.length; column++) {
      String cell = parts[column].strip();
      if (!cell.isEmpty()) {
        cells.computeIfAbsent(sheet, key -> new LinkedHashMap<>()).put(new Ref(row, column), cell);
      }
    }
  }

  /** {@code check-id at Sheet!D3}, or {@code check-id at file}. */
  Set<String> marks() {
    return marks;
  }

  /** The workbook as its file would have it: formulas with the values they make. */
  Workbook workbook() {
    Book first = Book.of("drawn.xlsx", build(Map.of()));
    Map<Address, Value> values = new LinkedHashMap<>();
    first.formulas().keySet().forEach(cell -> values.put(cell, first.value(cell)));
    return build(values);
  }

  private Workbook build(Map<Address, Value> values) {
    List<Sheet> sheets = new ArrayList<>();
    List<Workbook.Name> names = new ArrayList<>();
    boolean[] flags = {false, false, true, false};
    List<String> external = new ArrayList<>();
    cells.forEach((name, entries) -> {
      SheetBuilder builder = Sheet.builder(name);
      entries.forEach((ref, text) ->
          put(builder, ref, text, values.getOrDefault(new Address(name, ref), new Value.Blank())));
      settings
          .getOrDefault(name, List.of())
          .forEach(line -> set(builder, line, names, flags, external));
      sheets.add(builder.build());
    });
    return new Workbook(
        sheets,
        names,
        flags[3],
        new Workbook.Calculation(flags[0], false, flags[1], flags[2]),
        external,
        Map.of());
  }

  private static void put(SheetBuilder builder, Ref ref, String drawn, Value value) {
    Matcher formatted = FORMAT.matcher(drawn);
    String format = formatted.matches() ? formatted.group(2) : "General";
    String text = formatted.matches() ? formatted.group(1) : drawn;
    if (text.startsWith("=")) {
      String[] parts = text.split(" -> ", 2);
      Content stored = parts.length == 2
          ? parts[1].equals("none") ? new Content.Blank() : typed(parts[1])
          : content(value);
      builder.content(ref.row(), ref.column(), format, stored);
      builder.formula(ref.row(), ref.column(), parts[0].substring(1).strip());
    } else {
      builder.content(ref.row(), ref.column(), format, typed(text));
    }
  }

  private static Content content(Value value) {
    Content content = value.content();
    return content.isBlank() ? new Content.Numeric(0) : content;
  }

  private static Content typed(String text) {
    if (text.startsWith("'")) {
      return new Content.Text(text.substring(1).replace("~", "\u00A0").replace("_", " "));
    }
    if (text.matches("[-+]?\\d+(\\.\\d+)?")) {
      return new Content.Numeric(Double.parseDouble(text));
    }
    if (text.equals("TRUE") || text.equals("FALSE")) {
      return new Content.Truth(text.equals("TRUE"));
    }
    return text.startsWith("#") ? new Content.Fault(text) : new Content.Text(text);
  }

  private static void set(
      SheetBuilder builder,
      String line,
      List<Workbook.Name> names,
      boolean[] flags,
      List<String> external) {
    String[] parts = line.split(":", 2);
    String what = parts[1].strip();
    switch (parts[0].strip()) {
      case "name" -> names.add(Workbook.Name.of(what.split(" = ")[0], what.split(" = ")[1]));
      case "calculation" -> {
        flags[0] |= what.contains("manual");
        flags[1] |= what.contains("iterate");
        flags[2] &= !what.contains("as displayed");
      }
      case "dates" -> flags[3] = what.equals("1904");
      case "external" -> external.add(what);
      case "protected" -> builder.protect();
      case "hidden formula" ->
        builder.hiddenFormula(Ref.parse(what).row(), Ref.parse(what).column());
      case "hidden row" -> builder.hiddenRow(Integer.parseInt(what) - 1);
      case "hidden column" ->
        builder.hiddenColumns(
            Ref.parse(what + "1").column(), Ref.parse(what + "1").column());
      case "filter" -> builder.filter(Block.parse(what));
      case "merged" -> builder.merged(Block.parse(what));
      case "hidden" ->
        builder.visibility(Sheet.Visibility.valueOf(what.toUpperCase(java.util.Locale.ROOT)));
      case "comment" ->
        builder.comment(
            new Sheet.Comment(Ref.parse(what.split(" ", 2)[0]), "someone", what.split(" ", 2)[1]));
      default -> throw new IllegalArgumentException("not a setting: " + line);
    }
  }
}
