package squaresheet.verify;

import java.util.List;
import java.util.stream.Stream;
import squaresheet.binding.JobWorkbook;
import squaresheet.finding.CheckInfo;
import squaresheet.sheet.Workbook;
import squaresheet.takeoff.Rulebook;

/** The verify pass. */
public final class Verify {

  private Verify() {}

  /**
   * Asks all that can be asked of a workbook, whoever made it. Of a job workbook of ours the model is built from its typed
   * cells, and every cell is held against it. Of any other, what is bound of it is held against what the bound cells make of
   * each other: by the binding kept in it, or else as far as that is sure.
   *
   * @param rulebook the company's rules, which job workbooks are held against
   */
  public static Verdict of(Workbook workbook, String file, Rulebook rulebook) {
    Pass pass = new Pass(Book.of(file, Marks.unmarked(workbook)));
    return JobWorkbook.isOne(workbook) ? pass.run(rulebook) : pass.run();
  }

  /** The same by the standard rules. */
  public static Verdict of(Workbook workbook, String file) {
    return of(workbook, file, Rulebook.standard());
  }

  /** The cards of all checks, in the order they are asked. */
  public static List<CheckInfo> checks() {
    return Stream.of(Checks.ofAnyWorkbook(), Checks.ofBoundBooks(), Checks.ofJobs())
        .flatMap(List::stream)
        .map(ask -> ask.check().info())
        .toList();
  }
}
