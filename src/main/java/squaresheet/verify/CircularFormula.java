package squaresheet.verify;

import java.util.Set;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.sheet.Address;

/** Does a formula depend on its own result? */
final class CircularFormula implements Check<Book> {

  private static final CheckInfo INFO =
      new CheckInfo("circular-formula", Severity.ERROR, "A formula comes to itself again");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Book book) {
    Set<Address> circle = book.links().circular();
    if (circle.isEmpty() || book.workbook().calculation().iterate()) {
      return Stream.empty();
    }
    return circle.stream().filter(cell -> isLast(book, cell)).map(cell -> says(book, cell));
  }

  /** The cell of a circle that others read, or that reads itself: the one to look at. */
  private static boolean isLast(Book book, Address cell) {
    Set<Address> circle = book.links().circular();
    boolean self = book.links().formulasRead(cell).contains(cell);
    boolean read = book.links().readers(cell).stream().anyMatch(reader -> !circle.contains(reader));
    boolean anySelf =
        circle.stream().anyMatch(it -> book.links().formulasRead(it).contains(it));
    boolean anyRead = circle.stream().anyMatch(it -> book.links().readers(it).stream()
        .anyMatch(reader -> !circle.contains(reader)));
    return anySelf ? self : anyRead ? read : cell.equals(circle.iterator().next());
  }

  private static Finding says(Book book, Address cell) {
    String says = "is =" + book.formula(cell).orElseThrow()
        + ", which reads its own result"
        + (book.links().formulasRead(cell).contains(cell) ? "" : " by way of other cells")
        + "; a spreadsheet program shows 0 or the last guess";
    return Says.about(INFO, book, cell, says);
  }
}
