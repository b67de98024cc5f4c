package squaresheet.units;

import java.util.Locale;

/**
 * What a product is bought in: a bundle, a roll, a box, a piece.
 *
 * @param name the singular word, lower case, such as {@code bundle}
 */
public record Pack(String name) {

  public Pack {
    name = name.strip().toLowerCase(Locale.ROOT);
    if (name.isEmpty()) {
      throw new IllegalArgumentException("a pack must have a name, but it is empty");
    }
  }

  /** The word for {@code number} of them. */
  public String word(long number) {
    return number == 1 ? name : name.matches(".*(s|x|ch|sh)") ? name + "es" : name + "s";
  }

  @Override
  public String toString() {
    return name;
  }
}
