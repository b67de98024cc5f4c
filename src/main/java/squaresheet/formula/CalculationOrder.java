package squaresheet.formula;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;

/**
 * Puts formula cells in an order in which each comes after those it needs, and finds the circles: strongly connected parts
 * by Tarjan's method, without recursion. What a formula needs stays a few blocks, so that thousands of formulas over whole
 * columns take no more time or room than their number.
 */
final class CalculationOrder {

  private static final Comparator<FormulaCell> BY_PLACE = Comparator.comparing(
          (FormulaCell cell) -> cell.at().sheet())
      .thenComparing(cell -> cell.at().ref());

  private final List<FormulaCell> cells;
  private final OrderIndex index;
  private final int[] opened;
  private final int[] low;
  /** The formulas come to, in turn; a formula's number by when it was come to. */
  private final int[] turns;

  private int turn;
  private final Deque<Integer> open = new ArrayDeque<>();
  private final List<FormulaCell> order = new ArrayList<>();
  private final List<Circle> circles = new ArrayList<>();

  /**
   * Formulas that need each other.
   *
   * @param way some of them, each of which needs the next, and the last the first
   * @param all all of them
   */
  record Circle(List<FormulaCell> way, List<FormulaCell> all) {}

  CalculationOrder(Tabs tabs, List<FormulaCell> cells) {
    this.cells = cells;
    cells.forEach(cell -> cell.reads(Needs.of(tabs, cell)));
    index = new OrderIndex(tabs, cells);
    opened = new int[cells.size()];
    low = new int[cells.size()];
    turns = new int[cells.size() + 1];
    for (int node = 0; node < cells.size(); node++) {
      if (opened[node] == 0) {
        visit(node);
      }
    }
  }

  List<FormulaCell> inOrder() {
    return order;
  }

  List<Circle> circles() {
    return circles;
  }

  /** A formula on the way, and how far its needs are followed. */
  private static final class Step {
    private final int node;
    private int reading;

    Step(int node) {
      this.node = node;
    }
  }

  private void visit(int start) {
    Deque<Step> way = new ArrayDeque<>();
    way.push(enter(start));
    while (!way.isEmpty()) {
      Step step = way.peek();
      int fresh = fresh(step);
      if (fresh >= 0) {
        way.push(enter(fresh));
      } else {
        way.pop();
        leave(step.node);
        if (!way.isEmpty()) {
          int before = way.peek().node;
          low[before] = Math.min(low[before], low[step.node]);
        }
      }
    }
  }

  private Step enter(int node) {
    opened[node] = ++turn;
    low[node] = turn;
    turns[turn] = node;
    open.push(node);
    index.open(node, turn);
    return new Step(node);
  }

  private int fresh(Step step) {
    List<FormulaCell.Reading> reads = cells.get(step.node).reads();
    for (; step.reading < reads.size(); step.reading++) {
      int fresh = index.fresh(reads.get(step.reading));
      if (fresh >= 0) {
        return fresh;
      }
    }
    return -1;
  }

  /** All it needs is come to: what of that is still open may need it in turn. */
  private void leave(int node) {
    int earliest = OrderColumn.NEVER;
    for (FormulaCell.Reading reading : cells.get(node).reads()) {
      earliest = Math.min(earliest, index.earliest(reading));
    }
    low[node] = Math.min(low[node], earliest);
    if (low[node] < opened[node]) {
      return;
    }
    boolean alone = open.peek() == node && earliest == OrderColumn.NEVER;
    if (alone) {
      order.add(cells.get(node));
    } else {
      circles.add(circle(node));
    }
    int closed;
    do {
      closed = open.pop();
      index.close(closed);
      // A part of a circle can be left before the circle is: what it would give its way back is
      // settled here.
      low[closed] = OrderColumn.NEVER;
    } while (closed != node);
  }

  private Circle circle(int node) {
    List<FormulaCell> all = new ArrayList<>();
    for (int one : open) {
      all.add(cells.get(one));
      if (one == node) {
        break;
      }
    }
    all.sort(BY_PLACE);
    return new Circle(way(all.get(0)), all);
  }

  /** Follows what a cell of a circle needs in it until a cell comes again. */
  private List<FormulaCell> way(FormulaCell from) {
    LinkedHashSet<FormulaCell> path = new LinkedHashSet<>();
    FormulaCell at = from;
    while (path.add(at)) {
      int earliest = at.reads().stream()
          .mapToInt(index::earliest)
          .filter(it -> it != OrderColumn.NEVER)
          .findFirst()
          .orElseThrow();
      at = cells.get(turns[earliest]);
    }
    List<FormulaCell> whole = new ArrayList<>(path);
    List<FormulaCell> way = new ArrayList<>(whole.subList(whole.indexOf(at), whole.size()));
    Collections.rotate(way, -way.indexOf(way.stream().min(BY_PLACE).orElseThrow()));
    return way;
  }
}
