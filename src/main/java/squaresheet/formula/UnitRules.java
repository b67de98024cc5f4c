package squaresheet.formula;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import squaresheet.formula.Node.Operator;
import squaresheet.units.Unit;

/** Which units may be added, compared, multiplied and divided, and the sentences where they may not. */
final class UnitRules {

  /**
   * Constants that turn one unit into another: inches and feet, squares, sides of a thing, percent, metres, millimetres,
   * minutes, yards, pounds and tons.
   */
  private static final Set<Double> CONVERSIONS = Set.of(
      12.0,
      100.0,
      144.0,
      2.0,
      24.0,
      3.28084,
      0.3048,
      10.7639,
      10.76391,
      9.290304,
      0.09290304,
      3.0,
      9.0,
      27.0,
      36.0,
      60.0,
      1000.0,
      25.4,
      2.54,
      0.0254,
      2000.0,
      16.0,
      0.01,
      1.0 / 12,
      3.2808);

  /** A part of a formula whose units do not agree. */
  record Clash(String part, String sentence) {}

  private final Set<Clash> clashes = new LinkedHashSet<>();

  List<Clash> clashes() {
    return List.copyOf(clashes);
  }

  /** The measure of two parts that are added, subtracted, compared or chosen between. */
  Measure alike(String doing, Node whole, Node left, Measure a, Node right, Measure b) {
    if (!a.isKnown() || !b.isKnown()) {
      if (percent(whole, a, b, left, right)) {
        return Measure.RATIO;
      }
      return a.isKnown() ? a : b.isKnown() ? b : Measure.UNKNOWN;
    }
    Unit one = a.unit().get();
    Unit other = b.unit().get();
    if (!one.isLike(other)) {
      return clash(doing, whole, left, one, right, other, "");
    }
    if (one.isOtherSideOf(other)) {
      return clash(
          doing,
          whole,
          left,
          one,
          right,
          other,
          "; multiply the plan area by the pitch factor first");
    }
    boolean sameSize = a.scaled() || b.scaled() || Math.abs(one.factorTo(other) - 1) < 1e-9;
    if (!sameSize) {
      return clash(doing, whole, left, one, right, other, "; bring both to one of them first");
    }
    Measure sure = a.scaled() ? b : a;
    Unit.Kind side = one.side() == Unit.Kind.AREA ? other.side() : one.side();
    return Measure.of(sure.unit().get().as(side), sure.scaled());
  }

  private boolean percent(Node whole, Measure a, Measure b, Node left, Node right) {
    boolean first = isWholePercent(a) && b.isLiteral();
    boolean second = isWholePercent(b) && a.isLiteral();
    if (first || second) {
      String name = spelled(first ? left : right);
      clashes.add(new Clash(
          spelled(whole),
          name + " is in percent, where 10 means 10 %, but is used " + "as a ratio: write " + name
              + "/100"));
    }
    return first || second;
  }

  private static boolean isWholePercent(Measure measure) {
    return !measure.scaled() && measure.isRatio() && measure.unit().get().factorTo(Unit.RATIO) != 1;
  }

  private Measure clash(
      String doing, Node whole, Node left, Unit one, Node right, Unit other, String cure) {
    clashes.add(new Clash(
        spelled(whole),
        "cannot " + doing + " " + named(one) + " and " + named(other) + ": " + spelled(left)
            + " is " + one + ", " + spelled(right) + " is " + other + cure));
    return Measure.UNKNOWN;
  }

  private static String named(Unit unit) {
    return unit.kind().name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
  }

  static String spelled(Node node) {
    String text = Printer.print(node, false);
    return text.length() <= 60 ? text : text.substring(0, 57) + "...";
  }

  /** The measure of a product. */
  Measure product(Node.Binary whole, Measure a, Measure b) {
    if (a.isLiteral() || b.isLiteral()) {
      return a.isLiteral()
          ? byNumber(b, a.literal().getAsDouble())
          : byNumber(a, b.literal().getAsDouble());
    }
    if (!a.isKnown() || !b.isKnown()) {
      return Measure.UNKNOWN;
    }
    percentFactor(whole, whole.left(), a, whole.right(), b);
    percentFactor(whole, whole.right(), b, whole.left(), a);
    if (a.isRatio() || b.isRatio()) {
      return (a.isRatio() ? b : a).sideless();
    }
    if (a.isPitch() || b.isPitch()) {
      return Measure.UNKNOWN;
    }
    Unit one = a.unit().get();
    Unit other = b.unit().get();
    return combined(whole, one, other, one.times(other), a.scaled() || b.scaled());
  }

  private void percentFactor(Node whole, Node factor, Measure a, Node counted, Measure b) {
    if (isWholePercent(a) && !b.isRatio()) {
      clashes.add(new Clash(
          spelled(whole),
          spelled(factor) + " is in percent, where 10 means 10 %, but " + spelled(counted)
              + " is multiplied by it as a ratio: write " + spelled(factor) + "/100"));
    }
  }

  /** The measure of a quotient. */
  Measure quotient(Node.Binary whole, Measure a, Measure b) {
    if (b.isLiteral()) {
      return a.isLiteral() ? Measure.UNKNOWN : divided(a, b.literal().getAsDouble());
    }
    if (a.isLiteral() || !a.isKnown() || !b.isKnown()) {
      return Measure.UNKNOWN;
    }
    if (b.isRatio()) {
      return a.sideless();
    }
    if (b.isPitch() || a.isPitch()) {
      return Measure.UNKNOWN;
    }
    Unit one = a.unit().get();
    Unit other = b.unit().get();
    if (one.as(Unit.Kind.AREA).equals(other.as(Unit.Kind.AREA))) {
      return Measure.RATIO;
    }
    return combined(whole, one, other, one.over(other), a.scaled() || b.scaled());
  }

  private Measure combined(Node.Binary whole, Unit one, Unit other, Unit unit, boolean scaled) {
    boolean product = whole.operator() == Operator.TIMES;
    Optional<String> left = unit.uncancelled();
    if (left.isPresent() && !scaled) {
      clashes.add(new Clash(
          spelled(whole),
          "cannot " + (product ? "multiply " : "divide ") + one
              + " by " + other + ": " + spelled(whole.left()) + " is " + one
              + ", "
              + spelled(whole.right()) + " is " + other + "; " + left.get()));
      return Measure.of(unit, true);
    }
    if (product && isStrange(one, other, unit)) {
      clashes.add(new Clash(
          spelled(whole),
          "cannot multiply " + one + " by " + other + ": "
              + spelled(whole.left()) + " is " + one + ", " + spelled(whole.right()) + " is "
              + other
              + ", and what comes out is " + unit));
      return Measure.UNKNOWN;
    }
    return Measure.of(unit.as(Unit.Kind.AREA), scaled);
  }

  /** Whether a quantity is multiplied by a rate per something else, so that nothing cancels. */
  private static boolean isStrange(Unit one, Unit other, Unit unit) {
    boolean oneRate = one.kind() == Unit.Kind.RATE;
    boolean otherRate = other.kind() == Unit.Kind.RATE;
    if (oneRate == otherRate) {
      return false;
    }
    Unit quantity = oneRate ? other : one;
    Unit rate = oneRate ? one : other;
    return !unit.cancelsBetween(quantity, rate);
  }

  private static Measure byNumber(Measure measure, double number) {
    if (!measure.isKnown()) {
      return Measure.UNKNOWN;
    }
    if (CONVERSIONS.contains(number)) {
      return measure.loosened().sideless();
    }
    return isFactor(number) ? measure.sideless() : Measure.UNKNOWN;
  }

  private static Measure divided(Measure measure, double number) {
    if (measure.isPitch() && number == 12) {
      return Measure.RATIO;
    }
    return byNumber(measure, number);
  }

  /** Whether a typed number is a share or a waste factor rather than a hidden rate. */
  private static boolean isFactor(double number) {
    return number > 0 && number < 2;
  }

  /** Holds the unit of the result against the one it is to have. */
  void wanted(Node tree, Measure found, Unit wanted) {
    if (!found.isKnown()) {
      return;
    }
    Unit unit = found.unit().get();
    boolean sizes =
        unit.isLike(wanted) && !found.scaled() && Math.abs(unit.factorTo(wanted) - 1) > 1e-9;
    if (!unit.isLike(wanted) || unit.isOtherSideOf(wanted) || sizes) {
      clashes.add(new Clash(
          spelled(tree),
          "must come to " + wanted + ", but " + spelled(tree) + " comes to " + unit));
    }
  }
}
