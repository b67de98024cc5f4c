package squaresheet.verify;

import java.util.List;
import java.util.stream.Stream;
import squaresheet.formula.Formula;
import squaresheet.formula.Node;

/**
 * A formula that differs from those of its run.
 *
 * @param fill the run
 * @param along the item
 * @param differences in what it differs
 */
record OddInRun(Fill fill, int along, List<Nodes.Difference> differences) {

  static Stream<OddInRun> in(Fill fill) {
    long odd = fill.exceptions().filter(along -> formula(fill, along)).count();
    boolean few = odd <= Math.max(1, fill.table().size() / 4);
    return fill.isSound() && few
        ? fill.exceptions()
            .filter(along -> formula(fill, along) && !fill.isSeed(along))
            .filter(along -> !Words.saysMeasured(fill.tab().wordsAbout(fill.ref(along))))
            .mapToObj(along -> of(fill, along))
        : Stream.empty();
  }

  private static boolean formula(Fill fill, int along) {
    return fill.book().formula(fill.at(along)).isPresent();
  }

  private static OddInRun of(Fill fill, int along) {
    return new OddInRun(
        fill,
        along,
        Nodes.differences(
            fill.wanted(along).tree(),
            fill.book().formula(fill.at(along)).orElseThrow().tree()));
  }

  Formula formula() {
    return fill.book().formula(fill.at(along)).orElseThrow();
  }

  /** Whether only one typed number differs. */
  boolean isConstant() {
    return differences.size() == 1
        && differences.get(0).wanted() instanceof Node.Number
        && differences.get(0).found() instanceof Node.Number;
  }

  /** Whether only the item of one reference differs: another row of the same column. */
  boolean isAnotherItem() {
    return differences.size() == 1
        && differences.get(0).wanted() instanceof Node.Reference wanted
        && differences.get(0).found() instanceof Node.Reference found
        && wanted.isCell()
        && found.isCell()
        && wanted.sheet().equals(found.sheet())
        && across(wanted) == across(found);
  }

  private int across(Node.Reference reference) {
    return fill.table().axis().across(reference.block().first());
  }

  /** Whether another check names the slip more exactly. */
  boolean isNamedElsewhere() {
    return isConstant()
        || isAnotherItem()
        || Nodes.any(formula().tree(), node -> node instanceof Node.Fault);
  }
}
