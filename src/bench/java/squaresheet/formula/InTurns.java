package squaresheet.formula;

import java.util.function.Supplier;

/**
 * The pairs of {@link FormulaBench}, ours and the library's in turns within one process, so that a busy machine slows both
 * alike; the least of many rounds counts.
 */
public final class InTurns {

  private static Object kept;

  private InTurns() {}

  /** Prints both times of each pair and their ratio. */
  public static void main(String[] arguments) {
    FormulaBench bench = new FormulaBench();
    bench.prepare();
    System.out.printf(
        "graph of %d formulas; left out, since POI cannot: %s%n",
        bench.job().size(), bench.job().left());
    pair("rule", 200, 20_000, bench::ruleOurs, bench::ruleRaw);
    pair("changing", 200, 20_000, bench::changingOurs, bench::changingRaw);
    pair("cells", 60, 1, bench::cellsOurs, bench::cellsTheirs);
    pair("graph", 100, 1, bench::graphOurs, bench::graphTheirs);
  }

  private static void pair(String name, int rounds, int calls, Supplier<Object> ours, Supplier<Object> theirs) {
    double one = Double.MAX_VALUE;
    double other = Double.MAX_VALUE;
    for (int round = 0; round < rounds; round++) {
      double first = micros(calls, ours);
      double second = micros(calls, theirs);
      if (round >= rounds / 4) {
        one = Math.min(one, first);
        other = Math.min(other, second);
      }
    }
    System.out.printf("%s: ours %.3f us, theirs %.3f us, ratio %.3f%n", name, one, other, one / other);
  }

  private static double micros(int calls, Supplier<Object> work) {
    long start = System.nanoTime();
    for (int i = 0; i < calls; i++) {
      kept = work.get();
    }
    return (System.nanoTime() - start) / 1000.0 / calls;
  }
}
