package squaresheet.verify;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import squaresheet.sheet.Address;

/** The formulas that read blocks of cells in one column, found by a row without going through them all. */
final class BlockReaders {

  private static final int GONE = -1;

  private final Reader[] readers;
  /** The lowest row that any of a group of readers reads down to: a tree whose leaves are the readers by their first rows. */
  private final int[] deepest;

  private final int leaves;

  /**
   * One reader of a stretch of the column.
   *
   * @param first the first row
   * @param last the last row
   * @param at the cell of the formula
   */
  record Reader(int first, int last, Address at) {}

  BlockReaders(List<Reader> all) {
    readers = all.stream().sorted(Comparator.comparingInt(Reader::first)).toArray(Reader[]::new);
    leaves = Math.max(1, Integer.highestOneBit(Math.max(1, readers.length - 1)) * 2);
    deepest = new int[2 * leaves];
    Arrays.fill(deepest, GONE);
    for (int i = 0; i < readers.length; i++) {
      deepest[leaves + i] = readers[i].last();
    }
    for (int i = leaves - 1; i >= 1; i--) {
      deepest[i] = Math.max(deepest[2 * i], deepest[2 * i + 1]);
    }
  }

  private BlockReaders(BlockReaders other) {
    readers = other.readers;
    leaves = other.leaves;
    deepest = other.deepest.clone();
  }

  int size() {
    return readers.length;
  }

  /** The same readers, to be taken out one by one. */
  BlockReaders copy() {
    return new BlockReaders(this);
  }

  /** Whether any formula reads the cell in that row. */
  boolean isRead(int row) {
    return find(1, row) >= 0;
  }

  /** Shows every formula that reads the cell in that row. */
  void each(int row, Consumer<Address> visitor) {
    each(1, row, visitor);
  }

  private void each(int node, int row, Consumer<Address> visitor) {
    if (deepest[node] < row || firstOf(node) > row) {
      return;
    }
    if (node >= leaves) {
      visitor.accept(readers[node - leaves].at());
      return;
    }
    each(2 * node, row, visitor);
    each(2 * node + 1, row, visitor);
  }

  /** Shows every formula that reads the cell in that row and is not taken out yet, and takes it out. */
  void take(int row, Consumer<Address> visitor) {
    for (int leaf = find(1, row); leaf >= 0; leaf = find(1, row)) {
      visitor.accept(readers[leaf - leaves].at());
      deepest[leaf] = GONE;
      for (int at = leaf >> 1; at >= 1; at >>= 1) {
        deepest[at] = Math.max(deepest[2 * at], deepest[2 * at + 1]);
      }
    }
  }

  /** The leaf of the first reader of that row; negative where there is none. */
  private int find(int node, int row) {
    if (deepest[node] < row || firstOf(node) > row) {
      return -1;
    }
    if (node >= leaves) {
      return node;
    }
    int left = find(2 * node, row);
    return left >= 0 ? left : find(2 * node + 1, row);
  }

  /** The first row of the first reader below a node: all further ones begin there or lower. */
  private int firstOf(int node) {
    int leaf = node;
    while (leaf < leaves) {
      leaf *= 2;
    }
    return leaf - leaves < readers.length ? readers[leaf - leaves].first() : Integer.MAX_VALUE;
  }
}
