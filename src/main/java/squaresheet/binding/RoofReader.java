package squaresheet.binding;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import squaresheet.finding.Finding;
import squaresheet.finding.Where;
import squaresheet.geometry.Point;
import squaresheet.job.Unread;
import squaresheet.roof.PlaneNotes;
import squaresheet.roof.PlaneNotes.OpeningNotes;
import squaresheet.roof.RoofNotes;
import squaresheet.units.Length;

/** Reads the tables of planes, corners, openings and edges into what was written down of a roof. */
final class RoofReader {

  private static final List<String> PLANE_LENGTHS = List.of("eave", "up_slope", "top", "offset");

  private final Tape tape;
  private final Map<String, PlaneNotes> planes = new LinkedHashMap<>();
  /** The planes that could not be read, each with its openings. */
  private final Map<String, RoofNotes.Lost> lost = new LinkedHashMap<>();

  private final CornerLists corners = new CornerLists();
  private final Map<String, Map<String, String>> wording = new LinkedHashMap<>();
  private final List<Finding> findings = new ArrayList<>();
  private final List<Unread> unread = new ArrayList<>();
  private final boolean strict;
  private final Consumer<RowReader> then;

  /** Reads the tables of a job workbook. */
  RoofReader(Tape tape) {
    this(tape, false, row -> {});
  }

  private RoofReader(Tape tape, boolean strict, Consumer<RowReader> then) {
    this.tape = tape;
    this.strict = strict;
    this.then = then;
  }

  /**
   * Reads the tables of a field sheet.
   *
   * @param then what is done with each row when it is read
   */
  static RoofReader ofFieldSheet(Tape tape, Consumer<RowReader> then) {
    return new RoofReader(tape, true, then);
  }

  /** Knows of planes that are missing because they could not be read off the tape sheet. */
  RoofReader missing(List<String> names) {
    names.forEach(this::lose);
    return this;
  }

  /** Reads the tables among these that speak of a roof. */
  RoofReader read(List<FoundTable> tables) {
    List<RowReader> cornerRows = each(tables, "corners", this::corner);
    List<RowReader> rows = new ArrayList<>(each(tables, "planes", this::plane));
    cornerRows.forEach(this::cornerOf);
    rows.addAll(cornerRows);
    rows.addAll(each(tables, "openings", this::opening));
    rows.addAll(each(tables, "edges", this::edge));
    rows.forEach(this::finish);
    return this;
  }

  private List<RowReader> each(List<FoundTable> tables, String kind, Consumer<RowReader> read) {
    List<RowReader> rows = new ArrayList<>();
    for (FoundTable table : tables) {
      if (table.table().equals(kind)) {
        PLANE_LENGTHS.forEach(property -> findings.addAll(tape.remarks(table, property)));
        table.rows(FoundTable.Row.DATA).forEach(row -> {
          RowReader reader = new RowReader(table, row, tape, strict);
          read.accept(reader);
          rows.add(reader);
        });
      }
    }
    return rows;
  }

  private void finish(RowReader row) {
    findings.addAll(row.findings());
    if (!row.isWhole()) {
      unread.add(row.unread());
    }
    then.accept(row);
  }

  private void corner(RowReader row) {
    String plane = row.text("plane").orElse("");
    row.text("corner");
    Optional<Length> along = row.offset("x");
    Optional<Length> up = row.offset("y");
    if (row.isWhole()) {
      corners.add(plane, new Point(along.orElseThrow(), up.orElseThrow()));
    } else {
      corners.lose(plane);
    }
  }

  /** A corner of no plane is told; one of a plane that could not be read is kept for it. */
  private void cornerOf(RowReader row) {
    String plane = row.name();
    boolean isUsed = corners.isTaken(plane) && planes.containsKey(TapedEdge.key(plane));
    if (row.isWhole() && !isUsed) {
      row.letGo();
      row.remark(
          isLost(TapedEdge.key(plane))
              ? Complaint.ROW_WAITS.at(
                  row.where("plane"),
                  "the corner is of plane " + plane + ", which could not be read; it is kept")
              : Complaint.CORNER_UNPLACED.at(
                  row.where("plane"),
                  "a corner must belong to a polygon whose corners stand in this table, but '"
                      + plane + "' is none; it is not used"));
    }
  }

  private void plane(RowReader row) {
    new PlaneRow(row, corners)
        .read()
        .ifPresentOrElse(
            plane -> {
              String key = TapedEdge.key(plane.id());
              // a name that comes again is kept beside the first, so that the roof can say so
              planes.put(planes.containsKey(key) ? key + " " + planes.size() : key, plane);
              wording.put("plane " + plane.id(), Map.copyOf(row.understood()));
            },
            () -> row.text("plane").ifPresent(this::lose));
  }

  private void lose(String plane) {
    lost.putIfAbsent(TapedEdge.key(plane), new RoofNotes.Lost(plane, List.of()));
  }

  private void opening(RowReader row) {
    OpeningRow reader = new OpeningRow(row);
    String key = TapedEdge.key(reader.plane());
    Optional<OpeningNotes> opening = reader.read();
    if (opening.isPresent() && isLost(key)) {
      lost.computeIfPresent(key, (name, plane) -> withOpening(plane, opening.get()));
      wording.put("opening " + opening.get().id(), Map.copyOf(row.understood()));
      row.remark(
          Complaint.ROW_WAITS.at(
              row.where("plane"),
              "the opening lies in plane " + reader.plane()
                  + ", which could not be read; it is kept, and is cut out as soon as that plane is there"));
    } else if (opening.isPresent() && !planes.containsKey(key)) {
      row.refuse(
          "plane",
          Complaint.ROW_UNREAD.at(
              row.where("plane"),
              "an opening must lie in a plane of the sheet, but '" + reader.plane()
                  + "' is none that was read; the opening is left out"));
    } else if (opening.isPresent()) {
      planes.computeIfPresent(key, (name, plane) -> placed(plane.with(opening.get()), row));
      wording.put("opening " + opening.get().id(), Map.copyOf(row.understood()));
    }
  }

  private boolean isLost(String key) {
    return lost.containsKey(key) && !planes.containsKey(key);
  }

  private static RoofNotes.Lost withOpening(RoofNotes.Lost plane, OpeningNotes opening) {
    List<OpeningNotes> more = new ArrayList<>(plane.openings());
    more.add(opening);
    return new RoofNotes.Lost(plane.id(), more);
  }

  private static PlaneNotes placed(PlaneNotes plane, RowReader row) {
    Map<String, Where> places = new LinkedHashMap<>(plane.places());
    places.put(row.text("opening").orElse("opening"), row.where("opening"));
    return plane.with(plane.sides(), places);
  }

  private void edge(RowReader row) {
    if (row.has("other_side")) {
      new SideRow(row, this::isLost).placeOn(planes);
      return;
    }
    if (row.isBlank("length") && row.isBlank("meets")) {
      return;
    }
    TapedEdge.read(row).filter(edge -> !edge.placeOn(planes)).ifPresent(edge -> {
      row.letGo();
      row.remark(unplaced(edge).at(row.where("plane"), says(edge)));
    });
  }

  private boolean isOnLost(TapedEdge edge) {
    return Stream.of(edge.plane(), edge.meets())
        .map(name -> TapedEdge.key(name.replaceFirst("/.*", "")))
        .anyMatch(this::isLost);
  }

  private Complaint unplaced(TapedEdge edge) {
    return isOnLost(edge) ? Complaint.ROW_WAITS : Complaint.EDGE_UNPLACED;
  }

  private String says(TapedEdge edge) {
    return isOnLost(edge)
        ? "the " + edge.kind()
            + " lies on a plane that could not be read; its length is not used as a check"
        : edge.unplaced();
  }

  List<PlaneNotes> planes() {
    return List.copyOf(planes.values());
  }

  /** The planes that could not be read, with what could be read of their openings. */
  List<RoofNotes.Lost> lost() {
    return lost.values().stream()
        .filter(plane -> isLost(TapedEdge.key(plane.id())))
        .toList();
  }

  Map<String, Map<String, String>> wording() {
    return wording;
  }

  List<Finding> findings() {
    return findings;
  }

  List<Unread> unread() {
    return unread;
  }
}
