package squaresheet.roof;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Words as people write them, and the known words nearest to an unknown one. */
final class Words {

  private Words() {}

  /** Lower case, with single spaces for hyphens, underscores and runs of space. */
  static String plain(String word) {
    return word.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", " ");
  }

  /** The sentence end that proposes the nearest known words, or lists them all where none is near. */
  static String neighbours(String word, Collection<String> known) {
    String plain = plain(word);
    List<String> near = known.stream()
        .filter(candidate -> distance(plain, plain(candidate)) <= 1 + plain.length() / 3)
        .sorted(Comparator.comparingInt((String candidate) -> distance(plain, plain(candidate)))
            .thenComparing(candidate -> candidate))
        .limit(2)
        .toList();
    return near.isEmpty() ? "known: " + quoted(known) : "nearest: " + quoted(near);
  }

  private static String quoted(Collection<String> words) {
    return String.join(", ", words.stream().map(word -> "'" + word + "'").toList());
  }

  /** How many letters must be added, dropped, changed or swapped with their neighbour to get from one to the other. */
  static int distance(String one, String other) {
    int[][] cost = new int[one.length() + 1][other.length() + 1];
    for (int i = 0; i <= one.length(); i++) {
      for (int j = 0; j <= other.length(); j++) {
        cost[i][j] = i == 0 ? j : j == 0 ? i : step(one, other, i, j, cost);
      }
    }
    return cost[one.length()][other.length()];
  }

  private static int step(String one, String other, int i, int j, int[][] cost) {
    int change = one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1;
    int least = Math.min(cost[i - 1][j - 1] + change, 1 + Math.min(cost[i - 1][j], cost[i][j - 1]));
    boolean swapped = i > 1
        && j > 1
        && one.charAt(i - 1) == other.charAt(j - 2)
        && one.charAt(i - 2) == other.charAt(j - 1);
    return swapped ? Math.min(least, cost[i - 2][j - 2] + 1) : least;
  }
}
