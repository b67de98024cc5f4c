package squaresheet.courses;

import java.util.List;
import squaresheet.geometry.Fraction;
import squaresheet.roof.EdgeKind;
import squaresheet.roof.Plane;
import squaresheet.roof.Side;
import squaresheet.units.Length;

/**
 * All starter of a plane. Along an eave it begins with the first cut; up a rake with a whole piece.
 *
 * @param eaves the starter along each eave
 * @param tally its pieces, along rakes too where set
 * @param run how far it reaches
 */
record StarterRow(List<EaveStarter> eaves, Tally tally, Length run) {

  static StarterRow of(Plane plane, Pattern pattern, Bed bed) {
    Joiner joiner = new Joiner(bed, pattern);
    List<EaveStarter> eaves = plane.sides(EdgeKind.EAVE).stream()
        .map(eave -> EaveStarter.of(plane, eave, pattern, joiner))
        .toList();
    Tally tally = new Tally(pattern.starterLength().units(), 0);
    Length run = Length.ZERO;
    for (EaveStarter eave : eaves) {
      tally.add(eave.run(), eave.joints().starterCut().units());
      run = run.plus(eave.joints().eave());
    }
    if (pattern.settings().starting().onRakes()) {
      for (Side rake : plane.sides(EdgeKind.RAKE)) {
        Length up = Measure.of(rake);
        tally.add(new Run(Fraction.of(0), Fraction.of(up), false, false), 0);
        run = run.plus(up);
      }
    }
    return new StarterRow(eaves, tally, run);
  }
}
