package squaresheet.verify;

import java.util.List;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.sheet.Address;

/** Do dates of a workbook stand apart by the days between the two date systems? */
final class DatesFourYearsApart implements Check<Book> {

  private static final CheckInfo INFO = new CheckInfo(
      "dates-four-years-apart", Severity.WARNING, "Dates were copied between two date systems");

  /** From 1 January 1900, counted with the 29 February that was none, to 1 January 1904 (ECMA-376, 18.17.4.1). */
  private static final int DAYS = 1462;
  /** Dates of one job lie so near each other. */
  private static final int NEAR = 120;

  @Override
  public CheckInfo info() {
    return INFO;
  }

  private record Day(Address at, double serial) {}

  @Override
  public Stream<Finding> examine(Book book) {
    if (!book.workbook().date1904()) {
      return Stream.empty();
    }
    List<Day> days = book.tabs().stream()
        .flatMap(tab -> tab.sheet()
            .cells()
            .filter(placed -> placed.cell().isDate())
            .flatMap(placed -> book.number(tab.at(placed.ref())).stream()
                .filter(serial -> serial > 30000)
                .mapToObj(serial -> new Day(tab.at(placed.ref()), serial))))
        .toList();
    return days.stream()
        .filter(day -> days.stream().anyMatch(other -> isApart(day, other)))
        .filter(day -> !book.cell(day.at()).isFormula())
        .limit(1)
        .map(day -> says(book, day));
  }

  /** Whether the day is later than another by what a number of the other system is read too late. */
  private static boolean isApart(Day day, Day other) {
    return Math.abs(day.serial() - other.serial() - DAYS) <= NEAR;
  }

  private static Finding says(Book book, Day day) {
    String says = "is read as " + day(book, day.serial())
        + ", as the workbook counts days from 1904; other dates"
        + " of it lie four years earlier, and copied from a workbook that counts from 1900 it would be "
        + day(book, day.serial() - DAYS);
    return Says.about(INFO, book, day.at(), day(book, day.serial() - DAYS), says);
  }

  private static String day(Book book, double serial) {
    return book.workbook()
        .date(serial)
        .map(it -> it.toLocalDate().toString())
        .orElse(Shown.number(serial));
  }
}
