package squaresheet.binding;

import java.util.List;
import java.util.Optional;
import squaresheet.formula.Value;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Role;
import squaresheet.takeoff.Rule;

/** The lines to snap, live from the rules, and what laying out every course came to. */
final class LayoutSheet {

  static final String NAME = "Layout";

  private static final int HEADING = 3;
  private static final List<String> LINES = List.of(
      "starter_line",
      "first_course_line",
      "line_spacing",
      "line_interval",
      "mark_one",
      "mark_two",
      "mark_three",
      "mark_four",
      "mark_five",
      "mark_six",
      "lined_exposure",
      "laid_exposure");

  private final JobParts parts;
  private final DraftSheet sheet;
  private int row = HEADING;

  LayoutSheet(JobParts parts, DraftSheet sheet) {
    this.parts = parts;
    this.sheet = sheet;
  }

  void write(Draft draft) {
    Sheets.head(
        sheet,
        "Layout",
        "Lines and marks for the crew, measured along the slope. The marks are pulled from the first"
            + " course's upper edge.");
    headings("Line or mark", "Inches", "Feet", "Name");
    for (String name : LINES) {
      parts.rulebook().rule(name).ifPresent(this::line);
    }
    row++;
    headings("Course layout", "Value", "Unit", "Name");
    parts.rulebook().rule("simulated_waste").ifPresent(rule -> simulated(draft, rule));
    sheet.width(0, 56).width(1, 12).width(2, 12).width(3, 24);
    Sheets.page(sheet);
  }

  private void headings(String... texts) {
    for (int at = 0; at < texts.length; at++) {
      sheet.put(new Ref(row, at), Entry.text(texts[at]).as(Role.HEADING));
    }
    row++;
  }

  private void line(Rule rule) {
    sheet.put(new Ref(row, 0), Entries.label(rule.label()));
    sheet.put(new Ref(row, 1), Entries.computed(rule.name(), "0.00##"));
    sheet.put(new Ref(row, 2), Entries.computed(rule.name() + "/12", "0.000"));
    sheet.put(new Ref(row, 3), Entries.unit(rule.name()));
    row++;
  }

  private void simulated(Draft draft, Rule rule) {
    Ref at = new Ref(row, 1);
    Optional<Value> waste = Optional.ofNullable(parts.given().get(rule.name()));
    sheet.put(new Ref(row, 0), Entries.label(rule.label()));
    sheet.put(
        at,
        waste
            .map(value -> Entry.of(Entries.content(value)).as(Role.PLAIN).format("0.0%"))
            .orElseGet(() -> Entries.computed("NA()", "0.0%")));
    sheet.put(new Ref(row, 3), Entries.unit(rule.name()));
    draft.name(rule.name(), NAME + "!" + TableDraft.dollars(at));
    row++;
  }
}
