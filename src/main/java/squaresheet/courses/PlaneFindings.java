package squaresheet.courses;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import squaresheet.finding.Finding;
import squaresheet.units.DerivedLength;
import squaresheet.units.Graduation;
import squaresheet.units.Length;

/** What there is to say about the courses of one plane. */
final class PlaneFindings {

  private final CoursePlan plan;
  private final List<Finding> findings = new ArrayList<>();

  PlaneFindings(CoursePlan plan) {
    this.plan = plan;
    checkPitch();
    checkHeight();
    checkTaper();
    plan.starters().forEach(this::checkStarter);
    checkSlivers();
  }

  List<Finding> list() {
    return List.copyOf(findings);
  }

  private void checkPitch() {
    if (plan.isTooFlat()) {
      add(
          LayoutFindings.LOW_PITCH,
          "pitch",
          String.format(
              "pitch must be at least the %s that %s may be laid on, but is %s",
              plan.shingle().minimumSlope(),
              plan.shingle().id(),
              plan.plane().pitch().show()));
    }
  }

  private void checkHeight() {
    Length height = plan.plane().outline().top().minus(plan.plane().outline().bottom());
    if (height.compareTo(plan.shingle().exposure()) < 0) {
      add(
          LayoutFindings.LOW_PLANE,
          "height",
          String.format(
              "height up the slope must be at least one course of %s, but is %s; one course is laid, cut to fit",
              plan.shingle().exposure().showOnTape(plan.tape()), height.show(plan.tape())));
    }
  }

  private void checkTaper() {
    Lines lines = plan.lines();
    DerivedLength taper = lines.taperPerLine();
    Length shows = plan.settings().spacing().taperShows();
    if (!lines.marks().get(0).at().isEmpty() && taper.compareTo(shows.toDerived()) > 0) {
      add(
          LayoutFindings.TAPER,
          "lines",
          String.format(
              "lines must differ by at most %s from one end of the eave to the other not to be seen, but each differs by"
                  + " %s",
              shows.showOnTape(plan.tape()), inDecimals(taper)));
    }
  }

  private String inDecimals(DerivedLength length) {
    return plan.tape().isImperial()
        ? String.format(Locale.ROOT, "%.2f in", length.inches())
        : String.format(Locale.ROOT, "%.1f mm", length.inches() * 25.4);
  }

  private void checkStarter(EaveStarter starter) {
    StarterJoints joints = starter.joints();
    String property = starter.side().name() + " starter";
    if (joints.starter().compareTo(joints.eave()) > 0) {
      add(
          LayoutFindings.LONG_STARTER,
          property,
          String.format(
              "a starter piece must be no longer than its eave of %s to be laid whole, but is %s; one cut piece covers it",
              joints.eave().show(plan.tape()), joints.starter().showOnTape(plan.tape())));
    }
    joints.firstClash().ifPresent(clash -> addClash(property, joints, clash));
  }

  private void addClash(String property, StarterJoints joints, StarterJoints.Joint clash) {
    Graduation tape = plan.tape();
    StarterJoints best =
        joints.withBestCut(tape.mark(), plan.settings().joints().sliver());
    Optional<StarterJoints.Joint> later = best.firstClash();
    String cure = best.clearUntil().compareTo(joints.clearUntil()) <= 0
        ? "no other first piece does better"
        : String.format(
            "a first piece of %s %s",
            best.starterCut().showOnTape(tape),
            later
                .map(joint -> "puts that off to " + joint.at().show(tape))
                .orElse("keeps all joints clear"));
    add(
        LayoutFindings.CLASH,
        property,
        String.format(
            "starter joints must stand at least %s from joints of the first course, but %s from the start one stands %s"
                + " from it; %s",
            joints.minimum().showOnTape(tape),
            clash.at().show(tape),
            clash.distance().showOnTape(tape),
            cure));
  }

  private void checkSlivers() {
    if (plan.slivers() > 0) {
      add(
          LayoutFindings.SLIVERS,
          "first pieces",
          String.format(
              "pieces at a rake must be at least %s wide, but %d %s narrower",
              plan.settings().joints().sliver().showOnTape(plan.tape()),
              plan.slivers(),
              plan.slivers() == 1 ? "is" : "are"));
    }
  }

  private void add(squaresheet.finding.CheckInfo card, String property, String says) {
    findings.add(LayoutFindings.of(card, plan.plane().id(), property, says));
  }
}
