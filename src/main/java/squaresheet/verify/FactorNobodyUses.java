package squaresheet.verify;

import java.util.List;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;

/** Does a table have pitch factors that no formula reads, while areas are read on? */
final class FactorNobodyUses implements Check<Table> {

  private static final CheckInfo INFO = new CheckInfo(
      "factor-nobody-uses", Severity.WARNING, "Pitch factors are worked out and not used");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Table table) {
    List<PitchFactor> rows = PitchFactor.in(table).toList();
    boolean unread = rows.size() >= 2
        && rows.stream().noneMatch(row -> row.book().links().isRead(row.at()))
        && rows.stream().anyMatch(row -> row.rise() >= 4);
    return unread ? Stream.of(says(rows.get(0))) : Stream.empty();
  }

  private static Finding says(PitchFactor row) {
    String says =
        "is a pitch factor that no formula reads, so the areas of this table stay plan areas; at "
            + Shown.number(row.rise()) + ":12 the roof is " + Shown.number(100 * (row.wanted() - 1))
            + " percent larger than its plan";
    return Says.about(INFO, row.book(), row.at(), says);
  }
}
