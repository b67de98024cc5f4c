package squaresheet.units;

/**
 * A whole number of packs. Text form: {@code 30 bundles}.
 *
 * @param number how many, 0 or more
 * @param pack of what
 */
public record Count(long number, Pack pack) implements Comparable<Count> {

  public Count {
    if (number < 0) {
      throw new IllegalArgumentException(
          "a count must be 0 or more, but is " + number + " " + pack.word(number));
    }
  }

  /** {@code number} packs of the given name. */
  public static Count of(long number, String pack) {
    return new Count(number, new Pack(pack));
  }

  /**
   * The two counts together.
   *
   * @throws IllegalArgumentException if they count different packs
   */
  public Count plus(Count other) {
    if (!pack.equals(other.pack)) {
      throw new IllegalArgumentException("cannot add " + other + " to " + this);
    }
    return new Count(Math.addExact(number, other.number), pack);
  }

  @Override
  public int compareTo(Count other) {
    return Long.compare(number, other.number);
  }

  @Override
  public String toString() {
    return number + " " + pack.word(number);
  }
}
