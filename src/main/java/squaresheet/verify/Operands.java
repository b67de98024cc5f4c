package squaresheet.verify;

import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import squaresheet.sheet.Address;

/** What a formula of a foreign workbook reads. */
final class Operands {

  /** Ranges wider than this are not gone through cell by cell. */
  private static final long MOST = 20_000;

  private Operands() {}

  /** Whether a formula reads only such cells, blank ones aside; a typed number reads nothing else. */
  static boolean areAll(Book book, Address formula, Collection<Address> parts) {
    List<Cells> read = book.links().reads(formula);
    boolean small = read.stream()
        .allMatch(cells -> (long) cells.block().rows() * cells.block().columns() <= MOST);
    return small
        && read.stream()
            .flatMap(cells -> cells.each().filter(cell -> counts(book, cell, cells.isOne())))
            .allMatch(parts::contains);
  }

  /** A text counts where it is read by itself, as {@code 5%} may be; in a range it is passed over. */
  private static boolean counts(Book book, Address cell, boolean alone) {
    return alone ? !book.cell(cell).isBlank() : book.number(cell).isPresent();
  }

  /** Whether the formula of one cell comes, over whatever steps, from another. */
  static boolean isBehind(Book book, Address cell, Address before) {
    return Stream.of(before).anyMatch(it -> book.links().dependents(List.of(it)).contains(cell));
  }
}
