package squaresheet.verify;

import java.util.Optional;
import squaresheet.estimate.Category;
import squaresheet.estimate.Estimate;
import squaresheet.sheet.Address;
import squaresheet.units.Money;

/**
 * The estimate of a workbook beside the one that the terms make of its cost lines.
 *
 * @param cells as the workbook has it
 * @param model as it should be
 */
record Priced(EstimateCells cells, Estimate model) {

  static Optional<Priced> of(EstimateCells cells) {
    try {
      Estimate model = Estimate.of(
          cells.lines().stream()
              .filter(PricedLine::isCost)
              .map(PricedLine::line)
              .toList(),
          cells.terms());
      return Optional.of(new Priced(cells, model));
    } catch (IllegalArgumentException termsThatCannotBe) {
      return Optional.empty();
    }
  }

  Book book() {
    return cells.book();
  }

  Address at(String name) {
    return cells.at(name, 0).orElseThrow();
  }

  Money there(Category category) {
    return cells.lines().stream()
        .filter(line -> line.category().equals(category))
        .map(PricedLine::amount)
        .reduce(Money.zero(cells.currency()), Money::plus);
  }

  Money should(Category category) {
    return model.byCategory().getOrDefault(category, Money.zero(cells.currency()));
  }

  Money sumOfLines() {
    return cells.lines().stream()
        .map(PricedLine::amount)
        .reduce(Money.zero(cells.currency()), Money::plus);
  }

  /** The line of a category, where it has one. */
  Optional<PricedLine> line(Category category) {
    return cells.lines().stream()
        .filter(line -> line.category().equals(category))
        .findFirst();
  }
}
