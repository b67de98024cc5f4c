package squaresheet.binding;

import java.util.ArrayList;
import java.util.List;
import squaresheet.finding.Finding;
import squaresheet.finding.Where;
import squaresheet.formula.Calculation;
import squaresheet.formula.Value;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Workbook;

/** What a workbook makes of what is written into it. */
final class Afterwards {

  /** A formula may round its steps; a part in five hundred moves an order of 500 bundles by one. */
  static final double TOLERANCE = 0.002;

  private final String file;
  private final Pen pen;
  private final List<Edit> edits;
  private final Calculation after;

  Afterwards(Workbook book, String file, Pen pen) {
    this.file = file;
    this.pen = pen;
    edits = Calculation.settled(book, pen.edits());
    after = Calculation.of(file, book.after(edits));
  }

  Filled filled() {
    List<Finding> findings = new ArrayList<>(pen.findings());
    pen.expected().forEach(it -> judge(it, findings));
    return new Filled(edits, pen.changes(), findings);
  }

  private void judge(Pen.Expected it, List<Finding> findings) {
    Value made = after.value(it.cell());
    if (!(made instanceof Value.Number number)) {
      return;
    }
    Cell cell = after.workbook().cell(it.cell());
    if (!it.spelt().isSame(it.known(), cell, number.value(), TOLERANCE)) {
      findings.add(Complaint.MAKES_OTHER.at(
          new Where.InCell(file, it.cell()),
          Spelt.rounded(number.value()),
          it.spelt().show(it.known(), cell),
          it.item() + " is worked out by a formula there, which is left alone, but it makes "
              + "something else than the model"));
    }
  }
}
