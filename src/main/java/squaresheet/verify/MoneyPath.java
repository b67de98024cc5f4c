package squaresheet.verify;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import squaresheet.formula.Node;
import squaresheet.sheet.Address;

/**
 * How much of the way from the typed cells to what is ordered and charged was checked.
 *
 * @param formulas how many formulas stand on the way
 * @param workedOut how many of them were worked out by a second engine
 * @param modelled how many of them were held against the model of the job
 * @param notChecked the cells on the way, and bound columns, that no model was held against, each with why; of a job
 *     workbook of ours none, whose every formula has a check of its own
 */
public record MoneyPath(int formulas, int workedOut, int modelled, List<String> notChecked) {

  /** Takes a copy of what is not checked. */
  public MoneyPath {
    notChecked = List.copyOf(notChecked);
  }

  /** The way in a workbook of foreign layout, as far as it is bound. */
  static MoneyPath of(Book book, BookModel model) {
    Set<Address> way = way(book, ends(book, Optional.empty()));
    Set<Address> held = model.held();
    Set<Address> left = new LinkedHashSet<>();
    way.stream().filter(cell -> !held.contains(cell) && !repeats(book, cell)).forEach(left::add);
    return new MoneyPath(
        way.size(),
        (int) way.stream().filter(cell -> book.value(cell).isChecked()).count(),
        (int) way.stream().filter(held::contains).count(),
        new NotChecked(book, model).of(left));
  }

  /** Whether a cell only repeats another, so that nothing can be wrong in it but what it points to. */
  private static boolean repeats(Book book, Address cell) {
    return book.formula(cell)
        .filter(formula -> formula.tree() instanceof Node.Reference reference && reference.isCell())
        .isPresent();
  }

  static MoneyPath of(Book book, Optional<Model> model) {
    Set<Address> way = way(book, ends(book, model));
    int workedOut =
        (int) way.stream().filter(cell -> book.value(cell).isChecked()).count();
    int modelled = (int) way.stream()
        .filter(cell -> model.filter(it -> it.cells().containsKey(cell)).isPresent())
        .count();
    return new MoneyPath(way.size(), workedOut, modelled, List.of());
  }

  /** What is ordered and charged, or else every formula that no other reads. */
  private static List<Address> ends(Book book, Optional<Model> model) {
    List<Address> ends = new ArrayList<>();
    model.stream()
        .flatMap(it -> it.cells().values().stream())
        .filter(it -> !it.rule().orders().isEmpty())
        .map(Modelled::at)
        .forEach(ends::add);
    book.named("estimate_total").ifPresent(total -> ends.add(total.first()));
    return ends.isEmpty()
        ? book.formulas().keySet().stream()
            .filter(cell -> !book.links().isRead(cell))
            .toList()
        : ends;
  }

  /** The formulas that these cells come from, over whatever steps, themselves included. */
  static Set<Address> way(Book book, List<Address> ends) {
    return book.links().behind(ends);
  }

  /** How much of the way was held against the model: {@code 12 of 15 formulas}. */
  String share() {
    return modelled + " of " + Says.count(formulas, "formula");
  }

  /** Whether every formula on the way was worked out. */
  public boolean isWhole() {
    return workedOut == formulas;
  }

  @Override
  public String toString() {
    return "of " + Says.count(formulas, "formula") + " on the way to what is ordered and charged, "
        + workedOut + " worked out anew, " + modelled + " held against the model";
  }
}
