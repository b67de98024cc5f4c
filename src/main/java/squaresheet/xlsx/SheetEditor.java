package squaresheet.xlsx;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.URI;
import java.net.URISyntaxException;
import java.util.List;
import java.util.Optional;
import squaresheet.sheet.Block;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Ref;

/** Carries out what is to become of one sheet. */
final class SheetEditor {

  /** The order that ECMA-376 Part 1, 18.3.1.99 puts the parts of a sheet in. */
  private static final List<String> ORDER = List.of(
      "sheetPr",
      "dimension",
      "sheetViews",
      "sheetFormatPr",
      "cols",
      "sheetData",
      "sheetCalcPr",
      "sheetProtection",
      "protectedRanges",
      "scenarios",
      "autoFilter",
      "sortState",
      "dataConsolidate",
      "customSheetViews",
      "mergeCells",
      "phoneticPr",
      "conditionalFormatting",
      "dataValidations",
      "hyperlinks",
      "printOptions",
      "pageMargins",
      "pageSetup",
      "headerFooter",
      "rowBreaks",
      "colBreaks",
      "customProperties",
      "cellWatches",
      "ignoredErrors",
      "smartTags",
      "drawing",
      "legacyDrawing",
      "legacyDrawingHF",
      "drawingHF",
      "picture",
      "oleObjects",
      "controls",
      "webPublishItems",
      "tableParts",
      "extLst");

  private final Bundle bundle;
  private final Relations relations;
  private final Family family;
  private final String part;
  private SheetScan scan;

  SheetEditor(Bundle bundle, Relations relations, Family family, String part, SheetChanges changes)
      throws IOException {
    this.bundle = bundle;
    this.relations = relations;
    this.family = family;
    this.part = part;
    bundle.narrow(part);
    try (InputStream in = bundle.open(part)) {
      scan = new SheetScan(in, changes.cells).scan();
      in.transferTo(OutputStream.nullOutputStream());
    }
  }

  /** Carries it out, and tells whether a formula came or went. */
  boolean edit(SheetChanges changes, Parts parts) throws IOException {
    refuseCovered(changes);
    for (String table : parts.related(part, "table")) {
      refuseHeadings(table, changes);
    }
    links(changes.links());
    comments(changes);
    if (!changes.pictures.isEmpty()) {
      PicturesEditor pictures = new PicturesEditor(bundle, relations, family, part);
      pictures.edit(changes.pictures, child("drawing")).ifPresent(id -> relate("drawing", id));
    }
    grow(changes);
    bundle.splice(part, scan.splices());
    return scan.formulasChanged();
  }

  private void comments(SheetChanges changes) throws IOException {
    CommentsEditor comments = new CommentsEditor(bundle, relations, family, part);
    comments.drop(changes.dropped(), child("legacyDrawing"));
    if (!changes.comments().isEmpty()) {
      comments
          .edit(changes.comments(), child("legacyDrawing"))
          .ifPresent(id -> relate("legacyDrawing", id));
    }
  }

  private Optional<Element> child(String name) {
    return scan.children().stream().filter(it -> it.name.equals(name)).findFirst();
  }

  private void place(String name, Object xml) {
    scan.splices()
        .place(
            PartText.offset(scan.children(), scan.root().tagEnd, ORDER, name),
            ORDER.indexOf(name),
            xml.toString());
  }

  private void relate(String name, String id) {
    place(
        name,
        new Markup(scan.root().prefix)
            .open(name)
            .namespace("r", family.relationships)
            .attribute("r", "id", id)
            .close());
  }

  private void refuseCovered(SheetChanges changes) {
    List<Element> merged = child("mergeCells").map(it -> it.children).orElse(List.of());
    for (Element each : merged) {
      Optional<Block> block = CellPlace.block(each.attribute("ref"));
      changes.cells.forEach((ref, change) -> {
        if (change.changesContent()
            && block.filter(it -> it.contains(ref) && !it.first().equals(ref)).isPresent()) {
          throw new Refusal("has " + ref + " covered by the merged block " + block.get()
              + ", so nothing can be put there; use " + block.get().first());
        }
      });
    }
  }

  private void refuseHeadings(String table, SheetChanges changes) throws IOException {
    Element root = bundle.text(table).root();
    Optional<Block> block = CellPlace.block(root.attribute("ref"));
    int headings = root.number("headerRowCount", 1);
    changes.cells.forEach((ref, change) -> {
      if (change.changesContent()
          && block
              .filter(it -> it.contains(ref) && ref.row() < it.first().row() + headings)
              .isPresent()) {
        throw new Refusal("has " + ref + " as a heading of table '" + root.attribute("displayName")
            + "', which only a spreadsheet program can rename");
      }
    });
  }

  /** Lets the stated size of the sheet cover cells that lie outside of it. */
  private void grow(SheetChanges changes) {
    Optional<Element> stated = child("dimension");
    Optional<Block> old = stated.flatMap(it -> CellPlace.block(it.attribute("ref")));
    if (old.isEmpty()) {
      return;
    }
    Block block = old.get();
    for (Ref ref : changes.cells.keySet()) {
      block = new Block(
          new Ref(
              Math.min(block.first().row(), ref.row()),
              Math.min(block.first().column(), ref.column())),
          new Ref(
              Math.max(block.last().row(), ref.row()),
              Math.max(block.last().column(), ref.column())));
    }
    if (!block.equals(old.get())) {
      Markup anew = new Markup(scan.root().prefix).open("dimension");
      scan.splices()
          .replace(
              stated.get().start,
              stated.get().end,
              anew.attribute("ref", block.toString()).close().toString());
    }
  }

  private void links(List<Edit.SetLink> links) throws IOException {
    if (links.isEmpty()) {
      return;
    }
    StringBuilder all = new StringBuilder();
    Optional<Element> list = child("hyperlinks");
    for (Edit.SetLink link : links) {
      list.ifPresent(it -> dropLink(it, link.cell().ref()));
      all.append(link(link));
    }
    if (list.isPresent()) {
      scan.splices().insert(list.get().contentEnd, all.toString());
    } else {
      String prefix = scan.root().prefix;
      String name = prefix.isEmpty() ? "hyperlinks" : prefix + ":hyperlinks";
      place("hyperlinks", "<" + name + ">" + all + "</" + name + ">");
    }
  }

  private void dropLink(Element list, Ref ref) {
    for (Element each : list.children) {
      Optional<Block> block = CellPlace.block(each.attribute("ref")).filter(it -> it.contains(ref));
      if (block.isPresent() && block.get().rows() * block.get().columns() > 1) {
        throw new Refusal("has " + ref + " under a link that covers " + block.get()
            + ", so it cannot get a link of its own");
      }
      block.ifPresent(own -> scan.splices().replace(each.start, each.end, ""));
    }
  }

  private Markup link(Edit.SetLink link) throws IOException {
    Markup markup = new Markup(scan.root().prefix).open("hyperlink");
    markup
        .namespace("r", family.relationships)
        .attribute("ref", link.cell().ref().toString());
    if (link.target().startsWith("#")) {
      markup.attribute("location", link.target().substring(1));
    } else {
      String id =
          relations.addOutside(part, family.relationships + "/hyperlink", address(link.target()));
      markup.attribute("r", "id", id);
    }
    if (!link.tip().isEmpty()) {
      markup.attribute("tooltip", link.tip());
    }
    return markup.close();
  }

  private static String address(String target) {
    try {
      return new URI(target).toString();
    } catch (URISyntaxException wrong) {
      throw new Refusal("cannot have a link to '" + Excerpt.of(target)
          + "', because that is not a web or file address");
    }
  }
}
