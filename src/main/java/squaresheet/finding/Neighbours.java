package squaresheet.finding;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** The known names nearest to one that is not known: the nearest, and up to two more that share half of its letters. */
public final class Neighbours {

  private static final int SHOWN = 3;

  private Neighbours() {}

  /** {@code ; nearest: 'a', 'b'}, or nothing where no name is known. */
  public static String sentence(String asked, Collection<String> known) {
    List<String> sorted = known.stream()
        .sorted(Comparator.<String>comparingInt(name -> distance(asked, name))
            .thenComparing(Comparator.naturalOrder()))
        .limit(SHOWN)
        .toList();
    List<String> nearest = sorted.stream()
        .filter(name -> name.equals(sorted.get(0)) || 2 * distance(asked, name) <= asked.length())
        .map(name -> "'" + name + "'")
        .toList();
    return nearest.isEmpty() ? "" : "; nearest: " + String.join(", ", nearest);
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
