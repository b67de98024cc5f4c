package squaresheet.verify;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import squaresheet.finding.Finding;
import squaresheet.finding.Fix;
import squaresheet.formula.Formula;
import squaresheet.formula.Node;
import squaresheet.formula.Respelling;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Workbook;

/**
 * A job workbook beside the same job written anew: which formula each of its cells would have. Cells are found by their
 * defined names, wherever sheets and rows have gone; those without a name only where nothing has moved.
 */
final class Rewritten {

  private final Model model;
  private final Book book;
  private final Book written;
  private final List<Pair> pairs = new ArrayList<>();
  private final boolean isUnmoved;

  /** The cells of one name, here and in the workbook as it is written anew. */
  private record Pair(Cells here, Cells there) {}

  private Rewritten(Model model, Book written) {
    this.model = model;
    this.written = written;
    book = model.book();
    boolean unmoved = true;
    for (Workbook.Name name : written.workbook().names()) {
      Optional<Cells> here = book.named(name.name());
      Optional<Cells> there = written.named(name.name());
      unmoved &= here.equals(there);
      if (here.isPresent() && there.isPresent() && isAlike(here.get(), there.get())) {
        pairs.add(new Pair(here.get(), there.get()));
      }
    }
    isUnmoved = unmoved;
    pairs.sort(Comparator.comparingLong(pair -> pair.here().size()));
  }

  /** The workbook beside its job; none where the job cannot be written. */
  static Optional<Rewritten> of(Model model) {
    return model.written().map(written -> new Rewritten(model, written));
  }

  private static boolean isAlike(Cells one, Cells other) {
    return one.block().rows() == other.block().rows()
        && one.block().columns() == other.block().columns();
  }

  /**
   * The finding with the rule that belongs in its cell, where that makes what the model makes; of cells that the model does not
   * know, where it is what the finding wants.
   */
  Finding restoring(Finding finding) {
    return Folding.cell(finding)
        .filter(cell -> finding.fix().isKnown() || model.cells().containsKey(cell))
        .flatMap(cell -> formula(cell)
            .filter(formula -> fits(finding, cell, formula))
            .map(formula -> finding.with(Fix.rule(cell, formula.toFile()))))
        .orElse(finding);
  }

  private boolean fits(Finding finding, Address cell, Formula formula) {
    Value makes = book.reckoning().evaluate(formula, cell);
    Modelled modelled = model.cells().get(cell);
    return modelled != null
        ? modelled.fits(makes)
        : Shown.near(
            makes, book.reckoning().values(finding.fix()).getOrDefault(cell, new Value.Blank()));
  }

  /** The formula of a cell, with its references where those cells are now. */
  private Optional<Formula> formula(Address cell) {
    Optional<Address> there = there(cell);
    return there
        .flatMap(written::formula)
        .flatMap(formula -> isUnmoved ? Optional.of(formula) : moved(formula, there.get(), cell));
  }

  private Optional<Address> there(Address cell) {
    Optional<Address> named = pairs.stream()
        .filter(pair -> contains(pair.here(), cell))
        .map(pair -> beside(cell, pair.here(), pair.there()))
        .findFirst();
    boolean same = isUnmoved
        && written.workbook().sheet(cell.sheet()).isPresent()
        && label(book, cell).equals(label(written, cell));
    return named.or(() -> same ? Optional.of(cell) : Optional.empty());
  }

  private static String label(Book book, Address cell) {
    return book.tab(cell.sheet()).label(cell.ref());
  }

  /** Whether the cell is one of those, or stands right under a column of them, where their sum is. */
  private static boolean contains(Cells cells, Address cell) {
    Ref first = cells.block().first();
    Ref last = cells.block().last();
    return cells.contains(cell)
        || (!cells.isOne()
            && cells.sheet().equals(cell.sheet())
            && cell.ref().row() == last.row() + 1
            && cell.ref().column() >= first.column()
            && cell.ref().column() <= last.column());
  }

  /** The cell that lies to the one block as this cell lies to the other. */
  private static Address beside(Address cell, Cells from, Cells to) {
    Ref start = from.block().first();
    int down = cell.ref().row() - start.row();
    int right = cell.ref().column() - start.column();
    return new Address(to.sheet(), to.block().first().plus(down, right));
  }

  /** The formula as it reads in the moved cell; nothing where it reads a cell that has no name. */
  private Optional<Formula> moved(Formula formula, Address there, Address here) {
    boolean[] lost = new boolean[1];
    Formula moved = formula.respelled(new Respelling() {
      @Override
      public Node reference(Node.Reference reference, boolean many) {
        Optional<Node> found = moved(reference, there, here);
        lost[0] |= found.isEmpty();
        return found.orElse(reference);
      }
    });
    return lost[0] ? Optional.empty() : Optional.of(moved);
  }

  private Optional<Node> moved(Node.Reference reference, Address there, Address here) {
    String sheet = written.references().tab(reference.sheet(), there);
    Optional<Address> first = here(new Address(sheet, reference.block().first()));
    Optional<Address> last = here(new Address(sheet, reference.block().last()));
    boolean known = first.isPresent()
        && last.isPresent()
        && first.get().sheet().equals(last.get().sheet())
        && (reference.extent() == Node.Extent.CELL || reference.extent() == Node.Extent.BLOCK);
    return known
        ? Optional.of(new Node.Reference(
            first.get().sheet().equals(here.sheet()) ? "" : first.get().sheet(),
            corner(reference.first(), first.get()),
            corner(reference.last(), last.get()),
            reference.extent(),
            Node.Span.NONE))
        : Optional.empty();
  }

  private static Node.Corner corner(Node.Corner like, Address at) {
    return new Node.Corner(at.ref().row(), like.rowFixed(), at.ref().column(), like.columnFixed());
  }

  private Optional<Address> here(Address there) {
    return pairs.stream()
        .filter(pair -> pair.there().contains(there))
        .map(pair -> beside(there, pair.there(), pair.here()))
        .findFirst();
  }
}
