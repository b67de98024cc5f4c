package squaresheet.xlsx;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import squaresheet.sheet.Content;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.Ref;

/** Puts pictures on a sheet: the image, its place on the sheet, and the way from one to the other. */
final class PicturesEditor {

  private static final String HEAD =
      "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n";

  private final Bundle bundle;
  private final Relations relations;
  private final Family family;
  private final String sheet;

  PicturesEditor(Bundle bundle, Relations relations, Family family, String sheet) {
    this.bundle = bundle;
    this.relations = relations;
    this.family = family;
    this.sheet = sheet;
  }

  /** Puts the pictures; tells the id of a fresh drawing that the sheet must then name. */
  Optional<String> edit(List<DraftSheet.Picture> pictures, Optional<Element> known)
      throws IOException {
    String drawing = known.isPresent()
        ? PartPath.resolve(sheet, relations.target(sheet, known.get().attribute("r:id")))
        : fresh();
    PartText text = bundle.text(drawing);
    int number = highest(text.root());
    for (DraftSheet.Picture picture : pictures) {
      number++;
      text.append(text.root(), anchor(picture, number, image(drawing, picture)));
    }
    return known.isPresent()
        ? Optional.empty()
        : Optional.of(relations.add(sheet, family.relationships + "/drawing", drawing));
  }

  private String fresh() throws IOException {
    String part = bundle.freeName("/xl/drawings/drawing%d.xml");
    bundle.put(
        part,
        PartText.of(HEAD + "<xdr:wsDr xmlns:xdr=\"" + family.sheetDrawing + "\" xmlns:a=\""
            + family.drawing + "\"></xdr:wsDr>"));
    relations.type(part, "application/vnd.openxmlformats-officedocument.drawing+xml");
    return part;
  }

  private String image(String drawing, DraftSheet.Picture picture) throws IOException {
    String part = bundle.freeName("/xl/media/image%d.png");
    bundle.put(part, picture.png().bytes());
    relations.typeOfEnding(part, "png", "image/png");
    return relations.add(drawing, family.relationships + "/image", part);
  }

  private static int highest(Element element) {
    int own = element.name.equals("cNvPr") ? element.number("id", 0) : 0;
    return element.children.stream().mapToInt(PicturesEditor::highest).reduce(own, Math::max);
  }

  private Markup anchor(DraftSheet.Picture picture, int number, String image) {
    Markup it = new Markup("xdr").open("twoCellAnchor").namespace("xdr", family.sheetDrawing);
    it.namespace("a", family.drawing).namespace("r", family.relationships);
    it.attribute("editAs", "oneCell");
    corner(
        it.open("from"),
        picture.anchor().first().column(),
        picture.anchor().first().row());
    Ref last = picture.anchor().last();
    corner(it.open("to"), last.column() + 1, last.row() + 1);
    it.open("pic").open("nvPicPr").open("cNvPr").attribute("id", number);
    it.attribute("name", "Picture " + number)
        .attribute("descr", Content.legible(picture.description()))
        .close();
    it.open("cNvPicPr")
        .open("a", "picLocks")
        .attribute("noChangeAspect", 1)
        .close()
        .close()
        .close();
    it.open("blipFill").open("a", "blip").attribute("r", "embed", image).close();
    it.open("a", "stretch").open("a", "fillRect").close().close().close();
    it.open("spPr")
        .open("a", "prstGeom")
        .attribute("prst", "rect")
        .open("a", "avLst")
        .close();
    return it.close().close().close().empty("clientData").close();
  }

  private static void corner(Markup it, int column, int row) {
    it.leaf("col", Integer.toString(column)).leaf("colOff", "0");
    it.leaf("row", Integer.toString(row)).leaf("rowOff", "0").close();
  }
}
