package squaresheet.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Relations that measures keep, and both sides of their limits. Expected numbers are worked by hand unless said. */
class UnitsTest {

  @Test
  void a_tape_is_exact_in_both_systems() {
    assertThat(Length.ofInches(1, 64).units()).isEqualTo(127);
    assertThat(Length.fromMillimetres(new BigDecimal("0.1")).units()).isEqualTo(32);
    assertThat(Length.fromInches(BigDecimal.ONE))
        .isEqualTo(Length.fromMillimetres(new BigDecimal("25.4")));
    assertThat(Length.of(24, 6).plus(Length.ofInches(1, 2)))
        .isEqualTo(Length.fromMillimetres(new BigDecimal("7480.3")));
  }

  @Property(tries = 500)
  void adding_64ths_one_by_one_is_the_same_as_at_once(
      @ForAll @LongRange(min = 1, max = 2000) long count) {
    Length sum = Length.ZERO;
    for (long i = 0; i < count; i++) {
      sum = sum.plus(Graduation.SIXTY_FOURTH.mark());
    }
    assertThat(sum).isEqualTo(Length.ofInches(count, 64));
  }

  @Property(tries = 500)
  void a_rounded_length_is_on_a_mark_and_on_the_stated_side(
      @ForAll @LongRange(min = -9_000_000_000L, max = 9_000_000_000L) long units,
      @ForAll Graduation marks) {
    Length length = new Length(units);
    Length down = length.roundedTo(marks, Direction.DOWN);
    Length up = length.roundedTo(marks, Direction.UP);
    Length nearest = length.roundedTo(marks, Direction.NEAREST);
    assertThat(down.units() % marks.units()).isZero();
    assertThat(down).isLessThanOrEqualTo(length);
    assertThat(up).isGreaterThanOrEqualTo(length);
    assertThat(up.minus(down)).isIn(Length.ZERO, marks.mark());
    assertThat(nearest).isIn(down, up);
    assertThat(2 * length.minus(nearest).abs().units()).isLessThanOrEqualTo(marks.units());
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '\0', textBlock = """
      5 17/32"  | SIXTEENTH        | NEAREST | 5 9/16"  | a tie goes up
      5 17/32"  | SIXTEENTH        | DOWN    | 5 1/2"   | below
      5 17/32"  | SIXTEENTH        | UP      | 5 9/16"  | above
      -5 17/32" | SIXTEENTH        | NEAREST | -5 9/16" | a tie goes away from zero
      -5 17/32" | SIXTEENTH        | DOWN    | -5 9/16" | toward minus infinity
      11 63/64" | EIGHTH           | NEAREST | 1'       | carries into feet
      23' 11 31/32" | HALF         | NEAREST | 24'      | carries into feet
      0"        | SIXTEENTH        | UP      | 0"       | zero is on every mark
      24' 1/4"  | SIXTEENTH        | NEAREST | 24' 0 1/4" | the inches are not left out
      7480.3 mm | MILLIMETRE       | NEAREST | 7480 mm  | metric
      7480.5 mm | MILLIMETRE       | NEAREST | 7481 mm  | metric tie
      7480.3 mm | TENTH_MILLIMETRE | DOWN    | 7480.3 mm | on the mark
      """)
  void a_length_prints_on_its_graduation(
      String text, Graduation marks, Direction direction, String printed, String why) {
    Length rounded = Length.parse(text.replace("24' 1/4", "24' 0 1/4")).roundedTo(marks, direction);
    assertThat(rounded.show(marks)).as(why).isEqualTo(printed);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      30             | 30 | a whole number is itself
      30.0000000004  | 30 | how a computer may spell 30
      30.00000002    | 30 | just inside 1e-9 of 30
      30.00000004    | 31 | just beyond it
      30.001         | 31 | any real need is ordered
      29.9999999996  | 30 | up as ever
      0              | 0  | nothing
      0.0000001      | 1  | a small need is still a need
      1e9            | 1000000000 | large
      -0.5           | 0  | a credit rounds up
      """)
  void packs_round_up_and_are_not_fooled_by_floating_point(double need, long packs, String why) {
    assertThat(Rounding.UP_TO_PACK.apply(need)).as(why).isEqualTo(packs);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      30            | 30 | a whole number is itself
      29.9999999996 | 30 | how a computer may spell 30
      29.99999998   | 30 | just inside 1e-9 of 30
      29.99999996   | 29 | just beyond it
      30.9          | 30 | down
      """)
  void packs_on_hand_round_down(double stock, long packs, String why) {
    assertThat(Rounding.DOWN_TO_PACK.apply(stock)).as(why).isEqualTo(packs);
  }

  @ParameterizedTest
  @ValueSource(
      doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, 1e19, -1e19})
  void what_is_no_number_of_packs_is_refused(double need) {
    assertThatThrownBy(() -> Rounding.UP_TO_PACK.apply(need))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a number of packs must lie within 9.0e15, but is " + need);
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, 1e30})
  void a_length_that_is_no_number_or_past_its_range_is_refused(double inches) {
    assertThatThrownBy(() -> Length.nearestInches(inches))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("length must be a number of inches within 1.1e15, but is " + inches);
    if (!Double.isFinite(inches)) {
      assertThatThrownBy(() -> new DerivedLength(inches))
          .isInstanceOf(IllegalArgumentException.class);
      assertThatThrownBy(() -> new Area.Plan(inches)).isInstanceOf(IllegalArgumentException.class);
      assertThatThrownBy(() -> new Area.Sloped(inches))
          .isInstanceOf(IllegalArgumentException.class);
    }
  }

  @Test
  void lengths_do_not_wrap_round() {
    Length longest = new Length(Long.MAX_VALUE);
    assertThatThrownBy(() -> longest.plus(new Length(1))).isInstanceOf(ArithmeticException.class);
    assertThatThrownBy(() -> longest.times(2)).isInstanceOf(ArithmeticException.class);
    assertThatThrownBy(() -> longest.negated().minus(new Length(2)))
        .isInstanceOf(ArithmeticException.class);
    assertThatThrownBy(() -> longest.roundedTo(Graduation.INCH, Direction.UP))
        .isInstanceOf(ArithmeticException.class);
    assertThatThrownBy(() -> longest.roundedTo(Graduation.INCH, Direction.NEAREST))
        .isInstanceOf(ArithmeticException.class);
  }

  @Property(tries = 500)
  void plan_and_slope_undo_each_other(
      @ForAll @DoubleRange(min = 0, max = 1e6) double squareFeet,
      @ForAll @BigRange(min = "0", max = "24") BigDecimal rise) {
    Pitch pitch = new Pitch(rise);
    Area.Plan plan = new Area.Plan(squareFeet);
    assertThat(pitch.plan(pitch.slope(plan)).squareFeet())
        .isCloseTo(squareFeet, within(1e-9 * (1 + squareFeet)));
    assertThat(pitch.slope(plan).squareFeet()).isGreaterThanOrEqualTo(squareFeet);
  }

  @Property(tries = 500)
  void a_steeper_pitch_never_has_a_smaller_factor(
      @ForAll @BigRange(min = "0", max = "24") BigDecimal one,
      @ForAll @BigRange(min = "0", max = "24") BigDecimal other) {
    Pitch low = new Pitch(one.min(other));
    Pitch steep = new Pitch(one.max(other));
    assertThat(steep.factor()).isGreaterThanOrEqualTo(low.factor());
    assertThat(steep.hipFactor()).isGreaterThanOrEqualTo(low.hipFactor());
    assertThat(steep.toDegrees()).isGreaterThanOrEqualTo(low.toDegrees());
  }

  /** The same hip line seen from both sides: each side's run is the other's times the ratio of the slopes. */
  @Property(tries = 500)
  void a_hip_between_unequal_pitches_is_as_long_from_both_sides(
      @ForAll @BigRange(min = "0.5", max = "24") BigDecimal one,
      @ForAll @BigRange(min = "0.5", max = "24") BigDecimal other) {
    Pitch mine = new Pitch(one);
    Pitch theirs = new Pitch(other);
    double theirRun = mine.slope() / theirs.slope();
    assertThat(mine.hipFactor(theirs))
        .isCloseTo(theirs.hipFactor(mine) * theirRun, within(1e-9 * theirRun + 1e-9));
    assertThat(mine.hipFactor(mine)).isCloseTo(mine.hipFactor(), within(1e-12));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      6.0 | 6  | trailing zeros
      6   | 6  | itself
      06  | 6  | leading zero
      """)
  void trailing_zeros_do_not_make_a_different_pitch(BigDecimal rise, long same, String why) {
    assertThat(new Pitch(rise))
        .as(why)
        .isEqualTo(Pitch.of(same))
        .isEqualByComparingTo(Pitch.of(same));
  }

  @Test
  void a_pitch_stays_within_its_range() {
    assertThat(Pitch.of(24).toDegrees()).isCloseTo(63.4349488229, within(1e-9));
    assertThat(Pitch.nearestDegrees(Pitch.of(24).toDegrees())).isEqualTo(Pitch.of(24));
    assertThat(Pitch.of(0).isFlat()).isTrue();
    assertThatThrownBy(() -> new Pitch(new BigDecimal("24.01")))
        .hasMessage("pitch must rise 0 to 24 inches per 12, but rises 24.01");
    assertThatThrownBy(() -> new Pitch(new BigDecimal("-0.5")))
        .hasMessage("pitch must rise 0 to 24 inches per 12, but rises -0.5");
    assertThatThrownBy(() -> Pitch.of(6).hipFactor(Pitch.of(0)))
        .hasMessage("the other side of a hip must slope, but its pitch is 0:12");
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      0.005  | 0.01  | 0.01 USD      | half up
      0.0049 | 0.00  | 0.00 USD      | under half
      -0.005 | -0.01 | -0.01 USD     | away from zero
      1.15   | 1.15  | 1.15 USD      | already cents
      2.675  | 2.68  | 2.68 USD      | a double would say 2.67
      1234567.891 | 1234567.89 | "1,234,567.89 USD" | thousands apart
      """, quoteCharacter = '"')
  void money_rounds_half_up_to_the_cent(
      BigDecimal amount, BigDecimal cents, String shown, String why) {
    Money money = Money.of("USD", amount);
    assertThat(money.toCents().amount()).as(why).isEqualByComparingTo(cents);
    assertThat(money.show()).as(why).isEqualTo(shown);
  }

  @Test
  void money_of_two_currencies_does_not_mix() {
    Money dollars = Money.of("USD", BigDecimal.ONE);
    Money euros = Money.of("EUR", BigDecimal.ONE);
    assertThat(dollars).isNotEqualTo(euros);
    assertThatThrownBy(() -> dollars.plus(euros))
        .hasMessage("cannot mix currencies: EUR 1 with USD 1");
    assertThatThrownBy(() -> dollars.minus(euros))
        .hasMessage("cannot mix currencies: EUR 1 with USD 1");
    assertThat(Money.of("USD", new BigDecimal("1.50")))
        .isEqualTo(Money.of("USD", new BigDecimal("1.5")))
        .hasSameHashCodeAs(Money.of("USD", new BigDecimal("1.5")));
    assertThatThrownBy(() -> Money.of("XYZ", BigDecimal.ONE))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      1 | bundle | 1 bundle
      2 | bundle | 2 bundles
      0 | box    | 0 boxes
      2 | batch  | 2 batches
      1 | piece  | 1 piece
      """)
  void a_count_prints_its_plural(long number, String pack, String printed) {
    assertThat(Count.of(number, pack)).hasToString(printed);
  }

  @Test
  void a_count_adds_its_like_only() {
    assertThat(Count.of(2, "bundle").plus(Count.of(3, "bundle"))).isEqualTo(Count.of(5, "bundle"));
    assertThatThrownBy(() -> Count.of(2, "bundle").plus(Count.of(1, "roll")))
        .hasMessage("cannot add 1 roll to 2 bundles");
    assertThatThrownBy(() -> Count.of(-1, "roll"))
        .hasMessage("a count must be 0 or more, but is -1 rolls");
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '\0', textBlock = """
      # length   | marks      | printed   | why
      14'        | SIXTEENTH  | 168"      | a tape hooked on a line reads inches all the way
      2' 4 1/8"  | SIXTEENTH  | 28 1/8"   | with its fraction
      11 7/8"    | SIXTEENTH  | 11 7/8"   | under a foot as ever
      -2' 4 1/8" | SIXTEENTH  | -28 1/8"  | the other way
      714 mm     | MILLIMETRE | 714 mm    | millimetres have no feet
      """)
  void a_tape_is_read_in_inches_all_the_way(
      Length length, Graduation marks, String printed, String why) {
    assertThat(length.showOnTape(marks)).as(why).isEqualTo(printed);
  }
}
