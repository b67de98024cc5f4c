package squaresheet.verify;

import java.util.List;
import squaresheet.finding.CheckInfo;
import squaresheet.sheet.Workbook;

/** The verify pass. */
public final class Verify {

  private Verify() {}

  /** Asks every check that works on any workbook, whoever made it. */
  public static Verdict workbook(Workbook workbook, String file) {
    return new Pass(Book.of(file, workbook)).run();
  }

  /** The cards of all checks, in the order they are asked. */
  public static List<CheckInfo> checks() {
    return Checks.ofAnyWorkbook().stream().map(ask -> ask.check().info()).toList();
  }
}
