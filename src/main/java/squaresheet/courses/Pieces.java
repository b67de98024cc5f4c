package squaresheet.courses;

/**
 * Pieces as laid.
 *
 * @param full pieces laid whole
 * @param cut pieces laid cut
 * @param pairs pairs of cut pieces that come out of one whole
 */
public record Pieces(long full, long cut, long pairs) {

  /** No pieces. */
  public static final Pieces NONE = new Pieces(0, 0, 0);

  public Pieces {
    if (full < 0 || cut < 0 || pairs < 0 || 2 * pairs > cut) {
      throw new IllegalArgumentException(
          "pieces must be 0 or more, and pairs at most half the cut ones, but are " + full
              + " full, " + cut + " cut, " + pairs + " pairs");
    }
  }

  /** How many whole pieces they take out of the bundle. */
  public long used() {
    return full + cut - pairs;
  }

  /** How many they would take with no cut end used again. */
  public long usedWithoutReuse() {
    return full + cut;
  }

  /** Both together. */
  public Pieces plus(Pieces other) {
    return new Pieces(full + other.full, cut + other.cut, pairs + other.pairs);
  }

  /** The same pieces with so many pairs among them. */
  public Pieces withPairs(long number) {
    return new Pieces(full, cut, number);
  }
}
