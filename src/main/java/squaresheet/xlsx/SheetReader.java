package squaresheet.xlsx;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import squaresheet.sheet.Block;
import squaresheet.sheet.Content;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.SheetBuilder;

/** Reads a sheet part and the parts that hang on it: tables and notes. */
final class SheetReader {

  private final Parts parts;
  private final String part;
  private final String name;
  private final SheetBuilder to;
  private final CellReader.Known known;
  private final Remarks remarks;
  private final Budget budget;

  SheetReader(
      Parts parts,
      String part,
      String name,
      CellReader.Known known,
      Remarks remarks,
      Budget budget) {
    this.parts = parts;
    this.part = part;
    this.name = name;
    this.known = known;
    this.remarks = remarks;
    this.budget = budget;
    to = Sheet.builder(name, known.texts());
  }

  Sheet read(Sheet.Visibility visibility) {
    to.visibility(visibility);
    guarded("its part", () -> {
      try (Xml xml = parts.xml(part)) {
        sheet(xml);
      }
    });
    guarded("the part with its tables", this::tables);
    guarded("the part with its notes", this::comments);
    return to.build();
  }

  private interface Step {
    void run() throws IOException;
  }

  /** What cannot be read of one part costs that part, not the rest. */
  private void guarded(String what, Step step) {
    try {
      step.run();
    } catch (Refusal wrong) {
      remarks.add(
          Complaint.NOT_READ,
          "sheet '" + name + "' cannot be read whole: " + what + " "
              + wrong.unlessOfAll().says());
    } catch (IOException wrong) {
      throw Refusal.ofAll(Unreadable.says(wrong));
    }
  }

  private void sheet(Xml xml) throws IOException {
    xml.root();
    int root = xml.depth();
    while (xml.child(root)) {
      int list = xml.depth();
      switch (xml.name()) {
        case "sheetData" -> new CellReader(xml, to, name, known, remarks, budget).read();
        case "cols" -> each(xml, list, this::column);
        case "sheetViews" -> view(xml, list);
        case "mergeCells" -> each(xml, list, it -> block(it, "ref").ifPresent(this::merged));
        case "dataValidations" -> ValidationReader.read(xml, to);
        case "extLst" -> extensions(xml, list);
        case "hyperlinks" -> each(xml, list, this::link);
        case "sheetProtection" -> {
          if (xml.flag("sheet", false)) {
            to.protect();
          }
        }
        case "autoFilter" -> block(xml, "ref").ifPresent(to::filter);
        default -> {
          // Looks, pictures and settings are none of a reader's business.
        }
      }
    }
  }

  private interface Element {
    void read(Xml xml) throws IOException;
  }

  private static void each(Xml xml, int list, Element element) throws IOException {
    while (xml.child(list)) {
      element.read(xml);
    }
  }

  private static Optional<Block> block(Xml xml, String attribute) {
    return CellPlace.block(xml.attribute(attribute));
  }

  private void merged(Block block) {
    budget.spend(100);
    to.merged(block);
  }

  private void column(Xml xml) {
    int first = xml.number("min", 0) - 1;
    int last = xml.number("max", 0) - 1;
    if (xml.flag("hidden", false) && first >= 0 && first <= last) {
      to.hiddenColumns(first, Math.min(last, CellPlace.COLUMNS - 1));
    }
  }

  private void view(Xml xml, int views) throws IOException {
    while (xml.child(views)) {
      int view = xml.depth();
      while (xml.child(view)) {
        if (xml.name().equals("pane") && xml.attribute("state").startsWith("frozen")) {
          to.frozen((int) split(xml.attribute("ySplit")), (int) split(xml.attribute("xSplit")));
        }
      }
    }
  }

  private static double split(String text) {
    double split = text.isEmpty() ? 0 : Digits.parse(text);
    return split >= 0 && split < CellPlace.ROWS ? split : 0;
  }

  private void extensions(Xml xml, int list) throws IOException {
    while (xml.child(list)) {
      int extension = xml.depth();
      while (xml.child(extension)) {
        if (xml.name().equals("dataValidations")) {
          ValidationReader.read(xml, to);
        }
      }
    }
  }

  private void link(Xml xml) throws IOException {
    String inside = xml.attribute("location");
    Optional<Relation> outside = parts.relation(part, xml.relation());
    String target =
        outside.map(Relation::target).orElse("") + (inside.isEmpty() ? "" : "#" + inside);
    budget.spend(200 + target.length());
    block(xml, "ref")
        .ifPresent(block ->
            to.link(new Sheet.Link(block, target, Content.unspelled(xml.attribute("tooltip")))));
  }

  private void tables() throws IOException {
    for (String each : parts.related(part, "table")) {
      try (Xml xml = parts.xml(each)) {
        table(xml);
      }
    }
  }

  private void table(Xml xml) throws IOException {
    xml.root();
    int root = xml.depth();
    String called = xml.attribute("displayName");
    Optional<Block> block = block(xml, "ref");
    int headings = xml.number("headerRowCount", 1);
    int totals = xml.number("totalsRowCount", 0);
    List<String> columns = new ArrayList<>();
    while (xml.child(root)) {
      int list = xml.depth();
      if (xml.name().equals("tableColumns")) {
        each(xml, list, it -> columns.add(Content.unspelled(it.attribute("name"))));
      }
    }
    block.ifPresent(it -> to.table(new Sheet.Table(called, it, columns, headings, totals)));
  }

  private void comments() throws IOException {
    for (String each : parts.related(part, "comments")) {
      try (Xml xml = parts.xml(each)) {
        comments(xml);
      }
    }
  }

  private void comments(Xml xml) throws IOException {
    Map<Integer, String> authors = new HashMap<>();
    xml.root();
    int root = xml.depth();
    while (xml.child(root)) {
      int list = xml.depth();
      if (xml.name().equals("authors")) {
        each(xml, list, it -> authors.put(authors.size(), Content.unspelled(it.text())));
      } else if (xml.name().equals("commentList")) {
        each(xml, list, it -> comment(it, authors));
      }
    }
  }

  private void comment(Xml xml, Map<Integer, String> authors) throws IOException {
    int open = xml.depth();
    String author = authors.getOrDefault(xml.number("authorId", -1), "");
    String ref = xml.attribute("ref");
    StringBuilder text = new StringBuilder();
    while (xml.child(open)) {
      if (xml.name().equals("text")) {
        text.append(RichText.read(xml));
      }
    }
    budget.spend(200 + text.length());
    CellPlace.ref(ref)
        .ifPresent(place -> to.comment(new Sheet.Comment(place, author, text.toString())));
  }
}
