package squaresheet.product;

import java.util.List;
import squaresheet.units.Length;

/**
 * Metal laid end over end along one straight run: at eaves and rakes, or along a headwall.
 *
 * @param label who it is
 * @param length of a piece, more than 0
 * @param lap how far a piece laps the next, less than the length
 */
public record EdgeMetal(Label label, Length length, Length lap) implements Product {

  /** Pieces lap by at least 2 in. Source: IRC R905.2.8.5 (2012 and later). */
  private static final Length LEAST_LAP = Length.ofInches(2);

  public EdgeMetal {
    Checked.positive("length", length);
    Checked.less("lap", lap, "length", length);
  }

  /** The straight run that so many pieces cover: n pieces less n − 1 laps. */
  public Length covers(long pieces) {
    return pieces < 1 ? Length.ZERO : length.times(pieces).minus(lap.times(pieces - 1));
  }

  /** Pieces for one straight run; runs do not share. */
  public long piecesFor(Length run) {
    if (!run.isPositive()) {
      return 0;
    }
    long each = length.minus(lap).units();
    long rest = Math.max(0, run.minus(length).units());
    return 1 + -Math.floorDiv(-rest, each);
  }

  @Override
  public List<Fact> facts() {
    return List.of(
        Checked.feet("piece_length", length),
        Checked.inches("lap", lap),
        Checked.pieces(packing()));
  }

  @Override
  public List<String> doubts() {
    return lap.compareTo(LEAST_LAP) < 0
        ? List.of("metal must lap by 2 in or more, but laps by " + lap)
        : List.of();
  }
}
