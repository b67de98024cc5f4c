package squaresheet.paper;

import java.awt.Color;
import java.awt.Font;
import java.awt.geom.Rectangle2D;
import java.util.List;
import squaresheet.courses.CoursePlan;
import squaresheet.roof.EdgeKind;

/** What the lines of a plane's picture mean: only those that are in it. */
final class Legend {

  private static final Font FONT = Type.plain(10.5);
  private static final double LINE = 34;
  private static final double ROW = 16;
  private static final double WIDE = 560;

  private final Pen pen;
  private final double begin;
  private double x;
  private double y;

  private Legend(Pen pen, double x, double y) {
    this.pen = pen;
    this.begin = x;
    this.x = x;
    this.y = y;
  }

  static void paint(Pen pen, CoursePlan plan, double x, double y) {
    List<EdgeKind> kinds = List.of(EdgeKind.values()).stream()
        .filter(kind -> !plan.plane().sides(kind).isEmpty())
        .toList();
    paint(pen, kinds, true, x, y);
  }

  static void paint(Pen pen, List<EdgeKind> kinds, boolean lines, double x, double y) {
    Legend legend = new Legend(pen, x, y);
    kinds.forEach(legend::edge);
    if (lines) {
      legend.bar("line to snap", PlanePicture.SNAPPED, Color.BLACK);
      legend.bar("lower edge of a course", 0.3, Color.GRAY);
      legend.joint();
    }
  }

  private void edge(EdgeKind kind) {
    place(kind.word());
    EdgeLine.draw(pen, kind, x, y, x + LINE, y);
    name(kind.word());
  }

  private void bar(String name, double width, Color colour) {
    place(name);
    pen.fill(new Rectangle2D.Double(x, y - width / 2, LINE, width), colour);
    name(name);
  }

  private void joint() {
    String name = "joints of the first courses";
    place(name);
    pen.line(x + LINE / 2, y - 5, x + LINE / 2, y + 5, 0.8);
    name(name);
  }

  private void place(String name) {
    if (x + LINE + 6 + Type.width(FONT, name) > begin + WIDE) {
      x = begin;
      y += ROW;
    }
  }

  private void name(String name) {
    pen.text(name, x + LINE + 6, y, FONT, Pen.Stand.RIGHT_OF);
    x += LINE + 24 + Type.width(FONT, name);
  }
}
