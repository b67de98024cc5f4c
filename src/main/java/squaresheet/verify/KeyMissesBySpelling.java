package squaresheet.verify;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;

/** Does a conditional sum find nothing because the key is spelled otherwise in the list? */
final class KeyMissesBySpelling implements Check<FormulaCell> {

  private static final CheckInfo INFO = new CheckInfo(
      "key-misses-by-spelling", Severity.WARNING, "A key is looked for in another spelling");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(FormulaCell cell) {
    return Keys.asked(cell).flatMap(key -> missed(cell, key)).limit(1);
  }

  private static Stream<Finding> missed(FormulaCell cell, Keys key) {
    List<Address> near = new ArrayList<>();
    for (Address each : (Iterable<Address>) key.list().each()::iterator) {
      if (cell.book().value(each) instanceof Value.Text there) {
        if (there.value().equalsIgnoreCase(key.key())) {
          return Stream.empty();
        }
        if (Words.stem(there.value()).equals(Words.stem(key.key()))) {
          near.add(each);
        }
      }
    }
    return near.isEmpty() ? Stream.empty() : Stream.of(says(cell, key.key(), near));
  }

  private static Finding says(FormulaCell cell, String wanted, List<Address> near) {
    String says = "looks for '" + wanted + "', which no cell of its list holds, but " + near.get(0)
        + " holds " + Shown.of(cell.book().value(near.get(0)))
        + "; the two must be spelled alike, or those rows are left out";
    return Says.about(INFO, cell.book(), cell.at(), says);
  }
}
