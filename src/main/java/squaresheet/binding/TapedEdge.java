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
 * An edge measured with the tape, or of which only is said what it meets, to be found among the sides of its planes.
 *
 * @param kind what it is
 * @param plane the plane it was measured on, which may name a side: {@code B / left}
 * @param meets the plane on its other side, none, or empty
 * @param length by the tape, where it was measured
 */
record TapedEdge(EdgeKind kind, String plane, String meets, Optional<Length> length) {

  static Optional<TapedEdge> read(RowReader row) {
    Optional<EdgeKind> kind =
        row.text("edge").flatMap(text -> row.word("edge", text, EdgeKind::from, EdgeKind.words()));
    Optional<Length> length = row.lengthIfAny("length");
    String plane = row.text("plane").orElse("");
    String side = row.text("side").map(text -> " / " + text).orElse("");
    String meets = row.text("meets").orElse("");
    return row.isWhole() && kind.isPresent()
        ? Optional.of(new TapedEdge(kind.get(), plane + side, meets, length))
        : Optional.empty();
  }

  /** Puts what is known on the one side it can belong to; false where there is none, or no telling which. */
  boolean placeOn(Map<String, PlaneNotes> planes) {
    return placeOn(planes, plane, meets) || (!meets.isEmpty() && placeOn(planes, meets, plane));
  }

  /** What to say where it finds no place. */
  String unplaced() {
    boolean two = Meets.read(meets) instanceof Meets.Named;
    String planes = two ? "neither '" + plane + "' nor '" + meets + "'" : "'" + plane + "'";
    String alone = Meets.isNothing(meets) ? " that may meet none" : "";
    return "an edge under this heading must belong to one side of a plane, but " + planes + " has "
        + (two ? "" : "not ") + "just one " + kind + " left for it" + alone
        + "; the row is not used";
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
    if (sides.size() != 1 || !mayMeet(notes, sides.get(0), there)) {
      return false;
    }
    planes.put(key(name), measured(notes, sides.get(0), there));
    return true;
  }

  static String key(String plane) {
    return plane.strip().toLowerCase(Locale.ROOT);
  }

  /** The sides of this kind that are not measured yet and may meet the other plane; those that name it before the others. */
  private List<String> sides(PlaneNotes notes, String other) {
    List<String> names = notes.shape().sideNames();
    List<EdgeKind> usual = notes.shape().usualKinds();
    List<String> fitting = new ArrayList<>();
    List<String> naming = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      Optional<SideNotes> said = said(notes, names.get(i));
      EdgeKind is = said.flatMap(SideNotes::kind).orElse(usual.get(i));
      boolean free = length.isEmpty() || said.flatMap(SideNotes::taped).isEmpty();
      if (is == kind && free && mayMeet(notes, names.get(i), other)) {
        fitting.add(names.get(i));
        if (!(notes.meets(names.get(i)) instanceof Meets.Unsaid)) {
          naming.add(names.get(i));
        }
      }
    }
    return naming.size() == 1 && !other.isBlank() ? naming : fitting;
  }

  /** Whether what is said of the side agrees with what the tape's row says. */
  private static boolean mayMeet(PlaneNotes notes, String side, String other) {
    Meets meets = notes.meets(side);
    return meets instanceof Meets.Unsaid
        || other.isBlank()
        || partner(meets).equals(partner(Meets.read(other)));
  }

  /** The plane on the other side as it is compared: in any letter case, and without its side. */
  private static String partner(Meets meets) {
    return meets instanceof Meets.Named named ? key(named.plane()) : meets.written();
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
    others.add(length.map(before::taped).orElse(before).with(meets));
    return notes.with(others, notes.places());
  }
}
