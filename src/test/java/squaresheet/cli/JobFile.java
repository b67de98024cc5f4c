package squaresheet.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import squaresheet.formula.Calculation;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Workbook;
import squaresheet.xlsx.Existing;
import squaresheet.xlsx.Xlsx;

/**
 * A workbook file as people make and change it: the demo's tape sheet imported, cells typed over by their defined names, saved by a
 * program that works every formula out anew.
 *
 * @param path where it is
 */
record JobFile(Path path) {

  /** The demo's job, imported with the demo's company lists. */
  static JobFile imported(Path path) {
    Ran.of("import", DemoSheet.sound(), "--company", "demo-data", "-o", path.toString());
    assertThat(path).exists();
    return new JobFile(path);
  }

  Workbook book() {
    return Xlsx.read(path).value().orElseThrow();
  }

  /** The cell of a defined name; of a column the row of that number, 0 and up. */
  Address at(String name, int row) {
    return at(book(), name, row);
  }

  private static Address at(Workbook book, String name, int row) {
    Address first =
        book.name(name).flatMap(Workbook.Name::cell).orElseThrow(() -> new AssertionError(name));
    return new Address(first.sheet(), first.ref().plus(row, 0));
  }

  /** The cell of a named column in the row in which another holds a text. */
  Address beside(String column, String text, String asked) {
    Workbook book = book();
    return IntStream.range(0, 200)
        .filter(row -> book.cell(at(book, column, row)).stored().equals(new Content.Text(text)))
        .mapToObj(row -> at(book, asked, row))
        .findFirst()
        .orElseThrow(() -> new AssertionError(column + " holds no " + text));
  }

  /** The first empty cell of a named column. */
  Address free(String column) {
    Workbook book = book();
    return IntStream.range(0, 200)
        .mapToObj(row -> at(book, column, row))
        .filter(cell -> book.cell(cell).isBlank())
        .findFirst()
        .orElseThrow();
  }

  JobFile type(Address cell, String text) {
    return edit(new Edit.SetContent(cell, new Content.Text(text)));
  }

  JobFile enter(Address cell, String formula) {
    return edit(new Edit.SetFormula(cell, formula, new Content.Blank()));
  }

  JobFile edit(Edit... edits) {
    save(List.of(edits));
    return recalculated();
  }

  /** Every formula with the value it makes. */
  private JobFile recalculated() {
    Workbook book = book();
    Calculation calculation = Calculation.of(book);
    List<Edit> edits = new ArrayList<>();
    calculation.formulas().keySet().forEach(cell -> {
      Content now = calculation.value(cell).content();
      if (!book.cell(cell).stored().equals(now)) {
        edits.add(new Edit.SetFormula(cell, book.cell(cell).formula(), now));
      }
    });
    return edits.isEmpty() ? this : save(edits);
  }

  private JobFile save(List<Edit> edits) {
    var saved = Xlsx.edit(path, edits, path, Existing.REPLACE);
    assertThat(saved.value()).as(saved.findings().toString()).isPresent();
    return this;
  }
}
