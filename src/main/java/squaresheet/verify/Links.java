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
import java.util.function.Consumer;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import squaresheet.sheet.Address;
import squaresheet.sheet.Ref;

/** Which cell reads which, as the formulas of a workbook are written. */
final class Links {

  private final Looks looks;

  private record Column(String sheet, int column) {}

  private final Map<Address, List<Cells>> reads = new LinkedHashMap<>();
  private final Map<Address, List<Address>> cellReaders = new HashMap<>();
  private final Map<Column, BlockReaders> blockReaders = new HashMap<>();
  private final Map<Column, NavigableSet<Integer>> formulaRows = new HashMap<>();

  /** The graph of formulas that each read these cells; who asks it looks at those it answers with. */
  Links(Map<Address, List<Cells>> reads, Looks looks) {
    this.looks = looks;
    this.reads.putAll(reads);
    Map<Column, List<BlockReaders.Reader>> blocks = new HashMap<>();
    reads.forEach((reader, all) -> {
      formulaRows
          .computeIfAbsent(column(reader), key -> new TreeSet<>())
          .add(reader.ref().row());
      all.forEach(cells -> index(cells, reader, blocks));
    });
    blocks.forEach((column, readers) -> blockReaders.put(column, new BlockReaders(readers)));
  }

  private static Column column(Address address) {
    return new Column(address.sheet(), address.ref().column());
  }

  private static Stream<Column> columns(Cells cells) {
    return IntStream.rangeClosed(
            cells.block().first().column(), cells.block().last().column())
        .mapToObj(at -> new Column(cells.sheet(), at));
  }

  private void index(Cells cells, Address reader, Map<Column, List<BlockReaders.Reader>> blocks) {
    if (cells.isOne()) {
      cellReaders.computeIfAbsent(cells.first(), key -> new ArrayList<>()).add(reader);
      return;
    }
    BlockReaders.Reader made = new BlockReaders.Reader(
        cells.block().first().row(), cells.block().last().row(), reader);
    columns(cells)
        .forEach(
            column -> blocks.computeIfAbsent(column, key -> new ArrayList<>()).add(made));
  }

  /** The cells that a formula is written with, names followed. */
  List<Cells> reads(Address formula) {
    return reads.getOrDefault(formula, List.of());
  }

  /** The formulas that read a cell directly, alone or in a block. */
  Set<Address> readers(Address cell) {
    Set<Address> all = new LinkedHashSet<>(cellReaders.getOrDefault(cell, List.of()));
    BlockReaders blocks = blockReaders.get(column(cell));
    if (blocks != null) {
      blocks.each(cell.ref().row(), reader -> {
        looks.spend(1);
        all.add(reader);
      });
    }
    return all;
  }

  boolean isRead(Address cell) {
    BlockReaders blocks = blockReaders.get(column(cell));
    return cellReaders.containsKey(cell)
        || (blocks != null && blocks.isRead(cell.ref().row()));
  }

  /** The formulas that read a cell directly or by way of others, and not the cell itself unless it reads itself. */
  Set<Address> dependents(Collection<Address> cells) {
    Map<Column, BlockReaders> left = new HashMap<>();
    Set<Address> seen = new LinkedHashSet<>();
    Deque<Address> next = new ArrayDeque<>(cells);
    Consumer<Address> take = reader -> {
      looks.spend(1);
      if (seen.add(reader)) {
        next.push(reader);
      }
    };
    while (!next.isEmpty()) {
      Address cell = next.pop();
      cellReaders.getOrDefault(cell, List.of()).forEach(take);
      Column column = column(cell);
      if (blockReaders.containsKey(column)) {
        left.computeIfAbsent(column, this::taken).take(cell.ref().row(), take);
      }
    }
    return seen;
  }

  private BlockReaders taken(Column column) {
    BlockReaders readers = blockReaders.get(column);
    looks.spend(readers.size());
    return readers.copy();
  }

  /** These formulas and all that they read directly or by way of others. */
  Set<Address> behind(Collection<Address> formulas) {
    Map<Column, NavigableSet<Integer>> left = new HashMap<>();
    Set<Address> seen = new LinkedHashSet<>();
    Deque<Address> next = new ArrayDeque<>(formulas);
    while (!next.isEmpty()) {
      Address formula = next.pop();
      if (reads.containsKey(formula) && seen.add(formula)) {
        reads(formula)
            .forEach(cells -> columns(cells).filter(formulaRows::containsKey).forEach(column -> {
              NavigableSet<Integer> rows =
                  left.computeIfAbsent(column, key -> new TreeSet<>(formulaRows.get(key)));
              NavigableSet<Integer> fresh = within(rows, cells);
              fresh.forEach(
                  row -> next.push(new Address(column.sheet(), new Ref(row, column.column()))));
              fresh.clear();
            }));
      }
    }
    return seen;
  }

  private static NavigableSet<Integer> within(NavigableSet<Integer> rows, Cells cells) {
    return rows.subSet(cells.block().first().row(), true, cells.block().last().row(), true);
  }

  /** The formula cells among those that a formula reads directly. */
  List<Address> formulasRead(Address formula) {
    return eachFormulaRead(formula).toList();
  }

  /** The same one after the other, for who may stop at one of them. */
  Stream<Address> eachFormulaRead(Address formula) {
    return reads(formula).stream().flatMap(this::formulasIn);
  }

  /** The formula cells of a block, column by column. */
  Stream<Address> formulasIn(Cells cells) {
    return columns(cells)
        .filter(formulaRows::containsKey)
        .flatMap(column -> within(formulaRows.get(column), cells).stream()
            .map(row -> new Address(column.sheet(), new Ref(row, column.column()))))
        .peek(found -> looks.spend(1));
  }

  /** Whether a formula is written with its own cell. */
  boolean readsItself(Address formula) {
    return reads(formula).stream().anyMatch(cells -> cells.contains(formula));
  }
}
