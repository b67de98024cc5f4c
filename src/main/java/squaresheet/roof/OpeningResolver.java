package squaresheet.roof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import squaresheet.finding.Finding;
import squaresheet.geometry.Outline;
import squaresheet.geometry.Point;
import squaresheet.units.Length;

/** Resolves the openings of one plane: inside it, apart from one another, and not larger than it together. */
final class OpeningResolver {

  private final PlaneNotes notes;
  private final Outline plane;
  private final List<Opening> openings = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();

  OpeningResolver(PlaneNotes notes, Outline plane) {
    this.notes = notes;
    this.plane = plane;
    notes.openings().forEach(this::add);
  }

  List<Opening> openings() {
    return openings;
  }

  List<Finding> findings() {
    return findings;
  }

  private void add(PlaneNotes.OpeningNotes note) {
    Optional<String> fault =
        lengthFault(note).or(() -> outlineFault(note)).or(() -> misfit(resolved(note)));
    if (fault.isPresent()) {
      findings.add(
          RoofFindings.opening(notes.at(note.id()), say(note) + fault.get() + "; it is left out"));
      return;
    }
    openings.add(resolved(note));
    if (note.at().isEmpty()) {
      findings.add(RoofFindings.notPlaced(
          notes.at(note.id()),
          say(note) + "its position was not measured, so it counts in the area and not in the"
              + " layout of the courses"));
    }
  }

  private static String say(PlaneNotes.OpeningNotes note) {
    return note.kind() + " '" + note.id() + "': ";
  }

  private static Optional<String> lengthFault(PlaneNotes.OpeningNotes note) {
    return note.shape().lengths().entrySet().stream()
        .filter(entry -> !entry.getKey().equals("offset") && !entry.getValue().isPositive())
        .map(entry -> entry.getKey() + " must be longer than 0, but is " + entry.getValue())
        .sorted()
        .findFirst();
  }

  private Optional<String> outlineFault(PlaneNotes.OpeningNotes note) {
    return Outline.fault(note.shape().corners(1)).or(() -> Outline.fault(corners(note)));
  }

  private List<Point> corners(PlaneNotes.OpeningNotes note) {
    double across = notes.measured().factor(notes.pitch());
    Point at = note.at().orElse(Point.ORIGIN);
    Length up = ShapeParts.across(at.y(), across);
    return note.shape().corners(across).stream()
        .map(corner -> corner.plus(at.x(), up))
        .toList();
  }

  private Opening resolved(PlaneNotes.OpeningNotes note) {
    Stretched stretched = new Stretched(note.shape(), notes.measured().factor(notes.pitch()));
    return new Opening(
        note.id(),
        note.kind(),
        Outline.of(corners(note)),
        note.at().isPresent(),
        stretched.area(),
        stretched.height());
  }

  private Optional<String> misfit(Opening opening) {
    if (opening.isPlaced() && !plane.covers(opening.outline())) {
      return Optional.of("it must lie inside the plane, but reaches outside");
    }
    if (area(openings) + opening.outline().doubledArea() >= plane.doubledArea()) {
      return Optional.of("openings must be smaller than the plane, but this one leaves nothing");
    }
    return openings.stream()
        .filter(before -> before.isPlaced() && opening.isPlaced())
        .filter(before -> before.outline().overlaps(opening.outline()))
        .findFirst()
        .map(before -> "it must not overlap another, but overlaps '" + before.id() + "'");
  }

  private static long area(List<Opening> openings) {
    return openings.stream()
        .mapToLong(opening -> opening.outline().doubledArea())
        .sum();
  }
}
