package squaresheet.sheet;

import java.util.List;

/** One change to a workbook that exists. Everything it does not speak of stays as it is. */
public sealed interface Edit {

  /**
   * What puts a sheet of our own into a workbook: at its end, or in place of the contents of one that has the same text in
   * its first cell, however that is called by now. Looks of cells that were there stay, but for number formats.
   */
  static List<Edit> renewing(Workbook book, DraftSheet sheet) {
    return Renewal.of(book, sheet);
  }

  /**
   * Puts content, in place of a formula if there is one; the cell's look stays.
   *
   * @param cell the cell
   * @param content what to put; a blank empties the cell
   */
  record SetContent(Address cell, Content content) implements Edit {}

  /**
   * Puts a formula; the cell's look stays.
   *
   * @param cell the cell
   * @param formula without its equals sign
   * @param stored the value it should show until recalculated
   */
  record SetFormula(Address cell, String formula, Content stored) implements Edit {
    public SetFormula {
      if (formula.isEmpty() || formula.startsWith("=")) {
        throw new IllegalArgumentException(
            "a formula must be given without its equals sign, but is '" + formula + "'");
      }
    }
  }

  /**
   * Gives a cell the look of a role.
   *
   * @param cell the cell
   * @param role the role
   * @param format the number format code
   */
  record SetRole(Address cell, Role role, String format) implements Edit {}

  /**
   * Changes a cell's number format and nothing else of its look.
   *
   * @param cell the cell
   * @param format the number format code
   */
  record SetFormat(Address cell, String format) implements Edit {}

  /**
   * Gives a cell the look of another on the same or another sheet.
   *
   * @param cell the cell
   * @param from the cell whose look it takes
   */
  record CopyLook(Address cell, Address from) implements Edit {}

  /**
   * Pins a note to a cell, in place of the one it has.
   *
   * @param cell the cell
   * @param author who says it
   * @param text the note
   */
  record SetComment(Address cell, String author, String text) implements Edit {}

  /**
   * Takes the note off a cell.
   *
   * @param cell the cell
   */
  record DropComment(Address cell) implements Edit {}

  /**
   * Puts a link on a cell, in place of the one it has.
   *
   * @param cell the cell
   * @param target an address, or {@code #Sheet!A1} within the workbook
   * @param tip what shows beside the pointer, may be empty
   */
  record SetLink(Address cell, String target, String tip) implements Edit {}

  /**
   * Adds a sheet behind the others.
   *
   * @param sheet the sheet; its name must not be taken
   */
  record AddSheet(DraftSheet sheet) implements Edit {}

  /**
   * Adds a picture to a sheet.
   *
   * @param sheet the sheet's name
   * @param picture the picture
   */
  record AddPicture(String sheet, DraftSheet.Picture picture) implements Edit {}

  /**
   * Adds a defined name, or changes what it stands for.
   *
   * @param name the name
   */
  record SetName(Workbook.Name name) implements Edit {}

  /**
   * Sets a custom document property.
   *
   * @param name its name
   * @param value its text
   */
  record SetProperty(String name, String value) implements Edit {}
}
