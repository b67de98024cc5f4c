package squaresheet.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a value writes it reads back as itself, and nothing else is read. */
class TextFormsTest {

  @Property(tries = 1000)
  void a_length_reads_back_what_it_writes(@ForAll long units) {
    Length length = new Length(units);
    assertThat(Length.parse(length.toString())).isEqualTo(length);
  }

  @Property(tries = 1000)
  void a_length_on_a_64th_reads_back_what_it_writes(@ForAll int marks) {
    Length length = new Length(marks * 127L);
    assertThat(length.toString()).matches("-?(\\d+')?( ?\\d*( ?\\d+/\\d+)?\")?");
    assertThat(Length.parse(length.toString())).isEqualTo(length);
  }

  @Property(tries = 1000)
  void a_pitch_reads_back_what_it_writes(@ForAll("rises") BigDecimal rise) {
    Pitch pitch = new Pitch(rise);
    assertThat(Pitch.parse(pitch.toString())).isEqualTo(pitch);
  }

  @Property(tries = 1000)
  void a_ratio_reads_back_what_it_writes(@ForAll BigDecimal value) {
    Ratio ratio = new Ratio(value);
    assertThat(Ratio.parse(ratio.toString())).isEqualTo(ratio);
  }

  @Property(tries = 1000)
  void money_reads_back_what_it_writes(@ForAll BigDecimal amount, @ForAll("codes") String code) {
    Money money = Money.of(code, amount);
    assertThat(Money.parse(money.toString())).isEqualTo(money);
  }

  @Property(tries = 300)
  void a_count_reads_back_what_it_writes(@ForAll("counts") Count count) {
    assertThat(Count.parse(count.toString())).isEqualTo(count);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '\0', textBlock = """
      ''      | length must read like 24' 6 1/2" or 7480.3 mm, but reads ''''
      "       | length must read like 24' 6 1/2" or 7480.3 mm, but reads '"'
      5'"     | length must read like 24' 6 1/2" or 7480.3 mm, but reads '5'"'
      11/2"   | length must read like 24' 6 1/2" or 7480.3 mm, but reads '11/2"'
      5/0"    | length must read like 24' 6 1/2" or 7480.3 mm, but reads '5/0"'
      1/3"    | length must read like 24' 6 1/2" or 7480.3 mm, but reads '1/3"'
      24      | length must read like 24' 6 1/2" or 7480.3 mm, but reads '24'
      24ft    | length must read like 24' 6 1/2" or 7480.3 mm, but reads '24ft'
      0.0001 mm | length must read like 24' 6 1/2" or 7480.3 mm, but reads '0.0001 mm'
      99999999999999999999' | length must read like 24' 6 1/2" or 7480.3 mm, but reads '99999999999999999999''
      999999999999999999'   | length must read like 24' 6 1/2" or 7480.3 mm, but reads '999999999999999999''
      """)
  void a_length_refuses_all_other_texts(String text, String message) {
    assertThatThrownBy(() -> Length.parse(text))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(message);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      six:12  | pitch must read like 6:12 or 4.5:12, but reads 'six:12'
      6/12    | pitch must read like 6:12 or 4.5:12, but reads '6/12'
      -1:12   | pitch must read like 6:12 or 4.5:12, but reads '-1:12'
      24.5:12 | pitch must rise 0 to 24 inches per 12, but rises 24.5
      """)
  void a_pitch_refuses_all_other_texts(String text, String message) {
    assertThatThrownBy(() -> Pitch.parse(text))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(message);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      0.1  | ratio must read like 10% or 8.25%, but reads '0.1'
      ten% | ratio must read like 10% or 8.25%, but reads 'ten%'
      """)
  void a_ratio_refuses_all_other_texts(String text, String message) {
    assertThatThrownBy(() -> Ratio.parse(text))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(message);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      $5      | money must read like USD 1234.56, but reads '$5'
      USD five | money must read like USD 1234.56, but reads 'USD five'
      """)
  void money_refuses_all_other_texts(String text, String message) {
    assertThatThrownBy(() -> Money.parse(text))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(message);
  }

  @Provide
  Arbitrary<BigDecimal> rises() {
    return Arbitraries.bigDecimals()
        .between(BigDecimal.ZERO, BigDecimal.valueOf(24))
        .ofScale(12);
  }

  @Provide
  Arbitrary<String> codes() {
    return Arbitraries.of("USD", "EUR", "CAD", "GBP", "JPY");
  }

  @Provide
  Arbitrary<Count> counts() {
    Arbitrary<String> packs =
        Arbitraries.of("bundle", "roll", "box", "piece", "pound of nails", "batch");
    return net.jqwik.api.Combinators.combine(
            Arbitraries.longs().between(0, 999_999_999_999_999_999L), packs)
        .as(Count::of);
  }
}
