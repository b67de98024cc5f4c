package squaresheet.verify;

import java.util.ArrayList;
import java.util.List;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.finding.Where;

/**
 * A check and the type of subject it is asked about.
 *
 * @param <S> the subject
 * @param type its type
 * @param check the check
 */
record Ask<S>(Class<S> type, Check<S> check) {

  /** What a check that breaks is reported under. */
  static final CheckInfo BROKE =
      new CheckInfo("check-broke", Severity.ERROR, "A check could not finish");

  /** What a check that would look too often is reported under. */
  static final CheckInfo CUT_SHORT =
      new CheckInfo("check-cut-short", Severity.ERROR, "A check was stopped");

  /**
   * What came of asking.
   *
   * @param tally how often it was asked and spoke
   * @param findings what it said
   */
  record Answer(Tally tally, List<Finding> findings) {}

  Answer ask(Subjects subjects, String file) {
    List<Finding> said = new ArrayList<>();
    int spoke = 0;
    List<S> all = subjects.of(type);
    int asked = 0;
    try {
      for (; asked < all.size(); asked++) {
        List<Finding> about = examine(all.get(asked), file);
        spoke += about.isEmpty() ? 0 : 1;
        said.addAll(about);
      }
    } catch (Looks.Spent spent) {
      said.add(cutShort(asked, all.size(), file));
    }
    return new Answer(new Tally(check.info(), asked, spoke), said);
  }

  private Finding cutShort(int asked, int all, String file) {
    String says = "the check " + check.info().id()
        + " was stopped: this workbook has far more cells that lean on each other than people fill in, and "
        + (all - asked) + " of the " + all + " places it asks about are not checked";
    return new Finding(CUT_SHORT, new Where.InFile(file), says);
  }

  private List<Finding> examine(S subject, String file) {
    try {
      return check.examine(subject).toList();
    } catch (Looks.Spent spent) {
      throw spent;
    } catch (RuntimeException broken) {
      String says = "the check " + check.info().id()
          + " could not finish, so what it asks about is not checked ("
          + broken.getClass().getSimpleName() + ")";
      return List.of(new Finding(BROKE, new Where.InFile(file), says));
    }
  }
}
