package squaresheet.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigInteger;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import squaresheet.units.Length;

/** Held against plain big-integer arithmetic from the Java library. */
class FractionTest {

  @Test
  void equal_is_equal_however_it_came_about() {
    assertThat(Fraction.of(2, -4)).isEqualTo(Fraction.of(-1, 2)).hasToString("-1/2");
    assertThat(Fraction.of(6, 3)).isEqualTo(Fraction.of(2)).hasToString("2");
    assertThat(Fraction.of(BigInteger.TEN, BigInteger.TWO)).isEqualTo(Fraction.of(5));
    Fraction wide = Fraction.of(Long.MAX_VALUE).times(Long.MAX_VALUE);
    assertThat(wide.dividedBy(Long.MAX_VALUE)).isEqualTo(Fraction.of(Long.MAX_VALUE));
    assertThat(Fraction.of(Long.MIN_VALUE, -1))
        .isEqualTo(Fraction.of(Long.MAX_VALUE).plus(Fraction.of(1)));
    assertThat(Fraction.of(Long.MIN_VALUE).negated())
        .isEqualTo(Fraction.of(Long.MAX_VALUE).plus(Fraction.of(1)));
  }

  @Test
  void nothing_is_over_zero() {
    assertThatThrownBy(() -> Fraction.of(1, 0)).isInstanceOf(ArithmeticException.class);
    assertThatThrownBy(() -> Fraction.of(1).dividedBy(0)).isInstanceOf(ArithmeticException.class);
  }

  @Test
  void rounding_goes_down_up_and_to_the_nearest() {
    assertThat(Fraction.of(-7, 2).floor()).isEqualTo(-4);
    assertThat(Fraction.of(-7, 2).ceiling()).isEqualTo(-3);
    assertThat(Fraction.of(7, 2).nearest()).isEqualTo(new Length(4));
    assertThat(Fraction.of(10, 3).nearest()).isEqualTo(new Length(3));
    assertThat(Fraction.of(8128).toLength().inches()).isEqualTo(1);
  }

  @Property(tries = 500)
  void arithmetic_is_that_of_big_integers(
      @ForAll long a, @ForAll long b, @ForAll long c, @ForAll long d) {
    long under = b == 0 ? 1 : b;
    long below = d == 0 ? 1 : d;
    Fraction one = Fraction.of(a, under);
    Fraction other = Fraction.of(c, below);
    BigInteger left = big(a).multiply(big(below));
    BigInteger right = big(c).multiply(big(under));
    BigInteger bottom = big(under).multiply(big(below));
    assertThat(one.plus(other)).isEqualTo(Fraction.of(left.add(right), bottom));
    assertThat(one.minus(other)).isEqualTo(Fraction.of(left.subtract(right), bottom));
    assertThat(one.times(other)).isEqualTo(Fraction.of(big(a).multiply(big(c)), bottom));
    assertThat(one.compareTo(other)).isEqualTo(bottom.signum() * left.compareTo(right));
    assertThat(one.plus(other).minus(other)).isEqualTo(one).hasSameHashCodeAs(one);
  }

  @Property(tries = 500)
  void small_numbers_take_the_same_way(@ForAll short a, @ForAll short b, @ForAll short c) {
    long under = b == 0 ? 1 : b;
    Fraction one = Fraction.of(a, under);
    assertThat(one.times(Fraction.of(c, 7)))
        .isEqualTo(Fraction.of(big(a).multiply(big(c)), big(under).multiply(big(7))));
    assertThat(one.compareTo(Fraction.of(c, 7)))
        .isEqualTo(Long.signum(under) * Long.compare(7L * a, c * under));
    assertThat(one.floor()).isEqualTo(Math.floorDiv(a, under));
  }

  private static BigInteger big(long value) {
    return BigInteger.valueOf(value);
  }
}
