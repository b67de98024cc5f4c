package squaresheet.formula;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import squaresheet.sheet.Block;
import squaresheet.sheet.Ref;

/** Totals and counts of the cells that fulfil a condition. */
final class ConditionFunctions {

  private ConditionFunctions() {}

  static List<Spec> specs() {
    List<Spec> specs = new ArrayList<>(List.of(
        new Spec("SUMIF", 2, 3, "msm", ConditionFunctions::sumIf),
        new Spec("COUNTIF", 2, 2, "ms", it -> Value.of(picked(it, 0, null).length)),
        new Spec("AVERAGEIF", 2, 3, "msm", ConditionFunctions::averageIf),
        new Spec(
            "SUMIFS",
            3,
            Spec.ANY,
            "m*ms",
            it -> Value.of(TotalFunctions.sum(picked(it, 1, it.grid(0)))))));
    specs.addAll(several());
    return specs;
  }

  private static List<Spec> several() {
    return List.of(
        new Spec("COUNTIFS", 2, Spec.ANY, "*ms", it -> Value.of(picked(it, 0, null).length)),
        new Spec(
            "AVERAGEIFS",
            3,
            Spec.ANY,
            "m*ms",
            it -> Value.of(TotalFunctions.average(picked(it, 1, it.grid(0))))),
        new Spec(
            "MAXIFS",
            3,
            Spec.ANY,
            "m*ms",
            it -> Value.of(DoubleStream.of(picked(it, 1, it.grid(0))).max().orElse(0))),
        new Spec(
            "MINIFS",
            3,
            Spec.ANY,
            "m*ms",
            it -> Value.of(DoubleStream.of(picked(it, 1, it.grid(0))).min().orElse(0))));
  }

  private static Value sumIf(Arguments arguments) {
    return Value.of(TotalFunctions.sum(one(arguments)));
  }

  private static Value averageIf(Arguments arguments) {
    return Value.of(TotalFunctions.average(one(arguments)));
  }

  /** The numbers of a SUMIF, whose cells to add take the size of the cells asked. */
  private static double[] one(Arguments arguments) {
    Grid cells = arguments.grid(0);
    requireCells(cells);
    Grid added = arguments.has(2) ? sized(arguments, cells) : cells;
    Condition condition = Condition.of(arguments.value(1));
    List<Value> values = new ArrayList<>();
    for (int i : new Asked(cells, condition).places(cells)) {
      values.add(added.at(i / cells.columns, i % cells.columns));
    }
    return numbers(values);
  }

  private static Grid sized(Arguments arguments, Grid cells) {
    Grid added = arguments.grid(2);
    boolean same =
        !added.isReference() || (added.rows == cells.rows && added.columns == cells.columns);
    if (same) {
      return added;
    }
    Ref first = added.asked.first();
    Block block = new Block(first, first.plus(cells.rows - 1, cells.columns - 1));
    return arguments.evaluation().cells(added.sheet(), block);
  }

  private static void requireCells(Grid grid) {
    if (!grid.isReference() && grid.isSingle()) {
      throw Signal.VALUE;
    }
  }

  /** The numbers whose row and column fulfil every condition; with no numbers given, one 1 for each. */
  private static double[] picked(Arguments arguments, int from, Grid added) {
    if ((arguments.size() - from) % 2 != 0) {
      throw Signal.VALUE;
    }
    Grid first = arguments.grid(from);
    if (added != null) {
      requireSameShape(added, first);
    }
    List<Asked> all = new ArrayList<>();
    for (int i = from; i < arguments.size(); i += 2) {
      Asked asked = new Asked(arguments.grid(i), Condition.of(arguments.value(i + 1)));
      requireCells(asked.cells());
      requireSameShape(asked.cells(), first);
      all.add(asked);
    }
    List<Value> values = new ArrayList<>();
    for (int i : Asked.all(all, first)) {
      values.add(
          added == null ? new Value.Number(1) : added.at(i / first.columns, i % first.columns));
    }
    return numbers(values);
  }

  private static void requireSameShape(Grid a, Grid b) {
    if (a.askedRows() != b.askedRows() || a.askedColumns() != b.askedColumns()) {
      throw Signal.VALUE;
    }
  }

  private static double[] numbers(List<Value> values) {
    double[] numbers = new double[values.size()];
    int count = 0;
    for (Value value : values) {
      if (Coercion.sound(value) instanceof Value.Number number) {
        numbers[count++] = number.value();
      }
    }
    return Arrays.copyOf(numbers, count);
  }
}
