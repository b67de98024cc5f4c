package squaresheet.paper;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import squaresheet.courses.CoursePlan;
import squaresheet.courses.RoofLayout;
import squaresheet.geometry.Outline;
import squaresheet.geometry.Point;
import squaresheet.roof.EdgeKind;
import squaresheet.roof.Opening;
import squaresheet.roof.Side;

/** All planes of a roof side by side at one scale, twelve to a page. */
final class RoofPicture {

  private static final int WIDTH = 792;
  private static final int HEIGHT = 612;
  private static final double MARGIN = 30;
  private static final double TOP = 74;
  private static final double FOOT = 70;
  private static final double GUTTER = 18;
  private static final double CAPTION = 38;
  private static final int PAGE = 12;

  private static final Font NAME = Type.bold(14);
  private static final Font SMALL = Type.plain(10.5);

  private final List<CoursePlan> plans;
  private final double points;
  private final boolean imperial;
  private final Pen pen;

  private RoofPicture(List<CoursePlan> plans, double points, boolean imperial, Pen pen) {
    this.plans = plans;
    this.points = points;
    this.imperial = imperial;
    this.pen = pen;
  }

  static List<Drawing> of(RoofLayout layout) {
    List<Drawing> pages = new ArrayList<>();
    List<CoursePlan> all = layout.plans();
    boolean imperial = layout.settings().spacing().tape().isImperial();
    double points = points(all);
    for (int from = 0; from < all.size(); from += PAGE) {
      List<CoursePlan> some = all.subList(from, Math.min(from + PAGE, all.size()));
      String title = "Roof" + (all.size() > PAGE ? ", sheet " + (pages.size() + 1) : "");
      pages.add(new Drawing(
          title, WIDTH, HEIGHT, pen -> new RoofPicture(some, points, imperial, pen).paint(title)));
    }
    return List.copyOf(pages);
  }

  private static int columns(int planes) {
    return (int) Math.ceil(Math.sqrt(Math.min(planes, PAGE) * 1.2));
  }

  private static int rows(int planes) {
    int shown = Math.min(planes, PAGE);
    return (shown + columns(planes) - 1) / columns(planes);
  }

  private static double cellWidth(int planes) {
    return (WIDTH - 2 * MARGIN) / columns(planes);
  }

  private static double cellHeight(int planes) {
    return (HEIGHT - TOP - FOOT) / rows(planes);
  }

  /** The scale at which the largest plane fits its cell. */
  private static double points(List<CoursePlan> plans) {
    double wide = cellWidth(plans.size()) - GUTTER;
    double high = cellHeight(plans.size()) - GUTTER - CAPTION;
    return plans.stream()
        .map(plan -> plan.plane().outline())
        .mapToDouble(at -> Math.min(wide / Scale.across(at), high / Scale.up(at)))
        .min()
        .orElse(1);
  }

  private void paint(String title) {
    pen.text(title, MARGIN, MARGIN + 8, Type.bold(20), Pen.Stand.RIGHT_OF);
    pen.text(
        "All planes at one scale, each with its eave at the bottom.",
        MARGIN,
        MARGIN + 30,
        Type.plain(12),
        Pen.Stand.RIGHT_OF);
    for (int index = 0; index < plans.size(); index++) {
      cell(plans.get(index), index);
    }
    List<EdgeKind> kinds = Arrays.stream(EdgeKind.values())
        .filter(
            kind -> plans.stream().anyMatch(plan -> !plan.plane().sides(kind).isEmpty()))
        .toList();
    Legend.paint(pen, kinds, false, MARGIN, HEIGHT - FOOT + 20);
    ScaleBar.paint(pen, points, imperial, WIDTH - MARGIN, HEIGHT - FOOT + 26);
  }

  private void cell(CoursePlan plan, int index) {
    int columns = columns(plans.size());
    double wide = cellWidth(plans.size());
    double high = cellHeight(plans.size());
    int row = index / columns;
    double x = MARGIN + index % columns * wide;
    double y = TOP + row * high;
    Outline outline = plan.plane().outline();
    Scale scale = Scale.at(points, outline, x, y + CAPTION, wide, high - CAPTION - GUTTER);
    caption(plan, x + wide / 2, scale.y(outline.top()) - 26);
    for (Opening opening : plan.plane().openings()) {
      if (opening.isPlaced()) {
        pen.draw(path(opening.outline(), scale), new BasicStroke(0.8f));
      }
    }
    for (Side side : plan.plane().sides()) {
      EdgeLine.draw(
          pen,
          side.kind(),
          scale.x(side.from().x()),
          scale.y(side.from().y()),
          scale.x(side.to().x()),
          scale.y(side.to().y()));
    }
  }

  private void caption(CoursePlan plan, double x, double y) {
    pen.text(plan.plane().id(), x, y, NAME, Pen.Stand.ABOUT);
    String counts = String.format(
        Locale.ROOT,
        "%s, %s, %d shingles",
        imperial
            ? plan.plane().slopedArea().show()
            : String.format(Locale.ROOT, "%.1f m²", plan.plane().slopedArea().toSquareMetres()),
        Words.counted(plan.courses()),
        plan.pieces().used());
    pen.text(counts, x, y + 14, SMALL, Pen.Stand.ABOUT);
  }

  private static Path2D path(Outline figure, Scale scale) {
    Path2D path = new Path2D.Double();
    Point last = figure.corner(-1);
    path.moveTo(scale.x(last.x()), scale.y(last.y()));
    figure.corners().forEach(corner -> path.lineTo(scale.x(corner.x()), scale.y(corner.y())));
    return path;
  }
}
