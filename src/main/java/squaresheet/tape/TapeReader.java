package squaresheet.tape;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.units.Length;
import squaresheet.units.Pitch;

/**
 * Reads lengths and pitches as people write them on one sheet.
 *
 * <p>A value that comes with an error finding is the likeliest reading, put forward for the user to confirm; the
 * finding's {@code expected} says how to write it. A value without one is what was written.
 *
 * @param unit the unit that the sheet declares for bare numbers
 * @param marks the sheet's decimal mark and its order of day and month
 * @param dates how the workbook counts its dates
 */
public record TapeReader(TapeUnit unit, Marks marks, DateSystem dates) {

  /** A reader for a sheet that counts its dates since 1900. */
  public static TapeReader of(TapeUnit unit, Locale locale) {
    return new TapeReader(unit, Marks.of(locale), DateSystem.SINCE_1900);
  }

  /** The cards of everything this room can have to say. */
  public static List<CheckInfo> complaints() {
    return Arrays.stream(Complaint.values()).map(Complaint::info).toList();
  }

  /** The same reader for a workbook that counts its dates otherwise. */
  public TapeReader withDates(DateSystem other) {
    return new TapeReader(unit, marks, other);
  }

  /** Reads a length, more than 0 and at most 1 km. */
  public Read<Length> length(Written written, Where where) {
    return new LengthReader(unit, marks, dates, false).read(written, where);
  }

  /** Reads a length, more than 0 and at most 1 km, from text. */
  public Read<Length> length(String text, Where where) {
    return length(Written.of(text), where);
  }

  /** Reads a length that may be 0 or negative, such as the offset of an apex or an overhang; at most 1 km either way. */
  public Read<Length> offset(Written written, Where where) {
    return new LengthReader(unit, marks, dates, true).read(written, where);
  }

  /** Reads a length that may be 0 or negative from text. */
  public Read<Length> offset(String text, Where where) {
    return offset(Written.of(text), where);
  }

  /** Reads numbers that are no lengths, such as a count of layers. */
  public NumberReader numbers() {
    return new NumberReader(marks);
  }

  /** Reads a pitch, more than 0:12 and at most 24:12. */
  public Read<Pitch> pitch(Written written, Where where) {
    return new PitchReader(marks, dates).read(written, where);
  }

  /** Reads a pitch, more than 0:12 and at most 24:12, from text. */
  public Read<Pitch> pitch(String text, Where where) {
    return pitch(Written.of(text), where);
  }

  /**
   * What a pitch may be that is written as an angle or in percent, which is as exact as its last digit; empty where it is
   * written otherwise, or is a named pitch without any rounding.
   */
  public Optional<Pitch.Span> pitchSpan(Written written) {
    return new PitchReader(marks, dates).span(written);
  }

  /**
   * What a rise per 12 may be that was worked out from a rounded angle or percent, such as 3.9988 from 18.43°; empty where it
   * was from none, or says no named pitch.
   */
  public static Optional<Pitch.Span> spanBehind(double rise) {
    return Optional.of(rise)
        .filter(it -> it > 0 && it <= 24)
        .flatMap(it -> PitchFigure.behind(BigDecimal.valueOf(it)))
        .flatMap(PitchFigure::span)
        .filter(span -> span.named().isPresent());
  }

  /**
   * What there is to say once about a whole column of lengths: in which unit its bare numbers are taken, and whether their
   * decimals look like inches. Nothing where no number is bare.
   *
   * @param column everything written in the column, in order
   * @param heading the place of the column's heading
   */
  public List<Finding> lengthColumn(List<Written> column, Where heading) {
    return new LengthColumn(unit, marks).remarks(column, heading);
  }
}
