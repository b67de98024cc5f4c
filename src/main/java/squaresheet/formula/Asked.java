package squaresheet.formula;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Cells and the condition they are asked for.
 *
 * @param cells the cells
 * @param condition what they must fulfil
 */
record Asked(Grid cells, Condition condition) {

  /** The places, counted row by row in the shape of the first cells, where every condition is fulfilled. */
  static int[] all(List<Asked> all, Grid first) {
    List<Asked> quickest = all.stream()
        .sorted(Comparator.comparing(asked -> asked.quick().isEmpty()))
        .toList();
    int[] left = quickest.get(0).places(first);
    for (Asked asked : quickest.subList(1, quickest.size())) {
      left = IntStream.of(left).filter(i -> asked.holds(i, first)).toArray();
    }
    return left;
  }

  /** The places in the shape of other cells, in their order, where the condition is fulfilled. */
  int[] places(Grid shape) {
    Optional<BlockValues> quick = quick();
    if (quick.isEmpty()) {
      return IntStream.range(0, shape.size()).filter(i -> holds(i, shape)).toArray();
    }
    IntStream.Builder places = IntStream.builder();
    quick.get().eachLike(condition.equalTo().orElseThrow(), places::add);
    return places
        .build()
        .filter(i -> i < shape.size() && holds(i, shape))
        .sorted()
        .distinct()
        .toArray();
  }

  /** The cells, where those that fulfil the condition are found without going through all. */
  private Optional<BlockValues> quick() {
    return condition.equalTo().isEmpty()
        ? Optional.empty()
        : cells.indexed().filter(block -> !block.hasUnknown());
  }

  private boolean holds(int i, Grid shape) {
    return condition.holds(cells.at(i / shape.columns, i % shape.columns));
  }
}
