package squaresheet.xlsx;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntSupplier;
import org.apache.poi.ss.usermodel.BuiltinFormats;
import squaresheet.sheet.Role;

/** Adds looks to the styles part; those that are there keep their numbers and their bytes. */
final class StyleEdits {

  private static final List<String> ORDER = List.of(
      "numFmts",
      "fonts",
      "fills",
      "borders",
      "cellStyleXfs",
      "cellXfs",
      "cellStyles",
      "dxfs",
      "tableStyles",
      "colors",
      "extLst");
  private static final int FIRST_OWN_FORMAT = 164;

  private final PartText styles;
  private final RoleMarkup looks;
  private final Map<String, Integer> added = new HashMap<>();
  private final Map<String, Integer> counts = new HashMap<>();
  private final Map<Integer, String> addedXfs = new HashMap<>();
  private final Map<String, Integer> formats = new HashMap<>();
  private StringBuilder freshFormats = new StringBuilder();

  StyleEdits(PartText styles) {
    this.styles = styles;
    looks = new RoleMarkup(styles);
    styles
        .root()
        .child("numFmts")
        .ifPresent(list -> list.children.forEach(
            each -> formats.putIfAbsent(each.attribute("formatCode"), each.number("numFmtId", 0))));
  }

  /** The number of a style that looks as the role does. */
  int role(Role role, String format) {
    return once(role + " " + format, () -> {
      Markup xf = styles.markup().open("xf");
      xf.attribute("numFmtId", formatNumber(format));
      xf.attribute("fontId", part("fonts", looks.font(role)));
      xf.attribute("fillId", part("fills", looks.fill(role)));
      xf.attribute("borderId", part("borders", looks.border(role)));
      xf.attribute("xfId", 0).attribute("applyNumberFormat", 1).attribute("applyFont", 1);
      xf.attribute("applyFill", 1).attribute("applyBorder", 1).attribute("applyAlignment", 1);
      return xf(looks.alignment(xf, role).close().toString());
    });
  }

  /** The number of a style that is like another but for its number format. */
  int withFormat(int style, String format) {
    return once(style + " # " + format, () -> {
      String xf = raw(style);
      int end = xf.indexOf('>') + 1;
      String tag =
          Tag.with(xf.substring(0, end), "numFmtId", Integer.toString(formatNumber(format)));
      return xf(Tag.with(tag, "applyNumberFormat", "1") + xf.substring(end));
    });
  }

  private int once(String key, IntSupplier make) {
    if (!added.containsKey(key)) {
      added.put(key, make.getAsInt());
    }
    return added.get(key);
  }

  private String raw(int style) {
    List<Element> xfs = list("cellXfs").children;
    if (addedXfs.containsKey(style)) {
      return addedXfs.get(style);
    }
    return style < xfs.size()
        ? styles.raw(xfs.get(style))
        : styles
            .markup()
            .open("xf")
            .attribute("numFmtId", 0)
            .attribute("fontId", 0)
            .attribute("fillId", 0)
            .attribute("borderId", 0)
            .close()
            .toString();
  }

  private int xf(String xml) {
    int number = part("cellXfs", xml);
    addedXfs.put(number, xml);
    return number;
  }

  private Element list(String name) {
    return styles
        .root()
        .child(name)
        .orElseThrow(() -> new Refusal("has a styles part without its list of " + name));
  }

  /** Adds to a list and tells the number there; the same thing is added once. */
  private int part(String name, String xml) {
    return once(name + " " + xml, () -> {
      Element list = list(name);
      int number = counts.merge(name, 1, Integer::sum) - 1 + list.children.size();
      styles.append(list, xml);
      styles.set(list, "count", Integer.toString(number + 1));
      return number;
    });
  }

  private int formatNumber(String code) {
    int built = code.equals("General") ? 0 : BuiltinFormats.getBuiltinFormat(code);
    if (built >= 0) {
      return built;
    }
    return formats.computeIfAbsent(code, fresh -> {
      int number = formats.values().stream().mapToInt(it -> it + 1).max().orElse(0);
      return addFormat(Math.max(Math.max(FIRST_OWN_FORMAT, number), afterUsed()), fresh);
    });
  }

  /** After every number in use; some files use numbers that they never tell the format of. */
  private int afterUsed() {
    return styles.root().children.stream()
        .flatMap(list -> list.children.stream())
        .mapToInt(each -> each.number("numFmtId", 0) + 1)
        .max()
        .orElse(0);
  }

  private int addFormat(int number, String code) {
    freshFormats.append(styles
        .markup()
        .open("numFmt")
        .attribute("numFmtId", number)
        .attribute("formatCode", code)
        .close());
    counts.merge("numFmts", 1, Integer::sum);
    return number;
  }

  /** Writes what could not be written bit by bit; to be called once, last. */
  void finish() {
    if (freshFormats.isEmpty()) {
      return;
    }
    int count = counts.get("numFmts");
    styles
        .root()
        .child("numFmts")
        .ifPresentOrElse(
            list -> {
              styles.append(list, freshFormats);
              styles.set(list, "count", Integer.toString(list.children.size() + count));
            },
            () -> {
              String tag = styles
                  .markup()
                  .open("numFmts")
                  .attribute("count", count)
                  .text("")
                  .close()
                  .toString();
              String open = Tag.opened(tag.substring(0, tag.indexOf('>') + 1));
              styles.place(
                  styles.root(), ORDER, "numFmts", open + freshFormats + Tag.closing(open));
            });
    freshFormats = new StringBuilder();
  }
}
