package squaresheet.formula;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import squaresheet.formula.Inference.Clash;
import squaresheet.formula.Inference.Kind;
import squaresheet.formula.Node.Operator;
import squaresheet.units.Unit;

/** Which units may be added, compared, multiplied and divided, and the sentences where they may not. */
final class UnitRules {

  /** What is done with two parts whose units must agree. */
  enum Doing {
    ADD("add"),
    SUBTRACT("subtract"),
    COMPARE("compare"),
    TOGETHER("take together"),
    CHOOSE("choose between");

    private final String words;

    Doing(String words) {
      this.words = words;
    }
  }

  private final Set<Clash> clashes = new LinkedHashSet<>();

  List<Clash> clashes() {
    return List.copyOf(clashes);
  }

  /** Two parts of a formula and the whole they make. */
  record Pair(Node whole, Node left, Measure a, Node right, Measure b) {

    Pair(Node.Binary whole, Measure a, Measure b) {
      this(whole, whole.left(), a, whole.right(), b);
    }

    boolean isSure() {
      return !a.scaled() && !b.scaled();
    }

    String sides() {
      return spelled(left) + " is " + a.unit().get() + ", " + spelled(right) + " is "
          + b.unit().get();
    }

    Clash clash(Kind kind, String sentence) {
      return new Clash(kind, spelled(whole), a.unit(), b.unit(), sentence, isSure());
    }
  }

  /** The measure of two parts that are added, subtracted, compared or chosen between. */
  Measure alike(Doing doing, Pair pair) {
    Measure a = raise(pair.a);
    Measure b = raise(pair.b);
    if (!a.isKnown() || !b.isKnown()) {
      if (isPercentOfOne(pair)) {
        return Measure.RATIO;
      }
      return a.isKnown() ? a : b.isKnown() ? b : Measure.UNKNOWN;
    }
    Unit one = a.unit().get();
    Unit other = b.unit().get();
    if (!one.withoutCounts().isLike(other.withoutCounts())) {
      return clash(doing == Doing.CHOOSE ? Kind.CHOSEN : Kind.ADDED, doing, pair, "");
    }
    if (one.isOtherSideOf(other)) {
      return otherSides(doing, pair);
    }
    if (!a.scaled() && !b.scaled() && !isOneSize(one, other)) {
      boolean percent = a.isWholePercent() != b.isWholePercent() && a.isRatio();
      return percent
          ? percentBeside(pair)
          : clash(sizes(doing), doing, pair, "; bring both to one of them first");
    }
    Measure sure = a.scaled() ? b : a;
    Unit.Kind side = one.side() == Unit.Kind.AREA ? other.side() : one.side();
    return Measure.of(sure.unit().get().as(side), sure.scaled());
  }

  private Measure otherSides(Doing doing, Pair pair) {
    boolean added = doing == Doing.ADD || doing == Doing.TOGETHER;
    return clash(
        added ? Kind.SIDES : Kind.SIDES_COMPARED,
        doing,
        pair,
        "; multiply the plan area by the pitch factor first");
  }

  private static Kind sizes(Doing doing) {
    return doing == Doing.CHOOSE ? Kind.CHOSEN : Kind.SIZES;
  }

  private static boolean isOneSize(Unit one, Unit other) {
    return Math.abs(one.withoutCounts().factorTo(other.withoutCounts()) - 1) < 1e-9;
  }

  /** Says now what a percentage was to be divided by 100 for, and was not. */
  private Measure raise(Measure measure) {
    measure.pending().ifPresent(clashes::add);
    return measure.settled();
  }

  private boolean isPercentOfOne(Pair pair) {
    boolean first = pair.a.isWholePercent() && isOne(pair.b);
    boolean second = pair.b.isWholePercent() && isOne(pair.a);
    if (first || second) {
      percentUsed(pair, first ? pair.left : pair.right);
    }
    return first || second;
  }

  private static boolean isOne(Measure measure) {
    return measure.isLiteral() && measure.literal().getAsDouble() == 1;
  }

  private Measure percentBeside(Pair pair) {
    percentUsed(pair, pair.a.isWholePercent() ? pair.left : pair.right);
    return Measure.RATIO;
  }

  private void percentUsed(Pair pair, Node percent) {
    String name = spelled(percent);
    clashes.add(pair.clash(
        Kind.PERCENT,
        name + " is in percent, where 10 means 10 %, but is used as a ratio: write " + name
            + "/100"));
  }

  private Measure clash(Kind kind, Doing doing, Pair pair, String cure) {
    String units = named(pair.a) + " and " + named(pair.b);
    clashes.add(
        pair.clash(kind, "cannot " + doing.words + " " + units + ": " + pair.sides() + cure));
    return Measure.UNKNOWN;
  }

  private static String named(Measure measure) {
    return measure.unit().get().kind().name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
  }

  static String spelled(Node node) {
    String text = Printer.print(node, false);
    return text.length() <= 60 ? text : text.substring(0, 57) + "...";
  }

  /** The measure of a product. */
  Measure product(Node.Binary whole, Measure a, Measure b) {
    if (a.isLiteral() || b.isLiteral()) {
      return a.isLiteral()
          ? Literals.times(b, a.literal().getAsDouble())
          : Literals.times(a, b.literal().getAsDouble());
    }
    if (!a.isKnown() || !b.isKnown()) {
      return Measure.UNKNOWN;
    }
    Pair pair = new Pair(whole, a, b);
    if (a.isRatio() || b.isRatio()) {
      return byRatio(pair);
    }
    return a.isPitch() || b.isPitch() ? Measure.UNKNOWN : combined(pair, true);
  }

  /** Something times a ratio; where that is a percentage, the product must yet be divided by 100. */
  private static Measure byRatio(Pair pair) {
    boolean left = pair.a.isRatio();
    Measure kept = (left ? pair.b : pair.a).sideless();
    Measure ratio = left ? pair.a : pair.b;
    if (!ratio.isWholePercent() || kept.isRatio()) {
      return ratio.pending().map(kept::pending).orElse(kept);
    }
    if (kept.awaits(Kind.TWICE)) {
      return kept.settled();
    }
    String percent = spelled(left ? pair.left : pair.right);
    String counted = spelled(left ? pair.right : pair.left);
    return kept.pending(pair.clash(
        Kind.PERCENT,
        percent + " is in percent, where 10 means 10 %, but " + counted
            + " is multiplied by it as a ratio: write " + percent + "/100"));
  }

  /** The measure of a quotient. */
  Measure quotient(Node.Binary whole, Measure a, Measure b) {
    Pair pair = new Pair(whole, a, b);
    if (b.isLiteral()) {
      return a.isLiteral() ? Measure.UNKNOWN : overNumber(pair);
    }
    if (a.isLiteral() || !a.isKnown() || !b.isKnown()) {
      return Measure.UNKNOWN;
    }
    if (b.isRatio()) {
      return b.isWholePercent() ? Measure.UNKNOWN : a.sideless();
    }
    if (b.isPitch() || a.isPitch()) {
      return Measure.UNKNOWN;
    }
    boolean same = a.unit().get().as(Unit.Kind.AREA).equals(b.unit().get().as(Unit.Kind.AREA));
    return same ? Measure.RATIO : combined(pair, false);
  }

  private static Measure overNumber(Pair pair) {
    double number = pair.b.literal().getAsDouble();
    return number == 100 && pair.a.pending().isEmpty() && isInHundreds(pair)
        ? pair.a.loosened().pending(twice(pair))
        : Literals.over(pair.a, number);
  }

  private static Clash twice(Pair pair) {
    return new Clash(
        Kind.TWICE,
        spelled(pair.whole),
        pair.a.unit(),
        Optional.empty(),
        spelled(pair.left) + " is square already, and a square is 100 sq ft: divided by 100"
            + " once more it is nothing anybody orders",
        true);
  }

  /** Whether a number of square feet was divided by 100 before. */
  private static boolean isInHundreds(Pair pair) {
    boolean squares = !pair.a.scaled()
        && pair.a.unit().filter(it -> it.kind() == Unit.Kind.SQUARES).isPresent();
    boolean again = pair.a.isArea()
        && pair.left instanceof Node.Binary before
        && before.operator() == Operator.OVER
        && before.right() instanceof Node.Number number
        && number.value() == 100;
    return squares || again;
  }

  private Measure combined(Pair pair, boolean product) {
    Unit one = pair.a.unit().get();
    Unit other = pair.b.unit().get();
    Unit unit = product ? one.times(other) : one.over(other);
    Optional<String> left = unit.uncancelled();
    if (left.isPresent() && pair.isSure()) {
      String doing = product ? "multiply " : "divide ";
      return Measure.of(unit, true)
          .pending(pair.clash(
              Kind.UNCANCELLED,
              "cannot " + doing + one + " by " + other + ": " + pair.sides() + "; " + left.get()));
    }
    if (product && isStrange(one, other, unit)) {
      return Measure.UNKNOWN.pending(pair.clash(
          Kind.MULTIPLIED,
          "cannot multiply " + one + " by " + other + ": " + pair.sides()
              + ", and what comes out is " + unit));
    }
    if (product && (one.isMoney() || other.isMoney())) {
      raise(pair.a);
      raise(pair.b);
    }
    Measure result = Measure.of(unit.as(Unit.Kind.AREA), !pair.isSure());
    return pair.a.pending().or(pair.b::pending).map(result::pending).orElse(result);
  }

  /** Whether a quantity is multiplied by a rate per something else, so that nothing cancels. */
  private static boolean isStrange(Unit one, Unit other, Unit unit) {
    boolean oneRate = one.kind() == Unit.Kind.RATE;
    if (oneRate == (other.kind() == Unit.Kind.RATE)) {
      return false;
    }
    Unit quantity = oneRate ? other : one;
    Unit rate = oneRate ? one : other;
    boolean counted = quantity.withoutCounts().isLike(Unit.RATIO) && !rate.isMoney();
    return !counted && !rate.isCountEach() && !unit.cancelsBetween(quantity, rate);
  }

  /** Holds the unit of the result against the one it is to have. */
  void wanted(Node tree, Measure measure, Unit wanted) {
    Measure found = raise(measure);
    if (!found.isKnown() || measure.pending().isPresent()) {
      return;
    }
    Unit unit = found.unit().get();
    boolean like = unit.withoutCounts().isLike(wanted.withoutCounts());
    boolean sizes = like && !found.scaled() && !isOneSize(unit, wanted);
    if (!like || unit.isOtherSideOf(wanted) || sizes) {
      clashes.add(new Clash(
          Kind.RESULT,
          spelled(tree),
          Optional.of(wanted),
          Optional.of(unit),
          "must come to " + wanted + ", but " + spelled(tree) + " comes to " + unit,
          !found.scaled()));
    }
  }

  /** Says what nothing put right any more. */
  void left(Measure found) {
    found
        .pending()
        .ifPresent(clash ->
            clashes.add(clash.kind() == Kind.PERCENT ? clash.as(Kind.PERCENT_LEFT) : clash));
  }
}
