package squaresheet.units;

import java.util.Locale;

/**
 * An area, which is either seen from above or measured on the slope; the two never add. Both are kept in square feet;
 * a square is 100 sq ft, which is 9.290304 m² exactly.
 */
public sealed interface Area permits Area.Plan, Area.Sloped {

  /** Square metres in a square foot, exact (0.3048²). */
  double SQUARE_METRES_PER_SQUARE_FOOT = 0.09290304;

  /** The area in square feet. */
  double squareFeet();

  /** The area in squares of 100 sq ft. */
  default double toSquares() {
    return squareFeet() / 100;
  }

  /** The area in square metres. */
  default double toSquareMetres() {
    return squareFeet() * SQUARE_METRES_PER_SQUARE_FOOT;
  }

  /** For people: square feet to one decimal. */
  default String show() {
    return String.format(Locale.ROOT, "%.1f sq ft", squareFeet());
  }

  private static double checked(double squareFeet) {
    if (!Double.isFinite(squareFeet)) {
      throw new IllegalArgumentException(
          "area must be a finite number of square feet, but is " + squareFeet);
    }
    return squareFeet;
  }

  private static boolean within(double tolerance, double one, double other) {
    return Math.abs(one - other) <= tolerance * Math.max(Math.abs(one), Math.abs(other));
  }

  /**
   * An area seen from above, on the level.
   *
   * @param squareFeet the area in square feet, any finite number
   */
  record Plan(double squareFeet) implements Area, Comparable<Plan> {

    /** No area. */
    public static final Plan ZERO = new Plan(0);

    public Plan {
      squareFeet = checked(squareFeet);
    }

    /** The two areas together. */
    public Plan plus(Plan other) {
      return new Plan(squareFeet + other.squareFeet);
    }

    /** This area less another. */
    public Plan minus(Plan other) {
      return new Plan(squareFeet - other.squareFeet);
    }

    /** This area scaled by a plain number. */
    public Plan times(double factor) {
      return new Plan(squareFeet * factor);
    }

    /** Whether the two differ by at most {@code tolerance} of the larger. */
    public boolean isWithin(double tolerance, Plan other) {
      return within(tolerance, squareFeet, other.squareFeet);
    }

    @Override
    public int compareTo(Plan other) {
      return Double.compare(squareFeet, other.squareFeet);
    }
  }

  /**
   * An area measured on the slope, where the shingles lie.
   *
   * @param squareFeet the area in square feet, any finite number
   */
  record Sloped(double squareFeet) implements Area, Comparable<Sloped> {

    /** No area. */
    public static final Sloped ZERO = new Sloped(0);

    public Sloped {
      squareFeet = checked(squareFeet);
    }

    /** The two areas together. */
    public Sloped plus(Sloped other) {
      return new Sloped(squareFeet + other.squareFeet);
    }

    /** This area less another. */
    public Sloped minus(Sloped other) {
      return new Sloped(squareFeet - other.squareFeet);
    }

    /** This area scaled by a plain number. */
    public Sloped times(double factor) {
      return new Sloped(squareFeet * factor);
    }

    /** Whether the two differ by at most {@code tolerance} of the larger. */
    public boolean isWithin(double tolerance, Sloped other) {
      return within(tolerance, squareFeet, other.squareFeet);
    }

    @Override
    public int compareTo(Sloped other) {
      return Double.compare(squareFeet, other.squareFeet);
    }
  }
}
