package squaresheet.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** What a workbook is once edits are carried out on it. */
final class Aftermath {

  private final Workbook book;
  private final Map<String, Map<Ref, Cell>> cells = new LinkedHashMap<>();
  private final Map<String, Map<Ref, Sheet.Comment>> comments = new LinkedHashMap<>();
  private final List<Sheet> added = new ArrayList<>();
  private final List<Workbook.Name> names;
  private final Map<String, String> properties;

  private Aftermath(Workbook book) {
    this.book = book;
    names = new ArrayList<>(book.names());
    properties = new LinkedHashMap<>(book.properties());
  }

  static Workbook of(Workbook book, List<Edit> edits) {
    Aftermath after = new Aftermath(book);
    edits.forEach(after::take);
    List<Sheet> sheets = new ArrayList<>(book.sheets());
    sheets.addAll(after.added);
    return new Workbook(
        sheets.stream().map(after::changed).toList(),
        after.names,
        book.date1904(),
        book.calculation(),
        book.externalLinks(),
        after.properties);
  }

  private void take(Edit edit) {
    if (edit instanceof Edit.SetContent it) {
      put(it.cell(), new Cell(it.content(), "", cell(it.cell()).format()));
    } else if (edit instanceof Edit.SetFormula it) {
      put(it.cell(), new Cell(it.stored(), it.formula(), cell(it.cell()).format()));
    } else if (edit instanceof Edit.SetRole it) {
      format(it.cell(), it.format());
    } else if (edit instanceof Edit.SetFormat it) {
      format(it.cell(), it.format());
    } else if (edit instanceof Edit.CopyLook it) {
      format(it.cell(), book.cell(it.from()).format());
    } else if (edit instanceof Edit.SetComment it) {
      of(comments, it.cell())
          .put(it.cell().ref(), new Sheet.Comment(it.cell().ref(), it.author(), it.text()));
    } else if (edit instanceof Edit.DropComment it) {
      of(comments, it.cell()).put(it.cell().ref(), new Sheet.Comment(it.cell().ref(), "", ""));
    } else if (edit instanceof Edit.AddSheet it) {
      added.add(it.sheet().sheet());
    } else if (edit instanceof Edit.SetName it) {
      names.removeIf(old -> old.name().equalsIgnoreCase(it.name().name())
          && old.sheet().equalsIgnoreCase(it.name().sheet()));
      names.add(it.name());
    } else if (edit instanceof Edit.SetProperty it) {
      properties.put(it.name(), it.value());
    }
  }

  private static <T> Map<Ref, T> of(Map<String, Map<Ref, T>> sheets, Address cell) {
    return sheets.computeIfAbsent(key(cell.sheet()), fresh -> new TreeMap<>());
  }

  private static String key(String sheet) {
    return sheet.toLowerCase(Locale.ROOT);
  }

  private Cell cell(Address at) {
    Cell changed = cells.getOrDefault(key(at.sheet()), Map.of()).get(at.ref());
    return changed == null ? book.cell(at) : changed;
  }

  private void put(Address at, Cell cell) {
    of(cells, at).put(at.ref(), cell);
  }

  private void format(Address at, String format) {
    Cell old = cell(at);
    put(at, new Cell(old.stored(), old.formula(), format));
  }

  private Sheet changed(Sheet sheet) {
    Map<Ref, Cell> puts = cells.getOrDefault(key(sheet.name()), Map.of());
    Map<Ref, Sheet.Comment> notes = comments.getOrDefault(key(sheet.name()), Map.of());
    if (puts.isEmpty() && notes.isEmpty()) {
      return sheet;
    }
    SheetBuilder builder = sheet.withoutCells();
    sheet
        .cells()
        .filter(placed -> !puts.containsKey(placed.ref()))
        .forEach(placed -> put(builder, placed.ref(), placed.cell()));
    puts.forEach((ref, cell) -> put(builder, ref, cell));
    notes.values().forEach(note -> {
      builder.comment(note);
      if (note.text().isEmpty()) {
        builder.withoutComment(note.ref());
      }
    });
    return builder.build();
  }

  private static void put(SheetBuilder builder, Ref ref, Cell cell) {
    builder.content(ref.row(), ref.column(), cell.format(), cell.stored());
    if (cell.isFormula()) {
      builder.formula(ref.row(), ref.column(), cell.formula());
    }
  }
}
