package squaresheet.binding;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import squaresheet.finding.Finding;
import squaresheet.sheet.Address;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Content;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Workbook;

/** Notes what is to be written, what formulas are expected to make, and what there is to say. */
final class Pen {

  private final Workbook book;
  private final List<Edit> edits = new ArrayList<>();
  private final List<Filled.Change> changes = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();
  private final List<Expected> expected = new ArrayList<>();

  /**
   * What a formula should make.
   *
   * @param cell where it stands
   * @param item what it is
   * @param known what the model has
   * @param spelt how its column is written
   */
  record Expected(Address cell, String item, Known known, Spelt spelt) {}

  Pen(Workbook book) {
    this.book = book;
  }

  /** Puts content where it is not there already; over a formula nothing is put. */
  void put(Address cell, String item, Content content) {
    edits.add(new Edit.SetContent(cell, content));
    changes.add(new Filled.Change(
        cell, item, shown(book.cell(cell)), shown(new Cell(content, "", "General"))));
  }

  void formula(Address cell, String item, String formula) {
    edits.add(new Edit.SetFormula(cell, formula, new Content.Blank()));
    changes.add(new Filled.Change(cell, item, shown(book.cell(cell)), "=" + formula));
  }

  /** Edits that change no cell of the estimator's. */
  void also(List<Edit> more) {
    edits.addAll(more);
  }

  void look(Address cell, Address from) {
    edits.add(new Edit.CopyLook(cell, from));
  }

  void expect(Address cell, String item, Known known, Spelt spelt) {
    expected.add(new Expected(cell, item, known, spelt));
  }

  void say(Finding finding) {
    findings.add(finding);
  }

  static String shown(Cell cell) {
    return cell.isFormula() ? "=" + cell.formula() : Cells.text(cell);
  }

  /** The cells that get something. */
  Set<Address> written() {
    return changes.stream().map(Filled.Change::cell).collect(Collectors.toSet());
  }

  List<Edit> edits() {
    return edits;
  }

  List<Filled.Change> changes() {
    return changes;
  }

  List<Finding> findings() {
    return findings;
  }

  List<Expected> expected() {
    return expected;
  }
}
