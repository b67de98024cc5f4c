package squaresheet.xlsx;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import squaresheet.finding.Read;
import squaresheet.sheet.Address;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Workbook;

/** Carries out edits on a workbook file, all or none. What no edit speaks of keeps its bytes. */
final class WorkbookEditor {

  private final Parts parts;
  private final Bundle bundle;
  private final Relations relations;
  private final String main;
  private final BookPart list = new BookPart();
  private final BookEditor book;
  private final Map<String, String> partOfSheet = new LinkedHashMap<>();
  private final Map<String, SheetChanges> changes = new LinkedHashMap<>();
  private final List<Edit.SetProperty> properties = new ArrayList<>();
  private Optional<StyleEdits> styles = Optional.empty();

  private WorkbookEditor(Parts parts, Bundle bundle) throws IOException {
    this.parts = parts;
    this.bundle = bundle;
    relations = new Relations(bundle);
    main = parts.workbook();
    refuseSigned();
    try (Xml xml = parts.xml(main)) {
      list.read(xml);
    }
    for (BookPart.Entry entry : list.sheets()) {
      parts
          .relation(main, entry.relation())
          .filter(it -> it.kind().equals("worksheet"))
          .flatMap(it -> parts.part(main, it))
          .ifPresent(it -> partOfSheet.put(key(entry.name()), it));
    }
    book = new BookEditor(bundle, relations, main);
  }

  /** Saves the file with its edits, or says why not. */
  static Read<Saved> edit(Path file, List<Edit> edits, Path to, Existing existing) {
    return Turn.at(to, () -> {
      Stamp before = Stamp.of(file);
      return Guarded.reading(file, Complaint.NOT_EDITED, () -> {
        try (Parts parts = Parts.open(file)) {
          FileKind.refuseUnlessEnding(to, FileKind.ending(file));
          Bundle bundle = new Bundle(parts.archive());
          new WorkbookEditor(parts, bundle).carryOut(edits);
          return SafeFile.save(to, existing, bundle::writeTo, () -> before.refuseIfChanged(file));
        }
      });
    });
  }

  private static String key(String sheet) {
    return sheet.toLowerCase(Locale.ROOT);
  }

  private void refuseSigned() {
    if (bundle.hasStartingWith("/_xmlsignatures/")) {
      throw new Refusal(
          "is digitally signed, and any change would break the signature; save an unsigned copy first");
    }
  }

  private void carryOut(List<Edit> edits) throws IOException {
    for (Edit edit : edits) {
      if (edit instanceof Edit.AddSheet it) {
        addSheet(it.sheet());
      }
    }
    edits.forEach(Limits::refuseBeyond);
    for (Edit edit : edits) {
      sort(edit);
    }
    boolean formulas = false;
    for (Map.Entry<String, SheetChanges> each : changes.entrySet()) {
      formulas |= sheet(each.getKey(), each.getValue());
    }
    PropertyEditor.edit(properties, bundle, relations, book.family());
    if (formulas) {
      book.dropCalculationChain();
    }
    if (changes.values().stream().anyMatch(SheetChanges::changesContent)) {
      book.recalculate();
    }
    book.finish();
    styles.ifPresent(StyleEdits::finish);
  }

  private void sort(Edit edit) throws IOException {
    if (edit instanceof Edit.SetContent it) {
      of(it.cell()).cell(it.cell().ref()).put(it.content(), "");
    } else if (edit instanceof Edit.SetFormula it) {
      of(it.cell()).cell(it.cell().ref()).put(it.stored(), it.formula());
    } else if (edit instanceof Edit.SetComment it) {
      of(it.cell()).pin(it);
    } else if (edit instanceof Edit.DropComment it) {
      of(it.cell()).drop(it.cell().ref());
    } else if (edit instanceof Edit.SetLink it) {
      of(it.cell()).link(it);
    } else if (edit instanceof Edit.AddPicture it) {
      of(it.sheet()).pictures.add(it.picture());
    } else if (edit instanceof Edit.SetName it) {
      name(it);
    } else if (edit instanceof Edit.SetProperty it) {
      properties.add(it);
    } else {
      look(edit);
    }
  }

  private void look(Edit edit) throws IOException {
    if (edit instanceof Edit.SetRole it) {
      int style = styles().role(it.role(), it.format());
      of(it.cell()).cell(it.cell().ref()).restyle(old -> style);
    } else if (edit instanceof Edit.SetFormat it) {
      StyleEdits known = styles();
      of(it.cell()).cell(it.cell().ref()).restyle(old -> known.withFormat(old, it.format()));
    } else if (edit instanceof Edit.CopyLook it) {
      int style = styleOf(it.from());
      of(it.cell()).cell(it.cell().ref()).restyle(old -> style);
    }
  }

  private void name(Edit.SetName edit) {
    if (!Workbook.Name.isValid(edit.name().name())) {
      throw new Refusal("cannot have the name '" + edit.name().name()
          + "', because a name must be a word that is not shaped like a cell");
    }
    book.name(edit, list.sheets().stream().map(BookPart.Entry::name).toList());
  }

  private SheetChanges of(Address cell) {
    return of(cell.sheet());
  }

  private SheetChanges of(String sheet) {
    if (!partOfSheet.containsKey(key(sheet))) {
      throw new Refusal("has no sheet '" + sheet + "' with cells to change; " + sheetsWithCells());
    }
    return changes.computeIfAbsent(key(sheet), fresh -> new SheetChanges());
  }

  private String sheetsWithCells() {
    List<String> there = list.sheets().stream()
        .filter(it -> partOfSheet.containsKey(key(it.name())))
        .map(it -> "'" + it.name() + "'")
        .toList();
    return there.isEmpty()
        ? "none of its sheets has any: its tabs hold charts alone"
        : "its sheets with cells are " + String.join(", ", there);
  }

  private int styleOf(Address cell) throws IOException {
    of(cell);
    try (InputStream in = bundle.open(partOfSheet.get(key(cell.sheet())))) {
      return LookFinder.style(in, cell.ref());
    }
  }

  private StyleEdits styles() throws IOException {
    if (styles.isEmpty()) {
      List<String> known = parts.related(main, "styles");
      if (known.isEmpty()) {
        throw new Refusal(
            "has no styles part, so cells cannot be given a look; save it once in a spreadsheet program");
      }
      styles = Optional.of(new StyleEdits(bundle.text(known.get(0))));
    }
    return styles.get();
  }

  private boolean sheet(String key, SheetChanges change) throws IOException {
    String part = partOfSheet.get(key);
    try {
      return new SheetEditor(bundle, relations, book.family(), part, change).edit(change, parts);
    } catch (Refusal refusal) {
      throw new Refusal(says(key, refusal.unlessOfAll()));
    }
  }

  private String says(String key, Refusal refusal) {
    String name = list.sheets().stream()
        .map(BookPart.Entry::name)
        .filter(it -> key(it).equals(key))
        .findFirst()
        .orElse(key);
    return "was not changed: sheet '" + name + "' " + refusal.says();
  }

  private void addSheet(DraftSheet sheet) throws IOException {
    List<String> names = list.sheets().stream().map(BookPart.Entry::name).toList();
    boolean taken = names.stream().anyMatch(it -> key(it).equals(key(sheet.name())));
    if (taken) {
      throw new Refusal("has a sheet '" + sheet.name() + "' already");
    }
    String part = book.addSheet(sheet.name(), sheet.visibility());
    bundle.put(
        part,
        new SheetMarkup(sheet, styles()).write(book.family()).getBytes(StandardCharsets.UTF_8));
    list.sheets().add(new BookPart.Entry(sheet.name(), sheet.visibility(), 0, ""));
    partOfSheet.put(key(sheet.name()), part);
    SheetChanges more = of(sheet.name());
    sheet
        .comments()
        .values()
        .forEach(it -> more.pin(
            new Edit.SetComment(new Address(sheet.name(), it.ref()), it.author(), it.text())));
    sheet
        .links()
        .forEach(it -> more.link(new Edit.SetLink(
            new Address(sheet.name(), it.block().first()), it.target(), it.tip())));
    more.pictures.addAll(sheet.pictures());
    titles(sheet);
  }

  /** Rows repeated on every printed page are kept as a name of the sheet's own. */
  private void titles(DraftSheet sheet) {
    int rows = sheet.print().headingRows();
    if (rows > 0) {
      String text = Address.quoted(sheet.name()) + "!$1:$" + rows;
      Workbook.Name name = new Workbook.Name("_xlnm.Print_Titles", sheet.name(), text, false);
      book.name(
          new Edit.SetName(name),
          list.sheets().stream().map(BookPart.Entry::name).toList());
    }
  }
}
