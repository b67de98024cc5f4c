package squaresheet.formula;

import java.util.Map;

/** CONVERT between lengths, areas, weights and times; codes are told apart by case. */
final class Conversions {

  private record Size(char kind, double size) {}

  private static final double FOOT = 0.3048;
  private static final double INCH = 0.0254;

  private static final Map<String, Size> SIZES = Map.ofEntries(
      Map.entry("m", new Size('l', 1)),
      Map.entry("cm", new Size('l', 0.01)),
      Map.entry("mm", new Size('l', 0.001)),
      Map.entry("km", new Size('l', 1000)),
      Map.entry("in", new Size('l', INCH)),
      Map.entry("ft", new Size('l', FOOT)),
      Map.entry("yd", new Size('l', 3 * FOOT)),
      Map.entry("mi", new Size('l', 5280 * FOOT)),
      Map.entry("m2", new Size('a', 1)),
      Map.entry("m^2", new Size('a', 1)),
      Map.entry("cm2", new Size('a', 1e-4)),
      Map.entry("mm2", new Size('a', 1e-6)),
      Map.entry("in2", new Size('a', INCH * INCH)),
      Map.entry("in^2", new Size('a', INCH * INCH)),
      Map.entry("ft2", new Size('a', FOOT * FOOT)),
      Map.entry("ft^2", new Size('a', FOOT * FOOT)),
      Map.entry("yd2", new Size('a', 9 * FOOT * FOOT)),
      Map.entry("yd^2", new Size('a', 9 * FOOT * FOOT)),
      Map.entry("g", new Size('w', 1)),
      Map.entry("kg", new Size('w', 1000)),
      Map.entry("lbm", new Size('w', 453.59237)),
      Map.entry("ozm", new Size('w', 453.59237 / 16)),
      Map.entry("ton", new Size('w', 2000 * 453.59237)),
      Map.entry("sec", new Size('t', 1)),
      Map.entry("s", new Size('t', 1)),
      Map.entry("mn", new Size('t', 60)),
      Map.entry("min", new Size('t', 60)),
      Map.entry("hr", new Size('t', 3600)),
      Map.entry("day", new Size('t', 86400)),
      Map.entry("d", new Size('t', 86400)));

  private Conversions() {}

  static double convert(double number, String from, String to) {
    Size one = SIZES.get(from);
    Size other = SIZES.get(to);
    if (one == null || other == null) {
      throw Signal.notChecked("CONVERT from '" + from + "' to '" + to + "' is not followed");
    }
    if (one.kind != other.kind) {
      throw Signal.MISSING;
    }
    return one.size == other.size ? number : number * one.size / other.size;
  }
}
