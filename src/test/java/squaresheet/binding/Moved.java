package squaresheet.binding;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import squaresheet.formula.Formula;
import squaresheet.formula.Node;
import squaresheet.formula.Respelling;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.SheetBuilder;
import squaresheet.sheet.Workbook;

/** Does to a workbook what spreadsheet programs do when rows and columns are inserted and sheets renamed and reordered. */
public final class Moved {

  /** A whole row or column ends here, and goes no further. */
  private static final int LAST_ROW = 1_048_575;

  private static final int LAST_COLUMN = 16_383;

  private final Workbook book;

  public Moved(Workbook book) {
    this.book = book;
  }

  public Workbook insertRow(String sheet, int before) {
    return move(
        sheet, sheet, ref -> ref.row() >= before && ref.row() < LAST_ROW ? ref.plus(1, 0) : ref);
  }

  public Workbook insertColumn(String sheet, int before) {
    return move(
        sheet,
        sheet,
        ref -> ref.column() >= before && ref.column() < LAST_COLUMN ? ref.plus(0, 1) : ref);
  }

  public Workbook rename(String sheet, String name) {
    return move(sheet, name, ref -> ref);
  }

  public Workbook reversed() {
    List<Sheet> sheets = new ArrayList<>(book.sheets());
    java.util.Collections.reverse(sheets);
    return with(sheets, book.names());
  }

  private Workbook move(String sheet, String name, UnaryOperator<Ref> to) {
    List<Sheet> sheets =
        book.sheets().stream().map(one -> moved(one, sheet, name, to)).toList();
    List<Workbook.Name> names = book.names().stream()
        .map(one -> Workbook.Name.of(one.name(), respelled(one.text(), "", sheet, name, to)))
        .toList();
    return with(sheets, names);
  }

  private Workbook with(List<Sheet> sheets, List<Workbook.Name> names) {
    return new Workbook(
        sheets,
        names,
        book.date1904(),
        book.calculation(),
        book.externalLinks(),
        book.properties());
  }

  private static Sheet moved(Sheet one, String sheet, String name, UnaryOperator<Ref> to) {
    boolean here = one.name().equals(sheet);
    SheetBuilder builder = Sheet.builder(here ? name : one.name());
    one.cells().forEach(placed -> {
      Ref at = here ? to.apply(placed.ref()) : placed.ref();
      builder.content(
          at.row(), at.column(), placed.cell().format(), placed.cell().stored());
      if (placed.cell().isFormula()) {
        builder.formula(
            at.row(), at.column(), respelled(placed.cell().formula(), one.name(), sheet, name, to));
      }
    });
    return builder.build();
  }

  private static String respelled(
      String formula, String own, String sheet, String name, UnaryOperator<Ref> to) {
    return Formula.of(formula)
        .respelled(new Respelling() {
          @Override
          public Node reference(Node.Reference it, boolean many) {
            String on = it.sheet().isEmpty() ? own : it.sheet();
            return on.equals(sheet) ? at(it, name, to) : it;
          }
        })
        .toFile();
  }

  private static Node at(Node.Reference it, String name, UnaryOperator<Ref> to) {
    return new Node.Reference(
        it.sheet().isEmpty() ? "" : name,
        at(it.first(), to),
        at(it.last(), to),
        it.extent(),
        it.at());
  }

  private static Node.Corner at(Node.Corner corner, UnaryOperator<Ref> to) {
    Ref ref = to.apply(new Ref(corner.row(), corner.column()));
    return new Node.Corner(ref.row(), corner.rowFixed(), ref.column(), corner.columnFixed());
  }
}
