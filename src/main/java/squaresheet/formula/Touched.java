package squaresheet.formula;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import squaresheet.sheet.Block;
import squaresheet.sheet.Ref;

/** The cells of one sheet that hold something else than before. */
final class Touched {

  private final Map<Integer, BitSet> columns = new HashMap<>();
  private final List<Block> blocks = new ArrayList<>();

  void add(Ref ref) {
    columns.computeIfAbsent(ref.column(), key -> new BitSet()).set(ref.row());
  }

  void add(Block block) {
    blocks.add(block);
  }

  /** Whether one of the cells of a block is among them. */
  boolean in(Block block) {
    return blocks.stream().anyMatch(other -> meet(block, other)) || inColumns(block);
  }

  private boolean inColumns(Block block) {
    if (block.columns() > columns.size()) {
      return columns.entrySet().stream()
          .anyMatch(entry -> entry.getKey() >= block.first().column()
              && entry.getKey() <= block.last().column()
              && isIn(entry.getValue(), block));
    }
    for (int at = block.first().column(); at <= block.last().column(); at++) {
      if (columns.containsKey(at) && isIn(columns.get(at), block)) {
        return true;
      }
    }
    return false;
  }

  private static boolean isIn(BitSet rows, Block block) {
    int row = rows.nextSetBit(block.first().row());
    return row >= 0 && row <= block.last().row();
  }

  static boolean meet(Block one, Block other) {
    return one.first().row() <= other.last().row()
        && one.last().row() >= other.first().row()
        && one.first().column() <= other.last().column()
        && one.last().column() >= other.first().column();
  }
}
