package squaresheet.roof;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.finding.Where;

/** Resolves a roof plane by plane, then pairs the edges. */
final class RoofResolver {

  private final RoofNotes notes;
  private final List<Finding> findings = new ArrayList<>();
  private final Map<String, Plane> planes = new LinkedHashMap<>();
  private final Map<String, PlaneNotes> written = new LinkedHashMap<>();

  RoofResolver(RoofNotes notes) {
    this.notes = notes;
  }

  Read<Roof> resolve() {
    notes.planes().forEach(this::add);
    if (notes.planes().isEmpty()) {
      findings.add(RoofFindings.plane(
          new Where.OfItem("roof", "planes"), "a roof must have a plane or more, but has none"));
    }
    Pairing pairing = new Pairing(planes, written, lost(), notes.tapeTolerance());
    findings.addAll(pairing.findings());
    Roof roof = new Roof(List.copyOf(planes.values()), pairing.edges(), notes.tapeTolerance());
    return planes.isEmpty() ? Read.nothing(findings) : Read.of(roof, findings);
  }

  /** The planes that could not be read, and those whose measurements make no plane, by their plain names. */
  private Map<String, String> lost() {
    Map<String, String> lost = new LinkedHashMap<>();
    notes.lost().forEach(plane -> lost.put(Words.plain(plane.id()), plane.id()));
    written.forEach((key, plane) -> lost.put(key, plane.id()));
    lost.keySet().removeAll(planes.keySet());
    lost.remove("");
    return lost;
  }

  private void add(PlaneNotes plane) {
    String key = Words.plain(plane.id());
    if (key.isEmpty()) {
      findings.add(RoofFindings.plane(
          plane.at("name"), "a plane must have a name, but this one has none; it is left out"));
      return;
    }
    if (PlaneNotes.Meets.isNothing(plane.id())) {
      findings.add(RoofFindings.plane(
          plane.at("name"),
          "a plane must not be called '" + plane.id()
              + "', the word for an edge that meets no plane; it is left out"));
      return;
    }
    if (written.putIfAbsent(key, plane) != null) {
      findings.add(RoofFindings.sameName(
          plane.at("name"),
          "a plane's name must be its own, but '" + plane.id()
              + "' is the name of one above; this one is left out"));
      return;
    }
    Read<Plane> read = new PlaneResolver(plane, notes.tapeTolerance()).resolve();
    findings.addAll(read.findings());
    read.value().ifPresent(value -> planes.put(key, value));
  }
}
