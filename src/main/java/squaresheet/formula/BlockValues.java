package squaresheet.formula;

import java.util.AbstractList;
import java.util.OptionalDouble;
import java.util.RandomAccess;
import java.util.function.Consumer;
import squaresheet.sheet.Block;
import squaresheet.sheet.Ref;

/** The values of a block of cells, row by row, each read when it is asked for; nothing is copied. */
final class BlockValues extends AbstractList<Value> implements RandomAccess {

  /** Fewer cells than this are gone through sooner than they are found by their values. */
  private static final int WORTH_AN_INDEX = 24;

  private final Tabs.Tab tab;
  private final Block block;
  private final int columns;

  BlockValues(Tabs.Tab tab, Block block) {
    this.tab = tab;
    this.block = block;
    this.columns = block.columns();
  }

  @Override
  public Value get(int index) {
    int down = columns == 1 ? index : index / columns;
    return tab.look(block.first().row() + down, block.first().column() + index - down * columns);
  }

  @Override
  public int size() {
    return block.rows() * columns;
  }

  /** The same values of one column, 0 and up, or of one row. */
  BlockValues line(int at, boolean column) {
    int row = block.first().row() + (column ? 0 : at);
    int across = block.first().column() + (column ? at : 0);
    Ref last =
        column ? new Ref(block.last().row(), across) : new Ref(row, block.last().column());
    return new BlockValues(tab, new Block(new Ref(row, across), last));
  }

  /** Shows the values of one column that are not blank, from the top; false where this cannot skip blank ones. */
  boolean eachFilled(Consumer<Value> visitor) {
    return columns == 1 && tab.eachFilled(block, visitor);
  }

  /** The sum of the numbers, where this is one column as its sheet has it. */
  OptionalDouble columnSum() {
    return columns == 1 ? tab.sum(block) : OptionalDouble.empty();
  }

  /** Where each value stands, if this is one long column as its sheet has it. */
  boolean isIndexed() {
    return columns == 1 && block.rows() >= WORTH_AN_INDEX && tab.isIndexed(block);
  }

  /** The first place of an equal value, 0 and up; negative where there is none. */
  int first(Value wanted) {
    int found = index().first(wanted, block.first().row(), block.last().row());
    return found < 0 ? -1 : found - block.first().row();
  }

  /** Whether some value is not known. */
  boolean hasUnknown() {
    return index().unknown(block.first().row(), block.last().row()).isPresent();
  }

  /** Shows every place that may fulfil a condition of being equal, 0 and up, in no order. */
  void eachLike(Value wanted, java.util.function.IntConsumer visitor) {
    index().each(wanted, block.first().row(), block.last().row(), row -> {
      tab.spend();
      visitor.accept(row - block.first().row());
    });
  }

  private ColumnIndex index() {
    return tab.index(block.first().column());
  }
}
