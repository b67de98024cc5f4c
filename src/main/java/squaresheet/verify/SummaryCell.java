package squaresheet.verify;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import squaresheet.formula.Formula;
import squaresheet.formula.Node;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Sheet;

/**
 * A cell of a sheet that is read and printed, the job at a glance or the lines to snap, which only repeats what another sheet
 * works out.
 *
 * @param book the workbook
 * @param at the cell
 * @param label what the row is called
 * @param right the formula that a workbook written from the model has here
 */
record SummaryCell(Book book, Address at, String label, Formula right) {

  /** A sheet of which more cells are off than this share was laid out anew by its owner. */
  private static final double MOST = 0.5;

  /** As long with every job; of a sheet that grows with the roof, rows that nothing is called like are left out. */
  private static final String GLANCE = "Summary";

  private static final List<String> SHEETS = List.of(GLANCE, "Layout");

  /** The cells of those sheets, found by what their rows are called. */
  static Stream<SummaryCell> of(Model model) {
    return SHEETS.stream().flatMap(sheet -> of(model, sheet));
  }

  private static Stream<SummaryCell> of(Model model, String sheet) {
    List<SummaryCell> all = new ArrayList<>();
    model.written().flatMap(book -> tab(book, sheet)).ifPresent(written -> sheet(
            model.book(), written)
        .ifPresent(there -> rows(written, there, all)));
    long off = all.stream().filter(SummaryCell::isOff).count();
    return off > MOST * all.size() ? Stream.empty() : all.stream();
  }

  private static Optional<Tab> tab(Book book, String name) {
    return book.tabs().stream().filter(tab -> tab.name().equals(name)).findFirst();
  }

  /** The sheet of that name, or else the one that calls most rows alike. */
  private static Optional<Tab> sheet(Book book, Tab written) {
    return tab(book, written.name()).or(() -> book.tabs().stream()
        .max(Comparator.comparingLong(tab -> alike(tab, written)))
        .filter(tab -> alike(tab, written) * 2 > labels(written).count()));
  }

  private static long alike(Tab tab, Tab written) {
    List<String> there = labels(tab).map(placed -> text(tab, placed.ref())).toList();
    return labels(written).filter(it -> there.contains(text(written, it.ref()))).count();
  }

  /** The first column. */
  private static Stream<Sheet.Placed> labels(Tab tab) {
    return tab.sheet().cells().filter(placed -> placed.ref().column() == 0);
  }

  private static String text(Tab tab, Ref ref) {
    return tab.book().value(tab.at(ref)) instanceof Value.Text text
        ? text.value().strip()
        : "";
  }

  private static void rows(Tab written, Tab there, List<SummaryCell> all) {
    int moved = 0;
    for (Sheet.Placed label : labels(written).toList()) {
      String name = text(written, label.ref());
      if (!written.name().equals(GLANCE)
          && labels(there).noneMatch(it -> text(there, it.ref()).equals(name))) {
        continue;
      }
      int row = row(there, name, label.ref().row() + moved);
      moved = row - label.ref().row();
      int down = moved;
      written
          .sheet()
          .row(label.ref().row())
          .filter(placed -> placed.cell().isFormula())
          .filter(placed -> isRepeat(written, placed.ref()))
          .forEach(placed -> written
              .book()
              .formula(written.at(placed.ref()))
              .map(right ->
                  new SummaryCell(there.book(), there.at(placed.ref().plus(down, 0)), name, right))
              .filter(cell -> cell.isOfThisBook(written))
              .ifPresent(all::add));
    }
  }

  /** Whether the formula is made of names alone, which mean the same wherever the row has gone. */
  private static boolean isRepeat(Tab written, Ref ref) {
    return written
        .book()
        .formula(written.at(ref))
        .filter(formula -> Nodes.any(formula.tree(), Node.Name.class::isInstance))
        .filter(formula -> !Nodes.any(formula.tree(), Node.Reference.class::isInstance))
        .isPresent();
  }

  /** The row of that name nearest to where it should be; where none is, that place. */
  private static int row(Tab there, String name, int near) {
    return labels(there)
        .filter(placed -> text(there, placed.ref()).equals(name))
        .map(placed -> placed.ref().row())
        .min(Comparator.comparingInt(row -> Math.abs(row - near)))
        .orElse(near);
  }

  /** A sheet that only the workbook written anew has, such as that of the rows not read, is not repeated here. */
  private boolean isOfThisBook(Tab written) {
    return Nodes.all(right.tree(), Node.Name.class)
        .map(Node.Name::name)
        .filter(name -> book.named(name).isEmpty())
        .flatMap(name -> written.book().named(name).stream())
        .allMatch(cells -> tab(book, cells.first().sheet()).isPresent());
  }

  /** What it should show of what the other sheets work out, right or wrong. */
  Value should() {
    return book.reckoning().evaluate(right, at);
  }

  Value there() {
    return book.value(at);
  }

  boolean isFormula() {
    return book.cell(at).isFormula();
  }

  /** Whether it shows something else, or the same by a number that stays behind, or by chance. */
  boolean isOff() {
    boolean silent = book.cell(at).isBlank() || !should().isChecked() || isNamedByItsOwner();
    return !silent && (!isFormula() || isElsewhere() || !(isSame() || isRounded()));
  }

  /** Whether it is what the row is called, in other words; a caution in that place is none. */
  private boolean isNamedByItsOwner() {
    return at.ref().column() == 0 && !isFormula() && !Nodes.isCall(right.tree(), "IF");
  }

  boolean isSame() {
    return Shown.near(should(), there());
  }

  /** Whether the formula does not come to the cell that it repeats, neither straight nor by way of others. */
  private boolean isElsewhere() {
    return right.tree() instanceof Node.Name name
        && book.named(name.name())
            .filter(cells -> !book.links().dependents(List.of(cells.first())).contains(at))
            .isPresent();
  }

  /** A price rounded for the customer is meant so where the formula says it. */
  private boolean isRounded() {
    return book.formula(at)
        .map(Formula::tree)
        .filter(tree -> Nodes.isCall(tree, "ROUND", "ROUNDUP", "ROUNDDOWN", "CEILING", "MROUND"))
        .map(tree -> book.reckoning().evaluate(tree.parts().get(0), at))
        .filter(value -> Shown.near(should(), value))
        .isPresent();
  }
}
