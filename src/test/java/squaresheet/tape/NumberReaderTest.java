package squaresheet.tape;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.text.DecimalFormatSymbols;
import java.text.NumberFormat;
import java.util.Locale;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.BigRange;

/** Numbers that are no lengths; {@link SaysTest} has the sentences. */
class NumberReaderTest {

  @Provide
  Arbitrary<Locale> locales() {
    return Arbitraries.of(
        Locale.US, Locale.UK, Locale.GERMANY, Locale.FRANCE, Locale.ITALY, Locale.CANADA_FRENCH);
  }

  /** The other program is the Java platform's own, which writes numbers by the public locale data. */
  @Property(tries = 1000)
  void a_number_as_its_locale_writes_it_is_read_back(
      @ForAll @BigRange(min = "-999999999", max = "999999999") BigDecimal number,
      @ForAll boolean isGrouped,
      @ForAll("locales") Locale locale) {
    NumberFormat format = NumberFormat.getNumberInstance(locale);
    format.setGroupingUsed(isGrouped);
    format.setMaximumFractionDigits(9);
    String text = format.format(number);
    assertThat(new NumberReader(Marks.of(locale)).number(text))
        .as(text)
        .hasValueSatisfying(read -> assertThat(read).isEqualByComparingTo(parsed(text, locale)));
  }

  private static BigDecimal parsed(String text, Locale locale) {
    DecimalFormatSymbols symbols = DecimalFormatSymbols.getInstance(locale);
    String plain = text.replace(String.valueOf(symbols.getGroupingSeparator()), "")
        .replace(symbols.getDecimalSeparator(), '.')
        .replace('\u2212', '-');
    return new BigDecimal(plain);
  }

  /** What a programmer's reader takes for a number, a person did not write. */
  @Property(tries = 2000)
  void only_digits_marks_and_fractions_are_numbers(@ForAll("likeNumbers") String text) {
    boolean person =
        text.matches("[-+]?(\\d+(\\.\\d*)?|\\.\\d+|[1-9]\\d{0,2}(,\\d{3})+(\\.\\d*)?)");
    assertThat(NumberReader.POINT.number(text).isPresent()).as(text).isEqualTo(person);
  }

  @Provide
  Arbitrary<String> likeNumbers() {
    return Arbitraries.strings()
        .withChars("0123456789.,-+eExXpPfFdDL_")
        .ofMinLength(1)
        .ofMaxLength(7);
  }

  @Example
  void neither_words_nor_the_other_mark_nor_a_unit_are_taken_where_digits_alone_are_wanted() {
    assertThat(NumberReader.POINT.number("two")).isEmpty();
    assertThat(NumberReader.POINT.number("7,48")).isEmpty();
    assertThat(NumberReader.POINT.number("10%")).isEmpty();
    assertThat(NumberReader.POINT.number("2 layers")).isEmpty();
    assertThat(NumberReader.POINT.number("")).isEmpty();
    assertThat(NumberReader.POINT.share("10%")).contains(new BigDecimal("0.10"));
  }

  @Example
  void a_mark_is_known_by_its_word_and_by_itself() {
    assertThat(Marks.named(" Point ")).contains('.');
    assertThat(Marks.named(".")).contains('.');
    assertThat(Marks.named("COMMA")).contains(',');
    assertThat(Marks.named(",")).contains(',');
    assertThat(Marks.named("semicolon")).isEmpty();
    assertThat(Marks.of(Locale.GERMANY).withDecimal('.').days()).isEqualTo(Locale.GERMANY);
  }
}
