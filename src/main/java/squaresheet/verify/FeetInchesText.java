package squaresheet.verify;

import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Value;
import squaresheet.sheet.Content;
import squaresheet.tape.TapeReader;
import squaresheet.tape.TapeUnit;
import squaresheet.units.Length;

/** Are feet and inches written out in a column that formulas take as decimal feet? */
final class FeetInchesText implements Check<TypedCell> {

  private static final CheckInfo INFO = new CheckInfo(
      "feet-inches-text", Severity.WARNING, "Feet and inches stand as text in a number column");

  private static final Pattern MARKS = Pattern.compile("\\d+ ?(['\u2018\u2019\u2032]|ft).*");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(TypedCell cell) {
    boolean marks = cell.cell().stored() instanceof Content.Text
        && MARKS.matcher(cell.text()).matches();
    return marks && TextInNumbers.isAmong(cell) ? read(cell) : Stream.empty();
  }

  private static Stream<Finding> read(TypedCell cell) {
    return TapeReader.of(TapeUnit.FEET, Locale.US)
        .length(cell.text(), cell.where())
        .value()
        .stream()
        .map(length -> says(cell, length));
  }

  private static Finding says(TypedCell cell, Length length) {
    double feet = length.toFeet();
    String says = "is the text '" + cell.text()
        + "', which formulas here cannot compute with; in decimal feet it is "
        + Shown.number(feet);
    return Says.about(INFO, cell.book(), cell.at(), new Value.Number(feet), says);
  }
}
