package squaresheet.binding;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import squaresheet.finding.Finding;
import squaresheet.finding.Where;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Ref;

/** Columns of one table, each found by its defined name, read row by row as text and numbers. */
final class NamedRows {

  private final String file;
  private final NamedCells names;
  private final BookValues values;
  private final List<Finding> findings;

  NamedRows(String file, NamedCells names, BookValues values, List<Finding> findings) {
    this.file = file;
    this.names = names;
    this.values = values;
    this.findings = findings;
  }

  /** The rows in which the named column holds anything; none, and said so, where the name is lost. */
  List<Integer> rows(String key, String what) {
    List<Integer> rows = new ArrayList<>();
    Optional<Address> first = names.needed(key, what);
    Optional<Block> block = first.flatMap(cell -> names.block(key));
    block.ifPresent(it -> {
      for (int row = it.first().row(); row <= it.last().row(); row++) {
        if (!text(row, key).isEmpty()) {
          rows.add(row);
        }
      }
    });
    return rows;
  }

  Optional<Address> cell(int row, String column) {
    return names
        .cell(column)
        .map(cell -> new Address(cell.sheet(), new Ref(row, cell.ref().column())));
  }

  Where where(int row, String column) {
    return cell(row, column)
        .<Where>map(cell -> new Where.InCell(file, cell))
        .orElse(new Where.InFile(file));
  }

  String text(int row, String column) {
    return cell(row, column).map(values::cell).map(Cells::text).orElse("");
  }

  /** The number there, 0 or more; a finding says so where it is none. */
  Optional<BigDecimal> amount(int row, String column, String what) {
    return amount(cell(row, column), what);
  }

  /** The number of a named cell, 0 or more; a finding says so where it is none. */
  Optional<BigDecimal> amount(String name, String what) {
    return amount(names.needed(name, what), what);
  }

  private Optional<BigDecimal> amount(Optional<Address> cell, String what) {
    if (cell.isEmpty()) {
      return Optional.empty();
    }
    Value value = values.value(cell.get());
    if (value instanceof Value.Number number && number.value() >= 0) {
      return Optional.of(BigDecimal.valueOf(number.value()));
    }
    String text = Cells.text(values.cell(cell.get()));
    findings.add(Complaint.NOT_A_NUMBER.at(
        new Where.InCell(file, cell.get()),
        text,
        "",
        what + " must be a number of 0 or more, but "
            + (text.isEmpty() ? "the cell is empty" : "reads '" + text + "'" + made(cell.get()))));
    return Optional.empty();
  }

  /** The formula that makes what is read. */
  private String made(Address cell) {
    return values.isFormula(cell) ? ", which =" + values.cell(cell).formula() + " makes" : "";
  }

  /** The text of a named cell; empty where there is none. */
  String text(String name) {
    return names.cell(name).map(values::cell).map(Cells::text).orElse("");
  }

  Where where(String name) {
    return names
        .cell(name)
        .<Where>map(cell -> new Where.InCell(file, cell))
        .orElse(new Where.InFile(file));
  }

  /** The sum under a named column; where there is none, its first cell. */
  Where whereSummed(String column) {
    return names
        .cell(column)
        .flatMap(first -> names.block(column).map(block -> block.last().row() + 1))
        .flatMap(row -> cell(row, column))
        .filter(values::isFormula)
        .<Where>map(cell -> new Where.InCell(file, cell))
        .orElseGet(() -> where(column));
  }

  void says(Finding finding) {
    findings.add(finding);
  }

  void says(Where where, String sentence) {
    findings.add(Complaint.ROW_UNREAD.at(where, sentence));
  }
}
