package squaresheet.binding;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import squaresheet.roof.RoofNotes;
import squaresheet.roof.Shape;
import squaresheet.units.Length;

/**
 * What a row of planes on a field sheet says beyond its shape. A rectangle whose top is not as long as its eave is no rectangle:
 * what contradicts the shape is refused, what says the same again is taken, what a polygon's corners say better is left.
 */
final class PlaneExtras {

  private static final List<String> LENGTHS = List.of("eave", "up_slope", "top", "offset");

  private static final Map<String, String> SIDES =
      Map.of("left_edge", "left", "top_edge", "top", "right_edge", "right");

  private final RowReader row;
  private final Shape shape;

  PlaneExtras(RowReader row, Shape shape) {
    this.row = row;
    this.shape = shape;
  }

  void judge() {
    if (!(shape instanceof Shape.Polygon)) {
      LENGTHS.stream().filter(this::isExtra).forEach(this::length);
      if (isExtra("corners")) {
        refuse(
            "corners", "has its corners by its lengths, but corners are written too; a polygon?");
      }
    }
    SIDES.forEach((column, side) -> {
      if (!shape.sideNames().contains(side) && !row.isNothing(column)) {
        refuse(
            column,
            shape instanceof Shape.Polygon
                ? "has its edges under 'Edges in order', one for each side, but one stands here"
                : "has no " + side + " edge, but one is written");
      }
      row.take(column);
    });
  }

  private boolean isExtra(String column) {
    return !row.used().contains(column) && !row.isNothing(column);
  }

  private void length(String column) {
    Optional<Length> written = row.offsetIfAny(column);
    Length same = column.equals("top") ? same() : Length.ZERO;
    if (written.isPresent()
        && written.get().minus(same).abs().compareTo(RoofNotes.usualTolerance()) > 0) {
      refuse(
          column,
          (column.equals("top") ? "is " + same + " long at its top" : "has no " + column) + ", but "
              + written.get() + " is written" + otherShape(column));
    }
  }

  /** How long the top is by the shape alone. */
  private Length same() {
    return shape instanceof Shape.Triangle ? Length.ZERO : shape.lengths().get("eave");
  }

  private static String otherShape(String column) {
    return switch (column) {
      case "top" -> "; a trapezoid?";
      case "offset" -> "; a parallelogram?";
      default -> "";
    };
  }

  private void refuse(String column, String says) {
    row.refuse(
        column, Complaint.ROW_UNREAD.at(row.where(column), "a " + shape.word() + " " + says));
  }
}
