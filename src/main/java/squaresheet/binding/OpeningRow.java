package squaresheet.binding;

import java.util.Optional;
import squaresheet.geometry.Point;
import squaresheet.roof.Opening;
import squaresheet.roof.PlaneNotes.OpeningNotes;
import squaresheet.roof.Shape;
import squaresheet.units.Length;

/** Reads a row of an openings table. */
final class OpeningRow {

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
        : row.word("what", row.text("what").get(), Opening.Kind::from, Opening.Kind.words());
    Optional<Length> width = row.length("width");
    Optional<Length> height = row.length("up_slope");
    Optional<Length> left = row.offsetIfAny("from_left");
    Optional<Length> up = row.offsetIfAny("from_eave");
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
}
