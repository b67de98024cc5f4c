package squaresheet.verify;

import java.util.stream.IntStream;

/** What hidden rows hold. */
final class HiddenRows {

  private HiddenRows() {}

  /** The sum of the hidden rows in the block of a total. */
  static double left(SumCell sum) {
    return IntStream.rangeClosed(sum.first(), sum.last())
        .filter(row -> sum.tab().sheet().isRowHidden(row))
        .mapToDouble(row -> sum.book().number(sum.tab().at(sum.ref(row))).orElse(0))
        .sum();
  }
}
