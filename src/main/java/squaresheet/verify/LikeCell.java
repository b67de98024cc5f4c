package squaresheet.verify;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import squaresheet.formula.Formula;
import squaresheet.formula.Node;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.sheet.Ref;

/** The formula of a cell close by in the same row or column that makes, filled in here, exactly what should be here. */
final class LikeCell {

  /** Where cells are looked at, the nearest first. */
  private static final List<int[]> STEPS = IntStream.rangeClosed(1, 4)
      .boxed()
      .flatMap(far -> Stream.of(
          new int[] {-far, 0}, new int[] {far, 0}, new int[] {0, -far}, new int[] {0, far}))
      .toList();

  private LikeCell() {}

  /** Such a formula; none for values such as 0 and 1, which many formulas make. */
  static Optional<Formula> formula(Book book, Address cell, double wanted) {
    return Math.abs(wanted) < 2 || wanted == Math.rint(wanted)
        ? Optional.empty()
        : STEPS.stream()
            .map(step -> new int[] {cell.ref().row() + step[0], cell.ref().column() + step[1]})
            .filter(at -> at[0] >= 0 && at[1] >= 0)
            .map(at -> new Ref(at[0], at[1]))
            .flatMap(ref -> book
                .formula(new Address(cell.sheet(), ref))
                .map(formula -> formula.filled(ref, cell.ref()))
                .stream())
            .filter(formula -> makes(book, cell, formula, wanted))
            .min(Comparator.comparingLong(formula -> blanks(book, formula, cell)));
  }

  private static boolean makes(Book book, Address cell, Formula formula, double wanted) {
    return book.reckoning().evaluate(formula, cell) instanceof Value.Number number
        && Math.abs(number.value() - wanted) <= Modelled.KEPT * Math.abs(wanted);
  }

  /** How many empty cells it asks for: the formula of a like item asks for none. */
  private static long blanks(Book book, Formula formula, Address cell) {
    return formula.references().stream()
        .filter(Node.Reference::isCell)
        .map(it -> new Address(
            it.sheet().isEmpty() ? cell.sheet() : it.sheet(), it.block().first()))
        .filter(at -> book.cell(at).isBlank())
        .count();
  }
}
