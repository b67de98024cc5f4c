package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.sheet.Address;

/** Does a formula use a name whose cells are not there? */
final class NameIsBroken implements Check<DefinedName> {

  private static final CheckInfo INFO = new CheckInfo(
      "name-is-broken", Severity.ERROR, "A defined name points to cells that are not there");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(DefinedName name) {
    boolean lost = name.name()
        .cell()
        .filter(cell -> name.book().workbook().sheet(cell.sheet()).isEmpty())
        .isPresent();
    return lost || name.name().text().contains("#REF!")
        ? name.users().limit(1).map(user -> says(name, user))
        : Stream.empty();
  }

  private static Finding says(DefinedName name, Address user) {
    String says = "uses the name " + name.name().name() + ", which stands for "
        + name.name().text() + ": its cells are not there; point the name to the right cells";
    return Says.about(INFO, name.book(), user, says);
  }
}
