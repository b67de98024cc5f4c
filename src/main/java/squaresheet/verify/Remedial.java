package squaresheet.verify;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import squaresheet.finding.Finding;
import squaresheet.formula.Formula;
import squaresheet.formula.Node;
import squaresheet.sheet.Address;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Content;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Workbook;
import squaresheet.takeoff.Rulebook;

/**
 * What is put where to put one finding right.
 *
 * @param cells the cells it changes
 * @param edits how
 */
record Remedial(List<Address> cells, List<Edit> edits) {

  private static final String STALE = "stale-value";

  private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

  /** Where neighbours are looked for, the nearest first. */
  private static final List<int[]> STEPS = IntStream.rangeClosed(1, 4)
      .boxed()
      .flatMap(far -> Stream.of(
          new int[] {-far, 0}, new int[] {far, 0}, new int[] {0, -far}, new int[] {0, far}))
      .toList();

  Remedial {
    cells = List.copyOf(cells);
    edits = List.copyOf(edits);
  }

  /** The formula that belongs in the cell, else the number; nothing where neither is known. */
  static Optional<Remedial> of(Book book, Rulebook rulebook, Finding finding) {
    return finding.info().id().equals(STALE)
        ? Folding.cell(finding).flatMap(cell -> again(book, finding, cell))
        : Folding.cell(finding).flatMap(cell -> put(book, rulebook, finding, cell));
  }

  /** The formula that is there, to be worked out anew; an error is not what anybody wants. */
  private static Optional<Remedial> again(Book book, Finding finding, Address cell) {
    return finding.expected().startsWith("#")
        ? Optional.empty()
        : book.formula(cell).map(formula -> one(cell, formula(cell, formula)));
  }

  private static Optional<Remedial> put(
      Book book, Rulebook rulebook, Finding finding, Address cell) {
    return finding.expected().startsWith("=")
        ? row(book, cell)
        : run(book, finding, cell)
            .or(() -> rule(book, rulebook, cell))
            .or(() -> neighbour(book, finding, cell))
            .or(() -> typed(book, finding, cell));
  }

  /** All formulas of a row that has none. */
  private static Optional<Remedial> row(Book book, Address cell) {
    List<Address> cells = new ArrayList<>();
    List<Edit> edits = new ArrayList<>();
    book.tab(cell.sheet()).tableAt(cell.ref()).ifPresent(table -> {
      int along = table.axis().along(cell.ref());
      table.fills().stream().filter(fill -> fill.cell(along).isBlank()).forEach(fill -> {
        cells.add(fill.at(along));
        edits.add(formula(fill.at(along), fill.wanted(along)));
      });
    });
    return cells.isEmpty() ? Optional.empty() : Optional.of(new Remedial(cells, edits));
  }

  private static Edit formula(Address cell, Formula formula) {
    return new Edit.SetFormula(cell, formula.toString(), new Content.Blank());
  }

  private static Remedial one(Address cell, Edit... edits) {
    return new Remedial(List.of(cell), List.of(edits));
  }

  /** The formula of the other rows, where it makes what the finding expects. */
  private static Optional<Remedial> run(Book book, Finding finding, Address cell) {
    return book.tab(cell.sheet()).tableAt(cell.ref()).flatMap(table -> table.fills().stream()
        .filter(fill -> fill.form().across() == table.axis().across(cell.ref()))
        .filter(Fill::isSound)
        .filter(fill -> !fill.hasForm(table.axis().along(cell.ref())))
        .filter(fill ->
            Shown.of(fill.expected(table.axis().along(cell.ref()))).equals(finding.expected()))
        .map(fill -> one(cell, formula(cell, fill.wanted(table.axis().along(cell.ref())))))
        .findFirst());
  }

  /** The formula of a cell close by in the same row or column, where filled in here it makes what the finding expects. */
  private static Optional<Remedial> neighbour(Book book, Finding finding, Address cell) {
    return book.cell(cell).isFormula()
        ? Optional.empty()
        : STEPS.stream()
            .map(step -> new int[] {cell.ref().row() + step[0], cell.ref().column() + step[1]})
            .filter(at -> at[0] >= 0 && at[1] >= 0)
            .map(at -> new Ref(at[0], at[1]))
            .flatMap(ref -> book
                .formula(new Address(cell.sheet(), ref))
                .map(formula -> formula.filled(ref, cell.ref()))
                .stream())
            .filter(formula ->
                Shown.of(book.reckoning().evaluate(formula, cell)).equals(finding.expected()))
            .min(Comparator.comparingLong(formula -> blanks(book, formula, cell)))
            .map(formula -> one(cell, formula(cell, formula)));
  }

  /** How many empty cells it asks for: the formula of a like item asks for none. */
  private static long blanks(Book book, Formula formula, Address cell) {
    return formula.references().stream()
        .filter(Node.Reference::isCell)
        .map(it -> new Address(
            it.sheet().isEmpty() ? cell.sheet() : it.sheet(), it.block().first()))
        .filter(at -> book.cell(at).isBlank())
        .count();
  }

  /** The rulebook's formula, where the cell bears the name of a rule of the job. */
  private static Optional<Remedial> rule(Book book, Rulebook rulebook, Address cell) {
    return book.cell(cell).isFormula()
        ? Optional.empty()
        : book.workbook().names().stream()
            .filter(name -> name.cell().filter(cell::equals).isPresent())
            .filter(
                name -> name.block().filter(it -> it.rows() * it.columns() == 1).isPresent())
            .map(Workbook.Name::name)
            .flatMap(name -> rulebook.rule(name).stream())
            .filter(it -> it.isWorkedOut())
            .flatMap(it -> rulebook.formula(it.name()).stream())
            .map(formula -> one(cell, formula(cell, formula)))
            .findFirst();
  }

  /** The number that is expected, in place of what is typed; over a formula nothing is typed. */
  private static Optional<Remedial> typed(Book book, Finding finding, Address cell) {
    Cell there = book.cell(cell);
    OptionalDouble wanted = number(finding.expected());
    if (there.isFormula() || there.isBlank() || wanted.isEmpty()) {
      return Optional.empty();
    }
    Edit put = new Edit.SetContent(cell, new Content.Numeric(wanted.getAsDouble()));
    return Optional.of(
        there.isDate() ? one(cell, put, new Edit.SetFormat(cell, "General")) : one(cell, put));
  }

  private static OptionalDouble number(String expected) {
    String bare = expected.replace(",", "").replaceAll(":12$", "");
    return NUMBER.matcher(bare).matches()
        ? OptionalDouble.of(Double.parseDouble(bare))
        : OptionalDouble.empty();
  }
}
