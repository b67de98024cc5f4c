package squaresheet.verify;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import squaresheet.formula.Inference;
import squaresheet.formula.Labels;
import squaresheet.sheet.Address;
import squaresheet.units.Unit;

/** The units of a book's cells: as somebody wrote them, or as they follow from the formula of a cell that says nothing. */
final class KnownUnits implements Labels {

  /** Through so many cells without a unit of their own a unit is followed. */
  private static final int DEEPEST = 12;

  private final Book book;
  private final Labels written;
  private final Map<Address, Optional<Unit>> known = new HashMap<>();
  private int depth;

  KnownUnits(Book book, Labels written) {
    this.book = book;
    this.written = written;
  }

  /** The unit that somebody wrote. */
  Optional<Unit> written(Address cell) {
    return written.unit(cell);
  }

  @Override
  public Optional<Unit> unit(Address cell) {
    Optional<Unit> before = known.get(cell);
    if (before != null) {
      return before;
    }
    known.put(cell, Optional.empty());
    Optional<Unit> unit = written.unit(cell).or(() -> followed(cell));
    known.put(cell, unit);
    return unit;
  }

  private Optional<Unit> followed(Address cell) {
    if (depth >= DEEPEST) {
      return Optional.empty();
    }
    depth++;
    try {
      return book.formula(cell)
          .flatMap(formula -> Inference.exact(formula, book.reckoning().scope(cell), this));
    } finally {
      depth--;
    }
  }

  @Override
  public Optional<Unit> unit(String name) {
    return written.unit(name);
  }

  @Override
  public String origin(String name) {
    return written.origin(name);
  }
}
