package squaresheet.verify;

import java.util.List;

/**
 * A bound column most of whose cells are not what the model makes.
 *
 * @param model the model
 * @param table the table it belongs to
 * @param property what it is bound to
 * @param fit how many of its cells fit
 * @param cells its cells
 */
record DoubtedColumn(
    BookModel model, String table, String property, int fit, List<BoundValue> cells) {

  DoubtedColumn {
    cells = List.copyOf(cells);
  }

  boolean contains(BoundValue value) {
    return cells.stream().anyMatch(it -> it.at().equals(value.at()));
  }
}
