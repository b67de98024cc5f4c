package squaresheet.verify;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Formula;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Edit;

/**
 * A change that would put a finding right.
 *
 * @param finding what was said
 * @param doubt what speaks against making it without asking a person; nothing where it is sure
 */
record Proposal(Finding finding, Optional<String> doubt) {

  private static final String STALE = "stale-value";
  private static final String LATENT = "-latent";

  /** Everything that could be put right, by what was said of the workbook. */
  static Stream<Proposal> of(Book book, Verdict verdict) {
    Doubts doubts = new Doubts(book, verdict);
    Stream<Finding> rules =
        verdict.said().stream().filter(finding -> finding.fix().isRule());
    Map<Address, Finding> first = new LinkedHashMap<>();
    Stream.concat(verdict.findings().stream(), rules)
        .filter(finding -> finding.isError() || finding.info().id().endsWith(LATENT))
        .forEach(
            finding -> Folding.cell(finding).ifPresent(cell -> first.putIfAbsent(cell, finding)));
    return first.values().stream()
        .map(doubts::best)
        .filter(finding -> finding.fix().isKnown() && changes(book, finding))
        .map(finding -> new Proposal(finding, doubts.of(finding)));
  }

  /** Whether it is an old value beside a formula, which stays as it is and is worked out anew. */
  static boolean isStale(Finding finding) {
    return finding.info().id().equals(STALE);
  }

  /** Whether it says that a rule of the workbook is missing, though what stands there is right today. */
  static boolean isRuleMissing(Finding finding) {
    return finding.info().id().endsWith(LATENT) && finding.fix().isRule();
  }

  /** Whether it says that something is wrong, not only that it will be. */
  boolean isWrong() {
    return finding.isError();
  }

  /** Whether the remedy puts anything else there; a number never takes the place of a formula. */
  private static boolean changes(Book book, Finding finding) {
    return isStale(finding)
        || (finding.fix().edits().stream().allMatch(edit -> changes(book, edit))
            && book.reckoning().values(finding.fix()).entrySet().stream()
                .allMatch(put -> isSuch(book, put.getKey(), put.getValue())));
  }

  /** Whether a number takes the place of a number, and nothing the place of an error. */
  private static boolean isSuch(Book book, Address cell, Value put) {
    boolean number = book.value(cell) instanceof Value.Number;
    return put.isChecked()
        && !(put instanceof Value.Fault)
        && (!number || put instanceof Value.Number);
  }

  private static boolean changes(Book book, Edit edit) {
    if (edit instanceof Edit.SetFormula put) {
      return !book.formula(put.cell()).equals(Optional.of(Formula.of(put.formula())));
    }
    return !(edit instanceof Edit.SetContent put) || !book.cell(put.cell()).isFormula();
  }

  List<Edit> edits() {
    return finding.fix().edits();
  }

  /** The cells that it puts something into. */
  List<Address> cells() {
    return edits().stream().flatMap(edit -> cell(edit).stream()).distinct().toList();
  }

  private static Optional<Address> cell(Edit edit) {
    if (edit instanceof Edit.SetFormula put) {
      return Optional.of(put.cell());
    }
    return edit instanceof Edit.SetContent put ? Optional.of(put.cell()) : Optional.empty();
  }

  Proposal doubted(String why) {
    return new Proposal(finding, Optional.of(why));
  }

  String key() {
    return key(finding);
  }

  static String key(Finding finding) {
    return finding.info().id() + " " + finding.where();
  }

  /** Whether the finding is one of those that never say that a cell is wrong today. */
  static boolean isLatent(Finding finding) {
    return finding.info().severity() == Severity.NOTE;
  }

  /** The change of one cell, from one state of the workbook to another. */
  Corrections.Change change(Cell before, Cell after, Address cell) {
    String check = finding.info().id();
    boolean same = before.isFormula() && before.formula().equals(after.formula());
    return same
        ? new Corrections.Change(cell, Shown.of(before.stored()), Shown.of(after.stored()), check)
        : new Corrections.Change(cell, Shown.cell(before), Shown.cell(after), check);
  }
}
