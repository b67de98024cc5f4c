package squaresheet.tape;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.Set;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.tape.PitchText.Slope;
import squaresheet.units.Pitch;

/**
 * Reads one pitch and says what is wrong with it.
 *
 * @param marks the sheet's decimal mark and the names of its months
 * @param dates how serial numbers stand for days
 */
record PitchReader(Marks marks, DateSystem dates) {

  private static final BigDecimal FOOT = BigDecimal.valueOf(12);
  private static final BigDecimal STEEPEST = BigDecimal.valueOf(24);
  /** Runs that people write after a slash beside 12: percent, the metric square, parts in a thousand. */
  private static final Set<Integer> SLASH_RUNS = Set.of(12, 100, 250, 1000);

  private static final int LONGEST_TEXT = 60;
  private static final String LIKE = "pitch must read like 6/12, 6:12, 26.57° or 50%";

  Read<Pitch> read(Written written, Where where) {
    if (written instanceof Written.Number number) {
      Spot spot = new Spot(where, Shown.number(number.value()));
      return Double.isFinite(number.value()) ? number(spot, number) : unreadable(spot);
    }
    return text(((Written.Text) written).text(), where);
  }

  /** What a pitch may be that is written as an angle or in percent; empty where it is written otherwise or exact. */
  Optional<Pitch.Span> span(Written written) {
    if (written instanceof Written.Number number) {
      return Shown.isDate(number) || Shown.isTime(number)
          ? Optional.empty()
          : PitchFigure.of(number).flatMap(PitchFigure::span);
    }
    return slope(((Written.Text) written).text())
        .flatMap(PitchFigure::of)
        .flatMap(PitchFigure::span);
  }

  private Optional<Slope> slope(String text) {
    String plain = text.length() > LONGEST_TEXT ? "" : Glyphs.plain(text);
    return new PitchText(marks.decimals()).read(plain.replaceFirst("^[-+] ?", ""));
  }

  private Read<Pitch> number(Spot spot, Written.Number number) {
    double value = number.value();
    BigDecimal decimal = BigDecimal.valueOf(value);
    if (Shown.isDate(number)) {
      return Dated.pitch(spot, dates.date(value));
    }
    if (Shown.isTime(number)) {
      return Dated.pitch(spot, value);
    }
    Optional<PitchFigure> figure = PitchFigure.of(number);
    if (figure.isPresent()) {
      return figure(spot, figure.get());
    }
    return Shown.isFraction(number.format()) && value > 0 && value < 1
        ? fraction(spot, decimal)
        : new BarePitch(spot, dates).read(decimal);
  }

  private static Read<Pitch> fraction(Spot spot, BigDecimal value) {
    Pitch pitch = Pitch.of(value, BigDecimal.ONE);
    return spot.remark(
        pitch,
        Complaint.PITCH_LIKE_RATIO,
        pitch.toString(),
        "pitch must be the rise per 12, but is a fraction with the value " + spot.found()
            + "; taken as " + pitch);
  }

  private Read<Pitch> text(String text, Where where) {
    Spot spot = new Spot(where, Shown.text(text));
    if (text.isBlank()) {
      return spot.refuse(Complaint.PITCH_MISSING, "", LIKE + ", but there is nothing here");
    }
    String plain = text.length() > LONGEST_TEXT ? "" : Glyphs.plain(text);
    Decimals decimals = marks.decimals();
    Optional<Slope> slope = slope(text);
    if (plain.startsWith("-") && slope.isPresent()) {
      return notPositive(spot);
    }
    return slope
        .map(read -> marked(spot, read, decimals))
        .or(() -> Dated.pitchText(spot, plain, marks.days()))
        .orElseGet(() -> unreadable(spot));
  }

  private Read<Pitch> marked(Spot spot, Slope slope, Decimals decimals) {
    Read<Pitch> read = judge(spot, slope);
    if (!slope.otherMark() || read.value().isEmpty()) {
      return read;
    }
    String swapped = spot.found().replace(decimals.otherMark(), decimals.mark());
    String mark = Decimals.word(decimals.mark());
    return spot.remark(
        read.value().get(),
        Complaint.DECIMAL_MARK,
        swapped,
        "pitch must have a decimal " + mark + " on this sheet, but reads " + spot.quoted()
            + "; with a " + mark + " it is " + swapped);
  }

  private Read<Pitch> judge(Spot spot, Slope slope) {
    return switch (slope.form()) {
      case RATIO -> ratio(spot, slope);
      case PER_FOOT -> inRange(spot, slope.rise());
      case DEGREES, PERCENT -> figure(spot, PitchFigure.of(slope).orElseThrow());
      case BARE -> new BarePitch(spot, dates).read(slope.rise());
    };
  }

  private static BigDecimal per12(BigDecimal rise, BigDecimal run) {
    return rise.multiply(FOOT).divide(run, 15, RoundingMode.HALF_UP);
  }

  private Read<Pitch> ratio(Spot spot, Slope slope) {
    BigDecimal run = slope.run();
    boolean tight = slope.sign().equals("/") || slope.sign().equals("-");
    boolean usual = run.compareTo(FOOT) == 0 || (slope.sign().equals("/") && isUsual(run));
    boolean turned = slope.rise().compareTo(FOOT) == 0
        && run.compareTo(FOOT) < 0
        && (tight || slope.sign().equals(":"));
    if (turned) {
      return turned(spot, run);
    }
    return !tight || usual
        ? PitchFigure.of(slope)
            .map(figure -> figure(spot, figure))
            .orElseGet(() -> inRange(spot, per12(slope.rise(), run)))
        : overWhat(spot, slope);
  }

  private static boolean isUsual(BigDecimal run) {
    return run.stripTrailingZeros().scale() <= 0 && SLASH_RUNS.contains(run.intValue());
  }

  private static Read<Pitch> turned(Spot spot, BigDecimal rise) {
    String other = rise.stripTrailingZeros().toPlainString() + ":12";
    return spot.refuse(
        Complaint.PITCH_AMBIGUOUS,
        other,
        "pitch must have the rise first and the run of 12 last, but reads " + spot.quoted()
            + "; turned round it is " + other);
  }

  /** Old books write a third pitch for a rise of a third of the span, which is twice the run. */
  private static Read<Pitch> overWhat(Spot spot, Slope slope) {
    BigDecimal overRun = per12(slope.rise(), slope.run());
    BigDecimal overSpan = overRun.add(overRun);
    return spot.refuse(
        Complaint.PITCH_AMBIGUOUS,
        "",
        "pitch must be a rise over a run of 12, but reads " + spot.quoted()
            + ", which can be rise over run (" + BarePitch.show(overRun) + ") or rise over span ("
            + BarePitch.show(overSpan) + ")");
  }

  /** Takes the named pitch that the figure was rounded from, if it says which. */
  private static Read<Pitch> figure(Spot spot, PitchFigure figure) {
    return figure
        .span()
        .flatMap(Pitch.Span::named)
        .map(named -> asNamed(spot, named))
        .orElseGet(() -> inRange(spot, figure.rise()));
  }

  private static Read<Pitch> asNamed(Spot spot, Pitch named) {
    return spot.remark(
        named,
        Complaint.PITCH_AS_NAMED,
        named.toString(),
        "pitch reads " + spot.quoted() + ", which is " + named + " to its last digit; taken as "
            + named);
  }

  static Read<Pitch> inRange(Spot spot, BigDecimal rise) {
    BigDecimal kept = rise.setScale(12, RoundingMode.HALF_UP);
    if (kept.signum() <= 0) {
      return notPositive(spot);
    }
    return kept.compareTo(STEEPEST) > 0
        ? BarePitch.tooSteep(spot, "", "")
        : Read.of(new Pitch(kept));
  }

  static Read<Pitch> notPositive(Spot spot) {
    return spot.refuse(
        Complaint.PITCH_NOT_POSITIVE,
        "",
        "pitch must be more than 0 and at most 24 in 12, but reads " + spot.quoted());
  }

  private static Read<Pitch> unreadable(Spot spot) {
    return spot.refuse(Complaint.PITCH_UNREADABLE, "", LIKE + ", but reads " + spot.quoted());
  }
}
