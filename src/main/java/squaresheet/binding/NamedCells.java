package squaresheet.binding;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import squaresheet.finding.Finding;
import squaresheet.finding.Where;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.Workbook;

/** The cells and columns that the defined names of a job workbook stand for. */
final class NamedCells {

  private final Workbook book;
  private final String file;
  private final List<Finding> findings = new ArrayList<>();

  NamedCells(Workbook book, String file) {
    this.book = book;
    this.file = file;
  }

  /** The one cell of a name, if it has one on a sheet that is there. */
  Optional<Address> cell(String name) {
    return book.name(name).flatMap(Workbook.Name::cell).filter(cell -> book.sheet(cell.sheet())
        .isPresent());
  }

  /** The block of a name on the sheet of {@link #cell}. */
  Optional<Block> block(String name) {
    return cell(name).flatMap(cell -> book.name(name).flatMap(Workbook.Name::block));
  }

  /** The name of the cells in which a column is typed: its own, unless the tape's unit stands beside it. */
  String typed(String column) {
    return cell(column + LengthColumns.TYPED).isPresent() ? column + LengthColumns.TYPED : column;
  }

  /** The cell of a name that must be there; a finding says what is missing for what. */
  Optional<Address> needed(String name, String what) {
    Optional<Address> cell = cell(name);
    if (cell.isEmpty()) {
      String is =
          book.name(name).map(there -> "stands for '" + there.text() + "'").orElse("is not there");
      findings.add(Complaint.NAME_MISSING.at(
          new Where.InFile(file),
          "the defined name " + name + " must stand for the cell of " + what + ", but " + is
              + "; it is not checked"));
    }
    return cell;
  }

  /** The sheet most of these names lie on. */
  Optional<Sheet> sheet(List<String> names) {
    Set<String> sheets = new LinkedHashSet<>();
    names.forEach(name -> cell(name).map(Address::sheet).ifPresent(sheets::add));
    return sheets.stream().findFirst().flatMap(book::sheet);
  }

  /** The heading over the cells of a column's name. */
  static Ref heading(Block block) {
    int row = Math.max(0, block.first().row() - 1);
    return new Ref(row, block.first().column());
  }

  List<Finding> findings() {
    return findings;
  }
}
