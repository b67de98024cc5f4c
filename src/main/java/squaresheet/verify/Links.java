package squaresheet.verify;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeSet;
import squaresheet.sheet.Address;
import squaresheet.sheet.Ref;

/** Which cell reads which: the graph of a workbook's formulas. */
final class Links {

  /** One reader of a block of cells. */
  private record Reader(Cells cells, Address reader) {}

  private record Column(String sheet, int column) {}

  private final Map<Address, List<Cells>> reads = new LinkedHashMap<>();
  private final Map<Address, List<Address>> cellReaders = new HashMap<>();
  private final Map<Column, List<Reader>> blockReaders = new HashMap<>();
  private final Map<Column, NavigableSet<Integer>> formulaRows = new HashMap<>();
  private final List<Address> order = new ArrayList<>();
  private final Set<Address> circular = new LinkedHashSet<>();

  /** The graph of formulas that each read these cells. */
  Links(Map<Address, List<Cells>> reads) {
    this.reads.putAll(reads);
    reads.forEach((reader, all) -> {
      formulaRows
          .computeIfAbsent(column(reader), key -> new TreeSet<>())
          .add(reader.ref().row());
      all.forEach(cells -> index(cells, reader));
    });
    sort();
  }

  private static Column column(Address address) {
    return new Column(address.sheet(), address.ref().column());
  }

  private void index(Cells cells, Address reader) {
    if (cells.isOne()) {
      cellReaders.computeIfAbsent(cells.first(), key -> new ArrayList<>()).add(reader);
      return;
    }
    for (int at = cells.block().first().column(); at <= cells.block().last().column(); at++) {
      blockReaders
          .computeIfAbsent(new Column(cells.sheet(), at), key -> new ArrayList<>())
          .add(new Reader(cells, reader));
    }
  }

  /** The cells that a formula is written with, names followed. */
  List<Cells> reads(Address formula) {
    return reads.getOrDefault(formula, List.of());
  }

  /** The formulas that read a cell directly, alone or in a block. */
  Set<Address> readers(Address cell) {
    Set<Address> all = new LinkedHashSet<>(cellReaders.getOrDefault(cell, List.of()));
    blockReaders.getOrDefault(column(cell), List.of()).stream()
        .filter(reader -> reader.cells().contains(cell))
        .forEach(reader -> all.add(reader.reader()));
    return all;
  }

  boolean isRead(Address cell) {
    return !readers(cell).isEmpty();
  }

  /** The formulas that read a cell directly or by way of others, and not the cell itself unless it reads itself. */
  Set<Address> dependents(Collection<Address> cells) {
    Set<Address> seen = new LinkedHashSet<>();
    Deque<Address> next = new ArrayDeque<>(cells);
    while (!next.isEmpty()) {
      for (Address reader : readers(next.pop())) {
        if (seen.add(reader)) {
          next.push(reader);
        }
      }
    }
    return seen;
  }

  /** The formula cells among those that a formula reads directly. */
  List<Address> formulasRead(Address formula) {
    List<Address> all = new ArrayList<>();
    for (Cells cells : reads(formula)) {
      int first = cells.block().first().row();
      int last = cells.block().last().row();
      for (int at = cells.block().first().column(); at <= cells.block().last().column(); at++) {
        Column column = new Column(cells.sheet(), at);
        for (int row : rows(column).subSet(first, true, last, true)) {
          all.add(new Address(cells.sheet(), new Ref(row, at)));
        }
      }
    }
    return all;
  }

  private NavigableSet<Integer> rows(Column column) {
    return formulaRows.getOrDefault(column, new TreeSet<>());
  }

  /** All formulas, those that are read before those that read them. */
  List<Address> order() {
    return order;
  }

  /** The formulas that come to themselves again. */
  Set<Address> circular() {
    return circular;
  }

  /** Depth first without recursion: chains in real workbooks run to thousands of cells. */
  private void sort() {
    Map<Address, Boolean> done = new HashMap<>();
    for (Address start : reads.keySet()) {
      Deque<Visit> path = new ArrayDeque<>();
      enter(start, path, done);
      while (!path.isEmpty()) {
        Visit visit = path.peek();
        if (visit.at < visit.next.size()) {
          Address next = visit.next.get(visit.at++);
          if (Boolean.FALSE.equals(done.get(next))) {
            markCircle(next, path);
          } else {
            enter(next, path, done);
          }
        } else {
          path.pop();
          done.put(visit.cell, true);
          order.add(visit.cell);
        }
      }
    }
  }

  private void enter(Address cell, Deque<Visit> path, Map<Address, Boolean> done) {
    if (!done.containsKey(cell)) {
      done.put(cell, false);
      path.push(new Visit(cell, formulasRead(cell)));
    }
  }

  private void markCircle(Address from, Deque<Visit> path) {
    for (Visit visit : path) {
      circular.add(visit.cell);
      if (visit.cell.equals(from)) {
        return;
      }
    }
  }

  private static final class Visit {
    private final Address cell;
    private final List<Address> next;
    private int at;

    Visit(Address cell, List<Address> next) {
      this.cell = cell;
      this.next = next;
    }
  }
}
