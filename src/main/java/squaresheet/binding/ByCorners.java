package squaresheet.binding;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import squaresheet.geometry.Point;
import squaresheet.units.Length;

/** Areas of a plane of free shape in a table that has columns for no corners: worked out from its corners by a formula. */
final class ByCorners {

  private static final int DECIMALS = 6;

  private final FoundTable table;
  private final int row;
  private final Known.Outline outline;

  ByCorners(FoundTable table, int row, Known.Outline outline) {
    this.table = table;
    this.row = row;
    this.outline = outline;
  }

  /**
   * The formulas, with those that ask for sizes replaced where they make an area: a plane of free shape has no such sizes.
   *
   * @param own what the row has already; only what is replaced of it is given
   * @param formulas what is carried into the row
   */
  Map<Integer, String> instead(Map<Integer, String> own, Map<Integer, String> formulas) {
    if (table.column("corners").isPresent()) {
      return formulas;
    }
    Map<Integer, String> all = new LinkedHashMap<>();
    own.forEach((at, text) -> {
      if (Template.readsSizes(table, row, text)) {
        area(at).ifPresent(formula -> all.put(at, formula));
      }
    });
    formulas.forEach((at, text) -> {
      if (!Template.readsSizes(table, row, text)) {
        all.put(at, text);
      } else {
        area(at).ifPresent(formula -> all.put(at, formula));
      }
    });
    return all;
  }

  private Optional<String> area(int at) {
    return table.columns().stream()
        .filter(column -> column.at() == at)
        .filter(column -> column.property().matches("plan_area|sloped_area"))
        .findFirst()
        .flatMap(column -> column
            .unit()
            .map(UnitWord::symbol)
            .map(unit -> formula(
                unit.equals("m²"), column.property().equals("plan_area") ? outline.factor() : 1)));
  }

  /** Half the sum of x times the next y less the next x times y, around the corners. */
  private String formula(boolean metric, double factor) {
    List<String> terms = new ArrayList<>();
    List<Point> corners = outline.corners();
    for (int i = 0; i < corners.size(); i++) {
      Point one = corners.get(i);
      Point next = corners.get((i + 1) % corners.size());
      term(terms, "+", number(one.x(), metric, 1), number(next.y(), metric, factor));
      term(terms, "-", number(next.x(), metric, 1), number(one.y(), metric, factor));
    }
    return "(" + String.join("", terms).replaceFirst("^\\+", "") + ")/2";
  }

  private static void term(List<String> terms, String sign, String x, String y) {
    if (!x.equals("0") && !y.equals("0")) {
      String other = sign.equals("+") ? "-" : "+";
      String turned = x.startsWith("-") ^ y.startsWith("-") ? other : sign;
      terms.add(turned + x.replace("-", "") + "*" + y.replace("-", ""));
    }
  }

  private static String number(Length length, boolean metric, double divisor) {
    double value = (metric ? length.toMetres() : length.toFeet()) / divisor;
    BigDecimal rounded =
        new BigDecimal(value).setScale(DECIMALS, RoundingMode.HALF_UP).stripTrailingZeros();
    return rounded.signum() == 0 ? "0" : rounded.toPlainString();
  }
}
