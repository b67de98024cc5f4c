package squaresheet.job;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import squaresheet.finding.Finding;
import squaresheet.finding.Where;
import squaresheet.roof.Opening;
import squaresheet.roof.Plane;
import squaresheet.roof.PlaneNotes;
import squaresheet.roof.PlaneNotes.OpeningNotes;
import squaresheet.roof.Roof;
import squaresheet.roof.RoofNotes;
import squaresheet.takeoff.Rule;

/** What was written of a roof and makes no part of it: planes whose measurements make none, openings that fit no plane. */
final class LeftOut {

  private final Roof roof;
  private final List<Finding> said;
  private final List<Unread> unread = new ArrayList<>();

  private LeftOut(Roof roof, List<Finding> said) {
    this.roof = roof;
    this.said = said;
  }

  /** Each of them as a row of the tape sheet that could not be read. */
  static List<Unread> of(RoofNotes notes, Roof roof, List<Finding> said) {
    LeftOut left = new LeftOut(roof, said);
    Set<String> seen = new HashSet<>();
    for (PlaneNotes plane : notes.planes()) {
      Optional<Plane> resolved = roof.plane(plane.id()).filter(it -> seen.add(it.id()));
      if (resolved.isPresent()) {
        left.openings(plane, resolved.get());
      } else {
        left.plane(plane);
      }
    }
    return left.unread;
  }

  /** The settings that were typed and cannot be meant, so that the usual ones count. */
  static List<Unread> settings(JobInput typed, JobInput judged, List<Finding> said) {
    return typed.settings().keySet().stream()
        .filter(name -> !judged.settings().containsKey(name))
        .flatMap(name -> typed.company().rulebook().rule(name).stream())
        .map(rule -> setting(rule, said))
        .toList();
  }

  private static Unread setting(Rule rule, List<Finding> said) {
    Where where = new Where.OfItem("job", rule.name());
    String why = said.stream()
        .filter(finding -> finding.where().equals(where))
        .map(Finding::says)
        .collect(Collectors.joining("; "));
    return Unread.of(
        where, Unread.Kind.SETTING, rule.label(), List.of(rule.label()), rule.label(), why);
  }

  private void plane(PlaneNotes plane) {
    String understood = plane.shape().word() + lengths(plane) + ", " + plane.pitch();
    String name = roof.plane(plane.id()).isPresent() ? plane.id() + ", once more" : plane.id();
    add(plane.at("name"), Unread.Kind.PLANE, name, understood, why(plane));
  }

  private static String lengths(PlaneNotes plane) {
    return plane.shape().lengths().entrySet().stream()
        .sorted(java.util.Map.Entry.comparingByKey())
        .map(entry -> ", " + entry.getKey() + " " + entry.getValue())
        .collect(Collectors.joining());
  }

  private void openings(PlaneNotes plane, Plane resolved) {
    List<String> there =
        new ArrayList<>(resolved.openings().stream().map(Opening::id).toList());
    for (OpeningNotes opening : plane.openings()) {
      if (!there.remove(opening.id())) {
        Where where = plane.at(opening.id());
        String understood = opening.kind() + " in plane " + plane.id();
        add(where, Unread.Kind.OPENING, opening.id(), understood, said(Set.of(where)));
      }
    }
  }

  private String why(PlaneNotes plane) {
    Set<Where> places = new HashSet<>(plane.places().values());
    plane.shape().lengths().keySet().forEach(length -> places.add(plane.at(length)));
    places.add(plane.at("name"));
    places.add(plane.at("shape"));
    return said(places);
  }

  private String said(Set<Where> places) {
    return said.stream()
        .filter(finding -> finding.isError() && places.contains(finding.where()))
        .map(Finding::says)
        .collect(Collectors.joining("; "));
  }

  private void add(Where where, Unread.Kind kind, String name, String understood, String why) {
    unread.add(Unread.of(where, kind, name, List.of(name), understood, why));
  }
}
