package squaresheet.judge.score;

import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.finding.Where;

/**
 * A finding of the product, as far as the judge hears it. The only place of the judge that knows how findings are made.
 *
 * @param id the check
 * @param cell the cell, such as {@code Roof!C5}, or empty
 * @param severity its weight
 * @param should the value it should be, as shown; empty where none is given
 * @param worth what it is worth, as shown
 * @param says its sentence
 */
record Heard(String id, String cell, Severity severity, String should, String worth, String says) {

  static Heard of(Finding finding) {
    String cell =
        finding.where() instanceof Where.InCell in ? in.cell().toString().replace("'", "") : "";
    return new Heard(
        finding.info().id(),
        cell,
        finding.info().severity(),
        finding.expected(),
        finding.worth(),
        finding.says());
  }

  boolean isLoud() {
    return severity != Severity.NOTE;
  }

  /** What tells it from another finding of the same workbook. */
  String key() {
    return id + " at " + cell;
  }
}
