package squaresheet.paper;

import java.awt.Font;

/** A bar of a round length, to read distances off a drawing. */
final class ScaleBar {

  private static final Font FONT = Type.plain(10.5);
  private static final double LONGEST = 130;
  private static final double METRE = 1000 / 25.4;
  private static final double FOOT = 12;
  private static final int[] ROUND = {1, 2, 5, 10, 20, 50, 100, 200, 500};

  private ScaleBar() {}

  /** Ends at {@code right}. */
  static void paint(Pen pen, double pointsPerInch, boolean imperial, double right, double y) {
    double unit = (imperial ? FOOT : METRE) * pointsPerInch;
    int units = 1;
    for (int round : ROUND) {
      units = round * unit <= LONGEST ? round : units;
    }
    double left = right - units * unit;
    pen.line(left, y, right, y, 1.2);
    pen.line(left, y - 4, left, y + 4, 1.2);
    pen.line(right, y - 4, right, y + 4, 1.2);
    String label = units + (imperial ? " ft" : " m");
    pen.text(label, (left + right) / 2, y - 9, FONT, Pen.Stand.ABOUT);
  }
}
