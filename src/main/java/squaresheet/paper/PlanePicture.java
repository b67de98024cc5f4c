package squaresheet.paper;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import squaresheet.courses.CoursePlan;
import squaresheet.courses.Lines;
import squaresheet.geometry.Fraction;
import squaresheet.geometry.Outline;
import squaresheet.geometry.Region;
import squaresheet.geometry.Span;
import squaresheet.roof.Opening;
import squaresheet.roof.Side;
import squaresheet.units.Graduation;
import squaresheet.units.Length;

/** One plane to scale: course lines, snapped lines with their marks, joints of the first courses, openings and edges. */
final class PlanePicture {

  private static final int WIDTH = 792;
  private static final int HEIGHT = 612;
  private static final double MARGIN = 30;
  private static final double MARKS = 152;
  private static final double TOP = 92;
  private static final double FOOT = 104;
  /** Courses whose joints are drawn, unless the stagger's repeat is longer. */
  private static final int JOINTED = 6;

  static final double SNAPPED = 0.9;

  private static final Font SMALL = Type.plain(10.5);
  private static final Font EDGE = Type.bold(11.5);

  private final CoursePlan plan;
  private final Outline outline;
  private final Region region;
  private final Graduation tape;
  private final Scale scale;
  private final Pen pen;

  private PlanePicture(CoursePlan plan, Pen pen) {
    this.plan = plan;
    this.pen = pen;
    this.outline = plan.plane().outline();
    this.region = plan.plane().region();
    this.tape = plan.settings().spacing().tape();
    this.scale = Scale.fitting(
        outline, MARGIN + MARKS, TOP, WIDTH - 2 * (MARGIN + MARKS), HEIGHT - TOP - FOOT);
  }

  static Drawing of(CoursePlan plan) {
    String title = "Plane " + plan.plane().id();
    return new Drawing(title, WIDTH, HEIGHT, pen -> new PlanePicture(plan, pen).paint());
  }

  private void paint() {
    heading();
    courses();
    joints();
    List<MarkColumn.Mark> left = new ArrayList<>();
    List<MarkColumn.Mark> right = new ArrayList<>();
    snappedLines(left, right);
    openings(region.holes());
    new MarkColumn(pen, MARGIN + MARKS - 32, true).paint(left);
    new MarkColumn(pen, WIDTH - MARGIN - MARKS + 32, false).paint(right);
    edges();
    foot();
  }

  private void heading() {
    pen.text("Plane " + plan.plane().id(), MARGIN, MARGIN + 8, Type.bold(20), Pen.Stand.RIGHT_OF);
    String laid = String.format(
        java.util.Locale.ROOT,
        "%sPitch %s.  %s, each showing %s, the last %s.  A line every %s.  Marks are pulled up from the first-course"
            + " line.%s",
        plan.isTooFlat() ? Words.TOO_FLAT + "  " : "",
        Words.pitch(plan.plane().pitch(), tape),
        Words.counted(plan.courses()),
        Words.exposure(plan.interval(), tape),
        plan.reach().lastCourse().show(tape),
        Words.courses(plan.interval().courses()),
        even());
    pen.paragraph(laid, MARGIN, MARGIN + 22, WIDTH - 2 * MARGIN, Type.plain(12));
  }

  /** What rounding costs, and the even exposure that would end on a full course. */
  private String even() {
    String cost = plan.reach().extra() == 0
        ? ""
        : "  Rounding the lines down costs " + Words.counted(plan.reach().extra()) + ".";
    return cost + "  For a full last course: " + Words.counted(plan.reach().fewest()) + " of "
        + Words.decimal(plan.reach().evenExposure().inches(), tape) + ".";
  }

  /** The lower edge of every course. */
  private void courses() {
    Lines lines = plan.lines();
    Length first = lines.firstCourse().plus(outline.bottom());
    double left = share(lines, 0);
    double right = share(lines, 1);
    for (int number = 1; number < plan.courses(); number++) {
      Length low = plan.course(number).bottom().nearest();
      if (left == right || low.compareTo(first) < 0) {
        across(low, 0.3, Color.GRAY);
      } else {
        slope(first, low.minus(first), left, right);
      }
    }
  }

  /** How much closer than elsewhere courses run at a station, 1 where they do not. */
  private static double share(Lines lines, int station) {
    Length longest = lines.marks().stream()
        .map(marks -> marks.station().up())
        .max(Length::compareTo)
        .orElseThrow()
        .minus(lines.firstCourse());
    Length here = lines.marks().get(station).station().up().minus(lines.firstCourse());
    return longest.isPositive() ? here.units() / (double) longest.units() : 1;
  }

  private void slope(Length first, Length above, double left, double right) {
    double y1 = scale.y(first.toInches() + above.toInches() * left);
    double y2 = scale.y(first.toInches() + above.toInches() * right);
    Length low = first.plus(above);
    pen.line(endX(low, true), y1, endX(low, false), y2, new BasicStroke(0.15f));
  }

  private void across(Length up, double width, Color colour) {
    for (Span span : spans(up)) {
      Path2D line = new Path2D.Double();
      double y = scale.y(up);
      line.append(
          new Rectangle2D.Double(
              scale.x(span.left().toLength().inches()),
              y - width / 2,
              span.length().inches() * scale.points(),
              width),
          false);
      pen.fill(line, colour);
    }
  }

  private List<Span> spans(Length up) {
    boolean outside = up.compareTo(outline.bottom()) < 0 || up.compareTo(outline.top()) > 0;
    return outside ? List.of() : region.spansAt(Fraction.of(up));
  }

  private void joints() {
    int jointed = Math.min(plan.courses(), Math.max(JOINTED, plan.stagger().repeat()));
    for (int number = 0; number < jointed; number++) {
      CoursePlan.Course course = plan.course(number);
      double low = Math.max(course.bottom().inches(), outline.bottom().toInches());
      double high = Math.min(
          course.bottom().inches() + plan.interval().exposureLaid().inches(),
          outline.top().toInches());
      List<Span> within = spans(Length.nearestInches((low + high) / 2));
      course.stretches().stream()
          .flatMap(stretch -> stretch.joints().stream())
          .filter(joint -> within.stream().anyMatch(span -> contains(span, joint.inches())))
          .forEach(joint -> pen.line(
              scale.x(joint.inches()), scale.y(low), scale.x(joint.inches()), scale.y(high), 0.8));
    }
  }

  private static boolean contains(Span span, double x) {
    return x > span.left().toLength().inches() && x < span.right().toLength().inches();
  }

  private void snappedLines(List<MarkColumn.Mark> left, List<MarkColumn.Mark> right) {
    Lines lines = plan.lines();
    Length base = outline.bottom();
    snap(
        lines.starterLine().plus(base),
        "starter line " + lines.starterLine().showOnTape(tape),
        left);
    Length first = lines.firstCourse().plus(base);
    snap(first, "first course " + lines.firstCourse().showOnTape(tape), left);
    List<Length> atLeft = lines.marks().get(0).at();
    List<Length> atRight = lines.marks().get(1).at();
    for (int mark = 0; mark < atLeft.size(); mark++) {
      slantLine(first.plus(atLeft.get(mark)), first.plus(at(atRight, mark, atLeft)));
      left.add(mark(first.plus(atLeft.get(mark)), atLeft.get(mark), true));
      right.add(mark(first.plus(at(atRight, mark, atLeft)), at(atRight, mark, atLeft), false));
    }
  }

  private static Length at(List<Length> marks, int mark, List<Length> otherwise) {
    return mark < marks.size() ? marks.get(mark) : otherwise.get(mark);
  }

  private void snap(Length up, String label, List<MarkColumn.Mark> column) {
    across(up, SNAPPED, Color.BLACK);
    column.add(new MarkColumn.Mark(endX(up, true), scale.y(up), label));
  }

  private void slantLine(Length left, Length right) {
    if (left.equals(right)) {
      across(left, SNAPPED, Color.BLACK);
      return;
    }
    pen.line(endX(left, true), scale.y(left), endX(right, false), scale.y(right), SNAPPED);
  }

  private MarkColumn.Mark mark(Length up, Length pulled, boolean left) {
    return new MarkColumn.Mark(endX(up, left), scale.y(up), pulled.showOnTape(tape));
  }

  /** Where a line at this height ends on the plane. */
  private double endX(Length up, boolean left) {
    List<Span> spans = spans(up);
    if (spans.isEmpty()) {
      return scale.x(left ? outline.left() : outline.right());
    }
    Span end = spans.get(left ? 0 : spans.size() - 1);
    return scale.x((left ? end.left() : end.right()).toLength().inches());
  }

  private void openings(List<Outline> holes) {
    for (Opening opening : plan.plane().openings()) {
      if (holes.contains(opening.outline())) {
        opening(opening);
      }
    }
  }

  private void opening(Opening opening) {
    Path2D shape = path(opening.outline());
    pen.fill(shape, Color.WHITE);
    pen.draw(shape, new BasicStroke(1.4f));
    Outline hole = opening.outline();
    double x1 = scale.x(hole.left());
    double x2 = scale.x(hole.right());
    double y1 = scale.y(hole.bottom());
    double y2 = scale.y(hole.top());
    pen.line(x1, y1, x2, y2, 0.5);
    pen.line(x1, y2, x2, y1, 0.5);
    String label = opening.kind().word() + " " + opening.id();
    boolean fits = Type.width(SMALL, label) < x2 - x1 - 6 && y1 - y2 > 12;
    pen.textOnWhite(label, (x1 + x2) / 2, fits ? (y1 + y2) / 2 : y1 + 9, SMALL, Pen.Stand.ABOUT);
  }

  private Path2D path(Outline figure) {
    Path2D path = new Path2D.Double();
    figure.corners().forEach(corner -> {
      if (path.getCurrentPoint() == null) {
        path.moveTo(scale.x(corner.x()), scale.y(corner.y()));
      } else {
        path.lineTo(scale.x(corner.x()), scale.y(corner.y()));
      }
    });
    path.closePath();
    return path;
  }

  private void edges() {
    for (Side side : plan.plane().sides()) {
      edge(side);
    }
  }

  private void edge(Side side) {
    double x1 = scale.x(side.from().x());
    double y1 = scale.y(side.from().y());
    double x2 = scale.x(side.to().x());
    double y2 = scale.y(side.to().y());
    EdgeLine.draw(pen, side.kind(), x1, y1, x2, y2);
    double length = Math.hypot(x2 - x1, y2 - y1);
    String label = side.kind().word() + " " + side.length().show(tape);
    String text = Type.width(EDGE, label) < length * 0.9 ? label : side.kind().word();
    double dx = (x2 - x1) / length;
    double dy = (y2 - y1) / length;
    pen.textAlong(text, (x1 + x2) / 2 - dy * 14, (y1 + y2) / 2 + dx * 14, dx, dy, EDGE);
  }

  private void foot() {
    double top = HEIGHT - FOOT + 34;
    Legend.paint(pen, plan, MARGIN, top);
    ScaleBar.paint(pen, scale.points(), tape.isImperial(), WIDTH - MARGIN, top + 6);
    pen.paragraph(
        "Drawn to scale for explanation. Measure on the roof; the product's printed instructions and local code govern.",
        MARGIN,
        HEIGHT - MARGIN,
        WIDTH - 2 * MARGIN,
        Type.plain(9.5));
  }
}
