package squaresheet.tape;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import squaresheet.finding.Read;
import squaresheet.units.Pitch;

/**
 * A bare number where a rise per 12 is wanted, with the slips that bare numbers hide.
 *
 * @param spot the place
 * @param dates how serial numbers stand for days
 */
record BarePitch(Spot spot, DateSystem dates) {

  private static final double STEEPEST = 24;
  /** Half of the last place of an angle written to two decimals, and a little for the writer's own rounding. */
  private static final double NEAR_DEGREES = 0.006;
  /** An eighth of a minute: times are typed in whole minutes. */
  private static final double NEAR_DAYS = 1 / (8.0 * 24 * 60);
  /** Days from 1998 to 2064, in which a pitch typed by someone alive becomes a date. */
  private static final double FIRST_DAY = 36000;

  private static final double LAST_DAY = 60000;

  Read<Pitch> read(BigDecimal rise) {
    double value = rise.doubleValue();
    if (value <= 0) {
      return PitchReader.notPositive(spot);
    }
    if (value > STEEPEST) {
      return aboveRange(value);
    }
    if (value < 1) {
      return belowOne(rise, value);
    }
    Optional<String> degrees =
        value == Math.rint(value * 16) / 16 ? Optional.empty() : usualDegrees(value);
    return degrees
        .map(usual -> likeDegrees(rise, usual))
        .orElseGet(() -> PitchReader.inRange(spot, rise));
  }

  private Read<Pitch> likeDegrees(BigDecimal rise, String usual) {
    Pitch pitch = new Pitch(rise);
    return spot.remark(
        pitch,
        Complaint.PITCH_LIKE_DEGREES,
        usual,
        "pitch must be the rise per 12, but reads " + spot.quoted()
            + ", which is the angle in degrees of " + usual + "; taken as " + pitch);
  }

  private Read<Pitch> belowOne(BigDecimal rise, double value) {
    double hours = Math.floor(value * 24);
    if (hours >= 1 && Math.abs(value - (hours / 24 + 12 / (24.0 * 60))) < NEAR_DAYS) {
      return Dated.pitch(spot, value);
    }
    Pitch pitch = new Pitch(rise);
    String ratio = show(rise.multiply(BigDecimal.valueOf(12)));
    return spot.remark(
        pitch,
        Complaint.PITCH_LIKE_RATIO,
        ratio,
        "pitch must be the rise per 12, but reads " + spot.quoted() + ", which as rise over run is "
            + ratio + "; taken as " + pitch);
  }

  private Read<Pitch> aboveRange(double value) {
    if (value >= FIRST_DAY && value <= LAST_DAY) {
      return Dated.pitch(spot, dates.date(value));
    }
    BigDecimal asDegrees = BigDecimal.valueOf(12 * Math.tan(Math.toRadians(value)));
    BigDecimal asPercent = BigDecimal.valueOf(value * 0.12);
    boolean angle = value < 90 && asDegrees.doubleValue() <= STEEPEST + NEAR_DEGREES;
    boolean percent = asPercent.doubleValue() <= STEEPEST;
    String readings = (angle ? "; as degrees it is " + show(asDegrees) : "")
        + (percent ? (angle ? ", as percent " : "; as percent it is ") + show(asPercent) : "");
    return tooSteep(spot, expected(value, angle, asPercent), readings);
  }

  /** The one reading that gives a pitch people build, if only one does. */
  private static String expected(double value, boolean angle, BigDecimal asPercent) {
    String degrees = angle ? usualDegrees(value).orElse("") : "";
    double twice = asPercent.doubleValue() * 2;
    String percent =
        twice <= 2 * STEEPEST && Math.abs(twice - Math.rint(twice)) < 1e-9 ? show(asPercent) : "";
    return degrees.isEmpty() ? percent : percent.isEmpty() ? degrees : "";
  }

  static Read<Pitch> tooSteep(Spot spot, String expected, String readings) {
    return spot.refuse(
        Complaint.PITCH_TOO_STEEP,
        expected,
        "pitch must be at most 24 in 12, but reads " + spot.quoted() + readings);
  }

  /** The whole or half rise per 12 whose angle this is, to two decimals of a degree. */
  private static Optional<String> usualDegrees(double degrees) {
    double rise = Math.rint(24 * Math.tan(Math.toRadians(degrees))) / 2;
    double angle = Math.toDegrees(Math.atan(rise / 12));
    return Math.abs(angle - degrees) <= NEAR_DEGREES && rise >= 1
        ? Optional.of(show(BigDecimal.valueOf(rise)))
        : Optional.empty();
  }

  /** A rise per 12 to two decimals. */
  static String show(BigDecimal rise) {
    BigDecimal rounded = rise.setScale(2, RoundingMode.HALF_UP).stripTrailingZeros();
    return rounded.toPlainString() + ":12";
  }
}
