package squaresheet.verify;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import squaresheet.formula.Node;
import squaresheet.sheet.Block;
import squaresheet.sheet.Ref;

/**
 * The corner of a table whose rows and columns are both added up.
 *
 * @param sum the corner, which adds up the totals of the rows
 * @param columns the columns that are added up, two or more
 */
record Corner(SumCell sum, List<Integer> columns) {

  /** The corner that a sum is, where the cells left of it add up the same rows, and those above it their columns. */
  static Optional<Corner> of(SumCell sum) {
    if (!sum.isColumn() || !sum.standsBelow() || !Nodes.isCall(sum.formula().tree(), "SUM")) {
      return Optional.empty();
    }
    int right = sum.across();
    List<Integer> columns = IntStream.iterate(
            right - 1, column -> column >= 0, column -> column - 1)
        .takeWhile(column -> sum.book()
            .number(sum.tab().at(new Ref(sum.formula().at().ref().row(), column)))
            .isPresent())
        .boxed()
        .sorted()
        .toList();
    Corner corner = new Corner(sum, columns);
    return columns.size() >= 2 && corner.isCrossed() ? Optional.of(corner) : Optional.empty();
  }

  private boolean isCrossed() {
    long down = columns.stream().filter(this::isTotalOfColumn).count();
    long across = rows().filter(this::isTotalOfRow).count();
    return down >= 2
        && down * 2 > columns.size()
        && across >= 2
        && across * 2 > rows().count();
  }

  private boolean isTotalOfColumn(int column) {
    return adds(
        below(column), new Block(new Ref(sum.first(), column), new Ref(sum.last(), column)));
  }

  private boolean isTotalOfRow(int row) {
    int first = columns.get(0);
    int last = columns.get(columns.size() - 1);
    return adds(new Ref(row, sum.across()), new Block(new Ref(row, first), new Ref(row, last)));
  }

  private boolean adds(Ref at, Block block) {
    Optional<FormulaCell> cell = book()
        .formula(sum.tab().at(at))
        .map(formula -> new FormulaCell(book(), sum.tab().at(at), formula));
    return cell.filter(it -> Nodes.isCall(it.tree(), "SUM"))
        .flatMap(it -> ((Node.Call) it.tree()).arguments().size() == 1
            ? it.cells(((Node.Call) it.tree()).arguments().get(0))
            : Optional.empty())
        .filter(cells -> cells.block().equals(block))
        .isPresent();
  }

  Book book() {
    return sum.book();
  }

  private IntStream rows() {
    return IntStream.rangeClosed(sum.first(), sum.last());
  }

  private Ref below(int column) {
    return new Ref(sum.formula().at().ref().row(), column);
  }

  double number(Ref ref) {
    return book().number(sum.tab().at(ref)).orElse(0);
  }

  /** What the totals of the rows make. */
  double byRows() {
    return rows().mapToDouble(row -> number(new Ref(row, sum.across()))).sum();
  }

  /** What the totals of the columns make. */
  double byColumns() {
    return columns.stream().mapToDouble(column -> number(below(column))).sum();
  }

  private double ofRow(int row) {
    return columns.stream().mapToDouble(column -> number(new Ref(row, column))).sum();
  }

  private double ofColumn(int column) {
    return rows().mapToDouble(row -> number(new Ref(row, column))).sum();
  }

  /** The first total of a row or a column that is not what its cells make. */
  Optional<Ref> odd() {
    Optional<Ref> row = rows()
        .filter(it -> !isNear(number(new Ref(it, sum.across())), ofRow(it)))
        .mapToObj(it -> new Ref(it, sum.across()))
        .findFirst();
    return row.or(() -> columns.stream()
        .filter(it -> !isNear(number(below(it)), ofColumn(it)))
        .map(this::below)
        .findFirst());
  }

  /** What that total should be. */
  double should(Ref odd) {
    return odd.column() == sum.across() ? ofRow(odd.row()) : ofColumn(odd.column());
  }

  /** Half a cent on each number: totals of amounts that were rounded one by one. */
  boolean isNear(double one, double other) {
    return Math.abs(one - other) <= 0.005 * (columns.size() + sum.last() - sum.first() + 1);
  }
}
