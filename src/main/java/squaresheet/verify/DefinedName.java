package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.Where;
import squaresheet.formula.Node;
import squaresheet.sheet.Address;
import squaresheet.sheet.Workbook;

/**
 * A defined name of a book.
 *
 * @param book the workbook
 * @param name the name
 */
record DefinedName(Book book, Workbook.Name name) {

  /** The formulas that are written with the name. */
  Stream<Address> users() {
    return book.formulas().entrySet().stream()
        .filter(entry -> Nodes.all(entry.getValue().tree(), Node.Name.class)
            .anyMatch(it -> it.name().equalsIgnoreCase(name.name())))
        .map(java.util.Map.Entry::getKey);
  }

  /** The cell it stands for, or else the first cell that uses it, or the file. */
  Where where() {
    return name.cell()
        .or(() -> users().findFirst())
        .map(book::where)
        .orElse(new Where.InFile(book.file()));
  }
}
