package squaresheet.tape;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.finding.Severity;
import squaresheet.finding.Where;
import squaresheet.reference.Reference;
import squaresheet.units.Pitch;

/** Angles and percents are as exact as their last digit: a pitch of whole or half inches that was rounded to one is taken. */
class PitchFigureTest {

  private static final Where HERE = new Where.InLine("tape.csv", 4, "Pitch");
  private static final TapeReader READER = TapeReader.of(TapeUnit.FEET, Locale.US);

  private static Optional<Pitch> taken(String written) {
    Read<Pitch> read = READER.pitch(written, HERE);
    boolean said = read.findings().stream().map(Finding::info).anyMatch(it -> it.id()
        .equals("pitch-as-named"));
    assertThat(read.findings()).allMatch(it -> it.info().severity() == Severity.NOTE);
    return said ? read.value() : Optional.empty();
  }

  /** The angle printed for a pitch, the same cut off instead of rounded, and both to one decimal (the table's own sources). */
  @TestFactory
  Stream<DynamicTest> a_published_angle_is_the_pitch_it_was_printed_for() {
    return Stream.of("pitch-factors.csv", "code-requirements.csv")
        .flatMap(table -> Reference.rows(table).stream())
        .filter(row -> row.unit().equals("degree") && row.inputs().matches("\\d+ in 12"))
        .flatMap(row -> Stream.of(
                row.published(),
                cut(row, 2, RoundingMode.DOWN),
                cut(row, 1, RoundingMode.DOWN),
                cut(row, 1, RoundingMode.HALF_UP))
            .distinct()
            .map(written -> DynamicTest.dynamicTest(
                row.id() + " " + written, () -> assertThat(taken(written + "°"))
                    .contains(Pitch.of(Long.parseLong(row.inputs().split(" ")[0]))))));
  }

  private static String cut(Reference.Row row, int decimals, RoundingMode how) {
    return new BigDecimal(row.computed()).setScale(decimals, how).toPlainString();
  }

  @Property(tries = 300)
  void a_pitch_in_half_inches_comes_back_from_every_rounding(
      @ForAll @IntRange(min = 1, max = 48) int halves,
      @ForAll @IntRange(min = 1, max = 8) int decimals,
      @ForAll boolean degrees,
      @ForAll boolean rounded) {
    Pitch pitch = new Pitch(BigDecimal.valueOf(halves).divide(BigDecimal.valueOf(2)));
    BigDecimal exact = degrees
        ? BigDecimal.valueOf(Math.toDegrees(Math.atan2(halves, 24)))
        : BigDecimal.valueOf(halves * 100L)
            .divide(BigDecimal.valueOf(24), 14, RoundingMode.HALF_UP);
    String written = exact
            .setScale(decimals, rounded ? RoundingMode.HALF_UP : RoundingMode.DOWN)
            .toPlainString()
        + (degrees ? "°" : "%");
    Read<Pitch> read = READER.pitch(written, HERE);
    assertThat(read.value()).as(written).contains(pitch);
  }

  /** Worked by hand: 4:12 is 18.43495° and 33.333 %, 6:12 is 26.56505°, 8:12 is 33.69007° and 66.667 %, 2:12 is 16.667 %. */
  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # written | taken as | why
      18.43°    | 4:12     | rounded and cut off
      18.4°     | 4:12     | both
      18.435°   | 4:12     | rounded
      18.434°   | 4:12     | cut off
      18.44°    |          | 18.435 at the least
      18.42°    |          | 18.43 at the most
      18.5°     |          | 18.45 at the least
      18.3°     |          | 18.4 at the most
      26.56°    | 6:12     | cut off
      26.57°    | 6:12     | rounded
      26.55°    |          | 26.56 at the most
      26.58°    |          | 26.575 at the least
      33.69 deg | 8:12     |
      33.7°     | 8:12     | rounded
      33.6°     | 8:12     | cut off
      33.3%     | 4:12     |
      33.33 %   | 4:12     |
      33.34%    |          | 33.335 at the least
      16.6%     | 2:12     | cut off
      16.7%     | 2:12     | rounded
      66.66%    | 8:12     | cut off
      66.67%    | 8:12     | rounded
      20.8%     | 2.5:12   | 20.8333
      333:1000  | 4:12     | parts in a thousand
      83.3:250  | 4:12     | on the metric square
      83/250    | 4:12     | 33.2 %, of which the last digit is 0.4 %
      63.43°    | 24:12    |
      63.435°   | 24:12    | a hair over 24:12 as it stands
      18°       |          | a whole degree says too little
      33%       |          | as does a whole percent
      34:100    |          |
      26 1/2°   | 6:12     | half a degree: 26.25 to 27
      1:3       |          | exact
      3.9988:12 |          | no angle
      """)
  void a_pitch_is_taken_where_it_lies_within_the_last_digit(
      String written, String pitch, String why) {
    assertThat(taken(written))
        .as("%s (%s)", written, why)
        .isEqualTo(Optional.ofNullable(pitch).map(Pitch::parse));
  }

  @ParameterizedTest
  @CsvSource({"45°,12:12", "50%,6:12", "100 %,12:12", "25%,3:12", "125:250,6:12", "200%,24:12"})
  void what_is_exact_needs_no_word(String written, String pitch) {
    Read<Pitch> read = READER.pitch(written, HERE);
    assertThat(read.findings()).isEmpty();
    assertThat(read.value()).contains(Pitch.parse(pitch));
    assertThat(READER.pitchSpan(Written.of(written))).isEmpty();
  }

  /** A cell shown as 33% holds what was typed; zeros that it shows behind a number were meant. */
  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # number | format   | taken as | may be
      0.3333   | 0%       | 4:12     | 3.999:12 to 4.0008:12
      0.333    | 0.0%     | 4:12     | 3.99:12 to 4.008:12
      0.33     | 0%       |          | 3.9:12 to 4.08:12
      0.33     | 0.00%    |          | 3.9594:12 to 3.9612:12
      0.5      | 0%       |          |
      18.43    | 0.00"°"  | 4:12     | 12 tan 18.425° to 12 tan 18.44°
      18.4     | 0.0\\°    | 4:12     | 12 tan 18.35° to 12 tan 18.5°
      18       | 0"°"     |          | 12 tan 17.5° to 12 tan 19°
      18       | 0.0"°"   |          | 12 tan 17.95° to 12 tan 18.1°
      18.43    | General  |          |
      46185    | d-mmm"°" |          |
      """)
  void a_cell_is_as_exact_as_what_it_holds_and_shows(
      double number, String format, String pitch, String span) {
    Written written = Written.of(number, format);
    Read<Pitch> read = READER.pitch(written, HERE);
    Optional<Pitch.Span> may = READER.pitchSpan(written);
    assertThat(may.flatMap(Pitch.Span::named))
        .isEqualTo(Optional.ofNullable(pitch).map(Pitch::parse));
    may.flatMap(Pitch.Span::named).ifPresent(it -> assertThat(read.value()).contains(it));
    assertThat(may.map(it -> List.of(it.least(), it.most())))
        .isEqualTo(Optional.ofNullable(span).map(PitchFigureTest::ends));
  }

  private static List<Pitch> ends(String span) {
    return Stream.of(span.split(" to "))
        .map(end -> end.startsWith("12 tan ")
            ? Pitch.nearestDegrees(Double.parseDouble(end.substring(7).replace("°", "")))
            : Pitch.parse(end))
        .toList();
  }

  /** Worked by hand: 12 tan 17.5° = 3.7836, 12 tan 19° = 4.1319; 12 × 0.325 = 3.9, 12 × 0.34 = 4.08. */
  @ParameterizedTest
  @CsvSource({"18°,3.78:12 to 4.13:12", "33%,3.9:12 to 4.08:12", "0.3°,0.05:12 to 0.08:12"})
  void a_figure_spans_half_a_digit_below_and_a_whole_one_above(String written, String span) {
    assertThat(READER.pitchSpan(Written.of(written)).map(Pitch.Span::show)).contains(span);
  }
}
