package squaresheet.verify;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.TreeMap;
import squaresheet.estimate.Category;
import squaresheet.units.Money;

/** The amounts of one job, or of several added up; they foot to the total by category and by cost code alike. */
public final class JobTotal {

  /** What is in the price, but in none of the parts that could be told apart. */
  public static final String NOT_SPLIT = "not split";

  private final JobIdentity identity;
  private final String file;
  private final Map<Category.Known, Money> byCategory;
  private final Map<String, Money> byOwnCategory;
  private final Map<String, Money> byCostCode;
  private final Money total;
  private final String checked;

  JobTotal(
      JobIdentity identity,
      String file,
      Map<Category.Known, Money> byCategory,
      Map<String, Money> byOwnCategory,
      Map<String, Money> byCostCode,
      Money total,
      String checked) {
    this.identity = identity;
    this.file = file;
    this.checked = checked;
    this.byCategory = Collections.unmodifiableMap(byCategory);
    this.byOwnCategory = Collections.unmodifiableMap(byOwnCategory);
    this.byCostCode = Collections.unmodifiableMap(byCostCode);
    this.total = total;
  }

  static JobTotal none(String currency) {
    return new JobTotal(
        new JobIdentity("all jobs in " + currency, ""),
        "",
        new EnumMap<>(Category.Known.class),
        words(),
        new TreeMap<>(),
        Money.zero(currency),
        "");
  }

  /** The amounts of a workbook whose lines were found in order. */
  static JobTotal of(JobIdentity identity, Priced priced, MoneyPath path) {
    Map<Category.Known, Money> categories = new EnumMap<>(Category.Known.class);
    Map<String, Money> own = words();
    Map<String, Money> codes = new TreeMap<>();
    Money total = Money.zero(priced.cells().currency());
    for (PricedLine line : priced.cells().lines()) {
      if (!line.amount().isZero()) {
        add(line.category(), line.amount(), categories, own);
        codes.merge(line.code(), line.amount(), Money::plus);
        total = total.plus(line.amount());
      }
    }
    return new JobTotal(
        identity, priced.book().file(), categories, own, codes, total, path.share());
  }

  /** Adds an amount to those of our categories, or to those by a word of its owner's. */
  static void add(
      Category category,
      Money amount,
      Map<Category.Known, Money> categories,
      Map<String, Money> own) {
    if (category instanceof Category.Known known) {
      categories.merge(known, amount, Money::plus);
    } else {
      own.merge(category.toString(), amount, Money::plus);
    }
  }

  /** Amounts by a word of their owner's; the size of its letters does not count. */
  static Map<String, Money> words() {
    return new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
  }

  /** These and the amounts of another job in the same currency. */
  JobTotal plus(JobTotal other) {
    Map<Category.Known, Money> categories = new EnumMap<>(Category.Known.class);
    categories.putAll(byCategory);
    other.byCategory.forEach((category, money) -> categories.merge(category, money, Money::plus));
    Map<String, Money> codes = new TreeMap<>(byCostCode);
    other.byCostCode.forEach((code, money) -> codes.merge(code, money, Money::plus));
    Map<String, Money> own = words();
    own.putAll(byOwnCategory);
    other.byOwnCategory.forEach((word, money) -> own.merge(word, money, Money::plus));
    return new JobTotal(identity, file, categories, own, codes, total.plus(other.total), "");
  }

  /** What the job is called, with its number where it has one. */
  public String job() {
    return identity.toString();
  }

  JobIdentity identity() {
    return identity;
  }

  /** The workbook's file name. */
  public String file() {
    return file;
  }

  /** The amounts by category; those of nothing are left out. */
  public Map<Category.Known, Money> byCategory() {
    return byCategory;
  }

  /**
   * The amounts that are in none of our categories: by the estimator's own words for them, and under {@link #NOT_SPLIT} what
   * the workbook does not tell apart. With {@link #byCategory} they make the total.
   */
  public Map<String, Money> byOwnCategory() {
    return byOwnCategory;
  }

  /** How many of the formulas on the way to the price were held against the model: {@code 12 of 15 formulas}. */
  public String checked() {
    return checked;
  }

  /** The amounts by cost code; under the empty code what has none. */
  public Map<String, Money> byCostCode() {
    return byCostCode;
  }

  /** What the customer pays, tax included. */
  public Money total() {
    return total;
  }
}
