package squaresheet.verify;

import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import squaresheet.estimate.Category;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.units.Money;

/** Is a line of the estimate in a category that is none of ours? */
final class CategoryOfYourOwn implements Check<EstimateCells> {

  private static final CheckInfo INFO = new CheckInfo(
      "category-of-your-own", Severity.NOTE, "A category is none of ours and is summed apart");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(EstimateCells cells) {
    Map<Category, Money> sums = new TreeMap<>(Category.order());
    cells.lines().stream()
        .filter(line -> line.category() instanceof Category.Own)
        .forEach(line -> sums.merge(line.category(), line.amount(), Money::plus));
    return sums.entrySet().stream().map(sum -> says(cells, sum.getKey(), sum.getValue()));
  }

  private static Finding says(EstimateCells cells, Category category, Money sum) {
    PricedLine first = cells.lines().stream()
        .filter(line -> line.category().equals(category))
        .findFirst()
        .orElseThrow();
    String says = "is in the category '" + category + "', which is none of ours; its lines, "
        + sum.show() + ", are summed apart under that word";
    return Says.about(INFO, cells.book(), first.at("line_category"), says);
  }
}
