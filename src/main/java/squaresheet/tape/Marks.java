package squaresheet.tape;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * How a sheet writes its numbers and its days.
 *
 * @param decimal the decimal mark, a point or a comma
 * @param days the locale whose names, and whose order, of day and month hold
 */
public record Marks(char decimal, Locale days) {

  private static final Set<String> POINT =
      Set.of(".", "point", "decimal point", "dot", "period", "full stop");
  private static final Set<String> COMMA = Set.of(",", "comma", "decimal comma");

  public Marks {
    if (decimal != '.' && decimal != ',') {
      throw new IllegalArgumentException(
          "a decimal mark must be a point or a comma, but is '" + decimal + "'");
    }
  }

  /** As people write where they speak like that. */
  public static Marks of(Locale locale) {
    return new Marks(Decimals.of(locale).mark(), locale);
  }

  /** The same with this decimal mark; days stay as they are. */
  public Marks withDecimal(char mark) {
    return new Marks(mark, days);
  }

  /** The decimal mark that a word, or the mark itself, stands for; empty where it is none of them. */
  public static Optional<Character> named(String text) {
    String plain = Glyphs.plain(text);
    return POINT.contains(plain)
        ? Optional.of('.')
        : COMMA.contains(plain) ? Optional.of(',') : Optional.empty();
  }

  /** The word for the decimal mark: {@code point} or {@code comma}. */
  public String word() {
    return Decimals.word(decimal);
  }

  Decimals decimals() {
    return new Decimals(decimal);
  }
}
