package squaresheet.xlsx;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.Workbook;

/** Changes the workbook part: names, the list of sheets, the wish to be recalculated. */
final class BookEditor {

  /** The order that ECMA-376 Part 1, 18.2.27 puts the parts of a workbook in. */
  private static final List<String> ORDER = List.of(
      "fileVersion",
      "fileSharing",
      "workbookPr",
      "workbookProtection",
      "bookViews",
      "sheets",
      "functionGroups",
      "externalReferences",
      "definedNames",
      "calcPr",
      "oleSize",
      "customWorkbookViews",
      "pivotCaches",
      "smartTagPr",
      "smartTagTypes",
      "webPublishing",
      "fileRecoveryPr",
      "webPublishObjects",
      "extLst");

  private static final String SHEET_TYPE =
      "application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml";

  private final Bundle bundle;
  private final Relations relations;
  private final Family family;
  private final String part;
  private final PartText book;
  private final StringBuilder freshNames = new StringBuilder();

  BookEditor(Bundle bundle, Relations relations, String part) throws IOException {
    this.bundle = bundle;
    this.relations = relations;
    this.part = part;
    book = bundle.text(part);
    family = Family.of(book.tag(book.root()));
  }

  Family family() {
    return family;
  }

  /** Adds an empty place for a sheet behind the others and tells its part, which is yet to be put. */
  String addSheet(String name, Sheet.Visibility visibility) throws IOException {
    Element sheets = sheets();
    int number = sheets.number(
            "last",
            sheets.children.stream()
                .mapToInt(each -> each.number("sheetId", 0))
                .reduce(0, Math::max))
        + 1;
    sheets.attributes.put("last", Integer.toString(number));
    String fresh = bundle.freeName("/xl/worksheets/sheet%d.xml");
    String id = relations.add(part, family.relationships + "/worksheet", fresh);
    relations.type(fresh, SHEET_TYPE);
    Markup sheet = book.markup().open("sheet").namespace("r", family.relationships);
    sheet.attribute("name", name).attribute("sheetId", number);
    if (visibility != Sheet.Visibility.VISIBLE) {
      sheet.attribute("state", visibility == Sheet.Visibility.HIDDEN ? "hidden" : "veryHidden");
    }
    book.append(sheets, sheet.attribute("r", "id", id).close());
    return fresh;
  }

  private Element sheets() {
    return book.root().child("sheets").orElseThrow(() -> new Refusal("lacks its list of sheets"));
  }

  /** Adds a name or changes what it stands for. */
  void name(Edit.SetName edit, List<String> sheets) {
    Workbook.Name name = edit.name();
    int scope = name.sheet().isEmpty() ? -1 : index(sheets, name.sheet());
    Markup markup = book.markup().open("definedName").attribute("name", name.name());
    if (scope >= 0) {
      markup.attribute("localSheetId", scope);
    }
    if (name.hidden()) {
      markup.attribute("hidden", 1);
    }
    markup.text(FutureFunctions.inFile(name.text())).close();
    Optional<Element> old = book.root().child("definedNames").stream()
        .flatMap(list -> list.children.stream())
        .filter(each -> each.attribute("name").equalsIgnoreCase(name.name()))
        .filter(each -> each.number("localSheetId", -1) == scope)
        .findFirst();
    old.ifPresentOrElse(it -> book.replace(it, markup), () -> freshNames.append(markup));
  }

  private static int index(List<String> sheets, String name) {
    for (int i = 0; i < sheets.size(); i++) {
      if (sheets.get(i).equalsIgnoreCase(name)) {
        return i;
      }
    }
    throw new Refusal("has no sheet '" + name + "' to limit a name to");
  }

  /** Asks the next program to recalculate everything when it opens the file. */
  void recalculate() {
    book.root()
        .child("calcPr")
        .ifPresentOrElse(
            it -> book.set(it, "fullCalcOnLoad", "1"),
            () -> book.place(
                book.root(),
                ORDER,
                "calcPr",
                book.markup().open("calcPr").attribute("fullCalcOnLoad", 1).close()));
  }

  /** Takes away the order of the last calculation, which no longer fits; programs make it anew. */
  void dropCalculationChain() throws IOException {
    String rels = Relations.partOf(part);
    for (Element each : bundle.text(rels).root().children) {
      if (each.attribute("Type").endsWith("/calcChain")) {
        String chain = PartPath.resolve(part, each.attribute("Target"));
        bundle.remove(chain);
        relations.untype(chain);
      }
    }
    relations.remove(part, each -> each.attribute("Type").endsWith("/calcChain"));
  }

  /** Writes what could not be written bit by bit; to be called once, last. */
  void finish() {
    if (freshNames.isEmpty()) {
      return;
    }
    book.root().child("definedNames").ifPresentOrElse(list -> book.append(list, freshNames), () -> {
      String prefix = book.root().prefix;
      String name = prefix.isEmpty() ? "definedNames" : prefix + ":definedNames";
      book.place(
          book.root(), ORDER, "definedNames", "<" + name + ">" + freshNames + "</" + name + ">");
    });
  }
}
