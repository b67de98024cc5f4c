package squaresheet.paper;

import java.awt.Color;
import java.awt.geom.Rectangle2D;

/** The band over a sheet of a job that does not pass: nobody is to order or to lay by it. */
final class Stamp {

  static final String WORDS = "DOES NOT PASS";

  private static final String WHAT_NOW =
      "Wrong or missing in the workbook: run verify, put it right, draw again.";
  private static final double LEAST_HIGH = 30;
  private static final double SHARE = 0.06;
  private static final double LARGE = 0.5;
  private static final double SMALL = 0.28;
  private static final double APART = 0.6;

  private Stamp() {}

  static void paint(Pen pen, Drawing drawing) {
    double band = Math.max(LEAST_HIGH, drawing.height() * SHARE);
    pen.fill(new Rectangle2D.Double(0, 0, drawing.width(), band), Color.BLACK);
    double behind = band * APART + Type.width(Type.bold(band * LARGE), WORDS);
    pen.textAt(Color.WHITE, WORDS, band * APART / 2, band / 2, Type.bold(band * LARGE));
    double room = drawing.width() - behind - band * APART / 2;
    double size = Math.min(band * SMALL, room / Type.width(Type.bold(1), WHAT_NOW));
    pen.textAt(Color.WHITE, WHAT_NOW, behind, band / 2, Type.bold(size));
    double scale = 1 - band / drawing.height();
    pen.smaller(scale, drawing.width() * (1 - scale) / 2, band, drawing);
  }
}
