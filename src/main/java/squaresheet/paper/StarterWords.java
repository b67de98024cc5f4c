package squaresheet.paper;

import java.util.Locale;
import squaresheet.courses.CoursePlan;
import squaresheet.courses.EaveStarter;
import squaresheet.courses.StarterJoints;
import squaresheet.units.Graduation;
import squaresheet.units.Length;

/** The words over a drawn starter strip: how it is begun, and what to cut where joints would clash. */
record StarterWords(CoursePlan plan, EaveStarter starter) {

  String title() {
    return "Starter, plane " + plan.plane().id() + ", " + Words.eave(plan, starter);
  }

  String summary() {
    if (plan.isTooFlat()) {
      return "Pitch " + Words.pitch(plan.plane().pitch(), tape()) + "; "
          + plan.shingle().id() + " may be laid from "
          + Words.pitch(plan.shingle().minimumSlope(), tape()) + " up.";
    }
    return "Begin the starter with " + piece(joints().starterCut(), joints().starter())
        + ", the first course with " + piece(joints().shingleCut(), joints().shingle())
        + ", both at the "
        + plan.settings().joints().from().name().toLowerCase(Locale.ROOT)
        + " end. The number under each starter joint is how far it stands from the nearest joint above; at least "
        + joints().minimum().showOnTape(tape()) + ".";
  }

  private String piece(Length cut, Length whole) {
    return cut.equals(whole)
        ? "a whole piece of " + whole.showOnTape(tape())
        : "a piece cut to " + cut.showOnTape(tape());
  }

  String verdict() {
    if (plan.isTooFlat()) {
      return Words.TOO_FLAT;
    }
    int clashes = joints().clashes().size();
    return joints()
        .firstClash()
        .map(first -> String.format(
            "%d of %d joints too near, the first at %s.  %s",
            clashes, joints().joints().size(), first.at().show(tape()), cure()))
        .orElse("No joint is too near another.");
  }

  /** The pieces to cut so that all joints are clear. */
  private String cure() {
    return joints()
        .cuts(tape().mark(), plan.settings().joints().sliver())
        .map(cuts -> "Begin with " + Words.cuts(cuts, tape()) + " instead: all clear.")
        .orElse("No pieces cut on the tape's marks keep all joints clear: ask before laying.");
  }

  private StarterJoints joints() {
    return starter.joints();
  }

  private Graduation tape() {
    return plan.settings().spacing().tape();
  }
}
