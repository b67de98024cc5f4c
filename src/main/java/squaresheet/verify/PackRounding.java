package squaresheet.verify;

import java.util.regex.Pattern;
import java.util.stream.Stream;
import squaresheet.formula.Formula;
import squaresheet.formula.Node;
import squaresheet.formula.Value;

/**
 * A formula that makes a need of packs whole.
 *
 * @param cell the formula
 * @param need what is needed, not rounded
 * @param now what the formula makes of it
 */
record PackRounding(FormulaCell cell, double need, double now) {

  private static final Pattern PACK = Pattern.compile(
      "(?<![\\p{L}])(bundles?|rolls?|boxes|box|packs?|pieces?|pcs|sheets?|coils?|pallets?|tubes?|bdls?|pails?|buckets?)(?![\\p{L}])",
      Pattern.CASE_INSENSITIVE);
  /** A need this close above a whole pack is that whole pack. */
  private static final double WHOLE = 1e-9;

  /** The formulas that are such a rounding as a whole and say that they stand for packs to be ordered. */
  static Stream<PackRounding> in(FormulaCell cell, String... functions) {
    return Nodes.root(cell.tree(), functions).stream()
        .filter(call -> isToWhole(cell, call) && saysPacks(cell))
        .flatMap(call -> of(cell, call));
  }

  private static boolean isToWhole(FormulaCell cell, Node.Call call) {
    if (call.function().equals("INT") || call.arguments().size() == 1) {
      return true;
    }
    Value second = cell.book().reckoning().evaluate(call.arguments().get(1), cell.at());
    boolean multiple = call.function().equals("FLOOR") || call.function().equals("MROUND");
    return second instanceof Value.Number number && number.value() == (multiple ? 1 : 0);
  }

  /** The heading or the row says packs, and nobody says that it is for information. */
  private static boolean saysPacks(FormulaCell cell) {
    String about = cell.words();
    boolean information = about
        .toLowerCase(java.util.Locale.ROOT)
        .matches(".*\\b(about|approx.*|info.*|per square|per sq|whole bundles? left)\\b.*");
    return PACK.matcher(about).find() && !information;
  }

  private static Stream<PackRounding> of(FormulaCell cell, Node.Call call) {
    Value need = cell.book().reckoning().evaluate(Formula.of(call.arguments().get(0)), cell.at());
    Value now = cell.value();
    return need instanceof Value.Number a && now instanceof Value.Number b && a.value() > 0
        ? Stream.of(new PackRounding(cell, a.value(), b.value()))
            .filter(packs -> !Shown.same(packs.need(), Math.rint(packs.need())))
        : Stream.empty();
  }

  /** Whole packs that hold the need. */
  double up() {
    return Math.ceil(need * (1 - WHOLE));
  }

  boolean isShort() {
    return now < up();
  }
}
