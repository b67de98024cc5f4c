package squaresheet.xlsx;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import squaresheet.sheet.Ref;

/**
 * Walks through a sheet part once and notes, by byte positions, what the changes to its cells do to it. The part is never
 * held whole.
 */
final class SheetScan {

  private static final String DISORDER =
      "has its cells out of order and must be saved once in a spreadsheet program before it is changed";

  private final Recorded bytes;
  private final Xml xml;
  private final Splices splices = new Splices();
  private final TreeMap<Integer, TreeMap<Integer, CellChange>> wanted = new TreeMap<>();
  private final List<Element> children = new ArrayList<>();
  private final Map<Integer, Integer> columnStyles = new HashMap<>();
  private final FormulaScan formulas;
  private Element root = new Element("", "", 0, 0);
  private int row = -1;

  SheetScan(InputStream in, Map<Ref, CellChange> changes) throws IOException {
    bytes = new Recorded(in);
    xml = Xml.open(bytes);
    changes.forEach((ref, change) ->
        wanted.computeIfAbsent(ref.row(), none -> new TreeMap<>()).put(ref.column(), change));
    formulas = new FormulaScan(xml, splices, changes);
  }

  /** Walks to the end. */
  SheetScan scan() throws IOException {
    xml.root();
    root = ElementReader.read(xml);
    int open = xml.depth();
    while (xml.child(open)) {
      Element child = ElementReader.read(xml);
      if (child.name.equals("sheetData")) {
        rows(child);
      } else {
        ElementReader.fill(xml, child);
      }
      if (child.name.equals("cols")) {
        child.children.forEach(this::column);
      }
      children.add(child);
    }
    ElementReader.end(xml, root);
    refuseUnlessPlaced();
    return this;
  }

  private void refuseUnlessPlaced() {
    if (!wanted.isEmpty() && children.stream().noneMatch(it -> it.name.equals("sheetData"))) {
      throw new Refusal(
          "has no place for cells and must be saved once in a spreadsheet program before it is changed");
    }
  }

  Element root() {
    return root;
  }

  /** The elements under the root, with their places; the cells are not among them. */
  List<Element> children() {
    return children;
  }

  /** Whether a formula came or went. */
  boolean formulasChanged() {
    return formulas.changed();
  }

  Splices splices() {
    return splices;
  }

  private void column(Element each) {
    int style = each.number("style", 0);
    int last = Math.min(each.number("max", 0), CellPlace.COLUMNS);
    for (int at = each.number("min", 1) - 1; style > 0 && at < last; at++) {
      columnStyles.put(at, style);
    }
  }

  private void rows(Element data) throws IOException {
    String tag = bytes.text(data.start, data.tagEnd);
    int open = xml.depth();
    while (xml.child(open)) {
      int before = row;
      row = CellPlace.row(xml.number("r", row + 2));
      if (row <= before) {
        throw new Refusal(DISORDER);
      }
      insert(xml.startOffset(), newRows(data.prefix, before + 1, row));
      if (wanted.containsKey(row)) {
        row(wanted.get(row));
      } else {
        formulas.others(row);
      }
    }
    ElementReader.end(xml, data);
    String rest = newRows(data.prefix, row + 1, CellPlace.ROWS);
    if (data.isClosedInItself() && !rest.isEmpty()) {
      splices.replace(data.start, data.end, Tag.opened(tag) + rest + Tag.closing(tag));
    } else {
      insert(data.contentEnd, rest);
    }
  }

  private void insert(long at, String text) {
    if (!text.isEmpty()) {
      splices.insert(at, text);
    }
  }

  /** The rows wanted from one number to before another, none of which is there yet. */
  private String newRows(String prefix, int from, int to) {
    StringBuilder rows = new StringBuilder();
    wanted.subMap(from, to).forEach((number, cells) -> {
      String inside = newCells(prefix, number, cells, 0);
      if (!inside.isEmpty()) {
        String name = prefix.isEmpty() ? "row" : prefix + ":row";
        rows.append("<" + name + " r=\"" + (number + 1) + "\">" + inside + "</" + name + ">");
      }
    });
    return rows.toString();
  }

  private void row(NavigableMap<Integer, CellChange> cells) throws IOException {
    Element element = ElementReader.read(xml);
    String tag = bytes.text(element.start, element.tagEnd);
    int style = element.attribute("customFormat").matches("1|true") ? element.number("s", 0) : 0;
    int open = xml.depth();
    int column = -1;
    while (xml.child(open)) {
      int before = column;
      column = CellPlace.columnAfter(column, xml.attribute("r"));
      if (column <= before) {
        throw new Refusal(DISORDER);
      }
      insert(
          xml.startOffset(),
          newCells(element.prefix, row, cells.subMap(before + 1, column), style));
      if (cells.containsKey(column)) {
        cell(new Ref(row, column), cells.get(column));
      } else {
        formulas.other(new Ref(row, column));
      }
    }
    ElementReader.end(xml, element);
    rest(element, tag, newCells(element.prefix, row, cells.tailMap(column + 1), style));
  }

  private void rest(Element element, String tag, String cells) {
    if (element.isClosedInItself() && !cells.isEmpty()) {
      splices.replace(element.start, element.end, Tag.opened(tag) + cells + Tag.closing(tag));
    } else {
      insert(element.contentEnd, cells);
    }
  }

  private String newCells(String prefix, int at, Map<Integer, CellChange> cells, int rowStyle) {
    StringBuilder all = new StringBuilder();
    cells.forEach((column, change) -> {
      int style = rowStyle > 0 ? rowStyle : columnStyles.getOrDefault(column, 0);
      all.append(change.fresh(prefix, new Ref(at, column), style));
      formulas.fresh(change);
    });
    return all.toString();
  }

  private void cell(Ref ref, CellChange change) throws IOException {
    Element cell = ElementReader.read(xml);
    String tag = bytes.text(cell.start, cell.tagEnd);
    List<Element> gone = new ArrayList<>();
    int open = xml.depth();
    while (xml.child(open)) {
      Element child = ElementReader.read(xml);
      if (child.name.equals("f")) {
        formulas.changing(child, ref, change);
      } else {
        ElementReader.fill(xml, child);
      }
      if (List.of("f", "v", "is").contains(child.name)) {
        gone.add(child);
      }
    }
    ElementReader.end(xml, cell);
    formulas.fresh(change);
    rewrite(cell, tag, change, gone);
  }

  private void rewrite(Element cell, String tag, CellChange change, List<Element> gone) {
    String changed = change.tag(tag, cell.number("s", 0));
    if (!change.changesContent()) {
      splices.replace(cell.start, cell.tagEnd, changed);
      return;
    }
    String inside = change.inside(cell.prefix);
    if (cell.isClosedInItself()) {
      splices.replace(
          cell.start,
          cell.end,
          inside.isEmpty() ? changed : Tag.opened(changed) + inside + Tag.closing(tag));
      return;
    }
    splices.replace(cell.start, cell.tagEnd, changed + inside);
    gone.forEach(child -> splices.replace(child.start, child.end, ""));
  }
}
