package squaresheet.verify;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import squaresheet.finding.Finding;
import squaresheet.finding.Where;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;

/** Names the cells of a foreign workbook that no model was held against, neighbours together. */
final class NotChecked {

  private static final String UNBOUND = "not-bound";

  private final Book book;
  private final BookModel model;

  NotChecked(Book book, BookModel model) {
    this.book = book;
    this.model = model;
  }

  /** The cells as blocks with their headings, then what could not be bound or read, with the reason. */
  List<String> of(Collection<Address> cells) {
    List<String> lines = new ArrayList<>();
    List<Address> sorted = cells.stream()
        .sorted(Comparator.comparing(Address::sheet)
            .thenComparing(at -> at.ref().column())
            .thenComparing(at -> at.ref().row()))
        .toList();
    int start = 0;
    for (int at = 1; at <= sorted.size(); at++) {
      if (at == sorted.size() || !isUnder(sorted.get(at - 1), sorted.get(at))) {
        lines.add(line(sorted.get(start), sorted.get(at - 1)));
        start = at;
      }
    }
    model.bound().findings().stream().map(NotChecked::line).forEach(lines::add);
    return lines;
  }

  private static boolean isUnder(Address one, Address next) {
    return one.sheet().equals(next.sheet()) && one.ref().plus(1, 0).equals(next.ref());
  }

  private String line(Address first, Address last) {
    String place = first.equals(last)
        ? first.toString()
        : Address.quoted(first.sheet()) + "!" + new Block(first.ref(), last.ref());
    Tab tab = book.tab(first.sheet());
    String called =
        first.equals(last) ? tab.label(first.ref()) : tab.heading(first.ref(), Axis.DOWN);
    return place + (called.isEmpty() ? "" : " (" + called + ")")
        + ": worked out anew, but it follows from nothing that is bound";
  }

  private static String line(Finding finding) {
    String place = finding.where() instanceof Where.InCell in
        ? in.cell().toString()
        : finding.where().toString();
    boolean read = finding.info().id().equals(UNBOUND);
    return place + ": " + finding.says() + (read ? "" : "; not checked");
  }
}
