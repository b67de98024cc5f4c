package squaresheet.xlsx;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import javax.imageio.ImageIO;
import squaresheet.sheet.Block;
import squaresheet.sheet.Content;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Role;
import squaresheet.sheet.Sheet;

/** Drafts for the tests of this room. */
final class Drafts {

  private Drafts() {}

  /** A small workbook with one of everything a draft can hold. */
  static Draft ofEverything() {
    Draft draft = new Draft().title("A small roof");
    DraftSheet planes = draft.sheet("Planes");
    planes.put("A1", "Planes of the roof", Role.TITLE).merge(Block.parse("A1:D1"));
    planes.put("A2", "plane", Role.HEADING).put("B2", "eave, ft", Role.HEADING);
    planes.put("C2", "rake, ft", Role.HEADING).put("D2", "area, sq ft", Role.HEADING);
    planes
        .put("A3", "A", Role.LABEL)
        .put("B3", Entry.number(24.5).as(Role.INPUT).format("0.00"));
    planes.put("C3", Entry.number(12).as(Role.INPUT).format("0.00"));
    planes.put("D3", Entry.formula("B3*C3", new Content.Numeric(294)).format("#,##0.0"));
    planes.put("D4", Entry.formula("SUM(D3:D3)", new Content.Numeric(294)).as(Role.TOTAL));
    planes.put("A5", Entry.formula("IF(D4>0,\"fine\",\"short\")", new Content.Text("fine")));
    planes.put("B5", Entry.formula("D4>0", new Content.Truth(true)));
    planes.put("C5", Entry.formula("IFNA(1/0,2)", new Content.Fault("#DIV/0!")));
    planes.put("A6", Entry.text("two\nlines & <marks> \u0007 _x0041_ \u00bd").as(Role.NOTE));
    planes.put("B6", Entry.of(new Content.Truth(false)));
    planes.width(0, 18).width(3, 14).height(1, 30).freeze(2, 1);
    planes.validate(Sheet.Validation.number(Block.parse("B3:C3"), 0, 400, "feet, 0 to 400"));
    planes.validate(
        Sheet.Validation.choice(Block.parse("A3:A3"), List.of("A", "B"), "a plane's letter"));
    planes.comment(Ref.parse("B3"), "office", "measured twice");
    planes.link(new Sheet.Link(Block.parse("A3"), "#Notes!A1", "to the notes"));
    planes.picture(Block.parse("F2:H8"), png(), "a rectangle with its eave and rake");
    planes.print(new DraftSheet.Print(
        DraftSheet.Paper.LETTER, true, 2, "Roof & sons", "Check before ordering", 0.5));
    draft.sheet("Notes").put("A1", "hidden & kept", Role.NOTE).visibility(Sheet.Visibility.HIDDEN);
    draft.name("total_area", "Planes!$D$4").property("binding", "one");
    return draft;
  }

  static byte[] png() {
    BufferedImage image = new BufferedImage(40, 20, BufferedImage.TYPE_INT_RGB);
    image.createGraphics().drawRect(2, 2, 30, 12);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      ImageIO.write(image, "png", bytes);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return bytes.toByteArray();
  }
}
