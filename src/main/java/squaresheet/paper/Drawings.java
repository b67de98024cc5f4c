package squaresheet.paper;

import java.util.List;
import squaresheet.courses.CoursePlan;
import squaresheet.courses.EaveStarter;
import squaresheet.courses.RoofLayout;

/** The drawings of a layout, and of what to measure. */
public final class Drawings {

  private Drawings() {}

  /** A plane to scale: lines to snap with their marks, courses, joints of the first courses, openings and edges. */
  public static Drawing plane(CoursePlan plan) {
    return PlanePicture.of(plan);
  }

  /** The starter under the first course along one eave of a plane, joints that stand too near each other marked. */
  public static Drawing starter(CoursePlan plan, EaveStarter starter) {
    return StarterPicture.of(plan, starter);
  }

  /** All planes of the roof at one scale, twelve to a sheet. */
  public static List<Drawing> roof(RoofLayout layout) {
    return RoofPicture.of(layout);
  }

  /**
   * A small picture of a plane's shape that says which lengths to measure.
   *
   * @param word one of {@link #shapes}
   * @throws IllegalArgumentException if there is no such shape
   */
  public static Drawing shape(String word) {
    return ShapePicture.of(word);
  }

  /** The shapes there are pictures of. */
  public static List<String> shapes() {
    return List.of("rectangle", "triangle", "trapezoid", "parallelogram", "polygon");
  }
}
