package squaresheet.tape;

import java.math.BigDecimal;
import java.util.Optional;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.tape.LengthText.Doubt;
import squaresheet.tape.LengthText.Reading;
import squaresheet.units.Direction;
import squaresheet.units.Graduation;
import squaresheet.units.Length;

/**
 * Reads one length and says what is wrong with it.
 *
 * @param unit the unit of bare numbers
 * @param marks the sheet's decimal mark and its order of day and month
 * @param dates how serial numbers stand for days
 * @param signed whether zero and negative lengths are allowed
 */
record LengthReader(TapeUnit unit, Marks marks, DateSystem dates, boolean signed) {

  /** Longer than any side of a roof, so that a slipped decimal mark is told at once: one kilometre. */
  private static final BigDecimal LONGEST = BigDecimal.valueOf(1_000_000);

  private static final int LONGEST_TEXT = 60;
  private static final String LIKE = "must read like 24' 6 1/2\" or 7.48 m";

  Read<Length> read(Written written, Where where) {
    if (written instanceof Written.Number number) {
      return number(number, where);
    }
    return text(((Written.Text) written).text(), where);
  }

  private Read<Length> number(Written.Number number, Where where) {
    Spot spot = new Spot(where, Shown.number(number.value()));
    if (!Double.isFinite(number.value())) {
      return unreadable(spot, "");
    }
    if (Shown.isDate(number)) {
      return Dated.length(spot, dates.date(number.value()), marks.days());
    }
    BigDecimal value = BigDecimal.valueOf(number.value());
    return inRange(spot, value.multiply(unit.millimetres()));
  }

  private Read<Length> text(String text, Where where) {
    Spot spot = new Spot(where, Shown.text(text));
    String plain = Glyphs.plain(text.length() > LONGEST_TEXT ? "" : text);
    if (text.isBlank()) {
      return spot.refuse(
          Complaint.LENGTH_MISSING, "", "length " + LIKE + ", but there is nothing here");
    }
    boolean negative = plain.startsWith("-");
    String size = plain.replaceFirst("^[-+] ?", "");
    return grammar()
        .read(size)
        .map(reading -> judge(spot, negative ? negated(reading) : reading))
        .orElseGet(() -> unreadable(spot, plain));
  }

  private LengthText grammar() {
    return new LengthText(unit, marks.decimals());
  }

  private static Reading negated(Reading read) {
    return new Reading(read.millimetres().negate(), read.isBare(), read.inches(), read.doubt());
  }

  private Read<Length> judge(Spot spot, Reading reading) {
    Read<Length> ranged = inRange(spot, reading.millimetres());
    if (reading.doubt() != Doubt.NONE) {
      return doubtful(spot, reading);
    }
    boolean past = reading.inches().compareTo(LengthText.TWELVE) >= 0;
    return past && ranged.value().isPresent() ? pastTwelve(spot, ranged) : ranged;
  }

  private static Read<Length> pastTwelve(Spot spot, Read<Length> read) {
    Length length = read.value().orElseThrow();
    return spot.remark(
        length,
        Complaint.INCHES_PAST_TWELVE,
        show(length),
        "inches beside feet must be under 12, but the length reads " + spot.quoted() + "; taken as "
            + show(length));
  }

  private Read<Length> doubtful(Spot spot, Reading reading) {
    return switch (reading.doubt()) {
      case OTHER_MARK -> otherMark(spot, reading);
      case THOUSANDS_OR_DECIMALS ->
        spot.refuse(
            Complaint.LENGTH_AMBIGUOUS,
            "",
            "length must not set thousands apart, but reads " + spot.quoted()
                + ", whose three digits can be thousands or decimals");
      case IMPROPER_FRACTION ->
        spot.refuse(
            Complaint.LENGTH_AMBIGUOUS,
            "",
            "a fraction of an inch must be less than 1 and stand apart from whole inches by a space, as in 5 3/4\","
                + " but the length reads " + spot.quoted());
      case FEET_OR_FRACTION, NONE ->
        spot.refuse(
            Complaint.LENGTH_AMBIGUOUS,
            "",
            "length must carry its unit marks, but reads " + spot.quoted()
                + ", which can be feet with a fraction or feet and inches");
    };
  }

  private Read<Length> otherMark(Spot spot, Reading reading) {
    Decimals decimals = marks.decimals();
    String swapped = spot.found().replace(decimals.otherMark(), decimals.mark());
    String says = "length must have a decimal " + Decimals.word(decimals.mark())
        + " on this sheet, but reads " + spot.quoted() + "; with a "
        + Decimals.word(decimals.mark()) + " it is " + swapped;
    Read<Length> ranged = inRange(spot, reading.millimetres());
    return ranged.value().isPresent()
        ? spot.remark(ranged.value().get(), Complaint.DECIMAL_MARK, swapped, says)
        : ranged;
  }

  private Read<Length> inRange(Spot spot, BigDecimal millimetres) {
    if (millimetres.abs().compareTo(LONGEST) > 0) {
      return spot.refuse(
          Complaint.LENGTH_TOO_LONG,
          "",
          "length must be at most 1 km (3280 ft), but reads " + spot.quoted() + inUnit());
    }
    Length length = Length.nearestMillimetres(millimetres);
    if (!signed && !length.isPositive()) {
      return spot.refuse(
          Complaint.LENGTH_NOT_POSITIVE,
          "",
          "length must be more than 0, but reads " + spot.quoted());
    }
    return Read.of(length);
  }

  private String inUnit() {
    return ", bare numbers being " + unit.word();
  }

  /** What is left when notes such as "approx" are taken out is proposed, never taken. */
  private Read<Length> unreadable(Spot spot, String plain) {
    String bare = LengthText.withoutNotes(plain);
    Optional<Length> proposal = bare.equals(plain) || bare.isEmpty()
        ? Optional.empty()
        : grammar()
            .read(bare)
            .filter(reading -> reading.doubt() == Doubt.NONE)
            .flatMap(reading -> inRange(spot, reading.millimetres()).value());
    String tail =
        proposal.map(length -> "; without the note it is " + show(length)).orElse("");
    return spot.refuse(
        Complaint.LENGTH_UNREADABLE,
        proposal.map(length -> bare).orElse(""),
        "length " + LIKE + ", but reads " + spot.quoted() + tail);
  }

  /** In feet and inches where it falls on a 64th, else in millimetres. */
  private static String show(Length length) {
    Length marked = length.roundedTo(Graduation.SIXTY_FOURTH, Direction.NEAREST);
    return marked.equals(length) ? length.toString() : length.show(Graduation.TENTH_MILLIMETRE);
  }
}
