package squaresheet.binding;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import squaresheet.roof.EdgeKind;
import squaresheet.roof.Opening;
import squaresheet.roof.PlaneNotes;
import squaresheet.roof.PlaneNotes.Meets;
import squaresheet.roof.PlaneNotes.SideNotes;
import squaresheet.units.Length;

/** Reads a row of the edges of a job workbook, which names the side of a plane and, where two meet, that of the other. */
final class SideRow {

  private final RowReader row;
  private final Predicate<String> isLost;

  /**
   * A row to be read.
   *
   * @param isLost whether the plane of that key is there, but could not be read
   */
  SideRow(RowReader row, Predicate<String> isLost) {
    this.row = row;
    this.isLost = isLost;
  }

  /** Puts what the row says on the sides it names. */
  void placeOn(Map<String, PlaneNotes> planes) {
    if (isOfAnOpening()) {
      return;
    }
    Optional<EdgeKind> kind =
        row.text("edge").flatMap(text -> row.word("edge", text, EdgeKind::from, EdgeKind.words()));
    String plane = row.text("plane").orElse("");
    String side = row.text("side").orElse("");
    String other = row.text("meets").orElse("");
    String otherSide = row.text("other_side").orElse("");
    Optional<Length> taped = row.lengthIfAny("taped");
    Optional<Length> otherTaped = row.lengthIfAny("other_taped");
    if (kind.isEmpty() || !row.isWhole()) {
      return;
    }
    boolean alone = Meets.isNothing(other);
    boolean shared = !alone && !otherSide.isEmpty();
    Meets meets = shared ? new Meets.Named(other, otherSide) : Meets.read(other);
    put(planes, plane, new SideNotes(side, kind, taped, meets));
    if (alone && !otherSide.isEmpty()) {
      row.remark(Complaint.ROW_UNREAD.at(
          row.where("other_side"),
          "an edge that meets no plane must name no side of one, but names '" + otherSide
              + "'; clear that cell, and give the edge of the other plane a row of its own"));
    }
    if (shared) {
      put(planes, other, new SideNotes(otherSide, kind, otherTaped, new Meets.Named(plane, side)));
    }
  }

  /** Whether the row is a part of an opening, which stands on another sheet; any other word but none is refused. */
  private boolean isOfAnOpening() {
    Optional<String> part = row.text("part").filter(text -> !Meets.isNothing(text));
    List<String> words = new ArrayList<>(List.of("none"));
    words.addAll(Opening.Kind.words());
    part.ifPresent(text -> row.word("part", text, Opening.Kind::from, words));
    return part.isPresent();
  }

  private void waits(String plane) {
    row.remark(Complaint.ROW_WAITS.at(
        row.where("plane"),
        "the edge lies on plane " + plane
            + ", which could not be read; it counts as soon as that plane does"));
  }

  private void put(Map<String, PlaneNotes> planes, String plane, SideNotes side) {
    String key = TapedEdge.key(plane);
    PlaneNotes notes = planes.get(key);
    if (isLost.test(key)) {
      waits(plane);
      return;
    }
    if (notes == null || !notes.shape().sideNames().contains(side.side())) {
      row.refuse(
          "plane",
          Complaint.ROW_UNREAD.at(
              row.where("plane"),
              "an edge must lie on a side of a plane of this workbook, but '" + plane + "', '"
                  + side.side() + "' is none that was read"));
      return;
    }
    List<SideNotes> sides = new ArrayList<>(notes.sides());
    sides.add(side);
    Map<String, squaresheet.finding.Where> places = new java.util.LinkedHashMap<>(notes.places());
    places.put(side.side(), row.where("edge"));
    planes.put(key, notes.with(sides, places));
  }
}
