package squaresheet.binding;

import java.util.List;
import squaresheet.courses.CoursePlan;
import squaresheet.courses.Interval;
import squaresheet.courses.Lines;
import squaresheet.courses.RoofLayout;
import squaresheet.sheet.Content;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Role;
import squaresheet.sheet.Workbook;
import squaresheet.units.Length;

/** A sheet with the course lines and marks of every plane for a workbook that others designed: plain values and formulas. */
final class AddedLayout {

  static final String TITLE = "Squaresheet layout";

  private static final String SIZE = "0.0###";
  private static final String EXPOSURE = "$B$7";
  private static final String INTERVAL = "$B$8";
  private static final int HEADINGS = 13;

  /** Nearer than this a formula of the sheet makes the model's number. */
  private static final double CLOSE = 1e-6;

  private final RoofLayout layout;
  private final boolean metric;
  private final DraftSheet sheet;

  private AddedLayout(RoofLayout layout, DraftSheet sheet) {
    this.layout = layout;
    this.sheet = sheet;
    metric = !layout.settings().spacing().tape().isImperial();
  }

  /** The edits that add the sheet, or write it anew where it is there. */
  static List<Edit> of(Workbook book, RoofLayout layout) {
    AddedLayout added = new AddedLayout(layout, Draft.sheetFor(book, TITLE));
    added.head();
    added.planes();
    return Edit.renewing(book, added.sheet);
  }

  private double tape(Length length) {
    return metric ? length.toMillimetres() : length.toInches();
  }

  private void head() {
    String unit = metric ? "millimetres" : "inches";
    Interval interval = layout.interval();
    sheet.width(0, 38).width(1, 18).width(2, 12).height(0, 24).height(HEADINGS, 42);
    sheet.print(new DraftSheet.Print(DraftSheet.Paper.LETTER, true, 0, "", "", 0.5));
    put(0, 0, Entry.text(TITLE).as(Role.TITLE));
    put(
        1,
        0,
        Entry.text("Written anew each time by fill --layout. All lengths in " + unit
            + ". The product's printed instructions and the local code go first."));
    label(3, "Height of a shingle", number(layout.shingle().height()));
    label(4, "Shingles past the eave edge", number(layout.settings().overhang().eave()));
    label(5, "Courses between two lines", Entry.number(interval.courses()));
    label(
        6, "Exposure laid", formula(INTERVAL + "/B6", tape(interval.laid()) / interval.courses()));
    label(7, "Line interval", number(interval.laid()));
    label(
        8,
        "First course, upper edge from the eave",
        formula(
            "B4-B5",
            tape(layout.shingle().height().minus(layout.settings().overhang().eave()))));
    label(9, "Least distance of neighbouring joints", number(layout.stagger().least()));
    label(
        10,
        "Waste by laying out every course",
        Entry.number(layout.simulatedWaste().toDouble()).format("0.0%"));
  }

  private void label(int row, String text, Entry entry) {
    put(row, 0, Entry.text(text));
    put(row, 1, entry);
  }

  private Entry number(Length length) {
    return Entry.number(tape(length)).format(SIZE);
  }

  private static Entry formula(String text, double value) {
    return Entry.formula(text, new Content.Numeric(value)).format(SIZE);
  }

  private void planes() {
    List<String> headings = List.of(
        "Plane",
        "Marked at",
        "To cover up the slope",
        "Courses",
        "Shingles",
        "Marks up from first course");
    for (int at = 0; at < headings.size(); at++) {
      put(HEADINGS, at, Entry.text(headings.get(at)).as(Role.HEADING));
    }
    int row = HEADINGS + 1;
    for (CoursePlan plan : layout.plans()) {
      for (Lines.Marks marks : plan.lines().marks()) {
        plane(row++, plan, marks);
      }
    }
  }

  private void plane(int row, CoursePlan plan, Lines.Marks marks) {
    double cover = tape(plan.reach().covered());
    put(row, 0, Entry.text(plan.plane().id()));
    put(row, 1, Entry.text(marks.station().name()));
    put(row, 2, Entry.number(cover).format(SIZE));
    String courses = "ROUNDUP(C" + (row + 1) + "/" + EXPOSURE + "*(1-1E-9),0)";
    put(row, 3, Entry.formula(courses, new Content.Numeric(plan.courses())).format("0"));
    put(row, 4, Entry.number((double) plan.pieces().used()).format("0"));
    double interval = tape(layout.interval().laid());
    for (int mark = 0; mark < marks.at().size(); mark++) {
      double at = tape(marks.at().get(mark));
      boolean even = Math.abs(at - interval * (mark + 1)) <= CLOSE;
      put(
          row,
          5 + mark,
          even ? formula(INTERVAL + "*" + (mark + 1), at) : Entry.number(at).format(SIZE));
    }
  }

  private void put(int row, int column, Entry entry) {
    sheet.put(new Ref(row, column), entry);
  }
}
