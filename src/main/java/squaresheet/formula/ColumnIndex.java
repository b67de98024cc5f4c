package squaresheet.formula;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.IntConsumer;

/** In which rows of a column each value stands, so that a lookup does not go through them all. */
final class ColumnIndex {

  /** Numbers that may be the same but for the noise of computing lie this near, relative to their size. */
  private static final double NEAR = 0x1p-47;

  private final TreeMap<Double, Rows> numbers = new TreeMap<>();
  private final Map<String, Rows> texts = new HashMap<>();
  private final Rows[] truths = {new Rows(), new Rows()};
  /** Texts that read as numbers, which some conditions count as such. */
  private final Rows numberTexts = new Rows();
  /** The rows that are not worked out or cannot be. */
  private final TreeMap<Integer, Value.NotChecked> unknown = new TreeMap<>();

  /** Row numbers, upwards. */
  private static final class Rows {
    private int[] rows = new int[2];
    private int size;

    void add(int row) {
      if (size == rows.length) {
        rows = Arrays.copyOf(rows, size * 2);
      }
      int at = from(row);
      System.arraycopy(rows, at, rows, at + 1, size - at);
      rows[at] = row;
      size++;
    }

    int from(int row) {
      if (size == 0 || rows[size - 1] < row) {
        return size;
      }
      int found = Arrays.binarySearch(rows, 0, size, row);
      return found >= 0 ? found : -found - 1;
    }
  }

  void add(int row, Value value) {
    if (value instanceof Value.Number number) {
      numbers.computeIfAbsent(number.value() + 0.0, key -> new Rows()).add(row);
    } else if (value instanceof Value.Text text) {
      texts.computeIfAbsent(Comparison.folded(text.value()), key -> new Rows()).add(row);
      if (Condition.typed(text.value()).filter(Value.Number.class::isInstance).isPresent()) {
        numberTexts.add(row);
      }
    } else if (value instanceof Value.Truth truth) {
      truths[truth.value() ? 1 : 0].add(row);
    } else if (value instanceof Value.NotChecked not) {
      unknown.put(row, not);
    }
  }

  /** Takes in what a formula has come to, of which nothing was known before. */
  void worked(int row, Value value) {
    if (unknown.remove(row) != null) {
      add(row, value);
    }
  }

  /** The first row from one to another that a value is not known of. */
  Optional<Map.Entry<Integer, Value.NotChecked>> unknown(int first, int last) {
    return Optional.ofNullable(unknown.ceilingEntry(first)).filter(it -> it.getKey() <= last);
  }

  /** The first row from one to another with an equal value; negative where there is none. What is not known comes first. */
  int first(Value wanted, int first, int last) {
    int found = -1;
    for (Rows rows : like(wanted)) {
      int at = rows.from(first);
      if (at < rows.size && rows.rows[at] <= last && (found < 0 || rows.rows[at] < found)) {
        found = rows.rows[at];
      }
    }
    unknown(first, found < 0 ? last : found).ifPresent(it -> {
      throw Signal.of(it.getValue());
    });
    return found;
  }

  /** Shows every row from one to another that may fulfil a condition of being equal. */
  void each(Value wanted, int first, int last, IntConsumer visitor) {
    for (Rows rows : like(wanted)) {
      each(rows, first, last, visitor);
    }
    if (wanted instanceof Value.Number) {
      each(numberTexts, first, last, visitor);
    }
  }

  private static void each(Rows rows, int first, int last, IntConsumer visitor) {
    for (int at = rows.from(first); at < rows.size && rows.rows[at] <= last; at++) {
      visitor.accept(rows.rows[at]);
    }
  }

  private Iterable<Rows> like(Value wanted) {
    if (wanted instanceof Value.Text text) {
      return Optional.ofNullable(texts.get(Comparison.folded(text.value()))).stream()
          .toList();
    }
    if (wanted instanceof Value.Truth truth) {
      return java.util.List.of(truths[truth.value() ? 1 : 0]);
    }
    double number = wanted instanceof Value.Number it ? it.value() : 0;
    double wide = Math.abs(number) * NEAR;
    NavigableMap<Double, Rows> near =
        numbers.subMap(number - wide + 0.0, true, number + wide + 0.0, true);
    return near.entrySet().stream()
        .filter(entry -> Arithmetic.isSame(entry.getKey(), number))
        .map(Map.Entry::getValue)
        .toList();
  }
}
