package squaresheet.finding;

import squaresheet.sheet.Address;

/** The place a finding speaks of. */
public sealed interface Where {

  /**
   * A file as a whole.
   *
   * @param file its name
   */
  record InFile(String file) implements Where {
    @Override
    public String toString() {
      return file;
    }
  }

  /**
   * A line of a text file.
   *
   * @param file its name
   * @param line 1 and up
   * @param column the heading of the column, or empty where the whole line is meant
   */
  record InLine(String file, long line, String column) implements Where {
    @Override
    public String toString() {
      return file + ", line " + line + (column.isEmpty() ? "" : ", " + column);
    }
  }

  /**
   * A cell of a workbook.
   *
   * @param file the file's name, or empty where the workbook is not yet a file
   * @param cell the cell
   */
  record InCell(String file, Address cell) implements Where {
    @Override
    public String toString() {
      return file.isEmpty() ? cell.toString() : file + ", " + cell;
    }
  }

  /**
   * A property of an item of the model, which the verify pass turns into a cell.
   *
   * @param subject the item, such as {@code plane B}
   * @param property its property, such as {@code sloped area}; empty where the item as a whole is meant
   */
  record OfItem(String subject, String property) implements Where {
    @Override
    public String toString() {
      return property.isEmpty() ? subject : subject + ": " + property;
    }
  }
}
