package squaresheet.verify;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.sheet.Address;
import squaresheet.sheet.Ref;

/** Does one formula of a list read another building's sheet than those around it? */
final class ReferenceToLikeSheet implements Check<LikeSheets> {

  private static final CheckInfo INFO = new CheckInfo(
      "reference-to-like-sheet", Severity.WARNING, "One formula reads another building's sheet");

  /** So many formulas around it must read the sheet that it should read. */
  private static final int AROUND = 3;

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(LikeSheets sheets) {
    return sheets.readersOf(sheets.tab()).stream()
        .filter(at -> !isNamedAt(sheets.tab(), at))
        .flatMap(at -> read(sheets, at).stream().flatMap(cell -> sheets.like().stream()
            .filter(other -> isMeant(sheets, at, cell, other))
            .limit(1)
            .map(other -> says(sheets, at, new Address(other.name(), cell)))));
  }

  /** Whether the words beside and above the formula name the sheet. */
  private static boolean isNamedAt(Tab tab, Address at) {
    String words = tab.book().tab(at.sheet()).wordsAbout(at.ref()).toLowerCase(Locale.ROOT);
    return words.contains(tab.name().toLowerCase(Locale.ROOT));
  }

  /** The one cell of the sheet that the formula reads. */
  private static Optional<Ref> read(LikeSheets sheets, Address at) {
    List<Cells> all = sheets.book().links().reads(at).stream()
        .filter(cells -> cells.sheet().equals(sheets.tab().name()))
        .toList();
    return all.size() == 1 && all.get(0).isOne()
        ? Optional.of(all.get(0).block().first())
        : Optional.empty();
  }

  private static boolean isMeant(LikeSheets sheets, Address at, Ref cell, Tab other) {
    boolean same = other.label(cell).equals(sheets.tab().label(cell))
        && !other.cell(cell).isBlank()
        && sheets.readersOf(other).stream()
            .noneMatch(reader -> reads(sheets.book(), reader, other.name(), cell));
    return same
        && around(at, other).count() >= AROUND
        && around(at, sheets.tab()).findAny().isEmpty();
  }

  private static boolean reads(Book book, Address reader, String sheet, Ref cell) {
    return book.links().reads(reader).stream()
        .anyMatch(cells -> cells.contains(new Address(sheet, cell)));
  }

  /** The formulas right above and below, without an empty line between, that read a sheet. */
  private static Stream<Address> around(Address at, Tab read) {
    return Stream.concat(next(at, read, -1), next(at, read, 1));
  }

  private static Stream<Address> next(Address at, Tab read, int way) {
    Tab tab = read.book().tab(at.sheet());
    int limit = way < 0 ? at.ref().row() : 20;
    return Stream.iterate(1, i -> i <= limit, i -> i + 1)
        .map(i -> at.ref().plus(i * way, 0))
        .takeWhile(ref -> !tab.cell(ref).isBlank())
        .map(tab::at)
        .filter(each -> read.book().links().reads(each).stream()
            .anyMatch(cells -> cells.sheet().equals(read.name())));
  }

  private static Finding says(LikeSheets sheets, Address at, Address meant) {
    String says = "reads the sheet '" + sheets.tab().name()
        + "', but the formulas around it read '" + meant.sheet() + "', and none reads " + meant
        + ", which is " + Shown.of(sheets.book().value(meant));
    return Says.about(INFO, sheets.book(), at, says);
  }
}
