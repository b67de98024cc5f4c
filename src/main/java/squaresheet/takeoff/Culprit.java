package squaresheet.takeoff;

import java.util.List;
import java.util.Optional;
import squaresheet.formula.Value;
import squaresheet.takeoff.Rule.Kind;
import squaresheet.takeoff.Rule.Per;

/** Finds what a value that could not be worked out lacks. */
final class Culprit {

  /** Far more than any chain of rules; a circle ends here. */
  private static final int DEPTH = 100;

  private final Takeoff takeoff;

  Culprit(Takeoff takeoff) {
    this.takeoff = takeoff;
  }

  /** What is missing or wrong, in words. */
  String of(String name, int row) {
    return look(name, row, DEPTH);
  }

  private String look(String name, int row, int depth) {
    Worked worked = takeoff.worked(name, row);
    if (worked.rule().kind() == Kind.GIVEN) {
      return name + " (" + worked.rule().label() + ") is not given";
    }
    Optional<Worked.Input> bad = worked.inputs().stream()
        .filter(input -> input.values().stream().anyMatch(Culprit::isBad))
        .findFirst();
    if (bad.isEmpty() || depth == 0) {
      return name + " comes to " + Shown.plain(worked.value());
    }
    return look(bad.get().rule().name(), rowOf(worked.rule(), bad.get(), row), depth - 1);
  }

  private static int rowOf(Rule asking, Worked.Input bad, int row) {
    if (bad.rule().per() == Per.JOB) {
      return 0;
    }
    return bad.rule().per() == asking.per() ? row : firstBad(bad.values());
  }

  private static int firstBad(List<Value> values) {
    for (int row = 0; row < values.size(); row++) {
      if (isBad(values.get(row))) {
        return row;
      }
    }
    return 0;
  }

  private static boolean isBad(Value value) {
    return value instanceof Value.Fault || value instanceof Value.NotChecked;
  }
}
