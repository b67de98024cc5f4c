package squaresheet.xlsx;

import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.Map;
import squaresheet.sheet.Ref;

/** Finds the number of the style a cell shows: its own, its row's, or its column's. */
final class LookFinder {

  private LookFinder() {}

  static int style(InputStream sheet, Ref ref) throws IOException {
    Map<Integer, Integer> columns = new HashMap<>();
    try (Xml xml = Xml.open(sheet)) {
      xml.root();
      int root = xml.depth();
      while (xml.child(root)) {
        int list = xml.depth();
        if (xml.name().equals("cols")) {
          while (xml.child(list)) {
            if (xml.number("min", 0) <= ref.column() + 1
                && xml.number("max", 0) >= ref.column() + 1) {
              columns.put(ref.column(), xml.number("style", 0));
            }
          }
        } else if (xml.name().equals("sheetData")) {
          return inRows(xml, ref, columns.getOrDefault(ref.column(), 0));
        }
      }
    }
    return 0;
  }

  private static int inRows(Xml xml, Ref ref, int usual) throws IOException {
    int data = xml.depth();
    int row = -1;
    while (xml.child(data)) {
      row = CellPlace.row(xml.number("r", row + 2));
      if (row == ref.row()) {
        return inRow(xml, ref, xml.flag("customFormat", false) ? xml.number("s", 0) : usual);
      }
    }
    return usual;
  }

  private static int inRow(Xml xml, Ref ref, int usual) throws IOException {
    int open = xml.depth();
    int column = -1;
    while (xml.child(open)) {
      column = CellPlace.columnAfter(column, xml.attribute("r"));
      if (column == ref.column()) {
        return xml.number("s", 0);
      }
    }
    return usual;
  }
}
