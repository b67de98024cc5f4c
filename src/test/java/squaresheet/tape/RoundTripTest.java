package squaresheet.tape;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Locale;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.units.Length;
import squaresheet.units.Pitch;

/** What is written in any notation is read back as the very same value, whatever the sheet's unit and locale. */
class RoundTripTest {

  private static final Where HERE = new Where.InLine("tape.csv", 2, "Eave");

  /** One kilometre, the longest length read: 1000 m x 1000 mm x 320. */
  private static final long LONGEST = 320_000_000L;

  @Property(tries = 2000)
  void a_length_on_a_64th_comes_back_from_every_notation(
      @ForAll("sixtyFourths") Length length,
      @ForAll LengthNotation notation,
      @ForAll TapeUnit unit,
      @ForAll("locales") Locale locale) {
    Assume.that(notation != LengthNotation.HYPHEN_ALONE || unit.isImperial());
    comesBack(length, notation, unit, locale);
  }

  @Property(tries = 2000)
  void a_length_on_a_tenth_of_a_millimetre_comes_back_from_every_metric_notation(
      @ForAll("tenths") Length length,
      @ForAll("metric") LengthNotation notation,
      @ForAll TapeUnit unit,
      @ForAll("locales") Locale locale) {
    comesBack(length, notation, unit, locale);
  }

  private static void comesBack(
      Length length, LengthNotation notation, TapeUnit unit, Locale locale) {
    String text = notation.write(length, locale);
    Read<Length> read = TapeReader.of(unit, locale).offset(text, HERE);
    assertThat(read.findings()).as(text).isEmpty();
    assertThat(read.value()).as(text).contains(length);
  }

  @Property(tries = 2000)
  void a_pitch_comes_back_from_every_notation(
      @ForAll("pitches") Pitch pitch,
      @ForAll PitchNotation notation,
      @ForAll("locales") Locale locale) {
    String text = notation.write(pitch, locale);
    Read<Pitch> read = TapeReader.of(TapeUnit.FEET, locale).pitch(text, HERE);
    assertThat(read.value()).as(text).contains(pitch);
    if (notation != PitchNotation.BARE) {
      assertThat(read.findings()).as(text).isEmpty();
    }
  }

  @Property(tries = 1000)
  void a_spreadsheet_number_comes_back_from_its_unit(
      @ForAll("sixtyFourths") Length length, @ForAll TapeUnit unit) {
    double number =
        switch (unit) {
          case FEET -> length.toFeet();
          case INCHES -> length.toInches();
          case METRES -> length.toMetres();
          case MILLIMETRES -> length.toMillimetres();
        };
    Read<Length> read = TapeReader.of(unit, Locale.US).offset(Written.of(number), HERE);
    assertThat(read.value()).contains(length);
  }

  /** Anything at all is answered with a value or a reason, never with an exception. */
  @Property(tries = 3000)
  void no_text_breaks_the_reader(
      @ForAll("scribbles") String text, @ForAll TapeUnit unit, @ForAll("locales") Locale locale) {
    TapeReader reader = TapeReader.of(unit, locale);
    Read<Length> length = reader.length(text, HERE);
    Read<Pitch> pitch = reader.pitch(text, HERE);
    assertThat(length.value().isPresent() || !length.findings().isEmpty()).isTrue();
    assertThat(pitch.value().isPresent() || !pitch.findings().isEmpty()).isTrue();
    length.value().ifPresent(value -> assertThat(value.isPositive()).isTrue());
    pitch.value().ifPresent(value -> assertThat(value.isFlat()).isFalse());
    reader.lengthColumn(java.util.List.of(Written.of(text)), HERE);
  }

  @Property(tries = 1000, shrinking = ShrinkingMode.OFF)
  void no_number_breaks_the_reader(
      @ForAll("numbers") double number, @ForAll("formats") String format, @ForAll TapeUnit unit) {
    TapeReader reader = TapeReader.of(unit, Locale.US);
    Written written = Written.of(number, format);
    assertThat(reader.length(written, HERE)).isNotNull();
    assertThat(reader.pitch(written, HERE)).isNotNull();
    assertThat(reader.lengthColumn(java.util.List.of(written), HERE)).isNotNull();
  }

  @Provide
  Arbitrary<Length> sixtyFourths() {
    return Arbitraries.longs().between(-LONGEST / 127, LONGEST / 127).map(n -> new Length(n * 127));
  }

  @Provide
  Arbitrary<Length> tenths() {
    return Arbitraries.longs().between(-LONGEST / 32, LONGEST / 32).map(n -> new Length(n * 32));
  }

  @Provide
  Arbitrary<LengthNotation> metric() {
    return Arbitraries.of(
        LengthNotation.METRES, LengthNotation.CENTIMETRES, LengthNotation.MILLIMETRES);
  }

  @Provide
  Arbitrary<Pitch> pitches() {
    return Arbitraries.bigDecimals()
        .between(new BigDecimal("0.000001"), BigDecimal.valueOf(24))
        .ofScale(12)
        .edgeCases(edges -> edges.add(
            new BigDecimal("0.000001"),
            BigDecimal.ONE,
            BigDecimal.valueOf(24),
            new BigDecimal("4.5")))
        .map(Pitch::new);
  }

  @Provide
  Arbitrary<Locale> locales() {
    return Arbitraries.of(
        Locale.US, Locale.UK, Locale.GERMANY, Locale.FRANCE, Locale.CANADA_FRENCH);
  }

  @Provide
  Arbitrary<String> scribbles() {
    Arbitrary<String> near = Arbitraries.of(
            "0",
            "1",
            "6",
            "12",
            "24",
            "1000000",
            "00",
            " ",
            "'",
            "\"",
            "-",
            "/",
            ":",
            ".",
            ",",
            "½",
            "⅟",
            "′",
            "ft",
            "in",
            "mm",
            "m",
            "°",
            "%",
            "approx",
            "~",
            "jun",
            "\u00A0",
            "+",
            "9999999999999999999999")
        .list()
        .ofMaxSize(8)
        .map(parts -> String.join("", parts));
    return Arbitraries.oneOf(near, Arbitraries.strings().ofMaxLength(80));
  }

  @Provide
  Arbitrary<Double> numbers() {
    Arbitrary<Double> any = Arbitraries.longs().map(Double::longBitsToDouble);
    Arbitrary<Double> near = Arbitraries.integers().between(-1000, 70_000_000).map(n -> n / 1000.0);
    return Arbitraries.oneOf(
        any,
        near,
        Arbitraries.of(0.0, -0.0, Double.NaN, Double.NEGATIVE_INFINITY, 46185.0, 0.258333));
  }

  @Provide
  Arbitrary<String> formats() {
    return Arbitraries.of(
        "General",
        "0.00",
        "d-mmm",
        "mmm-yy",
        "h:mm",
        "[h]:mm",
        "0%",
        "# ?/?",
        "yyyy\\-mm\\-dd",
        "[$-409]d/m/yyyy;@",
        "",
        ";;;",
        "\"",
        "[");
  }
}
