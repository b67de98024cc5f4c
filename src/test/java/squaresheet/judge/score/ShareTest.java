package squaresheet.judge.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShareTest {

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # hits | of  | low    | high   | source
        81   | 263 | 0.2553 | 0.3662 | Newcombe, Statistics in Medicine 17, 1998, table I, method 3 (from memory)
        15   | 148 | 0.0624 | 0.1605 | the same
        1    | 29  | 0.0061 | 0.1718 | the same
        0    | 30  | 0      | 0.1    | rule of three: 3/n
      """)
  void bounds_are_wilsons_and_three_over_n_where_there_is_none(
      long hits, long of, double low, double high, String source) {
    Share share = new Share(hits, of);
    assertThat(share.low()).as(source).isCloseTo(low, within(1e-4));
    assertThat(share.high()).as(source).isCloseTo(high, within(1e-4));
  }
}
