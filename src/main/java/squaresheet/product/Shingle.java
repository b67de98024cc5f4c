package squaresheet.product;

import java.util.ArrayList;
import java.util.List;
import squaresheet.units.Area;
import squaresheet.units.Length;
import squaresheet.units.Pitch;

/**
 * A shingle. Its headlap, height less two exposures, is never negative: anything less and a joint would lie over a joint.
 *
 * @param label who it is
 * @param length along the course, more than 0
 * @param height up the slope, at least two exposures
 * @param exposure the most that may be left showing, more than 0
 * @param nails how many a piece takes
 * @param minimumSlope the least pitch it may be laid on
 * @param jointOffset how far a joint must be from the joints of the course below
 */
public record Shingle(
    Label label,
    Length length,
    Length height,
    Length exposure,
    Nailing nails,
    Pitch minimumSlope,
    Length jointOffset)
    implements Product {

  /** Inches up the slope of a square that is 10 ft high. */
  private static final double SQUARE_INCHES_UP = 120;

  /** Asphalt shingles are not laid on less. Source: IRC R905.2.2. */
  private static final Pitch MODEL_CODE_MINIMUM = Pitch.of(2);

  /** No joint offset may be less. Common practice, no source. */
  private static final Length LEAST_OFFSET = Length.ofInches(4);

  public Shingle {
    Checked.positive("length", length);
    Checked.positive("exposure", exposure);
    if (height.minus(exposure.times(2)).units() < 0) {
      throw new IllegalArgumentException("height must be at least two exposures of " + exposure
          + ", so that the headlap is not negative, but is " + height);
    }
    Checked.less("joint offset", jointOffset, "length", length);
  }

  /**
   * Nails in one shingle.
   *
   * @param usual in the usual pattern, 1 or more
   * @param highWind in the high-wind pattern, no fewer
   */
  public record Nailing(long usual, long highWind) {

    public Nailing {
      Checked.atLeastOne("nails per piece", usual);
      if (highWind < usual) {
        throw new IllegalArgumentException("high-wind nails per piece must be at least the usual "
            + usual + ", but are " + highWind);
      }
    }
  }

  /** Height less two exposures: how far a shingle laps the one two courses below. */
  public Length headlap() {
    return height.minus(exposure.times(2));
  }

  /** What one shingle covers: exposure times length. */
  public Area.Sloped coveragePerPiece() {
    return new Area.Sloped(exposure.toFeet() * length.toFeet());
  }

  /** What one bundle covers. */
  public Area.Sloped coveragePerPack() {
    return coveragePerPiece().times((double) packing().pieces());
  }

  /** Shingles on a square, not rounded. */
  public double piecesPerSquare() {
    return 100 / coveragePerPiece().squareFeet();
  }

  /** Bundles on a square, not rounded. */
  public double packsPerSquare() {
    return 100 / coveragePerPack().squareFeet();
  }

  /** Courses on a square of 10 ft by 10 ft, not rounded. */
  public double coursesPerSquare() {
    return SQUARE_INCHES_UP / exposure.toInches();
  }

  /** What a square weighs; zero where no weight is stated. */
  public Weight weightPerSquare() {
    return packing().weight().times(packsPerSquare());
  }

  /**
   * The same shingle laid with less showing.
   *
   * @throws IllegalArgumentException if more would show than the product allows
   */
  public Shingle laidAt(Length shown) {
    if (shown.compareTo(exposure) > 0) {
      throw new IllegalArgumentException(
          "exposure laid must be at most the product's " + exposure + ", but is " + shown);
    }
    return new Shingle(label, length, height, shown, nails, minimumSlope, jointOffset);
  }

  @Override
  public List<Fact> facts() {
    return List.of(
        Checked.inches("length", length),
        Checked.inches("height", height),
        Checked.inches("exposure", exposure),
        Checked.pieces(packing()),
        new Fact("nails_usual", nails.usual(), "pieces"),
        new Fact("nails_high_wind", nails.highWind(), "pieces"),
        new Fact("minimum_slope", minimumSlope.rise().doubleValue(), "pitch"),
        new Fact("pack_weight", packing().weight().pounds().doubleValue(), "lb/bundle"));
  }

  @Override
  public List<String> doubts() {
    List<String> doubts = new ArrayList<>();
    if (minimumSlope.compareTo(MODEL_CODE_MINIMUM) < 0) {
      doubts.add("minimum slope must be 2:12 or more by the model code, but is " + minimumSlope);
    }
    if (jointOffset.compareTo(LEAST_OFFSET) < 0) {
      doubts.add("joint offset must be 4 in or more, but is " + jointOffset);
    }
    return List.copyOf(doubts);
  }
}
