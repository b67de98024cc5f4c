package squaresheet.xlsx;

import java.io.IOException;
import squaresheet.sheet.Content;

/** Reads text with runs of different looks as plain text; reading aids above the characters are left out. */
final class RichText {

  private RichText() {}

  /** All text of the element just started; steps past its end. */
  static String read(Xml xml) throws IOException {
    int open = xml.depth();
    String text = "";
    StringBuilder more = null;
    while (xml.child(open)) {
      String piece = piece(xml);
      if (text.isEmpty()) {
        text = piece;
      } else if (!piece.isEmpty()) {
        more = more == null ? new StringBuilder(text) : more;
        more.append(piece);
      }
    }
    return more == null ? text : more.toString();
  }

  private static String piece(Xml xml) throws IOException {
    String name = xml.name();
    if (name.equals("t")) {
      return Content.unspelled(xml.text());
    }
    return name.equals("r") ? read(xml) : "";
  }
}
