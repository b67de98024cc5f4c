package squaresheet.units;

/**
 * A length that was worked out rather than read from a tape: a hip, a diagonal, a sum of such. It is a double and says so.
 *
 * <p>Range: any finite number. Text form: {@code ~161.4217 in}, which rounds and does not read back.
 *
 * @param inches the length in inches
 */
public record DerivedLength(double inches) implements Comparable<DerivedLength> {

  /** No length at all. */
  public static final DerivedLength ZERO = new DerivedLength(0);

  public DerivedLength {
    if (!Double.isFinite(inches)) {
      throw new IllegalArgumentException(
          "length must be a finite number of inches, but is " + inches);
    }
  }

  /** The length of {@code feet} feet. */
  public static DerivedLength ofFeet(double feet) {
    return new DerivedLength(feet * 12);
  }

  /** This length in feet. */
  public double toFeet() {
    return inches / 12;
  }

  /** This length in metres. */
  public double toMetres() {
    return inches * 0.0254;
  }

  /** The sum of two lengths. */
  public DerivedLength plus(DerivedLength other) {
    return new DerivedLength(inches + other.inches);
  }

  /** This length less another. */
  public DerivedLength minus(DerivedLength other) {
    return new DerivedLength(inches - other.inches);
  }

  /** This length scaled by a plain number. */
  public DerivedLength times(double factor) {
    return new DerivedLength(inches * factor);
  }

  /** How far this length is from another, without sign. */
  public DerivedLength distanceTo(DerivedLength other) {
    return new DerivedLength(Math.abs(inches - other.inches));
  }

  /** The exact tape length nearest to this one, at most 1/640 mm away. */
  public Length nearest() {
    return Length.nearestInches(inches);
  }

  /** For people: rounded to the nearest mark. */
  public String show(Graduation graduation) {
    return nearest().show(graduation);
  }

  @Override
  public int compareTo(DerivedLength other) {
    return Double.compare(inches, other.inches);
  }

  @Override
  public String toString() {
    return String.format(java.util.Locale.ROOT, "~%.4f in", inches);
  }
}
