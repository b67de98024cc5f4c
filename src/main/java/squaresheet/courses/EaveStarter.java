package squaresheet.courses;

import squaresheet.geometry.Fraction;
import squaresheet.geometry.Point;
import squaresheet.roof.EdgeKind;
import squaresheet.roof.Plane;
import squaresheet.roof.Side;
import squaresheet.units.Length;

/**
 * The starter along one eave.
 *
 * @param side the eave
 * @param joints its joints under those of the first course, measured from the end that is laid first
 */
public record EaveStarter(Side side, StarterJoints joints) {

  static EaveStarter of(Plane plane, Side eave, Pattern pattern, Joiner joiner) {
    LayoutSettings settings = pattern.settings();
    boolean left = settings.joints().from() == LayoutSettings.Hand.LEFT;
    Length past = settings.overhang().rake();
    long begins = outer(plane, eave, left, past);
    long ends = outer(plane, eave, !left, past);
    long start = left ? begins : -begins;
    long lowest = Math.min(eave.from().y().units(), eave.to().y().units());
    int course = joiner.courseAt(lowest);
    long piece = pattern.shingle().length().units();
    long first = 1 + Math.floorMod(joiner.joint(course) - start - 1, piece);
    Length starter = pattern.starterLength();
    Length cut = settings.starting().firstCut();
    return new EaveStarter(
        eave,
        new StarterJoints(
            starter,
            cut.compareTo(starter) > 0 ? starter : cut,
            pattern.shingle().length(),
            new Length(first),
            new Length(Math.abs(ends - begins)),
            settings.starting().minimum()));
  }

  /** The end of the eave on one hand, past the rake that rises there. */
  private static long outer(Plane plane, Side eave, boolean left, Length past) {
    Point corner = eave.from().x().compareTo(eave.to().x()) < 0 == left ? eave.from() : eave.to();
    boolean atRake = plane.sides(EdgeKind.RAKE).stream()
        .anyMatch(rake -> rake.from().equals(corner) || rake.to().equals(corner));
    long reach = atRake ? past.units() : 0;
    return corner.x().units() + (left ? -reach : reach);
  }

  /** The eave with its overhangs, as one run from its beginning. */
  Run run() {
    return new Run(Fraction.of(0), Fraction.of(joints.eave()), false, false);
  }
}
