package squaresheet.xlsx;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Reads the texts that the cells of all sheets share. */
final class SharedTexts {

  private static final int OVERHEAD = 56;

  private SharedTexts() {}

  /** Adds the texts of the part, in its order, as far as it reads. */
  static void read(Xml xml, List<String> to, Budget budget) throws IOException {
    xml.root();
    int root = xml.depth();
    while (xml.child(root)) {
      if (xml.name().equals("si")) {
        String text = RichText.read(xml);
        budget.spend(OVERHEAD + (long) text.length());
        to.add(text);
      }
    }
    ((ArrayList<String>) to).trimToSize();
  }
}
