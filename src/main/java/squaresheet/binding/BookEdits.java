package squaresheet.binding;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import squaresheet.finding.Finding;
import squaresheet.finding.Where;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Workbook;

/** Writes into a workbook's own layout: values into the cells they are bound to, in the units of their columns. */
public final class BookEdits {

  private final Workbook book;
  private final BoundBook bound;
  private final List<Edit> edits = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();

  BookEdits(Workbook book, BoundBook bound) {
    this.book = book;
    this.bound = bound;
  }

  /**
   * Puts a number where the item is bound. A cell with a formula is left alone, and said.
   *
   * @param number in feet, square feet, rise per 12, or a plain ratio; it is turned into the unit of the column
   */
  public BookEdits put(Where.OfItem item, double number) {
    Cell cell = bound.cells().cell(item).map(book::cell).orElse(Cell.EMPTY);
    return put(item, Value.of(bound.inItsUnit(item, cell, number)));
  }

  /** Puts a text where the item is bound. */
  public BookEdits put(Where.OfItem item, String text) {
    return put(item, new Value.Text(text));
  }

  private BookEdits put(Where.OfItem item, Value value) {
    Optional<Address> cell = bound.cells().cell(item);
    if (cell.isEmpty()) {
      findings.add(Complaint.NOT_BOUND.at(
          item, item + " must be bound to a cell to be written, but is not; nothing is changed"));
    } else if (book.cell(cell.get()).isFormula()) {
      findings.add(Complaint.NOT_BOUND.at(
          new Where.InCell("", cell.get()),
          item + " is worked out by a formula there; it is left alone"));
    } else {
      edits.add(new Edit.SetContent(cell.get(), value.content()));
    }
    return this;
  }

  /** Puts numbers where their items are bound. */
  public BookEdits putAll(Map<Where.OfItem, Double> numbers) {
    numbers.forEach((item, number) -> put(item, number));
    return this;
  }

  /** Pins what was found to the cells it was found in. */
  public BookEdits remark(List<Finding> found) {
    for (Finding finding : found) {
      Where where = bound.cells().place(finding.where(), "");
      if (where instanceof Where.InCell cell) {
        String worth = finding.worth().isEmpty() ? "" : "\nWorth: " + finding.worth();
        edits.add(new Edit.SetComment(
            cell.cell(), "Squaresheet", finding.info().severity() + ": " + finding.says() + worth));
      }
    }
    return this;
  }

  /** The changes, in the order they were asked for. */
  public List<Edit> edits() {
    return List.copyOf(edits);
  }

  /** What could not be written, and why. */
  public List<Finding> findings() {
    return List.copyOf(findings);
  }
}
