package squaresheet.finding;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * The known names nearest to one that is not known: those that hold it or are held in it, then the nearest, and up to two more
 * that share half of its letters.
 */
public final class Neighbours {

  private static final int SHOWN = 3;
  /** A shorter part of a word may stand in any. */
  private static final int SHORTEST_PART = 3;

  private Neighbours() {}

  /** {@code ; nearest: 'a', 'b'}, or nothing where no name is known. */
  public static String sentence(String asked, Collection<String> known) {
    if (asked.isBlank()) {
      return "";
    }
    List<String> sorted = known.stream()
        .sorted(Comparator.<String, Boolean>comparing(name -> !isPart(asked, name))
            .thenComparingInt(name -> distance(asked, name))
            .thenComparing(Comparator.naturalOrder()))
        .limit(SHOWN)
        .toList();
    List<String> nearest = sorted.stream()
        .filter(name -> name.equals(sorted.get(0))
            || isPart(asked, name)
            || 2 * distance(asked, name) <= asked.length())
        .map(name -> "'" + name + "'")
        .toList();
    return nearest.isEmpty() ? "" : "; nearest: " + String.join(", ", nearest);
  }

  /** Whether one of the two is a part of the other. */
  private static boolean isPart(String one, String other) {
    String shorter = (one.length() < other.length() ? one : other).toLowerCase(Locale.ROOT);
    String longer = (one.length() < other.length() ? other : one).toLowerCase(Locale.ROOT);
    return shorter.strip().length() >= SHORTEST_PART && longer.contains(shorter.strip());
  }

  /** Letters to add, drop or change to get from one to the other. */
  private static int distance(String one, String other) {
    int[] row = new int[other.length() + 1];
    for (int j = 0; j <= other.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= one.length(); i++) {
      row = next(row, one.charAt(i - 1), other);
    }
    return row[other.length()];
  }

  private static int[] next(int[] above, char letter, String other) {
    int[] row = new int[above.length];
    row[0] = above[0] + 1;
    for (int j = 1; j < row.length; j++) {
      int change = above[j - 1] + (letter == other.charAt(j - 1) ? 0 : 1);
      row[j] = Math.min(change, 1 + Math.min(above[j], row[j - 1]));
    }
    return row;
  }
}
