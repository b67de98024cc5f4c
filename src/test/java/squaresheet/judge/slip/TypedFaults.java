package squaresheet.judge.slip;

import static squaresheet.judge.made.Meaning.EAVE;
import static squaresheet.judge.made.Meaning.EDGE_KIND;
import static squaresheet.judge.made.Meaning.EDGE_LENGTH;
import static squaresheet.judge.made.Meaning.EDGE_TOTAL;
import static squaresheet.judge.made.Meaning.LENGTH_IN_PLAN;
import static squaresheet.judge.made.Meaning.LENGTH_UP_SLOPE;
import static squaresheet.judge.made.Meaning.MARKUP_RATE;
import static squaresheet.judge.made.Meaning.PITCH;
import static squaresheet.judge.made.Meaning.PRICE;
import static squaresheet.judge.made.Meaning.PRODUCT_NAME;
import static squaresheet.judge.made.Meaning.RIDGE;
import static squaresheet.judge.made.Meaning.SHARE;
import static squaresheet.judge.made.Meaning.SLOPED_AREA;
import static squaresheet.judge.made.Meaning.SQUARES;
import static squaresheet.judge.made.Meaning.TAX_RATE;
import static squaresheet.judge.made.Meaning.UNIT_WORD;
import static squaresheet.judge.made.Meaning.WASTE_RATE;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import squaresheet.judge.made.KnownCell;
import squaresheet.judge.made.Meaning;

/** Faults of typed cells: slips of the hand, units, words, dates that a program made of a pitch. */
@SuppressWarnings("UnnecessaryLambda") // each stands beside others that take parameters
final class TypedFaults {

  private static final Predicate<KnownCell> NEVER = cell -> false;
  private static final Predicate<KnownCell> ALWAYS = cell -> true;
  private static final Meaning[] LENGTHS = {
    EAVE, RIDGE, LENGTH_UP_SLOPE, LENGTH_IN_PLAN, EDGE_LENGTH
  };

  private TypedFaults() {}

  private static BiFunction<OpenBook, Double, Optional<Double>> times(double by) {
    return (book, value) ->
        value == 0 ? Optional.empty() : Optional.of(Math.round(value * by * 1e6) / 1e6);
  }

  /** A change of the digits before the point. */
  private static BiFunction<OpenBook, Double, Optional<Double>> digits(
      java.util.function.UnaryOperator<String> change) {
    return (book, value) -> {
      String whole = String.valueOf((long) Math.floor(Math.abs(value)));
      if (whole.length() < 2) {
        return Optional.empty();
      }
      String after = change.apply(whole);
      return after.equals(whole) || after.isEmpty()
          ? Optional.empty()
          : Optional.of(Double.parseDouble(after) + value - Math.floor(value));
    };
  }

  private static String swapped(String whole) {
    char[] all = whole.toCharArray();
    char last = all[all.length - 1];
    all[all.length - 1] = all[all.length - 2];
    all[all.length - 2] = last;
    return new String(all);
  }

  static List<Fault> all() {
    return List.of(
        Fault.number("MEC-08", "digits swapped", digits(TypedFaults::swapped), NEVER, LENGTHS),
        Fault.number(
            "TYP-01", "a digit dropped", digits(whole -> whole.substring(1)), NEVER, LENGTHS),
        Fault.number(
            "TYP-02",
            "a digit doubled",
            digits(whole -> whole.substring(0, 1) + whole),
            NEVER,
            LENGTHS),
        Fault.number(
            "MEC-09",
            "ten times too much",
            times(10),
            cell -> cell.meaning() == PITCH,
            EAVE,
            LENGTH_UP_SLOPE,
            PITCH),
        Fault.number("MEC-09b", "a tenth", times(0.1), NEVER, EAVE, LENGTH_UP_SLOPE),
        Fault.number("UNI-01", "degrees in an x/12 column", degrees(), NEVER, PITCH),
        Fault.number("UNI-02", "pitch as a ratio", ratio(), ALWAYS, PITCH),
        Fault.number(
            "UNI-05",
            "feet.inches",
            (book, value) ->
                value % 1 == 0.5 ? Optional.of(Math.floor(value) + 0.6) : Optional.empty(),
            NEVER,
            LENGTHS),
        Fault.number("UNI-06", "inches in a feet column", times(12), NEVER, LENGTHS),
        Fault.number("UNI-07", "metres in a feet column", times(0.3048), NEVER, LENGTHS),
        Fault.number(
            "UNI-16",
            "waste as a percent",
            (book, value) -> value < 1 ? Optional.of(value * 100) : Optional.empty(),
            ALWAYS,
            WASTE_RATE),
        Fault.number(
            "RAT-01",
            "tax as a percent",
            (book, value) -> value < 1 ? Optional.of(value * 100) : Optional.empty(),
            ALWAYS,
            TAX_RATE,
            MARKUP_RATE),
        Fault.number(
            "DAT-07", "minus sign", times(-1), ALWAYS, EAVE, LENGTH_UP_SLOPE, EDGE_LENGTH, PRICE),
        Fault.number(
            "DAT-08",
            "zero",
            (book, value) -> value == 0 ? Optional.empty() : Optional.of(0.0),
            ALWAYS,
            EAVE,
            LENGTH_UP_SLOPE),
        Fault.number("DAT-16", "price ten times", times(10), NEVER, PRICE),
        Fault.number(
            "ACC-10", "a share changed", (book, value) -> Optional.of(value - 0.1), ALWAYS, SHARE),
        Fault.number(
            "NEI-01", "the neighbour's value", neighbour(), NEVER, EAVE, LENGTH_UP_SLOPE, PITCH),
        Fault.number("TOT-01", "total of edges ten times", times(10), NEVER, EDGE_TOTAL),
        Fault.number("ARE-01", "area typed a tenth", times(0.1), NEVER, SLOPED_AREA),
        Fault.text(
            "DAT-04",
            "number stored as text",
            true,
            (book, cell) -> Optional.of(OpenBook.number(book.value(cell.at()))),
            true,
            EAVE,
            LENGTH_UP_SLOPE,
            PITCH,
            PRICE),
        Fault.text("DAT-06", "decimal comma as text", true, TypedFaults::comma, true, LENGTHS),
        Fault.text(
            "DAT-09",
            "a note in a number's cell",
            true,
            (book, cell) -> Optional.of(OpenBook.number(book.value(cell.at())) + " (check)"),
            true,
            LENGTHS),
        Fault.text(
            "DAT-13",
            "feet and inches as text",
            true,
            TypedFaults::feetAndInches,
            true,
            EAVE,
            LENGTH_UP_SLOPE),
        Fault.text(
            "DAT-03",
            "pitch as text n/12",
            true,
            (book, cell) -> Optional.of(OpenBook.number(book.value(cell.at())) + "/12"),
            true,
            PITCH),
        Fault.text(
            "DAT-15",
            "formula stored as text",
            false,
            (book, cell) -> Optional.of(book.content(cell.at())),
            true,
            SLOPED_AREA,
            SQUARES,
            Meaning.AMOUNT),
        Fault.text(
            "DAT-05",
            "a space behind a key",
            true,
            (book, cell) -> Optional.of(book.content(cell.at()) + " "),
            true,
            EDGE_KIND),
        Fault.text(
            "FRM-21",
            "a kind misspelled",
            true,
            (book, cell) -> Optional.of(book.content(cell.at()) + "s"),
            true,
            EDGE_KIND),
        Fault.text(
            "DOM-04",
            "a kind for another",
            true,
            (book, cell) -> Optional.of(book.content(cell.at()).equals("Eave") ? "Rake" : "Eave"),
            false,
            EDGE_KIND),
        Fault.text(
            "KEY-01", "a product misspelled", true, TypedFaults::misspelled, true, PRODUCT_NAME),
        Fault.text(
            "DAT-11",
            "unit word of another",
            true,
            (book, cell) ->
                Optional.of("square".equals(book.content(cell.at())) ? "sq ft" : "square"),
            true,
            UNIT_WORD),
        new Fault("DAT-01", "a pitch that became a date", TypedFaults::date),
        new Fault("FRM-22", "pitch cleared", TypedFaults::blankPitch));
  }

  private static BiFunction<OpenBook, Double, Optional<Double>> degrees() {
    return (book, value) -> value > 0 && value < 13
        ? Optional.of(Math.round(Math.toDegrees(Math.atan(value / 12)) * 10) / 10.0)
        : Optional.empty();
  }

  private static BiFunction<OpenBook, Double, Optional<Double>> ratio() {
    return (book, value) -> value > 2 && value < 13
        ? Optional.of(Math.round(value / 12 * 1000) / 1000.0)
        : Optional.empty();
  }

  private static BiFunction<OpenBook, Double, Optional<Double>> neighbour() {
    return (book, value) -> book.all(true, EAVE, LENGTH_UP_SLOPE, PITCH).stream()
        .map(cell -> book.value(cell.at()))
        .filter(other -> !other.equals(value) && Math.abs(other - value) < value)
        .findFirst();
  }

  private static Optional<String> comma(OpenBook book, KnownCell cell) {
    String text = OpenBook.number(book.value(cell.at()));
    return text.contains(".") ? Optional.of(text.replace('.', ',')) : Optional.empty();
  }

  private static Optional<String> feetAndInches(OpenBook book, KnownCell cell) {
    double value = book.value(cell.at());
    return cell.unit().equals("ft")
        ? Optional.of(
            String.format(Locale.ROOT, "%d' %d\"", (long) value, Math.round(value % 1 * 12) % 12))
        : Optional.empty();
  }

  private static Optional<String> misspelled(OpenBook book, KnownCell cell) {
    String text = book.content(cell.at());
    return book.made.all(Meaning.PRICE).anyMatch(price -> !price.typed()) && text.length() > 4
        ? Optional.of(text.substring(0, text.length() - 1))
        : Optional.empty();
  }

  private static Optional<Fault.Done> date(OpenBook book) {
    return book.any(book.all(true, PITCH)).findFirst().map(cell -> {
      double pitch = book.value(cell.at());
      book.type(cell.at(), 46000 + Math.rint(pitch) * 30);
      Cell at = book.cell(cell.at());
      CellStyle style = book.book.createCellStyle();
      style.setDataFormat(book.book.createDataFormat().getFormat("d-mmm"));
      at.setCellStyle(style);
      return Fault.Done.at(cell.at(), true);
    });
  }

  private static Optional<Fault.Done> blankPitch(OpenBook book) {
    return book.any(book.all(true, PITCH)).findFirst().map(cell -> {
      book.cell(cell.at()).setBlank();
      return Fault.Done.at(cell.at(), true);
    });
  }
}
