package squaresheet.tape;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import squaresheet.tape.PitchText.Form;
import squaresheet.tape.PitchText.Slope;
import squaresheet.units.Pitch;

/**
 * A pitch written as an angle or in hundredths of the run, which is as exact as its last digit. People round it or cut it off
 * (<em>common practice, no source</em>): 18.43° is 4:12, 26.56° and 26.57° are both 6:12.
 *
 * @param form degrees or percent
 * @param figure the number as written
 * @param step one whole last digit of it
 */
record PitchFigure(Form form, BigDecimal figure, BigDecimal step) {

  /** Runs that are marked on squares and levels, over which a rise is read off and so rounded. */
  private static final Set<Integer> RUNS = Set.of(100, 250, 1000);

  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
  private static final BigDecimal FOOT = BigDecimal.valueOf(12);
  private static final BigDecimal TWO = BigDecimal.valueOf(2);
  private static final BigDecimal STEEPEST = BigDecimal.valueOf(24);
  private static final BigDecimal UPRIGHT = BigDecimal.valueOf(90);
  /** What working an angle out may be off by, in degrees; a 12th decimal of a rise is still four times as much. */
  private static final BigDecimal NOISE = new BigDecimal("1e-12");

  private static final int DECIMALS = 15;

  /** The pitches that people name: every half inch of rise. */
  private static final List<Pitch> NAMED = IntStream.rangeClosed(1, 48)
      .mapToObj(halves -> new Pitch(BigDecimal.valueOf(halves).divide(TWO)))
      .toList();

  /** The figure of a pitch that is written as one. */
  static Optional<PitchFigure> of(Slope slope) {
    return switch (slope.form()) {
      case DEGREES, PERCENT ->
        Optional.of(new PitchFigure(slope.form(), slope.rise(), slope.step()));
      case RATIO ->
        isRead(slope.run())
            ? Optional.of(new PitchFigure(
                Form.PERCENT,
                percent(slope.rise(), slope.run()),
                percent(slope.step(), slope.run())))
            : Optional.empty();
      case PER_FOOT, BARE -> Optional.empty();
    };
  }

  /** The figure of a number that is shown as an angle or in percent; zeros that are shown behind it count as written. */
  static Optional<PitchFigure> of(Written.Number number) {
    boolean percent = Shown.isPercent(number.format());
    boolean shown = percent || Shown.isDegrees(number.format());
    if (!shown || !Double.isFinite(number.value())) {
      return Optional.empty();
    }
    BigDecimal value = BigDecimal.valueOf(number.value());
    BigDecimal figure = (percent ? value.multiply(HUNDRED) : value).stripTrailingZeros();
    int decimals = Math.max(Shown.decimals(number.format()), figure.scale());
    BigDecimal step = BigDecimal.ONE.movePointLeft(Math.max(0, decimals));
    return Optional.of(new PitchFigure(percent ? Form.PERCENT : Form.DEGREES, figure, step));
  }

  /**
   * The angle or percent with one or two decimals that a rise per 12 was worked out from, where it fits every digit of the
   * rise, three decimals or more; 3.9988 is that of 18.43°.
   */
  static Optional<PitchFigure> behind(BigDecimal rise) {
    BigDecimal half = BigDecimal.ONE.movePointLeft(rise.scale()).divide(TWO).add(NOISE);
    double degrees = Math.toDegrees(Math.atan(rise.doubleValue() / 12));
    double percent = rise.doubleValue() / 0.12;
    return rise.scale() < 3
        ? Optional.empty()
        : Stream.of(1, 2)
            .flatMap(decimals -> Stream.of(
                rounded(Form.DEGREES, degrees, decimals), rounded(Form.PERCENT, percent, decimals)))
            .filter(it -> it.figure.stripTrailingZeros().scale() > 0)
            .filter(it -> it.rise().subtract(rise).abs().compareTo(half) <= 0)
            .findFirst();
  }

  private static PitchFigure rounded(Form form, double figure, int decimals) {
    return new PitchFigure(
        form,
        BigDecimal.valueOf(figure).setScale(decimals, RoundingMode.HALF_UP),
        BigDecimal.ONE.movePointLeft(decimals));
  }

  private static boolean isRead(BigDecimal run) {
    return RUNS.stream().anyMatch(one -> run.compareTo(BigDecimal.valueOf(one)) == 0);
  }

  private static BigDecimal percent(BigDecimal part, BigDecimal run) {
    return part.multiply(HUNDRED).divide(run, DECIMALS, RoundingMode.HALF_UP);
  }

  /** The rise per 12 by the figure as it stands, which may be too little or too much for a pitch. */
  BigDecimal rise() {
    return rise(figure);
  }

  /** What it may be; empty where it is a named pitch without any rounding, or none that can be read. */
  Optional<Pitch.Span> span() {
    BigDecimal least = figure.subtract(step.divide(TWO));
    BigDecimal most = figure.add(step);
    Optional<Pitch> named =
        step.compareTo(BigDecimal.ONE) < 0 ? named(least, most) : Optional.empty();
    boolean read = rise().signum() > 0 && rise().compareTo(STEEPEST) <= 0;
    Pitch written = clipped(figure);
    boolean exact = read && written.isNamed() && named.orElse(written).equals(written);
    return !exact && (read || named.isPresent())
        ? Optional.of(new Pitch.Span(written, clipped(least), clipped(most), named))
        : Optional.empty();
  }

  private Optional<Pitch> named(BigDecimal least, BigDecimal most) {
    return NAMED.stream().filter(pitch -> isWithin(written(pitch), least, most)).findFirst();
  }

  private static boolean isWithin(BigDecimal as, BigDecimal least, BigDecimal most) {
    return as.compareTo(least.subtract(NOISE)) >= 0 && as.compareTo(most.add(NOISE)) <= 0;
  }

  /** A pitch in this form, with every digit. */
  private BigDecimal written(Pitch pitch) {
    return form == Form.DEGREES
        ? BigDecimal.valueOf(pitch.toDegrees())
        : percent(pitch.rise(), FOOT);
  }

  private BigDecimal rise(BigDecimal at) {
    if (form == Form.PERCENT) {
      return at.multiply(FOOT).divide(HUNDRED, DECIMALS, RoundingMode.HALF_UP);
    }
    return at.compareTo(UPRIGHT) < 0
        ? BigDecimal.valueOf(12 * Math.tan(Math.toRadians(at.doubleValue())))
        : STEEPEST.add(STEEPEST);
  }

  private Pitch clipped(BigDecimal at) {
    return new Pitch(rise(at).max(BigDecimal.ZERO).min(STEEPEST));
  }
}
