package squaresheet.xlsx;

import java.util.Map;
import squaresheet.sheet.Role;

/** The looks of {@link Looks}, spelled out for a styles part that exists, in that workbook's own font. */
final class RoleMarkup {

  private static final Map<Role, String> LINES = Map.of(
      Role.INPUT,
      "thin",
      Role.COMPUTED,
      "dotted",
      Role.CAUTION,
      "medium",
      Role.FLAG,
      "mediumDashed");

  private final PartText styles;
  private final String face;
  private final double size;

  RoleMarkup(PartText styles) {
    this.styles = styles;
    Element font = styles
        .root()
        .child("fonts")
        .flatMap(list -> list.child("font"))
        .orElse(new Element("", "font", 0, 0));
    face = font.child("name").map(it -> it.attribute("val")).orElse("Arial");
    size = font.child("sz").map(it -> Digits.parse(it.attribute("val"))).orElse(10.0);
  }

  String font(Role role) {
    Markup font = styles.markup().open("font");
    if (role == Role.TITLE
        || role == Role.HEADING
        || role == Role.TOTAL
        || role == Role.CAUTION
        || role == Role.FLAG) {
      font.empty("b");
    }
    if (role == Role.UNIT || role == Role.NOTE) {
      font.empty("i");
    }
    double points = role == Role.TITLE ? size * 1.6 : role == Role.UNIT ? size - 1 : size;
    font.val("sz", CellMarkup.number(Math.rint(points)));
    return font.val("name", face).close().toString();
  }

  String fill(Role role) {
    return switch (role) {
      case INPUT -> fill("solid", "FFFFF8DC", "");
      case HEADING -> fill("solid", "FFE7E6E6", "");
      case FLAG -> fill("gray0625", "FF808080", "FFFFFFFF");
      default -> fill("none", "", "");
    };
  }

  private String fill(String pattern, String front, String back) {
    Markup fill =
        styles.markup().open("fill").open("patternFill").attribute("patternType", pattern);
    if (!front.isEmpty()) {
      fill.open("fgColor").attribute("rgb", front).close();
    }
    if (!back.isEmpty()) {
      fill.open("bgColor").attribute("rgb", back).close();
    }
    return fill.close().close().toString();
  }

  String border(Role role) {
    String all = LINES.getOrDefault(role, "");
    String top = role == Role.TOTAL ? "thin" : all;
    String bottom = role == Role.TOTAL ? "double" : role == Role.HEADING ? "medium" : all;
    Markup border = styles.markup().open("border");
    side(border, "left", all);
    side(border, "right", all);
    side(border, "top", top);
    side(border, "bottom", bottom);
    return border.empty("diagonal").close().toString();
  }

  private static void side(Markup border, String name, String line) {
    border.open(name);
    if (!line.isEmpty()) {
      border.attribute("style", line).open("color").attribute("auto", 1).close();
    }
    border.close();
  }

  Markup alignment(Markup xf, Role role) {
    xf.open("alignment");
    if (role == Role.HEADING) {
      xf.attribute("horizontal", "center");
    } else {
      xf.attribute("vertical", "top");
    }
    if (role == Role.HEADING || role == Role.NOTE || role == Role.CAUTION) {
      xf.attribute("wrapText", 1);
    }
    return xf.close();
  }
}
