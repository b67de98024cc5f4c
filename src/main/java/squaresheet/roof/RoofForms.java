package squaresheet.roof;

import java.util.Optional;
import squaresheet.roof.PlaneNotes.Measured;
import squaresheet.roof.PlaneNotes.Meets;
import squaresheet.roof.PlaneNotes.SideNotes;
import squaresheet.units.DerivedLength;
import squaresheet.units.Length;
import squaresheet.units.Pitch;

/**
 * Notes of whole roofs from a plan with its overhangs and a pitch, with every plane and every shared edge named. The front
 * is the long side one looks at; left and right are as seen from there, for each plane as seen from its own eave.
 */
public final class RoofForms {

  private RoofForms() {}

  /**
   * One plane over a rectangle, with a ridge that nothing meets: planes {@code shed}.
   *
   * @param eave along the eave
   * @param run from eave to ridge, level
   * @param pitch the pitch
   */
  public static RoofNotes shed(Length eave, Length run, Pitch pitch) {
    PlaneNotes plane = plane("shed", new Shape.Rectangle(eave, run), pitch);
    return RoofNotes.of(plane.with(SideNotes.of("top", EdgeKind.RIDGE).with(new Meets.Nothing())));
  }

  /**
   * Two planes over a rectangle: {@code front} and {@code back}.
   *
   * @param eave along the eave
   * @param span from eave to eave, level
   * @param pitch of both planes
   */
  public static RoofNotes gable(Length eave, Length span, Pitch pitch) {
    Shape half = new Shape.Rectangle(eave, ShapeParts.half(span));
    return RoofNotes.of(
        meeting(plane("front", half, pitch), "top", EdgeKind.RIDGE, "back", "top"),
        meeting(plane("back", half, pitch), "top", EdgeKind.RIDGE, "front", "top"));
  }

  /**
   * Four planes over a rectangle: {@code front}, {@code right}, {@code back}, {@code left}.
   *
   * @param length along the front, not less than the width
   * @param width from front to back, level
   * @param pitch of all planes
   * @throws IllegalArgumentException if the width is more than the length
   */
  public static RoofNotes hip(Length length, Length width, Pitch pitch) {
    return hip(length, width, pitch, pitch);
  }

  /**
   * Four planes over a rectangle, the two end planes of another pitch.
   *
   * @param length along the front
   * @param width from front to back, level
   * @param sides the pitch of front and back
   * @param ends the pitch of the left and right end
   * @throws IllegalArgumentException if the ends meet before the ridge, which makes another roof
   */
  public static RoofNotes hip(Length length, Length width, Pitch sides, Pitch ends) {
    Length run = ShapeParts.half(width);
    Length endRun = endRun(run, sides, ends);
    Length ridge = length.minus(endRun.times(2));
    if (ridge.units() < 0) {
      throw new IllegalArgumentException("the ends of a hip roof must not meet before its ridge, "
          + "but the runs of both, " + endRun.times(2) + ", are more than its length " + length);
    }
    Shape side = ridge.isZero()
        ? new Shape.Triangle(length, run)
        : new Shape.Trapezoid(length, ridge, run, Optional.of(endRun));
    Shape end = new Shape.Triangle(width, endRun);
    return RoofNotes.of(
        ridged(hipped(plane("front", side, sides), "right", "left"), "back"),
        hipped(plane("right", end, ends), "back", "front"),
        ridged(hipped(plane("back", side, sides), "left", "right"), "front"),
        hipped(plane("left", end, ends), "front", "back"));
  }

  /** The run of the ends that rise as high as the sides. */
  private static Length endRun(Length run, Pitch sides, Pitch ends) {
    if (sides.equals(ends)) {
      return run;
    }
    DerivedLength endRun = run.toDerived().times(sides.slope() / ends.slope());
    return endRun.nearest();
  }

  /**
   * A hip roof in the shape of an L: a wing as wide as the main roof comes forward at the right end. Planes {@code back},
   * {@code left}, {@code front}, {@code inner} (the wing's side in the corner), {@code end} (the wing's), {@code right}.
   *
   * @param length along the back
   * @param width of the main roof and of the wing
   * @param wing how far the wing comes forward of the front eave
   * @param pitch of all planes
   * @throws IllegalArgumentException if the length is not more than the width
   */
  public static RoofNotes ell(Length length, Length width, Length wing, Pitch pitch) {
    if (length.compareTo(width) <= 0) {
      throw new IllegalArgumentException(
          "the main roof of an L must be longer than wide, but is " + length + " by " + width);
    }
    Length run = ShapeParts.half(width);
    Length ridge = length.minus(width);
    Shape back = new Shape.Trapezoid(length, ridge, run);
    Shape front = new Shape.Parallelogram(ridge, run, run);
    Shape inner = new Shape.Parallelogram(wing, run, run.negated());
    Shape right = new Shape.Trapezoid(wing.plus(width), wing, run);
    Shape end = new Shape.Triangle(width, run);
    return RoofNotes.of(
        ridged(hipped(plane("back", back, pitch), "left", "right"), "front"),
        hipped(plane("left", end, pitch), "front", "back"),
        ridged(cornered(plane("front", front, pitch), "right", "inner", "left", "left"), "back"),
        ridged(cornered(plane("inner", inner, pitch), "left", "front", "right", "end"), "right"),
        hipped(plane("end", end, pitch), "right", "inner"),
        ridged(hipped(plane("right", right, pitch), "back", "end"), "inner"));
  }

  /**
   * A hip roof with a wing, narrower than the main roof is deep, coming forward out of its front between two valleys.
   * Planes {@code front} (with the wing cut out), {@code right}, {@code back}, {@code left}, {@code wing left}, {@code wing
   * right}, and {@code wing end} where the wing is hipped.
   *
   * @param plan the measures of main roof and wing
   * @param pitch of all planes
   */
  public static RoofNotes hipWithWing(WingPlan plan, Pitch pitch) {
    return new WingForm(plan, pitch).notes();
  }

  /**
   * The measures of a main roof and a wing, level, with overhangs.
   *
   * @param length along the main roof's back
   * @param width of the main roof, front to back
   * @param start from the left end of the front eave to the wing
   * @param wingWidth along the front, less than the main roof's width
   * @param wing how far the wing comes forward of the front eave
   * @param hipped whether the wing ends in a hip, else in a gable
   */
  public record WingPlan(
      Length length, Length width, Length start, Length wingWidth, Length wing, boolean hipped) {

    /** Refuses a wing that does not fit. */
    public WingPlan {
      if (wingWidth.compareTo(width) >= 0
          || start.plus(wingWidth).compareTo(length) >= 0
          || width.compareTo(length) >= 0
          || !start.isPositive()
          || !wingWidth.isPositive()) {
        throw new IllegalArgumentException(
            "a wing must stand within the front and be narrower than the main roof is deep, but is "
                + wingWidth + " wide from " + start + " on a front of " + length
                + " that is " + width + " deep");
      }
    }
  }

  static PlaneNotes plane(String id, Shape shape, Pitch pitch) {
    return new PlaneNotes(id, shape, Measured.IN_PLAN, pitch);
  }

  static PlaneNotes meeting(
      PlaneNotes plane, String side, EdgeKind kind, String other, String otherSide) {
    return plane.with(SideNotes.of(side, kind).with(new Meets.Named(other, otherSide)));
  }

  /** The plane with hips on its right and left, which meet the left and the right side of two others. */
  static PlaneNotes hipped(PlaneNotes plane, String right, String left) {
    return meeting(
        meeting(plane, "right", EdgeKind.HIP, right, "left"), "left", EdgeKind.HIP, left, "right");
  }

  /** The plane with a valley on one side and a hip on the other. */
  private static PlaneNotes cornered(
      PlaneNotes plane, String valleySide, String valley, String hipSide, String hip) {
    PlaneNotes withValley = meeting(plane, valleySide, EdgeKind.VALLEY, valley, hipSide);
    return meeting(withValley, hipSide, EdgeKind.HIP, hip, valleySide);
  }

  /** The plane with its ridge, if it has one, meeting that of another. */
  static PlaneNotes ridged(PlaneNotes plane, String other) {
    return plane.shape().sideNames().contains("top")
        ? meeting(plane, "top", EdgeKind.RIDGE, other, "top")
        : plane;
  }
}
