package squaresheet.binding;

import java.util.List;
import java.util.Optional;
import squaresheet.geometry.Point;
import squaresheet.roof.Opening;
import squaresheet.roof.PlaneNotes.OpeningNotes;
import squaresheet.roof.Shape;
import squaresheet.units.Length;

/** Reads a row of an openings table. */
final class OpeningRow {

  /** No chimney or skylight is wider, common practice, no source; a bare number over it is asked about. */
  private static final Length WIDEST = Length.of(10, 0);

  private static final Length WIDEST_DORMER = Length.of(40, 0);

  private static final List<String> PIPES = List.of("pipe", "vent", "stack", "boot");

  private final RowReader row;

  OpeningRow(RowReader row) {
    this.row = row;
  }

  /** The name of the plane that the opening is cut out of. */
  String plane() {
    return row.text("plane").orElse("");
  }

  Optional<OpeningNotes> read() {
    String id = row.text("opening").orElse("");
    Optional<Opening.Kind> kind = row.text("what").isEmpty()
        ? Optional.of(Opening.Kind.OTHER)
        : what(row.text("what").get());
    Optional<Length> width = row.length("width");
    Optional<Length> height = row.length("up_slope");
    Length most = kind.filter(it -> it == Opening.Kind.DORMER).isPresent() ? WIDEST_DORMER : WIDEST;
    row.judgeBare("width", width, most);
    row.judgeBare("up_slope", height, most);
    Optional<Length> left = row.offsetIfAny("from_left");
    Optional<Length> up = row.offsetIfAny("from_eave");
    if (left.isPresent() != up.isPresent()) {
      row.leave("from_left");
      row.leave("from_eave");
    }
    if (!row.isWhole()) {
      return Optional.empty();
    }
    Optional<Point> at = left.flatMap(x -> up.map(y -> new Point(x, y)));
    return Optional.of(new OpeningNotes(
        id,
        kind.orElseThrow(),
        new Shape.Rectangle(width.orElseThrow(), height.orElseThrow()),
        at));
  }

  /** What it is; of a pipe is said that it is counted, not cut out. */
  private Optional<Opening.Kind> what(String text) {
    Optional<Opening.Kind> kind = Opening.Kind.from(text);
    if (row.isStrict() && kind.isEmpty() && Tokens.of(text).stream().anyMatch(PIPES::contains)) {
      row.refuse(
          "what",
          Complaint.WORD_UNKNOWN.at(
              row.where("what"),
              text,
              "",
              "what must be one of " + String.join(", ", Opening.Kind.words()) + ", but is '" + text
                  + "'; a pipe is no opening: count it beside 'Pipes through the roof'"));
      return Optional.empty();
    }
    return row.word("what", text, Opening.Kind::from, Opening.Kind.words());
  }
}
