package squaresheet.binding;

import java.util.List;
import squaresheet.courses.CoursePlan;
import squaresheet.courses.RoofLayout;

/** How the courses of each plane come out at the top, live: changing exposure, interval or overhang changes them. */
final class LayoutCourses {

  private static final String WHOLE = "*(1-1E-9)";

  private final RoofLayout layout;
  private final PlanesSheet planes;
  private final Downward down;
  private final TapeColumn tape;

  LayoutCourses(RoofLayout layout, PlanesSheet planes, Downward down, TapeColumn tape) {
    this.layout = layout;
    this.planes = planes;
    this.down = down;
    this.tape = tape;
  }

  void write() {
    down.headings(List.of(
        "Courses on each plane, " + tape.unit(),
        "To cover up the slope",
        "Courses",
        "Lines above the first",
        "Last course shows",
        "Given away up the slope",
        "Courses that costs",
        "Fewest courses",
        "Even exposure",
        "Even interval"));
    layout.plans().forEach(this::plane);
    down.skip(1);
  }

  private void plane(CoursePlan plan) {
    String name = down.here(0);
    int item = planes.item(plan.plane().id());
    String height = planes.table().there(item, "slope_height") + "*12";
    down.put(0, Entries.computed(planes.table().there(item, "plane_name"), "@"));
    down.put(1, tape.decimal(height + cover(name)));
    String cover = tape.inches(down.here(1));
    String courses = down.here(2);
    down.put(2, Entries.computed("ROUNDUP(" + cover + "/lined_exposure" + WHOLE + ",0)", "0"));
    down.put(
        3,
        Entries.computed(
            "MAX(0,ROUNDUP((" + height + "-first_course_line)/line_interval" + WHOLE + ",0)-1)",
            "0"));
    down.put(4, tape.decimal(cover + "-(" + courses + "-1)*lined_exposure"));
    down.put(5, tape.decimal("(shingle_exposure-lined_exposure)*" + courses));
    down.put(6, Entries.computed(courses + "-" + down.here(7), "0"));
    down.put(7, Entries.computed("ROUNDUP(" + cover + "/shingle_exposure" + WHOLE + ",0)", "0"));
    down.put(8, tape.decimal(cover + "/" + down.here(7)));
    down.put(9, tape.decimal(tape.inches(down.here(8)) + "*courses_per_line"));
    down.skip(1);
  }

  /** What is covered past the eave, less what a ridge's cap covers. */
  private static String cover(String name) {
    return "+IF(SUMPRODUCT((work_plane_name=" + name
        + ")*plane_eave_length)>0,shingle_overhang,0)-IF(SUMPRODUCT((edge_kind=\"ridge\")*((edge_plane="
        + name + ")+(edge_meets=" + name + ")))>0,cap_cover,0)";
  }
}
