package squaresheet.xlsx;

import squaresheet.sheet.Content;

/** Spells a cell's value. Texts are put into the cell itself, so that the list of shared texts stays as it is. */
final class CellMarkup {

  private CellMarkup() {}

  /** The cell's type attribute, empty for a number or nothing. */
  static String type(Content stored, String formula) {
    if (stored instanceof Content.Text) {
      return formula.isEmpty() ? "inlineStr" : "str";
    }
    if (stored instanceof Content.Truth) {
      return "b";
    }
    return stored instanceof Content.Fault ? "e" : "";
  }

  /** What stands between the cell's tags. */
  static String inside(String prefix, Content stored, String formula) {
    Markup markup = new Markup(prefix);
    inside(markup, stored, formula);
    return markup.toString();
  }

  static void inside(Markup to, Content stored, String formula) {
    if (!formula.isEmpty()) {
      to.leaf("f", FutureFunctions.inFile(formula));
    }
    if (stored instanceof Content.Text it && formula.isEmpty()) {
      to.open("is")
          .open("t")
          .attribute("xml", "space", "preserve")
          .text(it.value())
          .close()
          .close();
    } else if (!(stored instanceof Content.Blank)) {
      to.leaf("v", value(stored));
    }
  }

  private static String value(Content stored) {
    if (stored instanceof Content.Numeric it) {
      return number(it.value());
    }
    if (stored instanceof Content.Truth it) {
      return it.value() ? "1" : "0";
    }
    return stored instanceof Content.Text it
        ? it.value()
        : stored instanceof Content.Fault it ? it.code() : "";
  }

  /** Whole numbers without a point, others as Java spells them, which any program reads back exactly. */
  static String number(double value) {
    boolean whole = value == Math.rint(value) && Math.abs(value) < 1e15;
    return whole ? Long.toString((long) value) : Double.toString(value);
  }
}
