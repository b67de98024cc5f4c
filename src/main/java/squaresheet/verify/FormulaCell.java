package squaresheet.verify;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import squaresheet.finding.Where;
import squaresheet.formula.Formula;
import squaresheet.formula.Node;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.sheet.Cell;

/**
 * A cell with a formula that could be read.
 *
 * @param book the workbook
 * @param at the cell
 * @param formula its formula
 */
record FormulaCell(Book book, Address at, Formula formula) {

  /** The cell, if it has a formula that could be read. */
  static Optional<FormulaCell> of(Book book, Address at) {
    return book.formula(at).map(formula -> new FormulaCell(book, at, formula));
  }

  /** The cells whose formulas read this one. */
  static Stream<FormulaCell> readersOf(Book book, Address at) {
    return book.links().readers(at).stream().flatMap(reader -> of(book, reader).stream());
  }

  Tab tab() {
    return book.tab(at.sheet());
  }

  Cell cell() {
    return book.cell(at);
  }

  Node tree() {
    return formula.tree();
  }

  Value value() {
    return book.value(at);
  }

  Where where() {
    return book.where(at);
  }

  Optional<Cells> cells(Node node) {
    if (node instanceof Node.Reference reference) {
      return book.references().cells(reference, at);
    }
    if (node instanceof Node.Name name) {
      return book.references().defined(name, at).flatMap(this::cells);
    }
    return node instanceof Node.Table table
        ? book.references().table(table, at).flatMap(this::cells)
        : Optional.empty();
  }

  List<Cells> reads() {
    return book.links().reads(at);
  }

  Stream<Node.Call> calls(String... functions) {
    return Nodes.calls(tree(), functions);
  }

  /** What the cell is called by the words beside and above it. */
  String label() {
    return tab().label(at.ref());
  }

  String words() {
    return tab().wordsAbout(at.ref());
  }

  /** The formula as a person would type it. */
  String shown() {
    return "=" + formula;
  }
}
