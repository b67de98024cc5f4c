package squaresheet.verify;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Node;
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
    return cell.calls("SUMIF", "COUNTIF", "AVERAGEIF", "SUMIFS", "COUNTIFS")
        .flatMap(call -> keys(cell, call))
        .limit(1);
  }

  private static Stream<Finding> keys(FormulaCell cell, Node.Call call) {
    int from = call.function().equals("SUMIFS") ? 1 : 0;
    return IntStream.iterate(from, i -> i + 1 < call.arguments().size(), i -> i + 2)
        .boxed()
        .flatMap(i -> cell.cells(call.arguments().get(i)).stream()
            .flatMap(list -> missed(cell, list, call.arguments().get(i + 1))));
  }

  private static Stream<Finding> missed(FormulaCell cell, Cells list, Node key) {
    Value wanted = cell.book().reckoning().evaluate(key, cell.at());
    if (!(wanted instanceof Value.Text text) || text.value().matches("[<>=].*|.*[*?~].*|\\s*")) {
      return Stream.empty();
    }
    List<Address> near = new ArrayList<>();
    for (Address each : (Iterable<Address>) list.each()::iterator) {
      if (cell.book().value(each) instanceof Value.Text there) {
        if (there.value().equalsIgnoreCase(text.value())) {
          return Stream.empty();
        }
        if (Words.stem(there.value()).equals(Words.stem(text.value()))) {
          near.add(each);
        }
      }
    }
    return near.isEmpty() ? Stream.empty() : Stream.of(says(cell, text.value(), near));
  }

  private static Finding says(FormulaCell cell, String wanted, List<Address> near) {
    String says = "looks for '" + wanted + "', which no cell of its list holds, but " + near.get(0)
        + " holds " + Shown.of(cell.book().value(near.get(0)))
        + "; the two must be spelled alike, or those rows are left out";
    return Says.about(INFO, cell.book(), cell.at(), says);
  }
}
