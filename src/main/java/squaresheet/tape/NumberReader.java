package squaresheet.tape;

import java.math.BigDecimal;
import java.util.Optional;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.tape.NumberText.Reading;

/**
 * Reads numbers as people write them, with the decimal mark of their sheet; the other mark, or a space, may set thousands
 * apart. {@code 1,200} is 1200 where the mark is a point; {@code 7,48} is refused there.
 *
 * @param marks the sheet's decimal mark
 */
public record NumberReader(Marks marks) {

  /** Numbers as this library's own tables have them: with a decimal point. */
  public static final NumberReader POINT = new NumberReader(Marks.of(java.util.Locale.ENGLISH));

  private static final int LONGEST_TEXT = 60;
  private static final BigDecimal LIMIT = BigDecimal.valueOf(1_000_000_000);
  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

  /** The number that is all of a text in digits, without words, percent or unit; empty where the text is anything else. */
  public Optional<BigDecimal> number(String text) {
    return read(text)
        .filter(read -> !read.isWord() && !read.isOtherMark())
        .map(Reading::amount)
        .filter(amount -> !amount.isPercent() && amount.of().isEmpty())
        .map(Amount::number);
  }

  /** The same for an amount in a table: 0 or more, under a thousand million, and so many decimals at most. */
  public Optional<BigDecimal> amount(String text, int decimals) {
    return number(text)
        .filter(number -> number.signum() >= 0 && number.compareTo(LIMIT) < 0)
        .filter(number -> number.scale() <= decimals);
  }

  /** The same for a share of the whole, which may be written in percent. */
  public Optional<BigDecimal> share(String text) {
    return read(text)
        .filter(read -> !read.isWord() && !read.isOtherMark())
        .map(Reading::amount)
        .filter(amount -> amount.of().isEmpty())
        .map(Amount::value);
  }

  /**
   * Reads a number with what stands behind it: {@code 2 layers}, {@code ten percent}, {@code none}. Words go from none to
   * twelve.
   *
   * @param what it is of, for the sentence where it cannot be read
   */
  public Read<Amount> amount(Written written, Where where, String what) {
    if (written instanceof Written.Number number) {
      return cell(number, new Spot(where, Shown.number(number.value())), what);
    }
    String text = ((Written.Text) written).text();
    Spot spot = new Spot(where, Shown.text(text));
    Optional<Reading> read = read(text);
    if (read.isEmpty()) {
      return unreadable(spot, what);
    }
    return read.get().isOtherMark() ? otherMark(spot, what) : Read.of(read.get().amount());
  }

  private Optional<Reading> read(String text) {
    return text.length() > LONGEST_TEXT
        ? Optional.empty()
        : new NumberText(marks.decimals()).read(Glyphs.plain(text));
  }

  private static Read<Amount> cell(Written.Number number, Spot spot, String what) {
    if (!Double.isFinite(number.value())) {
      return unreadable(spot, what);
    }
    if (Shown.isDate(number) || Shown.isTime(number)) {
      return spot.refuse(
          Complaint.NUMBER_BECAME_DATE,
          "",
          what + " must be a number, but the cell holds a date or a time, which a spreadsheet"
              + " program makes of numbers with a slash, a dash or a colon");
    }
    BigDecimal value = BigDecimal.valueOf(number.value());
    boolean percent = Shown.isPercent(number.format());
    return Read.of(new Amount(percent ? value.multiply(HUNDRED) : value, percent, ""));
  }

  private static Read<Amount> unreadable(Spot spot, String what) {
    return spot.refuse(
        Complaint.NUMBER_UNREADABLE,
        "",
        what + " must be a number like 2, 1.5, 10% or two, but reads " + spot.quoted());
  }

  private Read<Amount> otherMark(Spot spot, String what) {
    Decimals decimals = marks.decimals();
    String swapped = spot.found().replace(decimals.otherMark(), decimals.mark());
    return spot.refuse(
        Complaint.DECIMAL_MARK,
        swapped,
        what + " must have a decimal " + marks.word() + " on this sheet, but reads " + spot.quoted()
            + "; with a " + marks.word() + " it is " + swapped);
  }
}
