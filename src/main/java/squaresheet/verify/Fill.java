package squaresheet.verify;

import java.util.Optional;
import java.util.stream.IntStream;
import squaresheet.finding.Fix;
import squaresheet.formula.Formula;
import squaresheet.formula.Node;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Ref;

/**
 * A run: one property of a table whose formula was filled along the items.
 *
 * @param table the table
 * @param form the formula's form
 */
record Fill(Table table, Table.Form form) {

  /** A run with fewer of its items on one form is no run: several rules may share the column. */
  private static final double MOST = 0.6;

  Tab tab() {
    return table.tab();
  }

  Book book() {
    return table.tab().book();
  }

  Address at(int along) {
    return table.at(along, form.across());
  }

  Ref ref(int along) {
    return table.ref(along, form.across());
  }

  Cell cell(int along) {
    return tab().cell(ref(along));
  }

  boolean hasForm(int along) {
    Ref ref = ref(along);
    return book()
        .formula(tab().at(ref))
        .map(formula -> formula.relative(ref).toString().equals(form.text()))
        .orElse(false);
  }

  /** Whether enough items share the form for the others to be called exceptions. */
  boolean isSound() {
    return form.count() >= 2 && table.size() >= 3 && form.count() >= MOST * table.size();
  }

  /** The items whose cell has something else than the form. */
  IntStream exceptions() {
    return table.items().filter(along -> !hasForm(along));
  }

  Formula sample() {
    return book().formula(at(form.sample())).orElseThrow();
  }

  /** The formula the item would have. */
  Formula wanted(int along) {
    return sample().filled(ref(form.sample()), ref(along));
  }

  /** What that formula would come to. */
  Value expected(int along) {
    return book().reckoning().evaluate(wanted(along), at(along));
  }

  /** The item's formula put back. */
  Fix fix(int along) {
    return Fix.formula(at(along), wanted(along).toFile());
  }

  /** Whether each item's formula reads the item before it, as in a running total, whose first item is a seed. */
  boolean isChain() {
    Address here = at(form.sample());
    return Nodes.all(sample().tree(), Node.Reference.class)
        .filter(Node.Reference::isCell)
        .map(reference -> book().references().cells(reference, here))
        .flatMap(Optional::stream)
        .anyMatch(cells -> cells.sheet().equals(tab().name())
            && table.axis().across(cells.block().first()) == form.across()
            && table.axis().along(cells.block().first()) == form.sample() - 1);
  }

  /** Whether the item is the seed of a chain. */
  boolean isSeed(int along) {
    return along == table.first() && isChain();
  }

  String heading() {
    return tab().heading(ref(table.first()), table.axis());
  }

  /** How a sentence speaks of the others: {@code the 11 other rows}. */
  String others() {
    int count = form.count();
    return "the " + count + " other " + table.axis().line() + (count == 1 ? "" : "s");
  }
}
