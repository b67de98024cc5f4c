package squaresheet.xlsx;

import java.io.IOException;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.BuiltinFormats;

/** The number format of each cell style. */
final class Styles {

  private final List<String> formats = new ArrayList<>();
  private final BitSet hiding = new BitSet();

  /** The format code of the style of that number; General where there is no such style. */
  String format(int style) {
    return style < formats.size() ? formats.get(style) : "General";
  }

  /** Whether cells of that style keep their formulas to themselves while their sheet is protected. */
  boolean hidesFormulas(int style) {
    return hiding.get(style);
  }

  int size() {
    return formats.size();
  }

  /** Reads the styles part. */
  void read(Xml xml) throws IOException {
    Map<Integer, String> own = new HashMap<>();
    xml.root();
    int root = xml.depth();
    while (xml.child(root)) {
      int list = xml.depth();
      if (xml.name().equals("numFmts")) {
        while (xml.child(list)) {
          own.put(xml.number("numFmtId", -1), xml.attribute("formatCode"));
        }
      } else if (xml.name().equals("cellXfs")) {
        while (xml.child(list)) {
          formats.add(code(xml.number("numFmtId", 0), own));
          protection(xml);
        }
      }
    }
  }

  private void protection(Xml xml) throws IOException {
    int style = xml.depth();
    while (xml.child(style)) {
      if (xml.name().equals("protection") && xml.flag("hidden", false)) {
        hiding.set(formats.size() - 1);
      }
    }
  }

  private static String code(int number, Map<Integer, String> own) {
    String stated = own.get(number);
    String built = number < 0 ? null : BuiltinFormats.getBuiltinFormat(number);
    return stated != null ? stated : built == null ? "General" : built;
  }
}
