package squaresheet.xlsx;

import java.util.List;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Content;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Role;
import squaresheet.sheet.Workbook;

/** Every kind of edit, on the workbook with everything. */
enum OneEdit {
  A_NUMBER(new Edit.SetContent(at("B2"), new Content.Numeric(25.25))),
  A_TEXT(new Edit.SetContent(at("A3"), new Content.Text("South & east"))),
  NOTHING_WHERE_A_NUMBER_WAS(new Edit.SetContent(at("C4"), new Content.Blank())),
  A_NUMBER_WHERE_A_SHARED_FORMULA_BEGINS(new Edit.SetContent(at("D2"), new Content.Numeric(300))),
  A_NUMBER_FAR_OUTSIDE(new Edit.SetContent(at("K30"), new Content.Truth(true))),
  A_FORMULA(new Edit.SetFormula(at("D5"), "SUM(D2:D4)", new Content.Numeric(687))),
  A_FORMAT(new Edit.SetFormat(at("B2"), "0.000")),
  A_ROLE(new Edit.SetRole(at("B3"), Role.FLAG, "0.00")),
  A_LOOK_COPIED(new Edit.CopyLook(at("A2"), at("A1"))),
  A_NOTE_BESIDE_A_CONVERSATION(new Edit.SetComment(at("B4"), "check", "is 8, must be 18")),
  A_NOTE_IN_PLACE_OF_ANOTHER(new Edit.SetComment(at("B3"), "the estimator", "taped once more")),
  A_NOTE_WHERE_THERE_WERE_NONE(
      new Edit.SetComment(Address.of("Summary", "B4"), "check", "look here")),
  A_NOTE_TAKEN_OFF(new Edit.DropComment(at("B3"))),
  A_LINK(new Edit.SetLink(at("A4"), "https://example.org/porch", "the porch")),
  A_LINK_IN_PLACE_OF_ANOTHER(new Edit.SetLink(at("A1"), "#Summary!B3", "")),
  A_PICTURE(new Edit.AddPicture("Planes", picture())),
  A_PICTURE_WHERE_THERE_WERE_NONE(new Edit.AddPicture("Summary", picture())),
  A_SHEET(new Edit.AddSheet(new Draft().sheet("Found").put("A1", "nothing found", Role.NOTE))),
  A_NAME(new Edit.SetName(Workbook.Name.of("porch_eave", "Planes!$B$4"))),
  A_NAME_CHANGED(new Edit.SetName(Workbook.Name.of("north_eave", "Planes!$B$3"))),
  A_PROPERTY(new Edit.SetProperty("squaresheet binding", "v1"));

  // A record of values, which the checker cannot see through an interface.
  @SuppressWarnings("ImmutableEnumChecker")
  private final Edit edit;

  OneEdit(Edit edit) {
    this.edit = edit;
  }

  List<Edit> alone() {
    return List.of(edit);
  }

  private static Address at(String cell) {
    return Address.of("Planes", cell);
  }

  private static DraftSheet.Picture picture() {
    return new DraftSheet.Picture(
        Block.parse("I24:K30"), DraftSheet.Png.of(Drafts.png()), "a plane");
  }

  /** As read aloud: {@code a number}. */
  @Override
  public String toString() {
    return name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
  }
}
