package squaresheet.binding;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import squaresheet.roof.EdgeKind;
import squaresheet.roof.PlaneNotes;
import squaresheet.roof.PlaneNotes.Meets;
import squaresheet.roof.PlaneNotes.SideNotes;
import squaresheet.units.Length;

/**
 * An edge measured with the tape, to be found among the sides of its planes.
 *
 * @param kind what it is
 * @param plane the plane it was measured on, which may name a side: {@code B / left}
 * @param meets the plane on its other side, or empty
 * @param length by the tape
 */
record TapedEdge(EdgeKind kind, String plane, String meets, Length length) {

  static Optional<TapedEdge> read(RowReader row) {
    Optional<EdgeKind> kind =
        row.text("edge").flatMap(text -> row.word("edge", text, EdgeKind::from, EdgeKind.words()));
    Optional<Length> length = row.length("length");
    String plane = row.text("plane").orElse("");
    String side = row.text("side").map(text -> " / " + text).orElse("");
    String meets = row.text("meets").orElse("");
    return row.isWhole() && kind.isPresent()
        ? Optional.of(new TapedEdge(kind.get(), plane + side, meets, length.orElseThrow()))
        : Optional.empty();
  }

  /** Puts the length on the one side it can belong to; false where there is none, or no telling which. */
  boolean placeOn(Map<String, PlaneNotes> planes) {
    return placeOn(planes, plane, meets) || (!meets.isEmpty() && placeOn(planes, meets, plane));
  }

  private boolean placeOn(Map<String, PlaneNotes> planes, String here, String there) {
    int slash = here.lastIndexOf('/');
    String name = slash < 0 ? here : here.substring(0, slash);
    PlaneNotes notes = planes.get(key(name));
    if (notes == null) {
      return false;
    }
    List<String> sides = slash < 0
        ? sides(notes, there)
        : List.of(here.substring(slash + 1).strip().toLowerCase(Locale.ROOT));
    if (sides.size() != 1) {
      return false;
    }
    planes.put(key(name), measured(notes, sides.get(0), there));
    return true;
  }

  static String key(String plane) {
    return plane.strip().toLowerCase(Locale.ROOT);
  }

  /** The sides of this kind that are not measured yet; those that already name the other plane before the others. */
  private List<String> sides(PlaneNotes notes, String other) {
    List<String> names = notes.shape().sideNames();
    List<EdgeKind> usual = notes.shape().usualKinds();
    List<String> fitting = new ArrayList<>();
    List<String> naming = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      Optional<SideNotes> said = said(notes, names.get(i));
      EdgeKind is = said.flatMap(SideNotes::kind).orElse(usual.get(i));
      boolean free = said.flatMap(SideNotes::taped).isEmpty();
      if (is == kind && free) {
        String side = names.get(i);
        fitting.add(side);
        said.map(SideNotes::meets)
            .filter(meets ->
                meets instanceof Meets.Named named && key(named.plane()).equals(key(other)))
            .ifPresent(meets -> naming.add(side));
      }
    }
    return naming.size() == 1 ? naming : fitting;
  }

  private static Optional<SideNotes> said(PlaneNotes notes, String side) {
    return notes.sides().stream()
        .filter(one -> one.side().equals(side))
        .reduce((one, later) -> later);
  }

  private PlaneNotes measured(PlaneNotes notes, String side, String other) {
    SideNotes before = said(notes, side)
        .orElseGet(
            () -> new SideNotes(side, Optional.of(kind), Optional.empty(), new Meets.Unsaid()));
    boolean unsaid = before.meets() instanceof Meets.Unsaid;
    Meets meets = unsaid && !other.isBlank() ? Meets.read(other) : before.meets();
    List<SideNotes> others = new ArrayList<>(notes.sides());
    others.remove(before);
    others.add(before.taped(length).with(meets));
    return new PlaneNotes(
        notes.id(),
        notes.shape(),
        notes.measured(),
        notes.pitch(),
        others,
        notes.openings(),
        notes.places());
  }
}
