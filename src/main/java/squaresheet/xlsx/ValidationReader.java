package squaresheet.xlsx;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import squaresheet.sheet.Block;
import squaresheet.sheet.Content;
import squaresheet.sheet.Sheet.Validation;
import squaresheet.sheet.SheetBuilder;

/** Reads what may be typed where, in the plain form and in the later extension. */
final class ValidationReader {

  private ValidationReader() {}

  /** Reads the list just started. */
  static void read(Xml xml, SheetBuilder to) throws IOException {
    int list = xml.depth();
    while (xml.child(list)) {
      if (xml.name().equals("dataValidation")) {
        one(xml, to);
      }
    }
  }

  private static void one(Xml xml, SheetBuilder to) throws IOException {
    int open = xml.depth();
    Validation.Kind kind = constant(Validation.Kind.values(), xml.attribute("type"));
    Validation.Comparison comparison =
        constant(Validation.Comparison.values(), xml.attribute("operator"));
    String said = xml.attribute("prompt");
    String message = Content.unspelled(said.isEmpty() ? xml.attribute("error") : said);
    String cells = xml.attribute("sqref");
    String first = "";
    String second = "";
    while (xml.child(open)) {
      String name = xml.name();
      String text = Content.unspelled(xml.text()).strip();
      cells = name.equals("sqref") ? text : cells;
      first = name.equals("formula1") ? FutureFunctions.shown(text) : first;
      second = name.equals("formula2") ? FutureFunctions.shown(text) : second;
    }
    List<Block> blocks = CellPlace.blocks(cells);
    if (!blocks.isEmpty()) {
      to.validation(new Validation(blocks, kind, comparison, first, second, message));
    }
  }

  /** The constant spelled like {@code textLength} in the file; the first one where the file says nothing. */
  private static <E extends Enum<E>> E constant(E[] all, String word) {
    return Arrays.stream(all)
        .filter(each -> each.name().replace("_", "").equals(word.toUpperCase(Locale.ROOT)))
        .findFirst()
        .orElse(all[0]);
  }
}
