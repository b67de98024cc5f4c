package squaresheet.roof;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import squaresheet.finding.Finding;
import squaresheet.finding.Where;
import squaresheet.units.Graduation;
import squaresheet.units.Length;

/** Finds which sides of two planes are one edge: first those that name a plane, then by kind and length. */
final class Pairing {

  private final Map<String, Plane> planes;
  private final Map<String, PlaneNotes> written;
  /** The planes that are there but could not be read. */
  private final Map<String, String> lost;

  private final Length tolerance;
  /** The sides that still want a partner, with what was said of it, in the order written. */
  private final Map<Side, PlaneNotes.Meets> waiting = new LinkedHashMap<>();

  private final List<SharedEdge> edges = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();

  Pairing(
      Map<String, Plane> planes,
      Map<String, PlaneNotes> written,
      Map<String, String> lost,
      Length tolerance) {
    this.planes = planes;
    this.written = written;
    this.lost = lost;
    this.tolerance = tolerance;
    planes.values().forEach(this::await);
    pairNamed();
    pairOnlyMatches();
    pairAlike();
    pairLastTwo();
    edges.forEach(this::judge);
    waiting.keySet().stream().filter(this::isFree).forEach(this::reportAlone);
  }

  List<SharedEdge> edges() {
    return edges;
  }

  List<Finding> findings() {
    return findings;
  }

  private void await(Plane plane) {
    PlaneNotes notes = written.get(Words.plain(plane.id()));
    for (Side side : plane.sides()) {
      PlaneNotes.Meets meets = notes.meets(side.name());
      if (side.kind().isShared() && !(meets instanceof PlaneNotes.Meets.Nothing)) {
        waiting.put(side, meets);
      } else if (meets instanceof PlaneNotes.Meets.Named named) {
        report(
            side,
            side.kind() + " meets no other plane, but '" + named.plane()
                + "' is given; only a ridge, hip, valley or pitch break does");
      }
    }
  }

  private void pairNamed() {
    for (Map.Entry<Side, PlaneNotes.Meets> entry : List.copyOf(waiting.entrySet())) {
      if (entry.getValue() instanceof PlaneNotes.Meets.Named named
          && waiting.containsKey(entry.getKey())) {
        pairNamed(entry.getKey(), named);
      }
    }
  }

  private void pairNamed(Side side, PlaneNotes.Meets.Named named) {
    Plane other = planes.get(Words.plain(named.plane()));
    if (other == null && lost.containsKey(Words.plain(named.plane()))) {
      waits(side, side.kind() + " meets plane " + named.plane() + ", which could not be read");
    } else if (other == null) {
      report(side, unknown(named.plane()));
    } else if (other.id().equals(side.plane())) {
      report(side, side.kind() + " must meet another plane, but names its own");
    } else {
      partner(side, other, named)
          .ifPresentOrElse(
              match -> pair(side, match, SharedEdge.Paired.NAMED),
              () -> report(
                  side,
                  "plane " + other.id() + " has no " + wanted(side, named) + " free to meet this "
                      + side.kind()));
    }
  }

  private static String wanted(Side side, PlaneNotes.Meets.Named named) {
    return named.side().isEmpty() ? side.kind().word() : "side '" + named.side() + "'";
  }

  private String unknown(String name) {
    return "no plane '" + name + "'; "
        + Words.neighbours(name, planes.values().stream().map(Plane::id).toList());
  }

  /** The side of the other plane that is meant: one that names this plane back, else the nearest in length. */
  private Optional<Side> partner(Side side, Plane other, PlaneNotes.Meets.Named named) {
    return waiting.keySet().stream()
        .filter(match -> match.plane().equals(other.id()))
        .filter(match -> named.side().isEmpty()
            ? match.kind() == side.kind()
            : match.name().equals(named.side()))
        .filter(match -> mayMeet(match, side))
        .min(Comparator.comparing((Side match) -> names(match, side) ? 0 : 1)
            .thenComparing(match -> match.length().distanceTo(side.length())));
  }

  private boolean mayMeet(Side match, Side side) {
    return waiting.get(match) instanceof PlaneNotes.Meets.Unsaid || names(match, side);
  }

  private boolean names(Side match, Side side) {
    return waiting.get(match) instanceof PlaneNotes.Meets.Named named
        && Words.plain(named.plane()).equals(Words.plain(side.plane()))
        && (named.side().isEmpty() || named.side().equals(side.name()));
  }

  private void pair(Side one, Side other, SharedEdge.Paired how) {
    edges.add(new SharedEdge(one, other, how));
    waiting.remove(one);
    waiting.remove(other);
  }

  private void pairOnlyMatches() {
    boolean again = true;
    while (again) {
      again = false;
      for (Side side : List.copyOf(waiting.keySet())) {
        List<Side> matches = firstTwoMatches(side);
        if (matches.size() == 1 && firstTwoMatches(matches.get(0)).size() == 1) {
          pair(side, matches.get(0), SharedEdge.Paired.ONLY_MATCH);
          again = true;
        }
      }
    }
  }

  /** Up to two of the waiting sides of other planes that by kind and length could be the same edge. */
  private List<Side> firstTwoMatches(Side side) {
    if (!waiting.containsKey(side) || !isFree(side)) {
      return List.of();
    }
    return waiting.keySet().stream()
        .filter(match -> match.kind() == side.kind() && isFree(match))
        .filter(match -> !match.plane().equals(side.plane()))
        .filter(match -> new SharedEdge(side, match, SharedEdge.Paired.ALIKE).agrees(tolerance))
        .limit(2)
        .toList();
  }

  private boolean isFree(Side side) {
    return waiting.get(side) instanceof PlaneNotes.Meets.Unsaid;
  }

  private void pairAlike() {
    List<Side> free = waiting.keySet().stream().filter(this::isFree).toList();
    for (List<Side> crowd : Crowds.of(free, tolerance)) {
      Crowds.couples(crowd)
          .forEach(couple -> pair(couple.one(), couple.other(), SharedEdge.Paired.ALIKE));
    }
  }

  /** Two sides of a kind that are left over, on two planes, are one edge whose lengths disagree. */
  private void pairLastTwo() {
    for (EdgeKind kind : EdgeKind.values()) {
      List<Side> left = waiting.keySet().stream()
          .filter(side -> side.kind() == kind && isFree(side))
          .toList();
      if (left.size() == 2 && !left.get(0).plane().equals(left.get(1).plane())) {
        pair(left.get(0), left.get(1), SharedEdge.Paired.ONLY_MATCH);
      }
    }
  }

  private void judge(SharedEdge edge) {
    if (edge.paired() != SharedEdge.Paired.NAMED) {
      findings.add(RoofFindings.paired(at(edge.one()), pairedSentence(edge)));
    }
    if (edge.one().kind() != edge.other().kind()) {
      report(
          edge.one(),
          "one edge must be one kind, but is " + edge.one().kind() + " here and "
              + edge.other().kind() + " on " + edge.other().show());
    }
    if (!edge.agrees(tolerance)) {
      findings.add(disagreement(edge));
    }
  }

  private static String pairedSentence(SharedEdge edge) {
    String taken = edge.kind() + " is taken to meet " + edge.other().show() + ", ";
    return taken
        + (edge.paired() == SharedEdge.Paired.ONLY_MATCH
            ? "the only " + edge.kind() + " left for it"
            : "one of several of that length; whichever it meets, the totals are the same");
  }

  private Finding disagreement(SharedEdge edge) {
    String one = edge.one().length().show(Graduation.SIXTEENTH);
    String other = edge.other().length().show(Graduation.SIXTEENTH);
    return RoofFindings.disagrees(
        at(edge.one()),
        one,
        other,
        edge.kind() + " measures " + one + " here, but " + other + " on "
            + edge.other().show() + "; the two must agree within "
            + tolerance.show(Graduation.SIXTEENTH));
  }

  private void waits(Side side, String says) {
    findings.add(RoofFindings.waits(
        at(side), says + "; all of its length here counts until that plane is there"));
  }

  private void reportAlone(Side side) {
    if (!lost.isEmpty()) {
      waits(
          side,
          side.kind() + " of " + side.length().show(Graduation.SIXTEENTH)
              + " is on this plane only, and may meet one that could not be read ("
              + String.join(", ", lost.values()) + ")");
      return;
    }
    findings.add(RoofFindings.alone(
        at(side),
        side.kind() + " of " + side.length().show(Graduation.SIXTEENTH)
            + " must be on two planes, but is on this one only; name the plane it meets, or"
            + " write none where it meets nothing"));
  }

  private void report(Side side, String says) {
    findings.add(RoofFindings.edge(at(side), says));
  }

  private Where at(Side side) {
    return written.get(Words.plain(side.plane())).at(side.name());
  }
}
