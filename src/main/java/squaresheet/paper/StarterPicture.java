package squaresheet.paper;

import java.awt.Color;
import java.awt.Font;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import squaresheet.courses.CoursePlan;
import squaresheet.courses.EaveStarter;
import squaresheet.courses.StarterJoints;
import squaresheet.units.Graduation;
import squaresheet.units.Length;

/** The starter and the first course over it along one eave, pulled apart, with the joints that stand too near each other marked. */
final class StarterPicture {

  private static final int WIDTH = 792;
  private static final double MARGIN = 30;
  /** Down to the words under the title. */
  private static final double WORDS = 58;
  /** Over a row, for the words that say where it begins. */
  private static final double ROW_TITLE = 24;

  private static final double ROW = 122;
  private static final double FOOT = 62;
  private static final double COURSE = 30;
  private static final double GAP = 8;
  private static final double STRIP = 20;
  /** Inches of eave in a row: pieces of a yard are then some 100 points wide. */
  private static final double USUAL_ROW = 250;

  private static final int MOST_ROWS = 5;

  private static final Font SUMMARY = Type.plain(11);
  private static final Font VERDICT = Type.bold(12);
  private static final Font NUMBER = Type.bold(12);
  private static final Font SMALL = Type.plain(10.5);

  private final CoursePlan plan;
  private final StarterJoints joints;
  private final Graduation tape;
  private final Pen pen;
  private final double rowLength;
  private final double points;

  private StarterPicture(CoursePlan plan, EaveStarter starter, Pen pen) {
    this.plan = plan;
    this.joints = starter.joints();
    this.tape = plan.settings().spacing().tape();
    this.pen = pen;
    this.rowLength = rowLength(joints);
    this.points = (WIDTH - 2 * MARGIN) / rowLength;
  }

  static Drawing of(CoursePlan plan, EaveStarter starter) {
    StarterWords words = new StarterWords(plan, starter);
    double head = head(words);
    int high = (int) Math.round(head + rows(starter.joints()) * ROW + FOOT);
    return new Drawing(words.title(), WIDTH, high, pen -> new StarterPicture(plan, starter, pen)
        .paint(words, head));
  }

  private static double rowLength(StarterJoints joints) {
    double eave = Math.max(joints.eave().toInches(), 1);
    return eave / Math.min(MOST_ROWS, Math.ceil(eave / USUAL_ROW));
  }

  private static int rows(StarterJoints joints) {
    return (int) Math.ceil(joints.eave().toInches() / rowLength(joints) - 1e-6);
  }

  /** Where the strips begin: below the words, however many lines they take. */
  private static double head(StarterWords words) {
    return WORDS
        + Pen.height(words.summary(), WIDTH - 2 * MARGIN, SUMMARY)
        + Pen.height(words.verdict(), WIDTH - 2 * MARGIN, VERDICT)
        + ROW_TITLE;
  }

  private void paint(StarterWords words, double head) {
    double wide = WIDTH - 2 * MARGIN;
    pen.text(words.title(), MARGIN, MARGIN + 8, Type.bold(20), Pen.Stand.RIGHT_OF);
    double below = pen.paragraph(words.summary(), MARGIN, WORDS - 4, wide, SUMMARY);
    pen.paragraph(words.verdict(), MARGIN, WORDS + below, wide, VERDICT);
    for (int row = 0; row < rows(joints); row++) {
      row(row, head + row * ROW);
    }
    legend(head + rows(joints) * ROW + 14);
  }

  private void row(int row, double top) {
    double from = row * rowLength;
    double to = Math.min(from + rowLength, joints.eave().toInches());
    band(from, to, top, COURSE);
    band(from, to, top + COURSE + GAP, STRIP);
    if (joints.eave().toInches() > rowLength) {
      pen.text(
          "from " + Length.nearestInches(from).show(tape),
          MARGIN,
          top - 9,
          SMALL,
          Pen.Stand.RIGHT_OF);
    }
    shingleJoints(from, to, top);
    List<StarterJoints.KeepAway> away =
        joints.keepAway(plan.settings().starting().nailClear());
    away.forEach(zone -> hatch(zone, from, to, top));
    joints.joints().forEach(joint -> starterJoint(joint, from, to, top));
  }

  private void band(double from, double to, double top, double high) {
    pen.box(MARGIN, top, (to - from) * points, high, 1.2);
  }

  private void shingleJoints(double from, double to, double top) {
    double piece = joints.shingle().toInches();
    for (double at = joints.shingleCut().toInches();
        at < joints.eave().toInches() - 1e-9;
        at += piece) {
      if (at > from && at < to) {
        double x = MARGIN + (at - from) * points;
        pen.line(x, top, x, top + COURSE, 1.6);
      }
    }
  }

  private void hatch(StarterJoints.KeepAway zone, double from, double to, double top) {
    double left = Math.max(zone.from().toInches(), from);
    double right = Math.min(zone.to().toInches(), to);
    double step = 3.2;
    double begin = MARGIN + (left - from) * points;
    double end = MARGIN + (right - from) * points;
    for (double x = begin; x <= end; x += step) {
      pen.draw(new Line2D.Double(x, top + 1, x, top + COURSE - 1), Pen.dashed(0.5, 2, 2));
    }
  }

  private void starterJoint(StarterJoints.Joint joint, double from, double to, double top) {
    double at = joint.at().toInches();
    if (at < from || at >= to) {
      return;
    }
    double x = MARGIN + (at - from) * points;
    double low = top + COURSE + GAP + STRIP;
    pen.line(x, top + COURSE + GAP, x, low, 1.6);
    boolean clash = joint.distance().compareTo(joints.minimum()) < 0;
    String distance = joint.distance().showOnTape(tape);
    if (clash) {
      pen.circle(x, top + COURSE + GAP / 2, 9, 2);
      double wide = Type.width(NUMBER, distance) + 10;
      pen.fill(new Rectangle2D.Double(x - wide / 2, low + 5, wide, 16), Color.BLACK);
      pen.textIn(Color.WHITE, distance, x, low + 13, NUMBER);
    } else {
      pen.text(distance, x, low + 13, NUMBER, Pen.Stand.ABOUT);
    }
  }

  private void legend(double y) {
    double x = MARGIN;
    pen.box(x, y - 6, 30, 12, 1.2);
    pen.text("first course above, starter below", x + 36, y, SMALL, Pen.Stand.RIGHT_OF);
    x += 220;
    for (int line = 0; line < 8; line++) {
      pen.draw(
          new Line2D.Double(x + line * 3.2, y - 6, x + line * 3.2, y + 6), Pen.dashed(0.5, 2, 2));
    }
    pen.text("no nails of the first course here", x + 32, y, SMALL, Pen.Stand.RIGHT_OF);
    x += 210;
    pen.circle(x + 9, y, 8, 2);
    pen.text("joints too near each other", x + 24, y, SMALL, Pen.Stand.RIGHT_OF);
    pen.text(
        "Distances along the eave are to scale, heights are not.",
        MARGIN,
        y + 20,
        Type.plain(9.5),
        Pen.Stand.RIGHT_OF);
  }
}
