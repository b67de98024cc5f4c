package squaresheet.xlsx;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import squaresheet.finding.Read;
import squaresheet.sheet.Content;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.Workbook;

/** Reads a workbook file into values. */
final class WorkbookReader {

  private final Parts parts;
  private final Remarks remarks;
  private final Budget budget = new Budget();

  private WorkbookReader(Parts parts, Remarks remarks) {
    this.parts = parts;
    this.remarks = remarks;
  }

  /** Reads the file; whatever is in it, this gives a workbook or a sentence. */
  static Read<Workbook> read(Path file) {
    Remarks remarks = new Remarks(file);
    return Guarded.reading(file, Complaint.NOT_READ, () -> {
      try (Parts parts = Parts.open(file)) {
        return Read.of(new WorkbookReader(parts, remarks).workbook(), remarks.findings());
      }
    });
  }

  private record Tab(String name, Sheet.Visibility visibility, Optional<String> part) {}

  private Workbook workbook() throws IOException {
    String main = parts.workbook();
    BookPart book = new BookPart();
    try (Xml xml = parts.xml(main)) {
      book.read(xml);
    }
    if (book.sheets().isEmpty()) {
      throw new Refusal("must have at least one sheet, but has none");
    }
    if (!parts.related(main, "vbaProject").isEmpty()) {
      remarks.add(Complaint.READ_NOTE, "holds macros, which were not run");
    }
    CellReader.Known known = new CellReader.Known(styles(main), texts(main), book.date1904());
    List<Sheet> sheets = new ArrayList<>();
    for (Tab tab : tabs(main, book)) {
      sheets.add(sheet(tab, known));
    }
    return new Workbook(
        sheets, book.names(), book.date1904(), book.calculation(), links(main, book), properties());
  }

  private List<Tab> tabs(String main, BookPart book) throws IOException {
    List<Tab> tabs = new ArrayList<>();
    for (BookPart.Entry entry : book.sheets()) {
      tabs.add(new Tab(entry.name(), entry.visibility(), cells(main, entry)));
    }
    return tabs;
  }

  /** The part with the sheet's cells; a chart on a tab of its own has none. */
  private Optional<String> cells(String main, BookPart.Entry entry) throws IOException {
    Optional<Relation> relation = parts.relation(main, entry.relation());
    Optional<String> part = relation.flatMap(it -> parts.part(main, it));
    if (part.isPresent() && relation.get().kind().equals("worksheet")) {
      return part;
    }
    if (entry.relation().isEmpty()) {
      remarks.add(
          Complaint.READ_NOTE, "sheet '" + entry.name() + "' lists macros, which were not run");
    } else if (part.isEmpty()) {
      remarks.add(
          Complaint.NOT_READ, "sheet '" + entry.name() + "' cannot be read: its part is missing");
    }
    return Optional.empty();
  }

  private Sheet sheet(Tab tab, CellReader.Known known) {
    if (tab.part().isEmpty()) {
      var empty = Sheet.builder(tab.name());
      empty.visibility(tab.visibility());
      return empty.build();
    }
    return new SheetReader(parts, tab.part().get(), tab.name(), known, remarks, budget)
        .read(tab.visibility());
  }

  private Styles styles(String main) throws IOException {
    Styles styles = new Styles();
    for (String part : parts.related(main, "styles")) {
      try (Xml xml = parts.xml(part)) {
        styles.read(xml);
      } catch (Refusal wrong) {
        remarks.add(
            Complaint.PARTLY_READ,
            "number formats cannot be read whole: their part "
                + wrong.unlessOfAll().says());
      }
    }
    return styles;
  }

  private List<String> texts(String main) throws IOException {
    List<String> texts = new ArrayList<>();
    for (String part : parts.related(main, "sharedStrings")) {
      try (Xml xml = parts.xml(part)) {
        SharedTexts.read(xml, texts, budget);
      } catch (Refusal wrong) {
        remarks.add(
            Complaint.NOT_READ,
            "texts cannot be read whole: their part " + wrong.unlessOfAll().says());
      }
    }
    return texts;
  }

  private List<String> links(String main, BookPart book) throws IOException {
    List<String> links = new ArrayList<>();
    for (String id : book.externalLinks()) {
      Optional<String> part = parts.relation(main, id).flatMap(it -> parts.part(main, it));
      List<String> targets =
          part.isPresent() ? parts.targets(part.get(), "externalLink") : List.of();
      links.add(targets.isEmpty() ? "" : targets.get(0));
    }
    return links;
  }

  private Map<String, String> properties() throws IOException {
    Map<String, String> properties = new LinkedHashMap<>();
    List<String> found = new ArrayList<>(parts.related("", "custom-properties"));
    found.addAll(parts.related("", "customProperties"));
    for (String part : found) {
      try (Xml xml = parts.xml(part)) {
        xml.root();
        int root = xml.depth();
        while (xml.child(root)) {
          String name = xml.attribute("name");
          properties.put(name, Content.unspelled(xml.text()));
        }
      } catch (Refusal wrong) {
        remarks.add(
            Complaint.PARTLY_READ,
            "document properties cannot be read whole: their part "
                + wrong.unlessOfAll().says());
      }
    }
    return properties;
  }
}
