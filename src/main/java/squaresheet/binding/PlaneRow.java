package squaresheet.binding;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.geometry.Point;
import squaresheet.roof.EdgeKind;
import squaresheet.roof.PlaneNotes;
import squaresheet.roof.PlaneNotes.Measured;
import squaresheet.roof.PlaneNotes.Meets;
import squaresheet.roof.PlaneNotes.SideNotes;
import squaresheet.roof.Shape;
import squaresheet.units.Length;
import squaresheet.units.Pitch;

/** Reads a row of a planes table. */
final class PlaneRow {

  /** Where each length of a shape stands, by shape. */
  private static final Map<String, Map<String, String>> LENGTHS = Map.of(
      "rectangle", Map.of("eave", "eave", "rake", "up_slope"),
      "triangle", Map.of("eave", "eave", "height", "up_slope", "offset", "offset"),
      "trapezoid", Map.of("eave", "eave", "ridge", "top", "height", "up_slope", "offset", "offset"),
      "parallelogram", Map.of("eave", "eave", "height", "up_slope", "offset", "offset"));

  private static final Map<String, String> SIDES =
      Map.of("left_edge", "left", "top_edge", "top", "right_edge", "right");

  /** A bare number over these is asked about. Common practice, no source. */
  private static final Length LONGEST = Length.of(300, 0);

  private static final Length HIGHEST = Length.of(100, 0);

  private final RowReader row;
  private final CornerLists cornerLists;

  /**
   * A row to be read.
   *
   * @param cornerLists corners that stand in a table of their own, by plane
   */
  PlaneRow(RowReader row, CornerLists cornerLists) {
    this.row = row;
    this.cornerLists = cornerLists;
  }

  Optional<PlaneNotes> read() {
    String id = row.text("plane").orElse("");
    Optional<Pitch> pitch = row.pitch("pitch");
    Measured measured = measured();
    Optional<Shape> shape = shape(id);
    List<SideNotes> sides = shape.map(this::sides).orElse(List.of());
    if (row.isStrict()) {
      shape.ifPresent(it -> new PlaneExtras(row, it).judge());
    }
    return row.isWhole() && pitch.isPresent() && shape.isPresent()
        ? Optional.of(new PlaneNotes(
                id, shape.get(), measured, pitch.get(), sides, List.of(), places(shape.get()))
            .doubting(row.doubt("pitch")))
        : Optional.empty();
  }

  private Measured measured() {
    Optional<String> text = row.text("measured");
    if (text.isEmpty()) {
      row.remark(Complaint.MEASURED_UNSAID.at(
          row.where("measured"),
          "it must be said whether the plane was measured on the slope or in plan, but it is not;"
              + " taken as on the slope"));
      return Measured.ON_SLOPE;
    }
    return row.word("measured", text.get(), PlaneRow::measured, List.of("slope", "plan"))
        .orElse(Measured.ON_SLOPE);
  }

  private static Optional<Measured> measured(String text) {
    List<String> words = Tokens.of(text);
    if (words.contains("slope") || words.contains("sloped")) {
      return Optional.of(Measured.ON_SLOPE);
    }
    return words.contains("plan") || words.contains("level")
        ? Optional.of(Measured.IN_PLAN)
        : Optional.empty();
  }

  private Optional<Shape> shape(String id) {
    String word = row.text("shape").orElse("").toLowerCase(Locale.ROOT).strip();
    if (word.equals("polygon")) {
      return polygon(id);
    }
    if (!LENGTHS.containsKey(word)) {
      List<String> words = new ArrayList<>(new java.util.TreeSet<>(LENGTHS.keySet()));
      words.add("polygon");
      row.word("shape", word, text -> Optional.<Shape>empty(), words);
      return Optional.empty();
    }
    Map<String, Length> lengths = new LinkedHashMap<>();
    LENGTHS.get(word).forEach((name, column) -> {
      Optional<Length> length =
          column.equals("offset") ? row.offsetIfAny(column) : row.length(column);
      row.judgeBare(column, length, column.equals("up_slope") ? HIGHEST : LONGEST);
      length.ifPresent(value -> lengths.put(name, value));
    });
    if (!row.isWhole()) {
      return Optional.empty();
    }
    Read<Shape> shape = Shape.read(word, lengths, row.where("shape"));
    shape.findings().forEach(finding -> row.refuse("shape", finding));
    return shape.value();
  }

  private Optional<Shape> polygon(String id) {
    Optional<String> text = row.text("corners");
    List<Point> corners = text.map(this::corners).orElseGet(() -> cornerLists.take(id));
    if (text.isEmpty() && cornerLists.isBroken(id)) {
      row.refuse(
          "corners",
          Complaint.ROW_WAITS.at(
              row.where("corners"),
              "every corner of a polygon must be known, but one of this plane could not be read; the plane"
                  + " waits for it"));
    }
    if (corners.isEmpty() && row.isWhole()) {
      row.refuse(
          "corners",
          Complaint.ROW_UNREAD.at(
              row.where("corners"),
              "a polygon must have its corners like 0, 0; 12', 0; 12', 8', but has none"));
    }
    return corners.isEmpty() ? Optional.empty() : Optional.of(new Shape.Polygon(corners));
  }

  private List<Point> corners(String text) {
    List<Point> corners = new ArrayList<>();
    for (String corner : text.split("[;|\n]")) {
      if (!corner.isBlank()) {
        String[] parts = pair(corner);
        if (parts.length != 2) {
          row.refuse(
              "corners",
              Complaint.ROW_UNREAD.at(
                  row.where("corners"),
                  "a corner must be two lengths like 12', 8', but reads '" + corner.strip() + "'"));
          return List.of();
        }
        Optional<Length> x = coordinate(parts[0]);
        Optional<Length> y = coordinate(parts[1]);
        if (x.isEmpty() || y.isEmpty()) {
          return List.of();
        }
        corners.add(new Point(x.get(), y.get()));
      }
    }
    return corners;
  }

  /** A comma with a space behind it parts the two; one without may be the decimal mark. */
  private static String[] pair(String corner) {
    String[] parts = corner.strip().split(" x | by |:|,\\s+");
    return parts.length == 1 ? corner.split(",") : parts;
  }

  private Optional<Length> coordinate(String text) {
    Read<Length> read = row.tape().offset(text.strip(), row.where("corners"));
    read.findings().forEach(finding -> {
      if (read.value().isEmpty()) {
        row.refuse("corners", finding);
      } else {
        row.remark(finding);
      }
    });
    return read.value();
  }

  private List<SideNotes> sides(Shape shape) {
    List<SideNotes> sides = new ArrayList<>();
    SIDES.forEach((column, side) -> row.text(column)
        .filter(text -> !RowReader.isDash(text))
        .filter(text -> shape.sideNames().contains(side))
        .flatMap(text -> side(column, side, text))
        .ifPresent(sides::add));
    row.text("edges").ifPresent(text -> sides.addAll(inOrder(shape, text)));
    return sides;
  }

  private List<SideNotes> inOrder(Shape shape, String text) {
    String[] kinds = text.split("\\s*[,;]\\s*");
    List<String> names = shape.sideNames();
    if (kinds.length != names.size()) {
      row.refuse(
          "edges",
          Complaint.ROW_UNREAD.at(
              row.where("edges"),
              "edges in order must be one for each of the " + names.size() + " sides, but are "
                  + kinds.length));
      return List.of();
    }
    List<SideNotes> sides = new ArrayList<>();
    for (int i = 0; i < kinds.length; i++) {
      side("edges", names.get(i), kinds[i]).ifPresent(sides::add);
    }
    return sides;
  }

  /** An edge as written: its kind, and behind a slash, a colon or "with" the plane it meets. */
  private Optional<SideNotes> side(String column, String side, String text) {
    String[] parts = text.split("\\s*(?:/|:| with | to )\\s*", 2);
    Meets meets = parts.length < 2 ? new Meets.Unsaid() : Meets.read(parts[1]);
    return row.word(column, parts[0], EdgeKind::from, EdgeKind.words())
        .map(kind -> SideNotes.of(side, kind).with(meets));
  }

  private Map<String, Where> places(Shape shape) {
    Map<String, Where> places = new LinkedHashMap<>(row.places());
    places.put("name", row.where("plane"));
    LENGTHS.getOrDefault(shape.word(), Map.of()).forEach((name, column) -> {
      if (!row.isBlank(column)) {
        places.put(name, row.where(column));
      }
    });
    SIDES.forEach((column, side) -> {
      if (!row.isBlank(column)) {
        places.put(side, row.where(column));
      }
    });
    return places;
  }
}
