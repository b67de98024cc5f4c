package squaresheet.judge.made;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A workbook in order, its values stored by another engine, with what its maker knows of its cells.
 *
 * @param name layout, roof and seed, to make it again
 * @param layout which way of laying out a job it follows, such as {@code one flat sheet}
 * @param own whether it is a job workbook of the product's own layout
 * @param unseen whether it belongs to the half that is only reported on, never tuned on
 * @param file the bytes of the {@code .xlsx}
 * @param cells what is known, in the order of sheets, rows and columns
 * @param total the cell with the price of the job, where there is one
 * @param orders the cells that say how many packs are ordered
 */
@SuppressWarnings("ArrayRecordComponent") // the bytes of a file, never compared
public record MadeBook(
    String name,
    String layout,
    boolean own,
    boolean unseen,
    byte[] file,
    List<KnownCell> cells,
    Optional<String> total,
    List<String> orders) {

  public MadeBook {
    cells = List.copyOf(cells);
    orders = List.copyOf(orders);
  }

  /** The cells of one meaning. */
  public Stream<KnownCell> all(Meaning meaning) {
    return cells.stream().filter(cell -> cell.meaning() == meaning);
  }
}
