package squaresheet.verify;

import java.util.stream.IntStream;
import java.util.stream.Stream;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Ref;

/**
 * A block of cells of one sheet.
 *
 * @param sheet the sheet's name, spelled as on its tab
 * @param block the cells
 */
record Cells(String sheet, Block block) {

  boolean contains(Address address) {
    return sheet.equals(address.sheet()) && block.contains(address.ref());
  }

  boolean isOne() {
    return block.first().equals(block.last());
  }

  Address first() {
    return new Address(sheet, block.first());
  }

  /** How many cells it has. */
  long size() {
    return (long) block.rows() * block.columns();
  }

  /** How many cells both have. */
  long sharedWith(Cells other) {
    int rows = Math.min(block.last().row(), other.block.last().row())
        - Math.max(block.first().row(), other.block.first().row());
    int columns = Math.min(block.last().column(), other.block.last().column())
        - Math.max(block.first().column(), other.block.first().column());
    return sheet.equals(other.sheet) && rows >= 0 && columns >= 0
        ? (rows + 1L) * (columns + 1L)
        : 0;
  }

  /** All cells, row by row. */
  Stream<Address> each() {
    return IntStream.rangeClosed(block.first().row(), block.last().row())
        .boxed()
        .flatMap(
            row -> IntStream.rangeClosed(block.first().column(), block.last().column())
                .mapToObj(column -> new Address(sheet, new Ref(row, column))));
  }

  @Override
  public String toString() {
    return Address.quoted(sheet) + "!" + block;
  }
}
