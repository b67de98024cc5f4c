package squaresheet.binding;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import squaresheet.finding.Where;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Content;
import squaresheet.tape.DateSystem;
import squaresheet.tape.Marks;
import squaresheet.tape.TapeReader;
import squaresheet.tape.TapeUnit;
import squaresheet.units.Length;
import squaresheet.units.Pitch;

/**
 * How the cells of a column are written: in which unit, as numbers or as texts, and in whose words.
 *
 * @param unit the unit of its numbers; empty where none is known
 * @param holds what the cells hold
 * @param typed what is typed in it already
 * @param words the words to choose from, where there is a list of them
 */
record Spelt(String unit, Holds holds, List<Cell> typed, List<String> words) {

  private static final double INCH_MM = 25.4;
  private static final double CLOSE = 1e-9;
  private static final Pattern METRIC = Pattern.compile("[-\\d.,]+(\\s*)(mm|cm|m)");
  private static final Pattern RISE = Pattern.compile("[\\d./ ]+?(\\s*(?:/|:| in | on |-)\\s*)12");
  private static final LocalDate DAY_0 = LocalDate.of(1899, 12, 30);

  Spelt {
    typed = List.copyOf(typed);
    words = List.copyOf(words);
  }

  static Spelt of(FoundColumn column, List<Cell> typed, List<String> words) {
    boolean squares = column.property().endsWith("squares") && column.unit().isEmpty();
    String unit = squares ? "squares" : column.unit().map(UnitWord::toString).orElse("");
    return new Spelt(unit, column.meaning().holds(), typed, words);
  }

  /** What to put into a cell. */
  Content content(Known known, Cell cell) {
    if (known instanceof Known.Size it) {
      return length(it.length(), cell);
    }
    if (known instanceof Known.Steep it) {
      return pitch(it.pitch(), cell);
    }
    if (known instanceof Known.Amount it) {
      return new Content.Numeric(tidy(inItsUnit(it.plain(), cell)));
    }
    if (!(known instanceof Known.Word word)) {
      return new Content.Blank();
    }
    return holds == Holds.DATE && (cell.isDate() || typed.stream().anyMatch(Cell::isDate))
        ? day(word.text())
        : new Content.Text(word(word));
  }

  /** Whether a number that a formula makes is what the model has, to a part in so many. */
  boolean isSame(Known known, Cell cell, double number, double tolerance) {
    OptionalDouble plain = new ItemUnit(unit, cell).plain(number);
    return plain.isPresent()
        && numbers(known).stream()
            .anyMatch(it -> Math.abs(it - plain.getAsDouble())
                <= tolerance * Math.max(Math.abs(it), tolerance));
  }

  /** Whether the cell says that already. */
  boolean says(Known known, Cell cell) {
    if (known instanceof Known.Word it) {
      return it.same().test(Cells.text(cell)) || cell.stored().equals(content(known, cell));
    }
    if (cell.stored() instanceof Content.Text text) {
      return reads(known, text.value());
    }
    if (known instanceof Known.Steep steep && reads(steep, cell)) {
      return true;
    }
    Content wanted = content(known, cell);
    return wanted.equals(cell.stored())
        || (wanted instanceof Content.Numeric one
            && cell.stored() instanceof Content.Numeric other
            && Math.abs(one.value() - other.value()) <= CLOSE * Math.max(1, Math.abs(one.value())));
  }

  /** Whether a number in the column reads as that pitch, an angle as the pitch that was rounded to it. */
  private boolean reads(Known.Steep steep, Cell cell) {
    Tape tape = new Tape(TapeUnit.FEET, Marks.of(Locale.ENGLISH), DateSystem.SINCE_1900, false);
    return tape.pitch(cell, unit, new Where.OfItem("cell", "pitch"))
        .value()
        .filter(steep.pitch()::equals)
        .isPresent();
  }

  /** Whether a text reads as that length or pitch, however it is written. */
  private boolean reads(Known known, String text) {
    TapeUnit tape = UnitWords.ofSymbol(unit).flatMap(Tape::unit).orElse(TapeUnit.FEET);
    TapeReader reader = TapeReader.of(tape, Locale.ENGLISH);
    Where nowhere = new Where.OfItem("cell", "text");
    return known instanceof Known.Size size
        ? reader.offset(text, nowhere).value().filter(size.length()::equals).isPresent()
        : known instanceof Known.Steep steep
            && reader.pitch(text, nowhere).value().filter(steep.pitch()::equals).isPresent();
  }

  /** For people: the model's value as this column would show it. */
  String show(Known known, Cell cell) {
    return numbers(known).isEmpty()
        ? ((Known.Word) known).text()
        : rounded(inItsUnit(numbers(known).get(0), cell)) + (unit.isEmpty() ? "" : " " + unit);
  }

  static String rounded(double number) {
    return Cells.plain(
        new BigDecimal(number).setScale(4, java.math.RoundingMode.HALF_UP).doubleValue());
  }

  private static List<Double> numbers(Known known) {
    if (known instanceof Known.Size it) {
      return List.of(it.length().toFeet());
    }
    if (known instanceof Known.Steep it) {
      return List.of(it.pitch().rise().doubleValue());
    }
    if (known instanceof Known.Amount it) {
      List<Double> all = new java.util.ArrayList<>(List.of(it.plain()));
      all.addAll(it.or());
      return all;
    }
    return List.of();
  }

  private double inItsUnit(double plain, Cell cell) {
    return new ItemUnit(unit, cell).of(plain);
  }

  /** Without the noise of binary fractions behind the twelfth digit. */
  private static double tidy(double value) {
    return new BigDecimal(value).round(new java.math.MathContext(14)).doubleValue();
  }

  private Content length(Length length, Cell cell) {
    Optional<String> sample = sample();
    Matcher metric = METRIC.matcher(sample.orElse(""));
    if (metric.matches()) {
      return new Content.Text(metric(length, metric.group(2)) + metric.group(1) + metric.group(2));
    }
    if (sample.isPresent() || unit.isEmpty()) {
      return new Content.Text(tape(length));
    }
    return new Content.Numeric(tidy(inItsUnit(length.toFeet(), cell)));
  }

  private static String metric(Length length, String unit) {
    BigDecimal millimetres =
        BigDecimal.valueOf(length.units()).divide(BigDecimal.valueOf(MILLIMETRE_UNITS));
    int shift = unit.equals("mm") ? 0 : unit.equals("cm") ? 1 : 3;
    BigDecimal moved = millimetres.movePointLeft(shift).stripTrailingZeros();
    return (moved.scale() < 0 ? moved.setScale(0) : moved).toPlainString();
  }

  /** So many units of a length make a millimetre. */
  private static final long MILLIMETRE_UNITS = Math.round(Length.ofInches(1).units() / INCH_MM);

  /** On an inch tape where it stands on a 64th, else in millimetres, which are exact. */
  private static String tape(Length length) {
    return length.toString();
  }

  private Content pitch(Pitch pitch, Cell cell) {
    String rise = pitch.rise().toPlainString();
    Optional<String> sample = sample();
    if (sample.isPresent()) {
      Matcher over = RISE.matcher(sample.get());
      return new Content.Text(
          sample.get().contains("°")
              ? Cells.plain(tidy(pitch.toDegrees())) + "°"
              : sample.get().contains("%")
                  ? Cells.plain(tidy(pitch.toPercent())) + "%"
                  : rise + (over.matches() ? over.group(1) : ":") + "12");
    }
    if (cell.format().equals("@")) {
      return new Content.Text(rise + ":12");
    }
    boolean percent = cell.isPercent() || typed.stream().anyMatch(Cell::isPercent);
    return new Content.Numeric(
        percent ? tidy(pitch.slope()) : tidy(inItsUnit(pitch.rise().doubleValue(), cell)));
  }

  /** A text that is typed in the column, where texts are what is typed there. */
  private Optional<String> sample() {
    List<String> texts =
        typed.stream().flatMap(cell -> Cells.words(cell).stream()).toList();
    return texts.size() * 2 > typed.size() ? Optional.of(texts.get(0)) : Optional.empty();
  }

  private Content day(String text) {
    return text.matches("\\d{4}-\\d\\d-\\d\\d")
        ? new Content.Numeric(ChronoUnit.DAYS.between(DAY_0, LocalDate.parse(text)))
        : new Content.Text(text);
  }

  /** In the words of the list, else as the column says it already, else our own. */
  private String word(Known.Word word) {
    return words.stream()
        .filter(word.same())
        .findFirst()
        .or(() -> typed.stream().map(Cells::text).filter(word.same()).findFirst())
        .orElse(word.text());
  }
}
