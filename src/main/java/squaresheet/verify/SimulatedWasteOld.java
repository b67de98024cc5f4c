package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Value;

/** Is the waste found by laying out the courses still that of the roof as it is typed now? */
final class SimulatedWasteOld implements Check<Modelled> {

  private static final CheckInfo INFO = new CheckInfo(
      "simulated-waste-old",
      Severity.ERROR,
      "The simulated waste belongs to another state of the roof");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Modelled cell) {
    boolean used = cell.isSimulatedWaste()
        && cell.model().takeoff().value("waste_choice").equals(new Value.Text("simulated"));
    return used && !cell.isFormula() && !cell.isRight() ? Stream.of(says(cell)) : Stream.empty();
  }

  private static Finding says(Modelled cell) {
    String says = "is a simulated waste of " + Shown.of(cell.there())
        + ", but laying out the courses of the roof as it is typed now makes "
        + Shown.of(cell.should())
        + "; a spreadsheet program cannot lay courses, so lay them out again or type this rate";
    return cell.says(INFO, says);
  }
}
