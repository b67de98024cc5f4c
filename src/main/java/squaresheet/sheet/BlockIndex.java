package squaresheet.sheet;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Blocks in the order of their first rows, so that the one that covers a cell is found without asking them all. */
final class BlockIndex {

  private final Block[] blocks;
  /** The lowest row that any block up to here reaches. */
  private final int[] deepest;

  BlockIndex(List<Block> all) {
    blocks = all.stream().sorted(Comparator.comparing(Block::first)).toArray(Block[]::new);
    deepest = new int[blocks.length];
    int down = -1;
    for (int i = 0; i < blocks.length; i++) {
      down = Math.max(down, blocks[i].last().row());
      deepest[i] = down;
    }
  }

  /** The block that covers the cell; of blocks that overlap, which no program writes, the one that begins last. */
  Optional<Block> at(Ref ref) {
    for (int i = after(ref) - 1; i >= 0 && deepest[i] >= ref.row(); i--) {
      if (blocks[i].contains(ref)) {
        return Optional.of(blocks[i]);
      }
    }
    return Optional.empty();
  }

  /** The first block that begins after the cell. */
  private int after(Ref ref) {
    int low = 0;
    int high = blocks.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (blocks[middle].first().compareTo(ref) <= 0) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
