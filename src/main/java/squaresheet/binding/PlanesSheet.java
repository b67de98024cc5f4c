package squaresheet.binding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import squaresheet.formula.Formula;
import squaresheet.roof.PlaneNotes;
import squaresheet.roof.PlaneNotes.Measured;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;
import squaresheet.takeoff.Rule;
import squaresheet.units.Length;

/** The sheets of planes: what was measured and the areas on one, what each plane takes on the other. */
final class PlanesSheet {

  static final String NAME = "Planes";
  static final String WORK = "Plane work";
  /** The defined name of the planes' names on the second sheet. */
  static final String WORK_KEY = "work_plane_name";

  private static final int HEADING = 3;
  private static final String FEET = "0.00##";

  /** Rules of a plane that stand beside its measures; all others stand on the second sheet. */
  private static final Set<String> BESIDE =
      Set.of("pitch_factor", "gross_sloped_area", "net_sloped_area", "plan_area", "plane_squares");

  private static final List<String> WORDED =
      List.of("eave", "up_slope", "top", "offset", "pitch", "corners");

  private final JobParts parts;
  private final List<PlaneNotes> planes;
  private final TableDraft table;
  private final TableDraft work;
  private final LengthColumns lengths;
  private final DraftSheet sheet;
  private final DraftSheet workSheet;

  PlanesSheet(JobParts parts, DraftSheet sheet, DraftSheet workSheet) {
    this.parts = parts;
    this.planes = parts.planes();
    this.sheet = sheet;
    this.workSheet = workSheet;
    table = new TableDraft(sheet, HEADING, planes.size());
    lengths = new LengthColumns(table, parts.unit());
    work = new TableDraft(workSheet, HEADING, planes.size());
    inputs();
    givens();
    rules();
    table.add(Column.of(
        "wording",
        "As written on the tape sheet",
        34,
        item -> Entries.note(parts.wording("plane " + planes.get(item).id(), WORDED))));
  }

  TableDraft table() {
    return table;
  }

  /** The row of a plane among the items. */
  int item(String plane) {
    for (int item = 0; item < planes.size(); item++) {
      if (TapedEdge.key(planes.get(item).id()).equals(TapedEdge.key(plane))) {
        return item;
      }
    }
    throw new IllegalArgumentException("no plane " + plane);
  }

  private void inputs() {
    table.add(Column.of(
        "plane_name", "Plane", 14, item -> Entries.input(planes.get(item).id())));
    table.add(Column.of(
            "plane_shape",
            "Shape",
            14,
            item -> Entries.input(planes.get(item).shape().word()))
        .oneOf(List.of("rectangle", "triangle", "trapezoid", "parallelogram", "polygon")));
    length("eave_width", "Eave", plane -> plane.shape().lengths().get("eave"));
    length("plane_up_slope", "Up the slope", plane -> {
      Length height = plane.shape().lengths().get("height");
      return height == null ? plane.shape().lengths().get("rake") : height;
    });
    length("plane_top", "Top", plane -> plane.shape().lengths().get("ridge"));
    offset();
    table.add(Column.of(
        "pitch_rise",
        "Pitch, rise per 12",
        8,
        item -> Entries.input(planes.get(item).pitch().rise().doubleValue(), "General")));
    table.add(Column.of(
            "plane_measured",
            "Measured on slope/plan",
            10,
            item ->
                Entries.input(planes.get(item).measured() == Measured.IN_PLAN ? "plan" : "slope"))
        .oneOf(List.of("slope", "plan")));
  }

  private void offset() {
    lengths.addIfAny(
        "plane_offset",
        "Offset",
        8.5,
        item -> Optional.ofNullable(planes.get(item).shape().lengths().get("offset")));
  }

  private void length(String name, String heading, Function<PlaneNotes, Length> of) {
    lengths.add(name, heading, 8.5, item -> Optional.ofNullable(of.apply(planes.get(item))));
  }

  private void givens() {
    if (!parts.unit().isImperial()) {
      given("plane_degrees", "Pitch, \u00b0", "0.0", "DEGREES(ATAN({pitch_rise}/12))");
    }
    given("top_width", "Top used, ft", FEET, """
        IF(OR({plane_shape}="rectangle",{plane_shape}="parallelogram"),{eave_width},\
        IF({plane_shape}="trapezoid",{plane_top},0))""");
    given("plane_offset_used", "Offset used, ft", FEET, """
        IF({plane_shape}="rectangle",0,IF({plane_offset}<>"",{plane_offset},\
        IF({plane_shape}="triangle",{eave_width}/2,\
        IF({plane_shape}="trapezoid",({eave_width}-{plane_top})/2,0))))""");
    given("slope_height", "Height on the slope, ft", FEET, """
        IF({plane_shape}="polygon",SUMPRODUCT(MAX((corner_plane={plane_name})*corner_reach)),\
        IF({plane_measured}="plan",{plane_up_slope}*SQRT(1+({pitch_rise}/12)^2),{plane_up_slope}))""");
    given("outline_area", "Area inside the corners, sq ft", "#,##0.0", """
        IF({plane_shape}="polygon",ABS(SUMPRODUCT((corner_plane={plane_name})*corner_cross))/2,\
        ({eave_width}+{top_width})/2*{slope_height})""");
    given("opening_area", "Openings, sq ft", "#,##0.0", """
        SUMPRODUCT((opening_plane={plane_name})*opening_sloped_area)""");
  }

  /**
   * By what lengths across the slope of a plane are multiplied: its pitch factor where they were taken in plan. Its name is
   * compared and not looked up, since a look-up takes ? and * for any letters.
   */
  static String stretch(String plane) {
    String named = "SUMPRODUCT((plane_name=" + plane + ")*";
    return "IF(" + named + "(plane_measured=\"plan\"))>0," + named + "pitch_factor),1)";
  }

  private void given(String name, String heading, String format, String formula) {
    table.add(Column.of(name, heading, 9, item -> Entries.computed(filled(formula, item), format)));
  }

  private String filled(String formula, int item) {
    String filled = formula;
    while (filled.contains("{")) {
      int start = filled.indexOf('{');
      int end = filled.indexOf('}');
      filled = filled.substring(0, start)
          + table.here(item, filled.substring(start + 1, end))
          + filled.substring(end + 1);
    }
    return filled;
  }

  private void rules() {
    work.add(Column.of(
        WORK_KEY, "Plane", 14, item -> Entries.computed(table.there(item, "plane_name"), "@")));
    List<Rule> rules = new ArrayList<>(parts.rulebook().rules());
    rules.removeIf(rule -> rule.per() != Rule.Per.PLANE || !rule.isWorkedOut());
    rules.forEach(rule -> rule(BESIDE.contains(rule.name()) ? table : work, rule));
  }

  private void rule(TableDraft at, Rule rule) {
    Column column = Column.of(
        rule.name(),
        Entries.heading(rule.label(), rule),
        11,
        item -> Entries.computed(formula(at, rule, item), Entries.format(rule)));
    boolean summed = rule.holds() == Rule.Holds.NUMBER
        && switch (rule.unit().kind()) {
          case PLAN_AREA, SLOPED_AREA, AREA, SQUARES, PIECES, LENGTH ->
            !rule.name().equals("ice_reach");
          default -> false;
        };
    at.add(summed ? column.inTotal() : column);
  }

  private String formula(TableDraft at, Rule rule, int item) {
    Formula formula = parts.rulebook().formula(rule.name()).orElseThrow();
    return RowNames.rowFormula(formula, name -> {
      if (at.has(name)) {
        return Optional.of(at.here(item, name));
      }
      return table.has(name)
          ? Optional.of(table.there(item, name))
          : work.has(name) ? Optional.of(work.there(item, name)) : Optional.empty();
    });
  }

  void write(Draft draft) {
    Sheets.head(
        sheet,
        "Planes",
        "One row for each plane. " + LengthColumns.say(parts.unit())
            + " To add a plane, insert a row above the free row, copy a row into it and overtype the boxed cells; do the same on"
            + " the sheet Plane work.");
    Sheets.head(
        workSheet,
        "What each plane takes",
        "Computed from the sheet Planes, the settings and the products; nothing is typed here.");
    table.write(draft);
    work.write(draft);
    Sheets.table(sheet, HEADING, 1);
    Sheets.table(workSheet, HEADING, 1);
  }
}
