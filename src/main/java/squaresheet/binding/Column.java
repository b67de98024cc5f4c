package squaresheet.binding;

import java.util.List;
import java.util.function.IntFunction;
import squaresheet.sheet.DraftSheet.Entry;

/**
 * A column of a table that is being drafted.
 *
 * @param name the defined name of its cells, also what {@code Table} finds it by
 * @param heading what stands over it, with the unit
 * @param width in characters
 * @param cell what stands in a row, counted from 0 among the items
 * @param choices what may be typed, or empty
 * @param summed whether the totals row sums it
 */
record Column(
    String name,
    String heading,
    double width,
    IntFunction<Entry> cell,
    List<String> choices,
    boolean summed) {

  static Column of(String name, String heading, double width, IntFunction<Entry> cell) {
    return new Column(name, heading, width, cell, List.of(), false);
  }

  Column oneOf(List<String> words) {
    return new Column(name, heading, width, cell, words, summed);
  }

  Column inTotal() {
    return new Column(name, heading, width, cell, choices, true);
  }
}
