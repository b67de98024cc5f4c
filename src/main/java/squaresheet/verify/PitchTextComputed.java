package squaresheet.verify;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Fix;
import squaresheet.finding.Severity;
import squaresheet.formula.Node;
import squaresheet.sheet.Address;

/** Does a formula compute with a pitch that is kept as text, which becomes a date? */
final class PitchTextComputed implements Check<TypedCell> {

  private static final CheckInfo INFO = new CheckInfo(
      "pitch-text-computed", Severity.ERROR, "A pitch kept as text is computed with as a date");

  private static final Pattern PITCH = Pattern.compile("(\\d{1,2}(?:\\.\\d+)?) ?[-/:] ?12");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(TypedCell cell) {
    Matcher pitch = PITCH.matcher(cell.text());
    return pitch.matches()
        ? reader(cell).stream().map(at -> says(cell, at, pitch.group(1)))
        : Stream.empty();
  }

  private static Optional<Address> reader(TypedCell cell) {
    return cell.book().links().readers(cell.at()).stream()
        .filter(at -> isComputed(
            cell, new FormulaCell(cell.book(), at, cell.book().formula(at).orElseThrow())))
        .findFirst();
  }

  /** Whether the cell itself is an operand of arithmetic; what takes the text apart is not. */
  private static boolean isComputed(TypedCell cell, FormulaCell reader) {
    return Nodes.all(reader.tree())
        .filter(PitchTextComputed::isArithmetic)
        .flatMap(node -> node.parts().stream())
        .flatMap(part -> reader.cells(part).stream())
        .anyMatch(cells -> cells.isOne() && cells.contains(cell.at()));
  }

  private static boolean isArithmetic(Node node) {
    if (node instanceof Node.Binary binary) {
      return switch (binary.operator()) {
        case PLUS, MINUS, TIMES, OVER, POWER -> true;
        default -> false;
      };
    }
    return Nodes.isCall(
        node, "SQRT", "POWER", "RADIANS", "DEGREES", "ATAN", "TAN", "COS", "SIN", "ABS");
  }

  private static Finding says(TypedCell cell, Address reader, String rise) {
    String says = "is the text '" + cell.text() + "', which " + reader
        + " computes with: spreadsheet programs read it as a day of December, some tens of thousands, as"
        + " a time, a part of one, or as an error; type " + rise + " in a column of rises per 12";
    return Says.about(INFO, cell.book(), cell.at(), rise, says)
        .with(Fix.number(cell.at(), Double.parseDouble(rise)));
  }
}
