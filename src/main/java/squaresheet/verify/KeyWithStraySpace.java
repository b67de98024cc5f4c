package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;

/** Does a key differ from the same key in other rows by a space only? */
final class KeyWithStraySpace implements Check<TypedCell> {

  private static final CheckInfo INFO =
      new CheckInfo("key-with-stray-space", Severity.WARNING, "A key has a space that nobody sees");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(TypedCell cell) {
    if (!(cell.cell().stored() instanceof Content.Text text)
        || cell.book().links().readers(cell.at()).isEmpty()
        || bare(text.value()).equals(text.value())) {
      return Stream.empty();
    }
    boolean looked =
        cell.book().links().readers(cell.at()).stream().anyMatch(reader -> isLookup(cell, reader));
    boolean twin = cell.book().links().readers(cell.at()).stream()
        .flatMap(reader -> cell.book().links().reads(reader).stream())
        .filter(list -> !list.isOne() && list.contains(cell.at()))
        .flatMap(Cells::each)
        .anyMatch(other -> cell.book().value(other) instanceof Value.Text there
            && there.value().equalsIgnoreCase(bare(text.value())));
    return looked && twin ? Stream.of(says(cell, text.value())) : Stream.empty();
  }

  private static String bare(String key) {
    return key.replace('\u00A0', ' ').strip().replaceAll(" +", " ");
  }

  private static boolean isLookup(TypedCell cell, Address reader) {
    return Nodes.calls(
            cell.book().formula(reader).orElseThrow().tree(),
            "SUMIF",
            "COUNTIF",
            "AVERAGEIF",
            "SUMIFS",
            "COUNTIFS",
            "VLOOKUP",
            "HLOOKUP",
            "MATCH",
            "XLOOKUP",
            "XMATCH",
            "LOOKUP")
        .findAny()
        .isPresent();
  }

  private static Finding says(TypedCell cell, String key) {
    String says = "reads '" + key + "' with a space that does not show, but other rows read '"
        + bare(key) + "', and formulas that look for that leave this row out";
    return Says.about(INFO, cell.book(), cell.at(), "'" + bare(key) + "'", says);
  }
}
