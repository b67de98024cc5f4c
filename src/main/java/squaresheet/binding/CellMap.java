package squaresheet.binding;

import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import squaresheet.finding.Where;
import squaresheet.sheet.Address;

/**
 * Which cell is which value. An item is a subject with a property: {@code plane A: net_sloped_area}, {@code job:
 * shingle_bundles}, {@code edge A top: edge_length}. Rules and settings go by their names.
 */
public final class CellMap {

  private final Map<Where.OfItem, Address> cells;
  private final Map<Address, Where.OfItem> items = new HashMap<>();

  /** The map of these items and their cells. */
  public CellMap(Map<Where.OfItem, Address> cells) {
    this.cells = Collections.unmodifiableMap(new LinkedHashMap<>(cells));
    cells.forEach((item, cell) -> items.putIfAbsent(cell, item));
  }

  /** The cell of a property, if it is bound. */
  public Optional<Address> cell(String subject, String property) {
    return cell(new Where.OfItem(subject, property));
  }

  /** The cell of an item, if it is bound. */
  public Optional<Address> cell(Where.OfItem item) {
    return Optional.ofNullable(cells.get(item));
  }

  /** The item that stands in a cell, if one is bound to it; of several the first. */
  public Optional<Where.OfItem> item(Address cell) {
    return Optional.ofNullable(items.get(cell));
  }

  /** All items that are bound, with their cells, in the order of the sheets. */
  public Map<Where.OfItem, Address> items() {
    return cells;
  }

  /** A finding's place as a cell of the file, where it speaks of an item that is bound; otherwise the place itself. */
  public Where place(Where where, String file) {
    if (!(where instanceof Where.OfItem item)) {
      return where;
    }
    Optional<Address> cell = cell(item);
    return cell.<Where>map(at -> new Where.InCell(file, at)).orElse(where);
  }

  @Override
  public String toString() {
    return cells.toString();
  }
}
