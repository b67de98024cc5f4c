package squaresheet.paper;

import java.awt.BasicStroke;
import squaresheet.roof.EdgeKind;

/** How each kind of edge is drawn: by its pattern, since a printed page has no colour and some eyes see none. */
final class EdgeLine {

  private static final double TICK = 5;
  private static final double TICK_STEP = 9;

  private EdgeLine() {}

  static void draw(Pen pen, EdgeKind kind, double x1, double y1, double x2, double y2) {
    double length = Math.hypot(x2 - x1, y2 - y1);
    double dx = (x2 - x1) / length;
    double dy = (y2 - y1) / length;
    switch (kind) {
      case EAVE -> pen.line(x1, y1, x2, y2, 4);
      case RAKE -> pen.line(x1, y1, x2, y2, 2.2);
      case RIDGE -> twice(pen, x1, y1, x2, y2, -2.6 * dy, 2.6 * dx);
      case HIP -> pen.line(x1, y1, x2, y2, Pen.dashed(1.8, 12, 3, 2, 3));
      case VALLEY -> pen.line(x1, y1, x2, y2, Pen.dashed(1.8, 8, 4));
      case SIDEWALL, HEADWALL -> ticked(pen, x1, y1, dx, dy, length);
      case PITCH_BREAK -> pen.line(x1, y1, x2, y2, Pen.dashed(1.8, 2, 3));
      case OPEN -> pen.line(x1, y1, x2, y2, Pen.dashed(0.8, 4, 4));
    }
  }

  private static void twice(
      Pen pen, double x1, double y1, double x2, double y2, double aside, double above) {
    BasicStroke thin = new BasicStroke(1);
    pen.line(x1, y1, x2, y2, thin);
    pen.line(x1 + aside, y1 + above, x2 + aside, y2 + above, thin);
  }

  /** A line with the wall hatched behind it, on the right hand of the way it runs, which is outside the plane. */
  private static void ticked(Pen pen, double x, double y, double dx, double dy, double length) {
    pen.line(x, y, x + dx * length, y + dy * length, 1.4);
    for (double at = TICK_STEP / 2; at < length; at += TICK_STEP) {
      double fromX = x + dx * at;
      double fromY = y + dy * at;
      pen.line(fromX, fromY, fromX + (dx - dy) * TICK * 0.7, fromY + (dx + dy) * TICK * 0.7, 0.7);
    }
  }
}
