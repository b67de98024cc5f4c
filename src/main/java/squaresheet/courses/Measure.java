package squaresheet.courses;

import java.math.BigInteger;
import squaresheet.roof.Side;
import squaresheet.units.Length;

/** The length of a side as pieces are counted along it: what was taped, else what is drawn, a diagonal rounded up to 1/320 mm. */
final class Measure {

  private Measure() {}

  static Length of(Side side) {
    return side.taped().orElseGet(() -> drawn(side.along(), side.up()));
  }

  static Length drawn(Length along, Length up) {
    return along.isZero() ? up : up.isZero() ? along : diagonal(along.units(), up.units());
  }

  private static Length diagonal(long along, long up) {
    BigInteger square = square(along).add(square(up));
    BigInteger[] root = square.sqrtAndRemainder();
    return new Length(root[0].longValueExact() + (root[1].signum() > 0 ? 1 : 0));
  }

  private static BigInteger square(long units) {
    return BigInteger.valueOf(units).pow(2);
  }
}
