package squaresheet.verify;

import java.util.List;
import java.util.stream.Stream;
import squaresheet.finding.CheckInfo;
import squaresheet.sheet.Workbook;
import squaresheet.takeoff.Rulebook;

/** The verify pass. */
public final class Verify {

  private Verify() {}

  /**
   * Asks every check that works on any workbook, whoever made it; and holds what is bound of it, by the binding kept in it or
   * else as far as that is sure, against what the bound cells make of each other.
   */
  public static Verdict workbook(Workbook workbook, String file) {
    return new Pass(Book.of(file, Marks.unmarked(workbook))).run();
  }

  /**
   * Reads a job workbook back, builds the model from its typed cells, and holds every cell against it, beside everything
   * that is asked of any workbook.
   *
   * @param rulebook the company's rules
   */
  public static Verdict job(Workbook workbook, String file, Rulebook rulebook) {
    return new Pass(Book.of(file, Marks.unmarked(workbook))).run(rulebook);
  }

  /** The cards of all checks, in the order they are asked. */
  public static List<CheckInfo> checks() {
    return Stream.of(Checks.ofAnyWorkbook(), Checks.ofBoundBooks(), Checks.ofJobs())
        .flatMap(List::stream)
        .map(ask -> ask.check().info())
        .toList();
  }
}
