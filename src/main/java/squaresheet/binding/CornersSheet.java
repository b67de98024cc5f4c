package squaresheet.binding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.IntFunction;
import squaresheet.geometry.Point;
import squaresheet.roof.PlaneNotes;
import squaresheet.roof.Shape;
import squaresheet.sheet.Address;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;
import squaresheet.tape.TapeUnit;
import squaresheet.units.Length;

/** The corners of planes of free shape, with the area inside them by the corner formula. */
final class CornersSheet {

  static final String NAME = "Corners";

  private static final int HEADING = 3;
  private static final String FEET = "0.00##";

  private record Corner(PlaneNotes plane, int number, int of, Point at) {}

  private final List<Corner> corners = new ArrayList<>();
  private final TapeUnit unit;
  private final DraftSheet sheet;
  private final TableDraft table;

  CornersSheet(JobParts parts, DraftSheet sheet) {
    unit = parts.unit();
    this.sheet = sheet;
    for (PlaneNotes plane : parts.planes()) {
      if (plane.shape() instanceof Shape.Polygon polygon) {
        List<Point> points = polygon.corners();
        for (int i = 0; i < points.size(); i++) {
          corners.add(new Corner(plane, i, points.size(), points.get(i)));
        }
      }
    }
    table = new TableDraft(sheet, HEADING, Math.max(1, corners.size()));
    inputs();
    computed();
  }

  private void inputs() {
    table.add(Column.of(
        "corner_plane",
        "Plane",
        16,
        item -> corners.isEmpty()
            ? Entries.blankInput()
            : Entries.input(corners.get(item).plane.id())));
    table.add(Column.of(
        "corner_number",
        "Corner",
        8,
        item -> corners.isEmpty()
            ? Entries.blankInput()
            : Entries.input(corners.get(item).number + 1.0, "0")));
    LengthColumns lengths = new LengthColumns(table, unit);
    lengths.add("corner_along", "Along the eave", 11, at(Point::x));
    lengths.add("corner_up", "Up the slope", 11, at(Point::y));
  }

  private IntFunction<Optional<Length>> at(Function<Point, Length> of) {
    return item ->
        corners.isEmpty() ? Optional.empty() : Optional.of(of.apply(corners.get(item).at));
  }

  private void computed() {
    table.add(Column.of(
        "corner_up_slope",
        "Up the slope, true, ft",
        11,
        item -> Entries.computed(table.here(item, "corner_up") + "*" + stretch(item), FEET)));
    table.add(Column.of(
        "corner_cross",
        "Cross term, sq ft",
        12,
        item -> Entries.computed(
            at(item, "corner_along") + "*" + next(item, "corner_up_slope") + "-"
                + next(item, "corner_along") + "*" + at(item, "corner_up_slope"),
            "#,##0.00")));
    table.add(Column.of(
        "corner_reach",
        "Plane reaches up, ft",
        11,
        item -> Entries.computed(
            filled(item, "MAX({corner_up_slope:})-MIN({corner_up_slope:})"), FEET)));
    table.add(Column.of(
        "corner_side_length",
        "Side to the next corner, ft",
        12,
        item -> Entries.computed(
            "SQRT((" + next(item, "corner_along") + "-" + at(item, "corner_along") + ")^2+("
                + next(item, "corner_up_slope") + "-" + at(item, "corner_up_slope") + ")^2)",
            FEET)));
    crossings();
  }

  /** What the width of the plane at any height follows from: the signed sum over the sides crossed there. */
  private void crossings() {
    feet(
        "corner_above", "Above the lowest corner, ft", "{corner_up_slope}-MIN({corner_up_slope:})");
    feet(
        "corner_low",
        "Side: lower end, ft",
        "IF({corner_above>}<{corner_above},{corner_above>},{corner_above})");
    feet(
        "corner_high",
        "Side: upper end, ft",
        "IF({corner_above>}>{corner_above},{corner_above>},{corner_above})");
    table.add(Column.of(
        "corner_slant",
        "Side: along for each ft up",
        11,
        item -> Entries.computed(filled(item, """
            IF({corner_above>}={corner_above},0,SIGN(SUM({corner_cross:}))*({corner_along>}-{corner_along})\
            /ABS({corner_above>}-{corner_above}))"""), "0.0###")));
    feet("corner_start", "Side: at the lowest level, ft", """
        IF({corner_above>}={corner_above},0,SIGN(SUM({corner_cross:}))*SIGN({corner_above>}-{corner_above})\
        *{corner_along}-{corner_slant}*{corner_above})""");
    feet("corner_floor", "Level side below the plane, ft", """
        IF({corner_above>}={corner_above},MAX(0,SIGN(SUM({corner_cross:}))*({corner_along>}-{corner_along})),0)""");
    feet("corner_eave", "Eave to the next corner, ft", """
        IF(SUMPRODUCT((edge_plane={corner_plane})*(edge_side="side "&{corner_number})*(edge_kind="eave"))>0,\
        {corner_side_length},0)""");
    feet("corner_row", "Width just below and level sides from here up, ft", """
        SUMPRODUCT(({corner_low:}<{corner_above})*({corner_high:}>={corner_above})*({corner_start:}\
        +{corner_slant:}*{corner_above})+({corner_low:}>={corner_above})*{corner_floor:})""");
  }

  private void feet(String name, String heading, String formula) {
    table.add(Column.of(name, heading, 11, item -> Entries.computed(filled(item, formula), FEET)));
  }

  /** A formula with cells for names: of this corner, of the next ({@code >}), of all corners of the plane ({@code :}). */
  private String filled(int item, String formula) {
    String filled = formula;
    for (int start = filled.indexOf('{'); start >= 0; start = filled.indexOf('{')) {
      int end = filled.indexOf('}');
      String name = filled.substring(start + 1, end);
      String cell = name.endsWith(">")
          ? next(item, name.substring(0, name.length() - 1))
          : name.endsWith(":")
              ? around(item, name.substring(0, name.length() - 1))
              : at(item, name);
      filled = filled.substring(0, start) + cell + filled.substring(end + 1);
    }
    return filled;
  }

  /** 1 where the plane was measured on the slope, its pitch factor where in plan. */
  private String stretch(int item) {
    return corners.isEmpty() ? "1" : PlanesSheet.stretch(table.here(item, "corner_plane"));
  }

  private String at(int item, String name) {
    return table.here(item, name);
  }

  /** A column over all corners of the plane. */
  private String around(int item, String name) {
    if (corners.isEmpty()) {
      return at(item, name);
    }
    int first = item - corners.get(item).number;
    int last = first + corners.get(item).of - 1;
    return at(first, name) + ":" + at(last, name);
  }

  private String next(int item, String name) {
    if (corners.isEmpty()) {
      return table.here(item, name);
    }
    Corner corner = corners.get(item);
    boolean last = corner.number + 1 == corner.of;
    return table.here(last ? item - corner.number : item + 1, name);
  }

  /** The cell with the length of a side, counted from 0, of a plane by corners. */
  Address side(String plane, int side) {
    for (int item = 0; item < corners.size(); item++) {
      if (corners.get(item).plane.id().equals(plane) && corners.get(item).number == side) {
        return table.address(item, "corner_side_length");
      }
    }
    throw new IllegalArgumentException("no side " + side + " of plane " + plane);
  }

  void write(Draft draft) {
    Sheets.head(
        sheet,
        "Corners",
        "Planes of free shape, corner by corner around the plane: along the eave from its left end,"
            + " then up the slope.");
    table.write(draft);
    Sheets.table(sheet, HEADING, 2);
  }
}
