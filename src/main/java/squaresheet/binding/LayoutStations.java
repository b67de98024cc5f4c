package squaresheet.binding;

import java.util.ArrayList;
import java.util.List;
import squaresheet.courses.CoursePlan;
import squaresheet.courses.Lines;
import squaresheet.courses.RoofLayout;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.sheet.Ref;

/**
 * Marks at as many stations along an eave as somebody measures, live: one block for each plane whose ends differ, one to
 * fill in for any other; and the overhang along an eave that wavers.
 */
final class LayoutStations {

  private static final int STATIONS = 5;

  private final RoofLayout layout;
  private final Downward down;
  private final TapeColumn tape;

  LayoutStations(RoofLayout layout, Downward down, TapeColumn tape) {
    this.layout = layout;
    this.down = down;
    this.tape = tape;
  }

  void write() {
    down.sheet().breakAbove(down.row());
    layout.plans().stream()
        .filter(plan -> plan.lines().taperPerLine().inches() > 0)
        .forEach(plan ->
            block("Plane " + plan.plane().id() + ": the ends differ", stations(plan), marks(plan)));
    block("Any other eave: type what is measured", List.of(), tallest());
    wander();
  }

  private static List<Lines.Station> stations(CoursePlan plan) {
    return plan.lines().marks().stream().map(Lines.Marks::station).toList();
  }

  private static int marks(CoursePlan plan) {
    return plan.lines().marks().stream()
        .mapToInt(marks -> marks.at().size())
        .max()
        .orElse(0);
  }

  private int tallest() {
    return layout.plans().stream().mapToInt(LayoutStations::marks).max().orElse(0);
  }

  /** Stations side by side, the distance up the slope at each, and the marks under them. */
  private void block(String heading, List<Lines.Station> stations, int marks) {
    down.headings(
        List.of(heading, "Station 1", "Station 2", "Station 3", "Station 4", "Station 5"));
    down.put(0, Entries.label("What the crew calls it"));
    each(
        at -> at < stations.size() ? Entries.input(stations.get(at).name()) : Entries.blankInput());
    down.put(0, Entries.label("From the eave edge up to the top of the courses, " + tape.unit()));
    String all = all();
    List<String> up = heres();
    each(at ->
        at < stations.size() ? tape.typed(stations.get(at).up().toInches()) : Entries.blankInput());
    String longest = "(" + tape.inches("MAX(" + all + ")") + "-first_course_line)";
    down.put(0, Entries.label("Lines run closer here than at the longest, each by"));
    each(at -> tape.of(
        up.get(at),
        "line_interval*(1-(" + tape.inches(up.get(at)) + "-first_course_line)/" + longest + ")"));
    for (int mark = 1; mark <= Math.max(1, marks); mark++) {
      mark(mark, up, longest);
    }
    down.skip(1);
  }

  private void mark(int mark, List<String> up, String longest) {
    down.put(0, Entries.label("Mark " + mark + " above the first course's upper edge"));
    String share = "line_interval*" + mark + "*(%s-first_course_line)/" + longest;
    int above = down.row();
    each(at -> {
      String wanted = down(String.format(share, tape.inches(up.get(at))));
      String reach = mark == 1
          ? down("courses_per_line*shingle_exposure")
          : tape.inches(Ref.letters(at + 1) + above) + "+"
              + down("courses_per_line*shingle_exposure");
      return tape.of(up.get(at), "MIN(" + wanted + "," + reach + ")");
    });
  }

  /** Rounded down to the tape; what stands a hair under a mark for want of digits stands on it. */
  private String down(String inches) {
    return "ROUNDDOWN(" + inches + "/" + tape.mark() + "*(1+1E-9),0)*" + tape.mark();
  }

  private void each(java.util.function.IntFunction<Entry> cell) {
    for (int at = 0; at < STATIONS; at++) {
      down.put(at + 1, cell.apply(at));
    }
    down.skip(1);
  }

  private List<String> heres() {
    List<String> cells = new ArrayList<>();
    for (int at = 0; at < STATIONS; at++) {
      cells.add(Ref.letters(at + 1) + (down.row() + 1));
    }
    return cells;
  }

  private String all() {
    return heres().get(0) + ":" + heres().get(STATIONS - 1);
  }

  /** The overhang at every station, from the snapped starter line down to the eave edge. */
  private void wander() {
    down.headings(List.of(
        "An eave that wavers: measure down from the starter line",
        "Station 1",
        "Station 2",
        "Station 3",
        "Station 4",
        "Station 5"));
    down.put(
        0, Entries.label("From the snapped starter line down to the eave edge, " + tape.unit()));
    String readings = all();
    List<String> reading = heres();
    each(at -> Entries.blankInput());
    down.put(0, Entries.label("Overhang there"));
    each(at ->
        tape.of(reading.get(at), "starter_line+shingle_overhang-" + tape.inches(reading.get(at))));
    down.put(0, Entries.label("Is that within its limits?"));
    each(at -> Entries.computed(
        "IF(" + reading.get(at) + "=\"\",\"\"," + within(tape.inches(reading.get(at))) + ")", "@"));
    cure(readings);
    down.skip(1);
  }

  private static String within(String reading) {
    String overhang = "starter_line+shingle_overhang-" + reading;
    return "IF(" + overhang + "<least_overhang,\"too little\",IF(" + overhang
        + ">most_overhang,\"too much\",\"yes\"))";
  }

  /** How far to move the line so that all stations lie evenly about the middle of the limits, if any line can. */
  private void cure(String readings) {
    String middle = "starter_line+shingle_overhang-"
        + tape.inches("(MAX(" + readings + ")+MIN(" + readings + "))/2");
    down.put(0, Entries.label("If not, move the line up by (down where negative)"));
    down.put(
        1, tape.of(readings.replaceAll(":.*", ""), middle + "-(least_overhang+most_overhang)/2"));
    down.put(
        2,
        Entries.computed(
            "IF(COUNT(" + readings + ")=0,\"\",IF("
                + tape.inches("(MAX(" + readings + ")-MIN(" + readings + "))")
                + ">most_overhang-least_overhang,\"no straight line will do: straighten the edge metal first\",\"\"))",
            "@"));
    down.skip(1);
  }
}
