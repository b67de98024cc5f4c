package squaresheet.verify;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import squaresheet.formula.Node;
import squaresheet.sheet.Address;
import squaresheet.sheet.Ref;

/**
 * A formula called a total that adds up cells above it in its own column.
 *
 * @param cell the formula
 * @param read what it adds up
 */
record Addition(FormulaCell cell, List<Cells> read) {

  /** What stands in a column of amounts and is no part of what the customer pays. */
  private static final Pattern NO_PART = Pattern.compile(
      "(?<!\\p{L})(rate|ratio|percent|factor|per|each|squares?|sq|sf|hours?|hrs|days?|count|qty|quantity|number|no|"
          + "deposit|paid|payments?|balance|due|received|info|memo|margin|cost to us|budget|target|limit|minimum|"
          + "maximum|range|low|high|year|zip|phone|date|code|job)(?!\\p{L})|%|#",
      Pattern.CASE_INSENSITIVE);

  static Optional<Addition> of(FormulaCell cell) {
    List<Cells> read = cell.reads();
    boolean adds = Words.isTotal(cell.label())
        && isSum(cell.tree())
        && read.stream().mapToInt(cells -> cells.block().rows()).sum() >= 2
        && read.stream().allMatch(cells -> isAbove(cell.at(), cells));
    return adds ? Optional.of(new Addition(cell, read)) : Optional.empty();
  }

  private static boolean isSum(Node tree) {
    return Nodes.terms(tree).stream()
        .allMatch(term -> term instanceof Node.Reference
            || (Nodes.isCall(term, "SUM")
                && term.parts().stream().allMatch(part -> part instanceof Node.Reference)));
  }

  private static boolean isAbove(Address total, Cells cells) {
    return cells.sheet().equals(total.sheet())
        && cells.block().columns() == 1
        && cells.block().first().column() == total.ref().column()
        && cells.block().last().row() < total.ref().row();
  }

  /** Whether the label says that the number beside it is no amount that is added. */
  static boolean isNoPart(String label) {
    return NO_PART.matcher(label).find();
  }

  Book book() {
    return cell.book();
  }

  /** The amounts between what is added and the total that nobody reads: left out. */
  Stream<Address> leftOut() {
    int first =
        read.stream().mapToInt(cells -> cells.block().first().row()).min().orElse(0);
    int end = cell.at().ref().row();
    return IntStream.range(first, end)
        .mapToObj(row -> new Ref(row, cell.at().ref().column()))
        .filter(ref -> read.stream().noneMatch(cells -> cells.block().contains(ref)))
        .filter(this::isBesideAdded)
        .map(ref -> cell.tab().at(ref))
        .filter(this::isPart);
  }

  /** Whether no empty cell parts it from what is added. */
  private boolean isBesideAdded(Ref ref) {
    return Stream.iterate(ref.row(), row -> row >= 0, row -> row - 1)
        .map(row -> new Ref(row, ref.column()))
        .takeWhile(above -> !cell.tab().cell(above).isBlank())
        .anyMatch(above -> read.stream().anyMatch(cells -> cells.block().contains(above)));
  }

  private boolean isPart(Address at) {
    String label = cell.tab().label(at.ref());
    String words = cell.tab().wordsAbout(at.ref());
    return Math.abs(book().number(at).orElse(0)) >= 1
        && !label.isEmpty()
        && !book().cell(at).isPercent()
        && !book().cell(at).isDate()
        && !Words.isTotal(label)
        && !Words.saysOutside(words)
        && !isNoPart(label)
        && !book().links().isRead(at)
        && !leansOnParts(at);
  }

  /** Whether it is worked out from the same amounts, and so already in them or said beside them. */
  private boolean leansOnParts(Address at) {
    return book().links().reads(at).stream()
        .flatMap(Cells::each)
        .anyMatch(each ->
            each.equals(cell.at()) || read.stream().anyMatch(cells -> cells.contains(each)));
  }
}
