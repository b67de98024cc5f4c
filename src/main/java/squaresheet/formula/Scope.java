package squaresheet.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Ref;

/** What stands behind the references and names of a formula: answered by whoever has it evaluated. */
public interface Scope {

  /** The value of a cell; blank where there is none. */
  Value cell(Address cell);

  /** The values of a block of cells. */
  default Value.Matrix block(String sheet, Block block) {
    List<Value> values = new ArrayList<>(block.rows() * block.columns());
    for (int row = block.first().row(); row <= block.last().row(); row++) {
      for (int column = block.first().column(); column <= block.last().column(); column++) {
        values.add(cell(new Address(sheet, new Ref(row, column))));
      }
    }
    return new Value.Matrix(block.rows(), block.columns(), values);
  }

  /** The block outside which every cell of the sheet is blank; {@code A:A} is read no further. Empty for a blank sheet. */
  default Optional<Block> used(String sheet) {
    return Optional.of(Block.parse("A1:ZZ10000"));
  }

  /** What a defined name stands for, if that is a reference or a formula. */
  default Optional<Node> defined(Node.Name name) {
    return Optional.empty();
  }

  /** The value of a name that is not {@link #defined}; {@code #NAME?} where there is no such name. */
  default Value name(String name) {
    return new Value.Fault("#NAME?");
  }

  /** All values of a name, asked for where a function takes many, as {@code SUM} and {@code SUMPRODUCT} do. */
  default Value names(String name) {
    return name(name);
  }

  /** The cells a structured reference stands for. */
  default Optional<Node.Reference> table(Node.Table table) {
    return Optional.empty();
  }

  /** Whether a cell holds a formula with a SUBTOTAL, which other subtotals pass over. */
  default boolean isSubtotal(Address cell) {
    return false;
  }

  /** Whether a filter hides a cell's row, which subtotals then leave out. */
  default boolean isFilteredOut(Address cell) {
    return false;
  }

  /** The cell the formula stands in, if it stands in one. */
  default Optional<Address> here() {
    return Optional.empty();
  }

  /** How the workbook counts days. */
  default DateSystem dates() {
    return DateSystem.FROM_1900;
  }
}
