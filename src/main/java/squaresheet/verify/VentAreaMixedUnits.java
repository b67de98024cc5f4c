package squaresheet.verify;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Node;
import squaresheet.sheet.Address;

/** Is the free area of vents divided in square inches into a need in square feet? */
final class VentAreaMixedUnits implements Check<FormulaCell> {

  private static final CheckInfo INFO = new CheckInfo(
      "vent-area-mixed-units", Severity.WARNING, "Vents are counted in two units of area");

  private static final Pattern FREE_AREA = Pattern.compile(
      "(?<!\\p{L})(nfa|nfva|net free|free area|free vent)", Pattern.CASE_INSENSITIVE);
  private static final Pattern SQUARE_FEET =
      Pattern.compile("(?<!\\p{L})(sq\\.? ?ft|sf|square feet|ft2|ft²)", Pattern.CASE_INSENSITIVE);
  /** No vent of one piece or one foot has so many square feet of free area: it is in square inches. */
  private static final double INCHES = 4;

  private static final int STEPS = 60;

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(FormulaCell cell) {
    return Nodes.all(cell.tree(), Node.Binary.class)
        .filter(node -> node.operator() == Node.Operator.OVER)
        .flatMap(node -> freeArea(cell, node.right()).stream())
        .filter(area -> !isConverted(cell))
        .limit(1)
        .map(area -> says(cell, area));
  }

  private static Optional<Address> freeArea(FormulaCell cell, Node divisor) {
    return cell.cells(divisor).filter(Cells::isOne).map(Cells::first).filter(at -> {
      Tab tab = cell.book().tab(at.sheet());
      String called = tab.label(at.ref()) + " " + tab.headingOf(at.ref());
      return cell.book().number(at).orElse(0) >= INCHES
          && FREE_AREA.matcher(called).find()
          && !SQUARE_FEET.matcher(called).find();
    });
  }

  /** Whether the attic's area over 150 or 300 goes in, and 144 square inches to the square foot do not. */
  private static boolean isConverted(FormulaCell cell) {
    boolean attic = false;
    for (Node part : (Iterable<Node>) behind(cell)::iterator) {
      boolean hundredFortyFour =
          part instanceof Node.Number number && (number.value() == 144 || number.value() == 12);
      if (hundredFortyFour || value(cell, part) == 144) {
        return true;
      }
      attic |= value(cell, part) == 150 || value(cell, part) == 300;
    }
    return !attic;
  }

  private static double value(FormulaCell cell, Node part) {
    return part instanceof Node.Number number
        ? number.value()
        : cell.cells(part)
            .filter(Cells::isOne)
            .map(one -> cell.book().number(one.first()).orElse(0))
            .orElse(0.0);
  }

  /** All parts of the formula and of those it leans on. */
  private static Stream<Node> behind(FormulaCell cell) {
    Set<Address> seen = new LinkedHashSet<>();
    Deque<Address> next = new ArrayDeque<>(Set.of(cell.at()));
    while (!next.isEmpty() && seen.size() < STEPS) {
      Address at = next.pop();
      if (seen.add(at)) {
        next.addAll(cell.book().links().formulasRead(at));
      }
    }
    return seen.stream()
        .flatMap(at -> cell.book().formula(at).stream())
        .flatMap(formula -> Nodes.all(formula.tree()));
  }

  private static Finding says(FormulaCell cell, Address area) {
    double now = cell.book().number(cell.at()).orElse(0);
    String says = "is " + cell.shown() + ": the need is in square feet and " + area + ", "
        + Shown.of(cell.book().value(area))
        + ", in square inches; times 144, before rounding, it makes " + Shown.number(now * 144);
    return Says.about(INFO, cell.book(), cell.at(), says);
  }
}
