package squaresheet.verify;

import java.util.stream.IntStream;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Node;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.sheet.Ref;

/** Does a formula that was filled down read an input for the first row and blanks for the others? */
final class ReferenceDrifts implements Check<Fill> {

  private static final CheckInfo INFO = new CheckInfo(
      "reference-drifts", Severity.WARNING, "A reference to one input moves from row to row");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Fill fill) {
    if (fill.form().count() < 2) {
      return Stream.empty();
    }
    return Nodes.all(fill.sample().tree(), Node.Reference.class)
        .filter(reference -> reference.isCell() && moves(fill, reference))
        .flatMap(reference -> drift(fill, reference))
        .limit(1);
  }

  /** Whether the reference goes along with the items, and not within their own rows. */
  private static boolean moves(Fill fill, Node.Reference reference) {
    boolean held = fill.table().axis() == Axis.DOWN
        ? reference.first().rowFixed()
        : reference.first().columnFixed();
    boolean elsewhere = !reference.sheet().isEmpty()
        || fill.table().axis().along(reference.block().first()) != fill.form().sample();
    return !held && elsewhere && !(fill.sample().tree() instanceof Node.Reference);
  }

  private static Stream<Finding> drift(Fill fill, Node.Reference reference) {
    int[] items = fill.table()
        .items()
        .filter(fill::hasForm)
        .filter(fill.table()::hasInputs)
        .toArray();
    int[] lost =
        IntStream.of(items).filter(along -> !isNumber(fill, reference, along)).toArray();
    boolean firstReads =
        items.length > 0 && (isNumber(fill, reference, items[0]) || readsInput(fill, reference));
    return firstReads && lost.length > 0 && !fill.isChain()
        ? Stream.of(says(fill, reference, lost))
        : Stream.empty();
  }

  /** Whether one of the first cells above what the first item reads is a labelled number. */
  private static boolean readsInput(Fill fill, Node.Reference reference) {
    Ref target = reference.block().first();
    Tab tab = fill.book().tab(sheet(fill, reference));
    return IntStream.rangeClosed(1, Math.min(5, target.row()))
        .mapToObj(up -> target.plus(-up, 0))
        .anyMatch(ref -> tab.isTypedNumber(ref) && !tab.label(ref).isEmpty());
  }

  private static String sheet(Fill fill, Node.Reference reference) {
    return fill.book().references().tab(reference.sheet(), fill.at(fill.form().sample()));
  }

  private static boolean isNumber(Fill fill, Node.Reference reference, int along) {
    return fill.book().value(target(fill, reference, along)) instanceof Value.Number;
  }

  private static Address target(Fill fill, Node.Reference reference, int along) {
    int moved = along - fill.form().sample();
    Ref at = reference.block().first();
    Ref there = fill.table().axis() == Axis.DOWN ? at.plus(moved, 0) : at.plus(0, moved);
    return new Address(sheet(fill, reference), there);
  }

  private static Finding says(Fill fill, Node.Reference reference, int[] lost) {
    Address target = target(fill, reference, lost[0]);
    String says = "reads " + target
        + ", which holds no number: filled down without a dollar sign, the reference"
        + " moves on from row to row; " + Says.count(lost.length, "formula")
        + " of this column read such cells; hold the reference with dollar signs";
    return Says.about(INFO, fill.book(), fill.at(lost[0]), says);
  }
}
