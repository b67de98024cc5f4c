package squaresheet.verify;

import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Node;
import squaresheet.sheet.Address;
import squaresheet.sheet.Ref;
import squaresheet.units.Unit;

/** Does the unit beside a quantity say something else than where the quantity comes from? */
final class UnitWordOff implements Check<FormulaCell> {

  private static final CheckInfo INFO =
      new CheckInfo("unit-word-off", Severity.WARNING, "A quantity is called by another unit");

  private static final Pattern UNIT =
      Pattern.compile("(units?|uom|u/m|unit of measure)", Pattern.CASE_INSENSITIVE);

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(FormulaCell cell) {
    Optional<Address> source = source(cell);
    Optional<Address> word = beside(cell);
    return source.isPresent() && word.isPresent()
        ? clash(cell, source.get(), word.get())
        : Stream.empty();
  }

  /** The one cell that the formula takes over, rounded or not, with nothing done to it that changes its unit. */
  private static Optional<Address> source(FormulaCell cell) {
    Node tree = cell.tree();
    Node taken = Nodes.isCall(tree, "ROUND", "ROUNDUP", "SUM") ? tree.parts().get(0) : tree;
    return cell.cells(taken).map(Cells::first).filter(at -> !at.equals(cell.at()));
  }

  /** The word in the nearest column headed unit, up to two cells beside the quantity. */
  private static Optional<Address> beside(FormulaCell cell) {
    return Stream.of(1, -1, 2, -2)
        .filter(step -> cell.at().ref().column() + step >= 0)
        .map(step -> cell.at().ref().plus(0, step))
        .filter(ref -> HeadingUnit.of(cell.tab().text(ref)).isPresent())
        .filter(ref -> UNIT.matcher(lastHeading(cell.tab(), ref)).matches())
        .map(cell.tab()::at)
        .findFirst();
  }

  /** The nearest text above that is no unit itself. */
  private static String lastHeading(Tab tab, Ref ref) {
    return Stream.iterate(ref.row() - 1, row -> row >= 0, row -> row - 1)
        .map(row -> tab.text(new Ref(row, ref.column())))
        .filter(text -> !text.isEmpty() && HeadingUnit.of(text).isEmpty())
        .findFirst()
        .orElse("");
  }

  private static Stream<Finding> clash(FormulaCell cell, Address source, Address word) {
    Book book = cell.book();
    Optional<Unit> said = HeadingUnit.of(book.tab(word.sheet()).text(word.ref()));
    Tab from = book.tab(source.sheet());
    Optional<Unit> is = HeadingUnit.in(
        from.tableAt(source.ref()).isPresent() || from.label(source.ref()).isEmpty()
            ? from.headings(source.ref())
            : from.label(source.ref()) + " / " + from.headings(source.ref()));
    boolean off = said.isPresent() && is.isPresent() && !isAlike(said.get(), is.get());
    return off ? Stream.of(says(cell, source, word, is.get())) : Stream.empty();
  }

  private static boolean isAlike(Unit one, Unit other) {
    return one.equals(other)
        || one.toString().equals(other.toString())
        || (one.isArea()
            && other.isArea()
            && one.as(Unit.Kind.AREA).equals(other.as(Unit.Kind.AREA)));
  }

  private static Finding says(FormulaCell cell, Address source, Address word, Unit is) {
    String there = cell.book().tab(word.sheet()).text(word.ref());
    String says = "says '" + there + "', but the quantity at " + cell.at() + " is that of " + source
        + ", which is in " + is + "; the unit decides what is ordered and at which price";
    return Says.about(INFO, cell.book(), word, is.toString(), says);
  }
}
