package squaresheet.verify;

/** Lets only the first formula of a run speak. */
final class RunStart {

  private RunStart() {}

  /** Whether the cell stands in no run, differs from its run, or is the first of it. */
  static boolean is(FormulaCell cell) {
    return cell.tab()
        .tableAt(cell.at().ref())
        .map(table -> table.fills().stream()
            .filter(
                fill -> fill.form().across() == table.axis().across(cell.at().ref()))
            .noneMatch(fill -> {
              int along = table.axis().along(cell.at().ref());
              return fill.hasForm(along) && along != fill.form().sample();
            }))
        .orElse(true);
  }
}
