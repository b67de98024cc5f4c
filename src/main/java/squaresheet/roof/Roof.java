package squaresheet.roof;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import squaresheet.finding.Read;
import squaresheet.units.Area;
import squaresheet.units.DerivedLength;
import squaresheet.units.Length;

/**
 * A roof, resolved: sound planes, and each edge that two of them share known once.
 *
 * @param planes the planes in the order written, no two of one name
 * @param sharedEdges the edges where two planes meet
 * @param tapeTolerance how far two readings of one length may differ
 */
public record Roof(List<Plane> planes, List<SharedEdge> sharedEdges, Length tapeTolerance) {

  public Roof {
    planes = List.copyOf(planes);
    sharedEdges = List.copyOf(sharedEdges);
  }

  /** Resolves what was written down; planes that make none are left out, and said so, and the rest goes on. */
  public static Read<Roof> resolve(RoofNotes notes) {
    return new RoofResolver(notes).resolve();
  }

  /** The plane of this name, in any letter case. */
  public Optional<Plane> plane(String id) {
    return planes.stream()
        .filter(plane -> Words.plain(plane.id()).equals(Words.plain(id)))
        .findFirst();
  }

  /** All sides of all planes. */
  public Stream<Side> sides() {
    return planes.stream().flatMap(plane -> plane.sides().stream());
  }

  /** The edge that this side shares, if it does. */
  public Optional<SharedEdge> sharedBy(Side side) {
    return side.kind().isShared()
        ? sharedEdges.stream().filter(edge -> edge.has(side)).findFirst()
        : Optional.empty();
  }

  /** The length of all edges of this kind, shared ones once. */
  public DerivedLength length(EdgeKind kind) {
    return planes.stream()
        .map(plane -> share(plane, kind))
        .reduce(DerivedLength.ZERO, DerivedLength::plus);
  }

  /** The plane's share in the edges of this kind: half of those it shares, the others in full. Over all planes it sums to the length. */
  public DerivedLength share(Plane plane, EdgeKind kind) {
    return plane.sides().stream()
        .map(side -> share(side, kind))
        .reduce(DerivedLength.ZERO, DerivedLength::plus);
  }

  private DerivedLength share(Side side, EdgeKind kind) {
    Optional<SharedEdge> shared = sharedBy(side);
    EdgeKind known = shared.map(SharedEdge::kind).orElse(side.kind());
    return known == kind
        ? shared.map(edge -> edge.length().times(0.5)).orElseGet(side::length)
        : DerivedLength.ZERO;
  }

  /** How many edges of this kind there are, shared ones once. */
  public int count(EdgeKind kind) {
    long alone =
        sides().filter(side -> side.kind() == kind && sharedBy(side).isEmpty()).count();
    long shared = sharedEdges.stream().filter(edge -> edge.kind() == kind).count();
    return Math.toIntExact(alone + shared);
  }

  /** The area on the slope, openings out. */
  public Area.Sloped slopedArea() {
    return planes.stream().map(Plane::slopedArea).reduce(Area.Sloped.ZERO, Area.Sloped::plus);
  }

  /** The area on the slope, openings not out. */
  public Area.Sloped grossArea() {
    return planes.stream().map(Plane::grossArea).reduce(Area.Sloped.ZERO, Area.Sloped::plus);
  }

  /** The area on the slope of the planes whose pitch lies in this band, openings out. */
  public Area.Sloped slopedArea(SlopeBand band) {
    return planes.stream()
        .filter(plane -> plane.slopeBand() == band)
        .map(Plane::slopedArea)
        .reduce(Area.Sloped.ZERO, Area.Sloped::plus);
  }

  /** Between which areas the sloped area lies if every reading is off by at most the tape tolerance. */
  public Plane.Bounds slopedAreaBounds() {
    Plane.Bounds none = new Plane.Bounds(Area.Sloped.ZERO, Area.Sloped.ZERO);
    return planes.stream()
        .map(plane -> plane.slopedArea(tapeTolerance))
        .reduce(none, Plane.Bounds::plus);
  }

  /** The area seen from above, openings out. */
  public Area.Plan planArea() {
    return planes.stream().map(Plane::planArea).reduce(Area.Plan.ZERO, Area.Plan::plus);
  }

  /** The area seen from above, openings not out: the footprint with its overhangs. */
  public Area.Plan grossPlanArea() {
    return planes.stream().map(Plane::grossPlanArea).reduce(Area.Plan.ZERO, Area.Plan::plus);
  }

  /** The openings of this kind. */
  public List<Opening> openings(Opening.Kind kind) {
    return planes.stream()
        .flatMap(plane -> plane.openings().stream())
        .filter(opening -> opening.kind() == kind)
        .toList();
  }

  /** The kinds of edge this roof has. */
  public List<EdgeKind> edgeKinds() {
    return Arrays.stream(EdgeKind.values())
        .filter(kind -> sides().anyMatch(side -> side.kind() == kind))
        .toList();
  }
}
