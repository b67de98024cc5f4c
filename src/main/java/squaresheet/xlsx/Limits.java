package squaresheet.xlsx;

import java.util.Locale;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Edit;

/** What no spreadsheet program takes in a cell; a file that holds it is called damaged when it is opened. */
final class Limits {

  static final int LONGEST_TEXT = 32_767;
  static final int LONGEST_FORMULA = 8_192;
  static final int LONGEST_FORMAT = 255;

  private Limits() {}

  static void refuseBeyond(Edit edit) {
    if (edit instanceof Edit.SetContent it) {
      content(it.cell(), it.content());
    } else if (edit instanceof Edit.SetFormula it) {
      length(it.cell(), "a formula", it.formula(), LONGEST_FORMULA);
      content(it.cell(), it.stored());
    } else if (edit instanceof Edit.SetFormat it) {
      length(it.cell(), "a number format", it.format(), LONGEST_FORMAT);
    } else if (edit instanceof Edit.SetRole it) {
      length(it.cell(), "a number format", it.format(), LONGEST_FORMAT);
    }
  }

  private static void content(Address cell, Content content) {
    if (content instanceof Content.Text it) {
      length(cell, "a text", it.value(), LONGEST_TEXT);
    } else if (content instanceof Content.Numeric it && !Double.isFinite(it.value())) {
      throw new Refusal("cannot have " + it.value() + " in " + cell
          + ", because a cell's number must be finite; nothing was changed");
    }
  }

  private static void length(Address cell, String what, String text, int longest) {
    if (text.length() > longest) {
      throw new Refusal(String.format(
          Locale.ROOT,
          "cannot have %s of %,d characters in %s, because a cell takes at most %,d; nothing was changed",
          what,
          text.length(),
          cell,
          longest));
    }
  }
}
