package squaresheet.binding;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import squaresheet.roof.EdgeKind;
import squaresheet.roof.PlaneNotes;
import squaresheet.roof.PlaneNotes.Meets;
import squaresheet.roof.PlaneNotes.SideNotes;
import squaresheet.units.Length;

/** Reads a row of the edges of a job workbook, which names the side of a plane and, where two meet, that of the other. */
final class SideRow {

  private final RowReader row;

  SideRow(RowReader row) {
    this.row = row;
  }

  /** Puts what the row says on the sides it names. */
  void placeOn(Map<String, PlaneNotes> planes) {
    String part = row.text("part").orElse("none");
    if (!part.equals("none")) {
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
    Meets meets = otherSide.isEmpty() ? Meets.read(other) : new Meets.Named(other, otherSide);
    put(planes, plane, new SideNotes(side, kind, taped, meets));
    if (!otherSide.isEmpty()) {
      put(planes, other, new SideNotes(otherSide, kind, otherTaped, new Meets.Named(plane, side)));
    }
  }

  private void put(Map<String, PlaneNotes> planes, String plane, SideNotes side) {
    String key = TapedEdge.key(plane);
    PlaneNotes notes = planes.get(key);
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
    planes.put(
        key,
        new PlaneNotes(
            notes.id(),
            notes.shape(),
            notes.measured(),
            notes.pitch(),
            sides,
            notes.openings(),
            places));
  }
}
