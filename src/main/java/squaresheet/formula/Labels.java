package squaresheet.formula;

import java.util.Optional;
import squaresheet.sheet.Address;
import squaresheet.units.Unit;

/** What is known of the numbers behind references and names: their units, and where they came from. */
public interface Labels {

  /** Nothing known. */
  Labels NONE = new Labels() {};

  /** The unit of the number in a cell, if it is known. */
  default Optional<Unit> unit(Address cell) {
    return Optional.empty();
  }

  /** The unit of the value of a name, if it is known. */
  default Optional<Unit> unit(String name) {
    return Optional.empty();
  }

  /** Where the value of a name came from, such as {@code Planes!C7}; empty where that is not known. */
  default String origin(String name) {
    return "";
  }
}
