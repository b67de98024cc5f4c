package squaresheet.courses;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import squaresheet.units.Length;
import squaresheet.units.Ratio;

/** What pieces cover over what had to be covered, less one. */
final class Waste {

  /** Far finer than a piece on any roof, and short enough to show in a cell. */
  private static final int DECIMALS = 12;

  private Waste() {}

  /** Of shingles over a net area, given twice in square units; 0 where there is nothing to cover. */
  static Ratio ofArea(long used, Interval cover, Length piece, BigInteger doubledNet) {
    BigInteger covers = BigInteger.valueOf(used)
        .multiply(BigInteger.valueOf(cover.laid().units()))
        .multiply(BigInteger.valueOf(piece.units()))
        .shiftLeft(1);
    return ratio(covers, doubledNet.multiply(BigInteger.valueOf(cover.courses())));
  }

  /** Of strips along a run; 0 where there is no run. */
  static Ratio ofRun(long used, Length piece, Length run) {
    return ratio(
        BigInteger.valueOf(used).multiply(BigInteger.valueOf(piece.units())),
        BigInteger.valueOf(run.units()));
  }

  private static Ratio ratio(BigInteger covers, BigInteger net) {
    return net.signum() <= 0
        ? Ratio.ZERO
        : new Ratio(new BigDecimal(covers.subtract(net))
            .divide(new BigDecimal(net), DECIMALS, RoundingMode.HALF_UP));
  }
}
