package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.sheet.Address;

/** Is the pitch of a plane blank, so that formulas take it for flat? */
final class PitchBlank implements Check<Table> {

  private static final CheckInfo INFO =
      new CheckInfo("pitch-blank", Severity.WARNING, "A plane has no pitch and counts as flat");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Table table) {
    return table
        .property(Words::isPitch)
        .filter(table.inputs()::contains)
        .map(pitch -> table
            .items()
            .filter(along -> isTakenForFlat(table, along, pitch))
            .mapToObj(along -> says(table, table.at(along, pitch))))
        .orElse(Stream.empty());
  }

  private static boolean isTakenForFlat(Table table, int along, int pitch) {
    Address at = table.at(along, pitch);
    String words = table.tab().wordsAbout(at.ref());
    return table.tab().cell(at.ref()).isBlank()
        && table.hasInputs(along)
        && !Words.saysFlat(words)
        && !Words.saysOutside(words)
        && table.tab().book().links().readers(at).stream()
            .anyMatch(reader -> comesToSomething(table.tab().book(), reader));
  }

  private static boolean comesToSomething(Book book, Address reader) {
    return book.number(reader).orElse(0) != 0;
  }

  private static Finding says(Table table, Address at) {
    String says = "is blank while the other " + table.axis().line()
        + "s have a pitch; formulas read it as 0 and take the plane for flat; type the pitch, or 0"
        + " where it is flat";
    return Says.about(INFO, table.tab().book(), at, says);
  }
}
