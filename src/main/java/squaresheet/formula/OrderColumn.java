package squaresheet.formula;

import java.util.Arrays;
import java.util.List;

/**
 * The formulas of one column while they are put in order: which are not come to yet, and how early those were come to that
 * are still open. Both are asked for a stretch of rows and answered without going through it.
 */
final class OrderColumn {

  /** Later than any. */
  static final int NEVER = Integer.MAX_VALUE;

  private final int[] rows;
  private final int[] nodes;
  /** The next place at or below that is not come to yet, not always up to date. */
  private final int[] next;
  /** How early each was come to, the leaves of a tree whose nodes hold the earliest of the two below them. */
  private final int[] opened;

  /**
   * A column of formulas.
   *
   * @param rows their rows, from the top
   * @param nodes their numbers
   */
  OrderColumn(List<Integer> rows, List<Integer> nodes) {
    this.rows = rows.stream().mapToInt(it -> it).toArray();
    this.nodes = nodes.stream().mapToInt(it -> it).toArray();
    next = new int[this.rows.length + 1];
    Arrays.setAll(next, it -> it);
    opened = new int[2 * this.rows.length];
    Arrays.fill(opened, NEVER);
  }

  int place(int row) {
    return Arrays.binarySearch(rows, row);
  }

  private int from(int row) {
    int found = place(row);
    return found >= 0 ? found : -found - 1;
  }

  /** The first formula in these rows that is not come to yet; negative where there is none. */
  int fresh(int first, int last) {
    int at = root(from(first));
    return at < rows.length && rows[at] <= last ? nodes[at] : -1;
  }

  private int root(int place) {
    int root = place;
    while (next[root] != root) {
      root = next[root];
    }
    for (int at = place; next[at] != root; ) {
      int after = next[at];
      next[at] = root;
      at = after;
    }
    return root;
  }

  void open(int place, int when) {
    next[place] = place + 1;
    set(place, when);
  }

  void close(int place) {
    set(place, NEVER);
  }

  private void set(int place, int when) {
    int at = place + rows.length;
    opened[at] = when;
    for (at >>= 1; at >= 1; at >>= 1) {
      opened[at] = Math.min(opened[2 * at], opened[2 * at + 1]);
    }
  }

  /** How early the earliest open formula in these rows was come to. */
  int earliest(int first, int last) {
    int low = from(first) + rows.length;
    int high = from(last + 1) + rows.length;
    int earliest = NEVER;
    for (; low < high; low >>= 1, high >>= 1) {
      if ((low & 1) == 1) {
        earliest = Math.min(earliest, opened[low++]);
      }
      if ((high & 1) == 1) {
        earliest = Math.min(earliest, opened[--high]);
      }
    }
    return earliest;
  }
}
