package squaresheet.roof;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.geometry.Outline;
import squaresheet.geometry.Point;
import squaresheet.units.Graduation;
import squaresheet.units.Length;

/** Resolves one plane: its outline, its sides, its openings. */
final class PlaneResolver {

  private final PlaneNotes notes;
  private final Length tolerance;
  private final Stretched stretched;
  private final List<Finding> findings = new ArrayList<>();

  PlaneResolver(PlaneNotes notes, Length tolerance) {
    this.notes = notes;
    this.tolerance = tolerance;
    stretched = new Stretched(notes.shape(), notes.measured().factor(notes.pitch()));
  }

  Read<Plane> resolve() {
    judgeLengths(notes.shape());
    if (!findings.isEmpty()) {
      return Read.nothing(findings);
    }
    List<Point> corners = notes.shape().corners(stretched.across());
    Optional<String> fault =
        Outline.fault(notes.shape().corners(1)).or(() -> Outline.fault(corners));
    if (fault.isPresent()) {
      return Read.nothing(RoofFindings.plane(notes.at("shape"), fault.get()));
    }
    Outline outline = Outline.of(corners);
    List<Side> sides = sides(outline, Outline.isClockwise(corners));
    OpeningResolver openings = new OpeningResolver(notes, outline);
    Plane plane = new Plane(
        notes.id(),
        notes.shape(),
        notes.measured(),
        notes.pitch(),
        outline,
        sides,
        openings.openings(),
        stretched.area(),
        stretched.height());
    findings.addAll(openings.findings());
    return Read.of(plane, findings);
  }

  private void judgeLengths(Shape shape) {
    new TreeMap<>(shape.lengths()).forEach((name, length) -> {
      if (!name.equals("offset") && !length.isPositive()) {
        findings.add(
            RoofFindings.plane(notes.at(name), name + " must be longer than 0, but is " + length));
      }
    });
  }

  private List<Side> sides(Outline outline, boolean clockwise) {
    List<String> names = notes.shape().sideNames();
    Map<String, PlaneNotes.SideNotes> said = said(names);
    List<Side> sides = new ArrayList<>();
    for (int index = 0; index < names.size(); index++) {
      int asWritten = clockwise ? names.size() - 1 - index : index;
      sides.add(side(outline, index, asWritten, said));
    }
    return sides;
  }

  private Map<String, PlaneNotes.SideNotes> said(List<String> names) {
    Map<String, PlaneNotes.SideNotes> said = new TreeMap<>();
    for (PlaneNotes.SideNotes side : notes.sides()) {
      if (!names.contains(side.side())) {
        findings.add(RoofFindings.edge(
            notes.at(side.side()),
            "a " + notes.shape().word() + " has no side '" + side.side() + "'; "
                + Words.neighbours(side.side(), names)));
      } else if (said.putIfAbsent(side.side(), side) != null) {
        findings.add(RoofFindings.edge(
            notes.at(side.side()),
            "a side must be described once, but '" + side.side() + "' is described again"));
      }
    }
    return said;
  }

  private Side side(
      Outline outline, int index, int asWritten, Map<String, PlaneNotes.SideNotes> said) {
    String name = notes.shape().sideNames().get(asWritten);
    Optional<PlaneNotes.SideNotes> note = Optional.ofNullable(said.get(name));
    EdgeKind usual = notes.shape().usualKinds().get(asWritten);
    Side side = new Side(
        notes.id(),
        name,
        note.flatMap(PlaneNotes.SideNotes::kind).orElse(usual),
        outline.corner(index),
        outline.corner(index + 1),
        stretched.sides().get(asWritten),
        note.flatMap(PlaneNotes.SideNotes::taped));
    judgeSlope(side);
    return judgeTape(side);
  }

  /** Water leaves a plane over its eaves and valleys, and comes onto it from its ridges, hips and headwalls. */
  private void judgeSlope(Side side) {
    int downhill = side.to().x().compareTo(side.from().x());
    boolean wrong =
        switch (side.kind()) {
          case EAVE, VALLEY -> downhill <= 0;
          case RIDGE, HIP, HEADWALL -> downhill >= 0;
          case RAKE, SIDEWALL, PITCH_BREAK, OPEN -> false;
        };
    if (wrong) {
      findings.add(RoofFindings.againstSlope(notes.at(side.name()), slopeSentence(side)));
    }
  }

  private String slopeSentence(Side side) {
    return side.kind().word()
        + switch (side.kind()) {
          case HIP ->
            " must lean in from the eave, but the " + side.name() + " side of this "
                + notes.shape().word() + " leans out or stands square";
          case VALLEY ->
            " must lean out from the eave, but the " + side.name() + " side of this "
                + notes.shape().word() + " leans in or stands square";
          case EAVE -> " must lie below its plane, but the " + side.name() + " side does not";
          default -> " must lie above its plane, but the " + side.name() + " side does not";
        };
  }

  /** A reading that is no length is dropped; one far from the shape is kept and reported. */
  private Side judgeTape(Side side) {
    if (side.taped().isEmpty()) {
      return side;
    }
    Length taped = side.taped().get();
    if (!taped.isPositive()) {
      findings.add(RoofFindings.edge(
          notes.at(side.name()),
          side.kind() + " must be longer than 0, but the tape says " + taped));
      return new Side(
          side.plane(),
          side.name(),
          side.kind(),
          side.from(),
          side.to(),
          side.drawn(),
          Optional.empty());
    }
    if (side.drawn().distanceTo(taped.toDerived()).compareTo(tolerance.toDerived()) > 0) {
      findings.add(tapedFinding(side, taped));
    }
    return side;
  }

  private Finding tapedFinding(Side side, Length taped) {
    String drawn = side.drawn().show(Graduation.SIXTEENTH);
    String read = taped.show(Graduation.SIXTEENTH);
    return RoofFindings.taped(
        notes.at(side.name()),
        read,
        drawn,
        side.kind() + " on the " + side.name() + " measures " + read
            + " by the tape, but the other lengths of the plane make it " + drawn
            + "; they must agree within " + tolerance.show(Graduation.SIXTEENTH));
  }
}
