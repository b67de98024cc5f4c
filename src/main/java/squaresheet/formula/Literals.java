package squaresheet.formula;

import java.util.Set;

/** What a number typed into a formula does to the unit of what it multiplies or divides. */
final class Literals {

  /**
   * Constants that turn one unit into another: inches and feet, squares, square inches, hours of a day, percent, metres,
   * millimetres, minutes, pounds and tons.
   */
  private static final Set<Double> CONVERSIONS = Set.of(
      12.0,
      100.0,
      144.0,
      24.0,
      3.28084,
      3.2808,
      0.3048,
      10.7639,
      10.76391,
      9.290304,
      0.09290304,
      60.0,
      1000.0,
      25.4,
      2.54,
      0.0254,
      2000.0,
      0.01,
      1.0 / 12);

  private Literals() {}

  /** The measure of something times a typed number. */
  static Measure times(Measure measure, double number) {
    return number == 0.01 ? overHundred(measure, number) : by(measure, number, isShare(number));
  }

  /** The measure of something over a typed number. */
  static Measure over(Measure measure, double number) {
    if (measure.isPitch() && number == 12) {
      return Measure.RATIO;
    }
    return number == 100 ? overHundred(measure, number) : by(measure, number, false);
  }

  /** A percentage becomes a ratio by it; anything else is as with other numbers. */
  private static Measure overHundred(Measure measure, double number) {
    if (measure.isWholePercent()) {
      return Measure.RATIO;
    }
    return measure.awaits(Inference.Kind.PERCENT) ? measure.settled() : by(measure, number, false);
  }

  private static Measure by(Measure measure, double number, boolean share) {
    if (CONVERSIONS.contains(number) && measure.isKnown()) {
      return (measure.awaits(Inference.Kind.UNCANCELLED) ? measure.settled() : measure)
          .loosened()
          .sideless();
    }
    return share || isFactor(number) ? measure.sideless() : Measure.UNKNOWN;
  }

  /** Whether a typed number halves, doubles, or is a factor such as 1.1 for waste rather than a hidden rate. */
  private static boolean isFactor(double number) {
    return number >= 0.5 && number <= 2;
  }

  /** Whether a typed number is a share such as 0.05 or 0.1, whole hundredths that people write for waste. */
  private static boolean isShare(double number) {
    double hundredths = number * 100;
    return hundredths >= 5
        && hundredths < 50
        && Math.abs(hundredths - Math.rint(hundredths)) < 1e-9;
  }
}
