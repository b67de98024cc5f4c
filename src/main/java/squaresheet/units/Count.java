package squaresheet.units;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A whole number of packs. Text form: {@code 30 bundles}.
 *
 * @param number how many, 0 or more
 * @param pack of what
 */
public record Count(long number, Pack pack) implements Comparable<Count> {

  private static final Pattern TEXT = Pattern.compile("(\\d{1,18}) (\\p{Ll}.*)");

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
   * Reads the text form, strictly.
   *
   * @throws IllegalArgumentException with a sentence, if the text is not one
   */
  public static Count parse(String text) {
    Matcher parts = TEXT.matcher(text);
    if (parts.matches()) {
      long number = Long.parseLong(parts.group(1));
      String word = parts.group(2);
      for (String name : List.of(word, word.replaceFirst("es$", ""), word.replaceFirst("s$", ""))) {
        if (new Pack(name).word(number).equals(word)) {
          return of(number, name);
        }
      }
    }
    throw new IllegalArgumentException("count must read like 30 bundles, but reads '" + text + "'");
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
