package squaresheet.binding;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import squaresheet.formula.Value;
import squaresheet.sheet.Block;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.sheet.DraftSheet.Paper;
import squaresheet.sheet.DraftSheet.Print;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Role;
import squaresheet.takeoff.Rule;

/**
 * How the crew lays, typed here; the lines and marks that follow, live; what laying out every course came to; and the
 * drawings.
 */
final class LayoutSheet {

  static final String NAME = "Layout";

  private static final int FIRST = 3;
  /** Wide enough for the longest label, so that nothing widens them later: drawings are fitted to them. */
  static final List<Integer> WIDTHS = List.of(66, 10, 10, 10, 10, 10, 10, 10, 10, 10);

  /** Settings that say how courses are laid; the others stand on the sheet {@code Job}. */
  private static final Set<String> LAYING = Set.of(
      "wanted_exposure",
      "exposure_choice",
      "shingle_overhang",
      "courses_per_line",
      "tape_step",
      "rake_overhang",
      "least_overhang",
      "most_overhang",
      "valley_lap",
      "taper_shows",
      "stagger_pattern",
      "next_but_one",
      "sliver_width",
      "lay_from",
      "starter_first_cut",
      "starter_joint_distance",
      "starter_rakes",
      "nail_clear",
      "cut_reuse",
      "cap_cover");

  private static final List<String> LINES =
      List.of("starter_line", "first_course_line", "line_spacing", "line_interval");
  private static final List<String> MARKS =
      List.of("mark_one", "mark_two", "mark_three", "mark_four", "mark_five", "mark_six");
  private static final List<String> EXPOSURES = List.of("lined_exposure", "laid_exposure");

  private final JobParts parts;
  private final DraftSheet sheet;
  private final Downward down;
  private final TapeColumn tape;

  LayoutSheet(JobParts parts, DraftSheet sheet) {
    this.parts = parts;
    this.sheet = sheet;
    this.down = new Downward(sheet, FIRST);
    this.tape = new TapeColumn(parts.isMetric());
  }

  /** Whether a setting stands on this sheet. */
  static boolean isLaying(Rule setting) {
    return LAYING.contains(setting.name());
  }

  void write(Draft draft, PlanesSheet planes) {
    Sheets.head(
        sheet,
        "Layout",
        "Boxed cells are typed; lines, marks and courses follow them at once. What was counted course by"
            + " course and the drawings are of the day the workbook was written.");
    settings(draft);
    sheet.breakAbove(down.row());
    lines();
    parts.layout().ifPresent(layout -> {
      new LayoutCourses(layout, planes, down, tape).write();
      new LayoutStations(layout, down, tape).write();
    });
    counted(draft);
    parts.layout().ifPresent(layout -> new LayoutPictures(layout, down).write());
    for (int column = 0; column < WIDTHS.size(); column++) {
      sheet.width(column, WIDTHS.get(column));
    }
    sheet.print(new Print(Paper.LETTER, true, 0, "", NAME, 0.5));
  }

  private void settings(Draft draft) {
    down.headings(List.of(
        "How it is laid",
        "Type here",
        "Unit",
        tape.isMetric() ? "For formulas" : "",
        "Source",
        "",
        "",
        "Name",
        "",
        ""));
    SettingRow settings = new SettingRow(parts, draft);
    for (Rule rule : parts.rulebook().settings()) {
      if (isLaying(rule)) {
        sheet.merge(new Block(new Ref(down.row(), 4), new Ref(down.row(), 6)));
        settings.write(down, rule, new SettingRow.Columns(3, 4, 7));
      }
    }
    down.skip(1);
  }

  private void lines() {
    down.headings(List.of(
        "Line or mark, up the slope",
        "Inches",
        tape.heading(),
        tape.isMetric() ? "Metres" : "Feet",
        "Name"));
    Stream.of(LINES, MARKS)
        .flatMap(List::stream)
        .flatMap(name -> parts.rulebook().rule(name).stream())
        .forEach(rule -> line(rule.label(), rule.name()));
    for (int mark = MARKS.size() + 1; mark <= marks(); mark++) {
      line("Mark " + mark + " above the first course's upper edge", "line_interval*" + mark);
    }
    EXPOSURES.stream()
        .flatMap(name -> parts.rulebook().rule(name).stream())
        .forEach(this::exposure);
    down.skip(1);
  }

  /** As many as the tallest plane takes, and one more for a smaller interval. */
  private int marks() {
    return parts.layout().stream()
        .flatMap(layout -> layout.plans().stream())
        .flatMap(plan -> plan.lines().marks().stream())
        .mapToInt(marks -> marks.at().size() + 1)
        .max()
        .orElse(0);
  }

  private void line(String label, String formula) {
    down.put(2, tape.of(formula));
    down.put(3, Entries.computed(formula + (tape.isMetric() ? "*0.0254" : "/12"), "0.000"));
    inches(label, formula);
  }

  /** An exposure need not be on any tape: 28 in over five courses are 5.6 in each. */
  private void exposure(Rule rule) {
    if (tape.isMetric()) {
      down.put(2, tape.of(rule.name()));
    }
    inches(rule.label(), rule.name());
  }

  private void inches(String label, String formula) {
    down.put(0, Entries.label(label));
    down.put(1, Entries.computed(formula, "0.00##"));
    down.put(4, Entries.unit(parts.rulebook().rule(formula).isPresent() ? formula : ""));
    down.skip(1);
  }

  private void counted(Draft draft) {
    down.headings(List.of("Counted course by course", "Value", "", "", "Name"));
    parts.rulebook().rule("simulated_waste").ifPresent(rule -> simulated(draft, rule));
    parts.layout().ifPresent(layout -> new LayoutCounts(layout, down, tape).write());
  }

  private void simulated(Draft draft, Rule rule) {
    Optional<Value> waste = Optional.ofNullable(parts.given().get(rule.name()));
    down.put(0, Entries.label(rule.label()));
    down.put(
        1,
        waste
            .map(value -> Entry.of(value.content()).as(Role.PLAIN).format("0.0%"))
            .orElseGet(() -> Entries.computed("NA()", "0.0%")));
    down.put(4, Entries.unit(rule.name()));
    draft.name(rule.name(), down.there(1));
    down.skip(2);
  }
}
