package squaresheet.roof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import squaresheet.geometry.Point;
import squaresheet.units.Length;
import squaresheet.units.Pitch;

/** Writes the notes of a hip roof with a wing. */
final class WingForm {

  private final RoofForms.WingPlan plan;
  private final Pitch pitch;
  /** From an eave of the main roof to its ridge. */
  private final Length run;
  /** From an eave of the wing to its ridge. */
  private final Length wingRun;

  WingForm(RoofForms.WingPlan plan, Pitch pitch) {
    this.plan = plan;
    this.pitch = pitch;
    this.run = ShapeParts.half(plan.width());
    this.wingRun = ShapeParts.half(plan.wingWidth());
  }

  RoofNotes notes() {
    List<PlaneNotes> planes = new ArrayList<>(List.of(front(), right(), back(), left()));
    planes.add(wingLeft());
    planes.add(wingRight());
    if (plan.hipped()) {
      planes.add(RoofForms.hipped(
          plane("wing end", new Shape.Triangle(plan.wingWidth(), wingRun)),
          "wing right",
          "wing left"));
    }
    return new RoofNotes(planes);
  }

  private PlaneNotes plane(String id, Shape shape) {
    return RoofForms.plane(id, shape, pitch);
  }

  private PlaneNotes front() {
    Length wingEnd = plan.start().plus(plan.wingWidth());
    PlaneNotes front = plane(
        "front",
        new Shape.Polygon(List.of(
            Point.ORIGIN,
            new Point(plan.start(), Length.ZERO),
            new Point(plan.start().plus(wingRun), wingRun),
            new Point(wingEnd, Length.ZERO),
            new Point(plan.length(), Length.ZERO),
            new Point(plan.length().minus(run), run),
            new Point(run, run))));
    PlaneNotes valleys = RoofForms.meeting(
        RoofForms.meeting(front, "side 2", EdgeKind.VALLEY, "wing left", "left"),
        "side 3",
        EdgeKind.VALLEY,
        "wing right",
        "right");
    PlaneNotes hips = RoofForms.meeting(
        RoofForms.meeting(valleys, "side 5", EdgeKind.HIP, "right", "left"),
        "side 7",
        EdgeKind.HIP,
        "left",
        "right");
    return RoofForms.meeting(hips, "side 6", EdgeKind.RIDGE, "back", "top");
  }

  private PlaneNotes right() {
    PlaneNotes right = plane("right", new Shape.Triangle(plan.width(), run));
    return RoofForms.meeting(
        RoofForms.meeting(right, "left", EdgeKind.HIP, "front", "side 5"),
        "right",
        EdgeKind.HIP,
        "back",
        "left");
  }

  private PlaneNotes left() {
    PlaneNotes left = plane("left", new Shape.Triangle(plan.width(), run));
    return RoofForms.meeting(
        RoofForms.meeting(left, "right", EdgeKind.HIP, "front", "side 7"),
        "left",
        EdgeKind.HIP,
        "back",
        "right");
  }

  private PlaneNotes back() {
    Shape shape = new Shape.Trapezoid(
        plan.length(), plan.length().minus(plan.width()), run, Optional.of(run));
    PlaneNotes back = RoofForms.hipped(plane("back", shape), "left", "right");
    return RoofForms.meeting(back, "top", EdgeKind.RIDGE, "front", "side 6");
  }

  /** Seen from its own eave the house stands on its left, so it leans out there to the valley. */
  private PlaneNotes wingLeft() {
    PlaneNotes side = plane("wing left", wingSide(wingRun.negated()));
    PlaneNotes valley = RoofForms.meeting(side, "left", EdgeKind.VALLEY, "front", "side 2");
    return RoofForms.ridged(atEnd(valley, "right", "left"), "wing right");
  }

  private PlaneNotes wingRight() {
    PlaneNotes side = plane("wing right", wingSide(plan.hipped() ? wingRun : Length.ZERO));
    PlaneNotes valley = RoofForms.meeting(side, "right", EdgeKind.VALLEY, "front", "side 3");
    return RoofForms.ridged(atEnd(valley, "left", "right"), "wing left");
  }

  private Shape wingSide(Length offset) {
    Length ridge = plan.hipped() ? plan.wing() : plan.wing().plus(wingRun);
    return new Shape.Trapezoid(plan.wing(), ridge, wingRun, Optional.of(offset));
  }

  private PlaneNotes atEnd(PlaneNotes plane, String side, String endSide) {
    return plan.hipped()
        ? RoofForms.meeting(plane, side, EdgeKind.HIP, "wing end", endSide)
        : plane;
  }
}
