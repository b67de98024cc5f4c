package squaresheet.cli;

import squaresheet.binding.JobWorkbook;
import squaresheet.sheet.Workbook;
import squaresheet.takeoff.Rulebook;
import squaresheet.verify.Verdict;
import squaresheet.verify.Verify;

/** Runs the verify pass that fits a workbook. */
final class Passes {

  private Passes() {}

  /** A job workbook is held against its model; of any other the checks are asked that need none. */
  static Verdict over(Workbook workbook, String file, Rulebook rulebook) {
    return JobWorkbook.isOne(workbook)
        ? Verify.job(workbook, file, rulebook)
        : Verify.workbook(workbook, file);
  }
}
