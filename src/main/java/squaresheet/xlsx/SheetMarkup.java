package squaresheet.xlsx;

import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import java.util.TreeMap;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Sheet;

/** Spells out a sheet of a draft as a part for a workbook that exists. Notes, links and pictures are added afterwards. */
final class SheetMarkup {

  private final DraftSheet sheet;
  private final StyleEdits styles;
  private final Markup to = new Markup("");

  SheetMarkup(DraftSheet sheet, StyleEdits styles) {
    this.sheet = sheet;
    this.styles = styles;
  }

  String write(Family family) {
    to.open("worksheet").namespace("", family.main);
    to.open("sheetPr").open("pageSetUpPr").attribute("fitToPage", 1).close().close();
    views();
    columns();
    rows();
    merged();
    validations();
    print();
    return "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n" + to.close();
  }

  private void views() {
    to.open("sheetViews").open("sheetView").attribute("workbookViewId", 0);
    int down = sheet.frozenRows();
    int right = sheet.frozenColumns();
    if (down > 0 || right > 0) {
      to.open("pane");
      if (right > 0) {
        to.attribute("xSplit", right);
      }
      if (down > 0) {
        to.attribute("ySplit", down);
      }
      to.attribute("topLeftCell", new Ref(down, right).toString());
      to.attribute(
          "activePane", down == 0 ? "topRight" : right == 0 ? "bottomLeft" : "bottomRight");
      to.attribute("state", "frozen").close();
    }
    to.close().close();
    to.open("sheetFormatPr").attribute("defaultRowHeight", "13.2").close();
  }

  private void columns() {
    if (sheet.widths().isEmpty()) {
      return;
    }
    to.open("cols");
    sheet.widths().forEach((column, characters) -> to.open("col")
        .attribute("min", column + 1)
        .attribute("max", column + 1)
        .attribute("width", CellMarkup.number(Math.min(255, characters)))
        .attribute("customWidth", 1)
        .close());
    to.close();
  }

  private void rows() {
    SortedMap<Integer, SortedMap<Integer, DraftSheet.Entry>> rows = new TreeMap<>();
    sheet.entries().forEach((ref, entry) -> rows.computeIfAbsent(ref.row(), none -> new TreeMap<>())
        .put(ref.column(), entry));
    sheet.heights().keySet().forEach(row -> rows.computeIfAbsent(row, none -> new TreeMap<>()));
    to.open("sheetData");
    rows.forEach((row, cells) -> {
      to.open("row").attribute("r", row + 1);
      if (sheet.heights().containsKey(row)) {
        to.attribute("ht", CellMarkup.number(sheet.heights().get(row)))
            .attribute("customHeight", 1);
      }
      cells.forEach((column, entry) -> cell(new Ref(row, column), entry));
      to.close();
    });
    to.close();
  }

  private void cell(Ref ref, DraftSheet.Entry entry) {
    to.open("c").attribute("r", ref.toString());
    to.attribute("s", styles.role(entry.role(), entry.format()));
    String type = CellMarkup.type(entry.stored(), entry.formula());
    if (!type.isEmpty()) {
      to.attribute("t", type);
    }
    CellMarkup.inside(to, entry.stored(), entry.formula());
    to.close();
  }

  private void merged() {
    if (!sheet.merged().isEmpty()) {
      to.open("mergeCells").attribute("count", sheet.merged().size());
      sheet.merged().forEach(block -> to.open("mergeCell")
          .attribute("ref", block.toString())
          .close());
      to.close();
    }
  }

  private void validations() {
    if (!sheet.validations().isEmpty()) {
      to.open("dataValidations").attribute("count", sheet.validations().size());
      sheet.validations().forEach(this::validation);
      to.close();
    }
  }

  private void validation(Sheet.Validation rule) {
    to.open("dataValidation");
    if (rule.kind() != Sheet.Validation.Kind.ANY) {
      to.attribute("type", word(rule.kind()));
    }
    if (rule.comparison() != Sheet.Validation.Comparison.BETWEEN) {
      to.attribute("operator", word(rule.comparison()));
    }
    to.attribute("allowBlank", 1).attribute("showErrorMessage", 1);
    if (!rule.message().isEmpty()) {
      to.attribute("showInputMessage", 1).attribute("errorTitle", "Not accepted");
      to.attribute("error", rule.message()).attribute("prompt", rule.message());
    }
    List<String> blocks = rule.blocks().stream().map(Object::toString).toList();
    to.attribute("sqref", String.join(" ", blocks));
    for (String name : List.of("formula1", "formula2")) {
      String text = name.equals("formula1") ? rule.first() : rule.second();
      if (!text.isEmpty()) {
        to.leaf(name, FutureFunctions.inFile(text));
      }
    }
    to.close();
  }

  /** A constant as the file spells it: {@code TEXT_LENGTH} is {@code textLength}. */
  private static String word(Enum<?> constant) {
    StringBuilder word = new StringBuilder();
    for (String part : constant.name().toLowerCase(Locale.ROOT).split("_")) {
      word.append(
          word.isEmpty()
              ? part
              : part.substring(0, 1).toUpperCase(Locale.ROOT) + part.substring(1));
    }
    return word.toString();
  }

  private void print() {
    DraftSheet.Print print = sheet.print();
    String side = CellMarkup.number(print.marginInches());
    to.open("pageMargins").attribute("left", side).attribute("right", side);
    to.attribute(
        "top", CellMarkup.number(print.marginInches() + (print.header().isEmpty() ? 0 : 0.25)));
    to.attribute("bottom", CellMarkup.number(print.marginInches() + 0.25));
    String edge = CellMarkup.number(print.marginInches() / 2);
    to.attribute("header", edge).attribute("footer", edge).close();
    to.open("pageSetup").attribute("paperSize", DraftWriter.paper(print.paper()));
    to.attribute("fitToHeight", 0);
    to.attribute("orientation", print.landscape() ? "landscape" : "portrait").close();
    to.open("headerFooter");
    if (!print.header().isEmpty()) {
      to.leaf("oddHeader", "&C" + print.header().replace("&", "&&"));
    }
    to.leaf("oddFooter", "&L" + print.footer().replace("&", "&&") + "&R&P / &N").close();
  }
}
