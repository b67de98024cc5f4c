package squaresheet.courses;

import squaresheet.units.Length;
import squaresheet.units.Ratio;

/**
 * Pieces laid in a row along edges: starter along eaves and rakes, cap along hips and ridges.
 *
 * @param pieces how many
 * @param reach how far one piece reaches; more than 0
 * @param run how far they have to reach together, overhangs in
 */
public record Strip(Pieces pieces, Length reach, Length run) {

  /** What is bought over what is needed, less one. */
  public Ratio waste() {
    return Waste.ofRun(pieces.used(), reach, run);
  }
}
