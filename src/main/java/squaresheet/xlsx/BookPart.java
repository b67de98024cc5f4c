package squaresheet.xlsx;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import squaresheet.sheet.Content;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.Workbook;

/** Reads the workbook part: the list of sheets, the names, the settings. */
final class BookPart {

  private final List<Entry> sheets = new ArrayList<>();
  private final List<Workbook.Name> names = new ArrayList<>();
  private final List<String> externalLinks = new ArrayList<>();
  private boolean date1904;
  private Workbook.Calculation calculation = Workbook.Calculation.USUAL;

  /** A sheet in the list: its name, whether it shows, its number, and the relationship that leads to it. */
  record Entry(String name, Sheet.Visibility visibility, int number, String relation) {}

  void read(Xml xml) throws IOException {
    xml.root();
    int root = xml.depth();
    while (xml.child(root)) {
      int list = xml.depth();
      switch (xml.name()) {
        case "workbookPr" -> date1904 = xml.flag("date1904", false);
        case "sheets" -> sheets(xml, list);
        case "definedNames" -> names(xml, list);
        case "externalReferences" -> links(xml, list);
        case "calcPr" -> calculation = calculation(xml);
        default -> {
          // Views and versions do not matter to a reader.
        }
      }
    }
  }

  private void sheets(Xml xml, int list) throws IOException {
    while (xml.child(list)) {
      sheets.add(new Entry(
          Content.unspelled(xml.attribute("name")),
          visibility(xml.attribute("state")),
          xml.number("sheetId", 0),
          xml.relation()));
    }
  }

  private static Sheet.Visibility visibility(String state) {
    return switch (state) {
      case "hidden" -> Sheet.Visibility.HIDDEN;
      case "veryHidden" -> Sheet.Visibility.VERY_HIDDEN;
      default -> Sheet.Visibility.VISIBLE;
    };
  }

  private void names(Xml xml, int list) throws IOException {
    while (xml.child(list)) {
      String name = xml.attribute("name");
      int local = xml.number("localSheetId", -1);
      boolean hidden = xml.flag("hidden", false);
      String sheet = local >= 0 && local < sheets.size() ? sheets.get(local).name() : "";
      names.add(new Workbook.Name(
          name, sheet, FutureFunctions.shown(Content.unspelled(xml.text()).strip()), hidden));
    }
  }

  private void links(Xml xml, int list) throws IOException {
    while (xml.child(list)) {
      externalLinks.add(xml.relation());
    }
  }

  private static Workbook.Calculation calculation(Xml xml) {
    return new Workbook.Calculation(
        xml.attribute("calcMode").equals("manual"),
        xml.flag("fullCalcOnLoad", false),
        xml.flag("iterate", false),
        xml.flag("fullPrecision", true));
  }

  List<Entry> sheets() {
    return sheets;
  }

  List<Workbook.Name> names() {
    return names;
  }

  List<String> externalLinks() {
    return externalLinks;
  }

  boolean date1904() {
    return date1904;
  }

  Workbook.Calculation calculation() {
    return calculation;
  }
}
