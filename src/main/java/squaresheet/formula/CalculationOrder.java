package squaresheet.formula;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Ref;

/** Puts formula cells in an order in which each comes after those it needs, and finds the circles. Nothing recurses. */
final class CalculationOrder {

  private static final int NAMES_DEEP = 32;

  private static final Comparator<FormulaCell> BY_PLACE = Comparator.comparing(
          (FormulaCell cell) -> cell.at().sheet())
      .thenComparing(cell -> cell.at().ref());

  /** Functions that ask where cells are and not what is in them. */
  private static final Set<String> PLACES = Set.of("ROW", "COLUMN", "ROWS", "COLUMNS");

  private final Tabs tabs;
  private final IdentityHashMap<FormulaCell, Set<FormulaCell>> needs = new IdentityHashMap<>();
  private final IdentityHashMap<FormulaCell, List<FormulaCell>> needers = new IdentityHashMap<>();
  private final IdentityHashMap<FormulaCell, Integer> waiting = new IdentityHashMap<>();
  private final Deque<FormulaCell> ready = new ArrayDeque<>();
  private final List<FormulaCell> order = new ArrayList<>();
  private final List<List<FormulaCell>> cycles = new ArrayList<>();

  CalculationOrder(Tabs tabs, List<FormulaCell> cells) {
    this.tabs = tabs;
    cells.forEach(this::link);
    cells.stream().filter(cell -> waiting.get(cell) == 0).forEach(ready::add);
    run();
    for (FormulaCell cell : cells) {
      while (waiting.get(cell) > 0) {
        breakCycle(cell);
        run();
      }
    }
  }

  List<FormulaCell> inOrder() {
    return order;
  }

  List<List<FormulaCell>> cycles() {
    return cycles;
  }

  private void link(FormulaCell cell) {
    Set<FormulaCell> needed = new LinkedHashSet<>();
    collect(cell.formula().tree(), cell.at(), needed, 0);
    needs.put(cell, needed);
    waiting.put(cell, needed.size());
    needed.forEach(
        other -> needers.computeIfAbsent(other, it -> new ArrayList<>()).add(cell));
  }

  private void run() {
    while (!ready.isEmpty()) {
      FormulaCell cell = ready.poll();
      order.add(cell);
      release(cell);
    }
  }

  private void release(FormulaCell cell) {
    for (FormulaCell needer : needers.getOrDefault(cell, List.of())) {
      if (waiting.get(needer) > 0 && waiting.merge(needer, -1, Integer::sum) == 0) {
        ready.add(needer);
      }
    }
  }

  /** Follows what a waiting cell waits for until a cell comes again; that circle is taken out. */
  private void breakCycle(FormulaCell from) {
    LinkedHashSet<FormulaCell> path = new LinkedHashSet<>();
    FormulaCell at = from;
    while (path.add(at)) {
      at = needs.get(at).stream()
          .filter(next -> waiting.get(next) > 0)
          .findFirst()
          .orElseThrow();
    }
    List<FormulaCell> whole = new ArrayList<>(path);
    List<FormulaCell> cycle = new ArrayList<>(whole.subList(whole.indexOf(at), whole.size()));
    FormulaCell first = cycle.stream().min(BY_PLACE).orElseThrow();
    Collections.rotate(cycle, -cycle.indexOf(first));
    cycles.add(cycle);
    cycle.forEach(cell -> waiting.put(cell, 0));
    cycle.forEach(this::release);
  }

  private void collect(Node node, Address here, Set<FormulaCell> needed, int deep) {
    if (node instanceof Node.Call call && PLACES.contains(call.function())) {
      return;
    }
    CellScope scope = new CellScope(tabs, here);
    if (node instanceof Node.Reference reference) {
      add(reference, here, needed);
    } else if (node instanceof Node.Table table) {
      scope.table(table).ifPresent(reference -> add(reference, here, needed));
    } else if (node instanceof Node.Name name && deep < NAMES_DEEP) {
      scope.defined(name).ifPresent(it -> collect(it, here, needed, deep + 1));
    } else if (node instanceof Node.Binary binary
        && binary.operator() == Node.Operator.RANGE
        && binary.left() instanceof Node.Reference left) {
      addAround(left, binary.right(), here, needed);
    }
    node.parts().forEach(part -> collect(part, here, needed, deep));
  }

  /** A range that ends where a function says, as {@code C1:INDEX(C1:C6,3)}, needs no more than all that is spelled in it. */
  private void addAround(Node.Reference left, Node right, Address here, Set<FormulaCell> needed) {
    Trees.walk(right, node -> {
      if (node instanceof Node.Reference end) {
        Block block = left.block();
        Block other = end.block();
        Ref first = new Ref(
            Math.min(block.first().row(), other.first().row()),
            Math.min(block.first().column(), other.first().column()));
        Ref last = new Ref(
            Math.max(block.last().row(), other.last().row()),
            Math.max(block.last().column(), other.last().column()));
        add(sheet(left, here), new Block(first, last), needed);
      }
    });
  }

  private static String sheet(Node.Reference reference, Address here) {
    return reference.sheet().isEmpty() ? here.sheet() : reference.sheet();
  }

  private void add(Node.Reference reference, Address here, Set<FormulaCell> needed) {
    add(sheet(reference, here), reference.block(), needed);
  }

  private void add(String sheet, Block block, Set<FormulaCell> needed) {
    Optional<Tabs.Tab> tab = tabs.tab(sheet);
    if (tab.isEmpty()) {
      return;
    }
    long size = (long) block.rows() * block.columns();
    if (size > tab.get().formulas().size() + 8L) {
      tab.get().formulas().stream().filter(cell -> touches(block, cell)).forEach(needed::add);
      return;
    }
    for (int row = block.first().row(); row <= block.last().row(); row++) {
      for (int column = block.first().column(); column <= block.last().column(); column++) {
        tab.get().formula(new Ref(row, column)).ifPresent(needed::add);
      }
    }
  }

  private static boolean touches(Block block, FormulaCell cell) {
    Ref ref = cell.at().ref();
    Block filled = cell.array().orElse(new Block(ref, ref));
    return filled.first().row() <= block.last().row()
        && filled.last().row() >= block.first().row()
        && filled.first().column() <= block.last().column()
        && filled.last().column() >= block.first().column();
  }
}
