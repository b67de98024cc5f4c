package squaresheet.verify;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.sheet.Address;

/** Is a building's sheet read by nobody, while those laid out like it are? */
final class SheetLeftOut implements Check<LikeSheets> {

  private static final CheckInfo INFO = new CheckInfo(
      "sheet-left-out", Severity.WARNING, "A sheet is in no total, those like it are");

  /** What people call a sheet that is kept and not meant to count. */
  private static final Pattern KEPT = Pattern.compile(
      "(?<!\\p{L})(old|copy|copy of|backup|archive|template|blank|example|sample|draft|scrap|test|previous|"
          + "last year|alternates?|alt|options?|opt|rev|version|v\\d+)(?!\\p{L})|\\(\\d+\\)|(?<!\\d)(19|20)\\d\\d(?!\\d)",
      Pattern.CASE_INSENSITIVE);

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(LikeSheets sheets) {
    boolean silent = sheets.tab().isHidden()
        || isKept(sheets.tab())
        || !sheets.readersOf(sheets.tab()).isEmpty()
        || !comesToSomething(sheets.tab());
    return silent
        ? Stream.empty()
        : sheets.like().stream()
            .filter(other -> !LikeSheets.isCopy(other, sheets.tab()))
            .filter(other -> LikeSheets.differ(sheets.tab(), other))
            .flatMap(other -> reader(sheets, other))
            .limit(1);
  }

  private static boolean isKept(Tab tab) {
    boolean said = Stream.of(0, 1, 2, 3).anyMatch(row -> Words.saysOutside(tab.rowText(row)));
    return said || Words.saysOutside(tab.name()) || KEPT.matcher(tab.name()).find();
  }

  private static boolean comesToSomething(Tab tab) {
    return tab.book().formulas().keySet().stream()
        .filter(at -> at.sheet().equals(tab.name()))
        .anyMatch(at -> tab.book().number(at).orElse(0) != 0);
  }

  private static Stream<Finding> reader(LikeSheets sheets, Tab other) {
    List<Address> readers = sheets.readersOf(other).stream()
        .filter(at -> sheets.like().stream().noneMatch(like -> like.name().equals(at.sheet())))
        .toList();
    return readers.stream().limit(1).map(at -> says(sheets, other, at));
  }

  private static Finding says(LikeSheets sheets, Tab other, Address reader) {
    String says = "reads the sheet '" + other.name() + "', but no formula reads '"
        + sheets.tab().name()
        + "', which is laid out like it; if it belongs to this job, add it here";
    return Says.about(INFO, sheets.book(), reader, says);
  }
}
