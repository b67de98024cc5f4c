package squaresheet.paper;

import java.awt.Font;
import java.util.Comparator;
import java.util.List;

/** The marks beside a plane, each with a thin line to where it belongs, pushed apart where they would touch. */
final class MarkColumn {

  /**
   * One mark.
   *
   * @param x where the line it belongs to ends
   * @param y the height of that line on the page
   * @param text what is written
   */
  record Mark(double x, double y, String text) {}

  private static final Font FONT = Type.bold(12);
  private static final double STEP = 14;

  private final Pen pen;
  private final double edge;
  private final boolean left;

  /**
   * @param edge where the lettering ends (left column) or begins (right column)
   */
  MarkColumn(Pen pen, double edge, boolean left) {
    this.pen = pen;
    this.edge = edge;
    this.left = left;
  }

  /** Paints the marks from the bottom up; where there are more than fit, every second, third and so on. */
  void paint(List<Mark> marks) {
    List<Mark> upward =
        marks.stream().sorted(Comparator.comparingDouble(Mark::y).reversed()).toList();
    double free = Double.POSITIVE_INFINITY;
    double highest = upward.stream().mapToDouble(Mark::y).min().orElse(0);
    for (Mark mark : upward) {
      double y = Math.min(mark.y(), free);
      if (y < highest - 2 * STEP) {
        return;
      }
      paint(mark, y);
      free = y - STEP;
    }
  }

  private void paint(Mark mark, double y) {
    double away = left ? -1 : 1;
    double elbow = edge - away * 14;
    pen.line(mark.x() + away * 3, mark.y(), elbow, mark.y(), 0.3);
    pen.line(elbow, mark.y(), edge - away * 3, y, 0.3);
    pen.textOnWhite(mark.text(), edge, y, FONT, left ? Pen.Stand.LEFT_OF : Pen.Stand.RIGHT_OF);
  }
}
