package squaresheet.verify;

import java.util.List;
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
    Set<Address> circle = book.circular();
    if (circle.isEmpty() || book.workbook().calculation().iterate()) {
      return Stream.empty();
    }
    return lookedAt(book, circle).stream().map(cell -> says(book, cell));
  }

  /** The cells of circles that read themselves, or else that others read, or else the first: those to look at. */
  private static List<Address> lookedAt(Book book, Set<Address> circle) {
    List<Address> selves =
        circle.stream().filter(cell -> book.links().readsItself(cell)).toList();
    if (!selves.isEmpty()) {
      return selves;
    }
    List<Address> read =
        circle.stream().filter(cell -> isReadOutside(book, circle, cell)).toList();
    return read.isEmpty() ? List.of(circle.iterator().next()) : read;
  }

  private static boolean isReadOutside(Book book, Set<Address> circle, Address cell) {
    return book.links().readers(cell).stream().anyMatch(reader -> !circle.contains(reader));
  }

  private static Finding says(Book book, Address cell) {
    String says = "is =" + book.formula(cell).orElseThrow()
        + ", which reads its own result"
        + (book.links().readsItself(cell) ? "" : " by way of other cells")
        + "; a spreadsheet program shows 0 or the last guess";
    return Says.about(INFO, book, cell, says);
  }
}
