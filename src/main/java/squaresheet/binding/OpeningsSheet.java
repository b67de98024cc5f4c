package squaresheet.binding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.IntFunction;
import squaresheet.roof.Opening;
import squaresheet.roof.PlaneNotes.OpeningNotes;
import squaresheet.roof.Shape;
import squaresheet.sheet.Address;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.units.Length;

/** What is cut out of the planes. */
final class OpeningsSheet {

  static final String NAME = "Openings";

  private static final int HEADING = 3;
  private static final String FEET = "0.00##";
  private static final List<String> WORDED = List.of("width", "up_slope", "from_left", "from_eave");

  private record Cut(String plane, OpeningNotes opening) {}

  private final List<Cut> cuts = new ArrayList<>();
  private final DraftSheet sheet;
  private final TableDraft table;
  private final LengthColumns lengths;

  OpeningsSheet(JobParts parts, DraftSheet sheet) {
    this.sheet = sheet;
    parts.planes().forEach(plane -> plane.openings().stream()
        .filter(opening -> parts.resolved(plane).openings().stream()
            .anyMatch(known -> known.id().equals(opening.id())))
        .forEach(opening -> cuts.add(new Cut(plane.id(), opening))));
    parts.lost().forEach(plane -> plane
        .openings()
        .forEach(opening -> cuts.add(new Cut(plane.id(), opening))));
    table = new TableDraft(sheet, HEADING, Math.max(1, cuts.size()));
    lengths = new LengthColumns(table, parts.unit());
    inputs();
    computed();
    table.add(Column.of(
        "wording",
        "As written on the tape sheet",
        34,
        item -> Entries.note(
            cuts.isEmpty()
                ? ""
                : parts.wording("opening " + cuts.get(item).opening.id(), WORDED))));
  }

  private void inputs() {
    text("opening_name", "Opening", 16, cut -> cut.opening.id());
    text("opening_plane", "In plane", 16, cut -> cut.plane);
    table.add(Column.of(
            "opening_what",
            "What",
            11,
            item -> cuts.isEmpty()
                ? Entries.blankInput()
                : Entries.input(cuts.get(item).opening.kind().word()))
        .oneOf(Opening.Kind.words()));
    lengths.add("opening_width", "Width", 10, of(cut -> Optional.of(lengths(cut).get(0))));
    lengths.add(
        "opening_up_slope",
        "Up the slope",
        10,
        of(cut -> Optional.of(lengths(cut).get(1))));
    lengths.alone(
        "opening_from_left", "From left", 10, of(cut -> cut.opening.at().map(at -> at.x())));
    lengths.alone(
        "opening_from_eave", "Up from eave", 10, of(cut -> cut.opening.at().map(at -> at.y())));
  }

  /** Width and height of the smallest rectangle around an opening. */
  private static List<Length> lengths(Cut cut) {
    Shape shape = cut.opening.shape();
    return shape instanceof Shape.Rectangle rectangle
        ? List.of(rectangle.eave(), rectangle.rake())
        : List.of(
            shape.corners(1).stream()
                .map(corner -> corner.x())
                .reduce(Length.ZERO, OpeningsSheet::longer),
            shape.corners(1).stream()
                .map(corner -> corner.y())
                .reduce(Length.ZERO, OpeningsSheet::longer));
  }

  private static Length longer(Length one, Length other) {
    return one.compareTo(other) > 0 ? one : other;
  }

  private void text(String name, String heading, double width, Function<Cut, String> of) {
    table.add(Column.of(
        name,
        heading,
        width,
        item -> cuts.isEmpty() ? Entries.blankInput() : Entries.input(of.apply(cuts.get(item)))));
  }

  private IntFunction<Optional<Length>> of(Function<Cut, Optional<Length>> of) {
    return item -> cuts.isEmpty() ? Optional.empty() : of.apply(cuts.get(item));
  }

  private void computed() {
    table.add(Column.of("opening_height", "Height on the slope, ft", 10, this::height));
    table.add(Column.of(
            "opening_sloped_area",
            "Area on the slope, sq ft",
            11,
            item -> Entries.computed(
                table.here(item, "opening_width") + "*" + table.here(item, "opening_height"),
                "#,##0.0"))
        .inTotal());
  }

  private Entry height(int item) {
    String plane = table.here(item, "opening_plane");
    return Entries.computed(
        "IF(OR(" + plane + "=\"\",SUMPRODUCT((plane_name=" + plane + ")*1)=0),0,"
            + table.here(item, "opening_up_slope") + "*" + PlanesSheet.stretch(plane) + ")",
        FEET);
  }

  /** The cell with the length of an opening's front and back, or of its sides. */
  Address length(String opening, boolean across) {
    for (int item = 0; item < cuts.size(); item++) {
      if (cuts.get(item).opening.id().equals(opening)) {
        return table.address(item, across ? "opening_width" : "opening_height");
      }
    }
    throw new IllegalArgumentException("no opening " + opening);
  }

  void write(Draft draft) {
    Sheets.head(
        sheet,
        "Openings",
        "What is cut out of the planes. Leave the two last places empty where only the size was"
            + " measured.");
    table.write(draft);
    Sheets.table(sheet, HEADING, 1);
  }
}
