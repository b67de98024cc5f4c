package squaresheet.product;

import java.util.List;
import squaresheet.units.Area;
import squaresheet.units.Length;

/**
 * Roll goods: underlayment, ice barrier, valley lining.
 *
 * @param label who it is
 * @param width across the roll, more than 0
 * @param length along the roll, more than 0
 * @param sideLap how far a row laps the row below, less than the width
 * @param endLap how far a piece laps the next one in its row, less than the length
 */
public record Roll(Label label, Length width, Length length, Length sideLap, Length endLap)
    implements Product {

  public Roll {
    Checked.positive("width", width);
    Checked.positive("length", length);
    Checked.less("side lap", sideLap, "width", width);
    Checked.less("end lap", endLap, "length", length);
  }

  /** What a row adds up the slope: width less side lap. */
  public Length coveringWidth() {
    return width.minus(sideLap);
  }

  /** The whole sheet, laps and all. */
  public Area.Sloped sheet() {
    return new Area.Sloped(width.toFeet() * length.toFeet());
  }

  /** What a roll covers in rows with their side lap, before end laps. */
  public Area.Sloped coveragePerRoll() {
    return new Area.Sloped(coveringWidth().toFeet() * length.toFeet());
  }

  @Override
  public List<Fact> facts() {
    return List.of(
        Checked.inches("roll_width", width),
        Checked.feet("roll_length", length),
        Checked.inches("side_lap", sideLap),
        Checked.inches("end_lap", endLap),
        Checked.pieces(packing()));
  }
}
