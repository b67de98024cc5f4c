package squaresheet.formula;

import java.util.Optional;

/** Finding a value in a row or column. */
final class Search {

  private Search() {}

  /** The first place of an equal value, texts by pattern where asked; negative where there is none. */
  static int exact(Grid line, Value wanted, boolean patterns) {
    boolean patterned = patterns
        && wanted instanceof Value.Text text
        && text.value().chars().anyMatch(c -> c == '*' || c == '?' || c == '~');
    Wildcards pattern = patterned ? Wildcards.of(((Value.Text) wanted).value()) : null;
    Optional<BlockValues> indexed = patterned ? Optional.empty() : line.indexed();
    if (indexed.isPresent()) {
      return indexed.get().first(wanted);
    }
    for (int i = 0; i < line.size(); i++) {
      Value value = line.at(i);
      boolean found = pattern == null
          ? isEqual(value, wanted)
          : value instanceof Value.Text text && pattern.matches(text.value());
      if (found) {
        return i;
      }
    }
    return -1;
  }

  private static boolean isEqual(Value value, Value wanted) {
    return isLike(value, wanted) && Comparison.compare(value, wanted) == 0;
  }

  private static boolean isLike(Value value, Value wanted) {
    return !(value instanceof Value.Blank)
        && !(value instanceof Value.Fault)
        && Comparison.rank(value) == Comparison.rank(wanted);
  }

  /**
   * The place of the largest value that is not over the wanted one, in a line sorted upward. Spreadsheet programs halve the
   * line and give whatever they land on where it is not sorted; here such a line is not checked, unless the wanted value is
   * over all, where halving always ends at the last.
   */
  static int lastAtMost(Grid line, Value wanted) {
    int last = -1;
    boolean overAll = true;
    for (int i = 0; i < line.size(); i++) {
      if (isLike(line.at(i), wanted)) {
        overAll &= Comparison.order(line.at(i), wanted) < 0;
        last = i;
      }
    }
    return overAll ? last : nearest(line, wanted, 1);
  }

  /** The place of the smallest value that is not under the wanted one, in a line sorted downward. */
  static int lastAtLeast(Grid line, Value wanted) {
    int found = nearest(line, wanted, -1);
    for (int i = 0; i < found; i++) {
      if (isEqual(line.at(i), wanted) && isEqual(line.at(found), wanted)) {
        throw Signal.notChecked("a lookup downward finds one value in two places");
      }
    }
    return found;
  }

  private static int nearest(Grid line, Value wanted, int direction) {
    int found = -1;
    Value before = null;
    for (int i = 0; i < line.size(); i++) {
      Value value = line.at(i);
      if (isLike(value, wanted)) {
        if (before != null && direction * Comparison.order(before, value) > 0) {
          throw Signal.notChecked(
              "a lookup of the nearest value goes through cells that are not sorted");
        }
        found = direction * Comparison.order(value, wanted) <= 0 ? i : found;
        before = value;
      }
    }
    return found;
  }

  /** The place that XLOOKUP and XMATCH find, 0 and up. */
  static int extended(Arguments arguments, int kindAt, int orderAt) {
    Value wanted = arguments.sound(0);
    Grid line = arguments.grid(1);
    line.lineLength();
    int kind = arguments.whole(kindAt, 0);
    int order = arguments.whole(orderAt, 1);
    if (Math.abs(order) == 2) {
      throw Signal.notChecked("a search by halves is not followed");
    }
    boolean plain = order >= 0 && kind != 2;
    int found = plain ? exact(line, wanted, false) : matching(line, wanted, kind, order);
    found = found < 0 && Math.abs(kind) == 1 ? closest(line, wanted, kind) : found;
    if (found < 0) {
      throw Signal.MISSING;
    }
    return found;
  }

  private static int matching(Grid line, Value wanted, int kind, int order) {
    for (int step = 0; step < line.size(); step++) {
      int i = order < 0 ? line.size() - 1 - step : step;
      if (isMatch(line.at(i), wanted, kind)) {
        return i;
      }
    }
    return -1;
  }

  private static boolean isMatch(Value value, Value wanted, int kind) {
    if (kind == 2 && wanted instanceof Value.Text text) {
      return value instanceof Value.Text other && Wildcards.of(text.value()).matches(other.value());
    }
    return isEqual(value, wanted);
  }

  /** The next smaller (kind -1) or next larger (kind 1) value, in any order. */
  private static int closest(Grid line, Value wanted, int kind) {
    int found = -1;
    for (int i = 0; i < line.size(); i++) {
      Value value = line.at(i);
      boolean onSide = isLike(value, wanted) && kind * Comparison.order(value, wanted) > 0;
      if (onSide && (found < 0 || kind * Comparison.order(value, line.at(found)) < 0)) {
        found = i;
      }
    }
    return found;
  }
}
