package squaresheet.binding;

import java.util.List;
import java.util.function.Predicate;
import squaresheet.geometry.Point;
import squaresheet.units.Length;
import squaresheet.units.Pitch;

/** A value as the model has it, before it is written the way a column writes it. */
sealed interface Known {

  /** A length, exact. */
  record Size(Length length) implements Known {}

  /** A pitch. */
  record Steep(Pitch pitch) implements Known {}

  /**
   * A number.
   *
   * @param plain in feet, square feet, rise per 12 or as a plain ratio or count
   * @param or what a formula may make of it as well, such as an area with its openings
   */
  record Amount(double plain, List<Double> or) implements Known {
    Amount(double plain) {
      this(plain, List.of());
    }
  }

  /**
   * The corners of a plane of free shape, on the slope.
   *
   * @param corners in order
   * @param factor sloped area over plan area
   */
  record Outline(List<Point> corners, double factor) implements Known {
    public Outline {
      corners = List.copyOf(corners);
    }
  }

  /**
   * A word.
   *
   * @param text our word for it
   * @param same whether a word of the sheet says the same
   */
  record Word(String text, Predicate<String> same) implements Known {
    Word(String text) {
      this(text, word -> Tokens.of(word).equals(Tokens.of(text)));
    }
  }
}
