package squaresheet.formula;

import squaresheet.sheet.Ref;

/**
 * A formula as seen from its own cell: equal for every cell that was filled from one formula.
 *
 * <p>Text form: rows and columns counted from the cell, {@code RC[-2]*R2C2}, which a key of a map may be made of.
 *
 * @param text the text form
 */
public record Relative(String text) {

  static Relative of(Node tree, Ref here) {
    RelativePrinter printer = new RelativePrinter(here);
    printer.write(tree, 0);
    return new Relative(printer.out.toString());
  }

  @Override
  public String toString() {
    return text;
  }

  /** Prints references as distances. */
  private static final class RelativePrinter extends Printer {
    private final Ref here;

    RelativePrinter(Ref here) {
      super(false);
      this.here = here;
    }

    @Override
    void corner(Node.Corner corner, Node.Extent extent) {
      if (extent != Node.Extent.COLUMNS) {
        part('R', corner.row(), corner.rowFixed(), here.row());
      }
      if (extent != Node.Extent.ROWS) {
        part('C', corner.column(), corner.columnFixed(), here.column());
      }
    }

    private void part(char letter, int place, boolean fixed, int own) {
      out.append(letter);
      if (fixed) {
        out.append(place + 1);
      } else if (place != own) {
        out.append('[').append(place - own).append(']');
      }
    }
  }
}
