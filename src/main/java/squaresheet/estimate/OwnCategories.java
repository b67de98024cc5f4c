package squaresheet.estimate;

import java.util.List;
import java.util.stream.Stream;
import squaresheet.finding.Finding;
import squaresheet.finding.Neighbours;
import squaresheet.finding.Where;

/**
 * The categories that are a company's own: whether one is taxed nobody knows but the terms, so they must name it, and they must
 * tax none that nothing is of, since that is rather a slip of spelling.
 *
 * @param prices the company's prices
 * @param rates its rates
 * @param tax what its terms tax
 */
record OwnCategories(PriceList prices, Rates rates, Tax tax) {

  private static final List<String> OURS =
      Category.costs().stream().map(Category::toString).toList();

  List<Finding> of(List<Line> lines) {
    return Stream.concat(untold(lines), unused()).toList();
  }

  private Stream<Finding> untold(List<Line> lines) {
    return lines.stream()
        .map(Line::category)
        .filter(category -> !tax.knows(category))
        .distinct()
        .map(category -> says(
            category,
            "category must be one of " + String.join(", ", OURS)
                + ", or one of your own of which the terms say whether it is taxed, but reads '"
                + category
                + "'" + Neighbours.sentence(category.toString(), OURS)));
  }

  private Stream<Finding> unused() {
    List<Category> used = Stream.concat(
            prices.prices().values().stream().map(PriceList.Price::category),
            rates.rates().stream().map(Rate::category))
        .toList();
    return tax.own().stream()
        .filter(category -> tax.taxed().contains(category) && !used.contains(category))
        .map(category -> says(
            category,
            "a category that is taxed must be one of " + String.join(", ", OURS)
                + ", or stand in the prices or rates, but '" + category + "' does neither"
                + Neighbours.sentence(category.toString(), OURS)));
  }

  private static Finding says(Category category, String sentence) {
    return new Finding(
        Complaints.CATEGORY_NOT_ON_TERMS, new Where.OfItem("category " + category, ""), sentence);
  }
}
