package squaresheet.binding;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import squaresheet.estimate.Category;
import squaresheet.estimate.Discount;
import squaresheet.estimate.PriceList;
import squaresheet.estimate.Profit;
import squaresheet.estimate.Rate;
import squaresheet.estimate.Rates;
import squaresheet.estimate.Tax;
import squaresheet.estimate.Terms;
import squaresheet.finding.OwnWords;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.units.Money;
import squaresheet.units.Ratio;
import squaresheet.units.Unit;

/** Reads the prices, rates and terms of a job workbook. */
final class PricingReader {

  private static final double OPEN = Rate.Band.OPEN.doubleValue();

  private final NamedRows rows;
  private final String currency;

  PricingReader(NamedRows rows) {
    this.rows = rows;
    this.currency = currency();
  }

  Pricing read() {
    return new Pricing(prices(), rates(), terms());
  }

  private String currency() {
    String text = rows.text("terms_currency");
    try {
      return Money.zero(text).currency();
    } catch (IllegalArgumentException unknown) {
      rows.says(
          rows.where("terms_currency"),
          "currency must be an ISO 4217 code like USD, but reads '" + text
              + "'; amounts are taken as USD");
      return "USD";
    }
  }

  private PriceList prices() {
    Map<String, PriceList.Price> prices = new LinkedHashMap<>();
    for (int row : rows.rows("price_product", "the products of the price list")) {
      String product = rows.text(row, "price_product");
      Optional<BigDecimal> amount = rows.amount(row, "price_amount", "the price of " + product);
      Optional<Category> category = category(row, "price_category");
      if (amount.isPresent() && category.isPresent()) {
        PriceList.Price price = new PriceList.Price(
            Money.of(currency, amount.get()),
            rows.text(row, "price_per"),
            rows.text(row, "price_cost_code"),
            category.get(),
            rows.text(row, "price_quoted"),
            rows.where(row, "price_amount"));
        if (!PriceList.add(prices, product, price)) {
          rows.says(
              rows.where(row, "price_product"),
              "the price of " + product + " must stand once, but stands above already");
        }
      }
    }
    return new PriceList(prices);
  }

  private Optional<Category> category(int row, String column) {
    String text = rows.text(row, column);
    Optional<Category> category =
        Optional.of(Category.of(text)).filter(it -> it.isCost() && !text.isEmpty());
    if (category.isEmpty()) {
      rows.says(
          rows.where(row, column),
          "category must be one of " + String.join(", ", PricesSheet.costs()) + ", but reads '"
              + text + "'");
    }
    return category;
  }

  private Rates rates() {
    List<Rates.Crew> crews = new ArrayList<>();
    for (int row : rows.rows("crew_name", "the crews")) {
      String crew = rows.text(row, "crew_name");
      Where where = rows.where(row, "crew_name");
      rows.amount(row, "crew_rate", "the hour of " + crew)
          .ifPresent(amount -> crews.add(new Rates.Crew(crew, Money.of(currency, amount), where)));
    }
    List<Rate> rates = new ArrayList<>();
    for (int row : rows.rows("rate_item", "the rates")) {
      rate(row).ifPresent(rates::add);
    }
    Read<Rates> once = Rates.once(crews, rates);
    once.findings().forEach(rows::says);
    return once.value().orElseThrow();
  }

  private Optional<Rate> rate(int row) {
    String item = rows.text(row, "rate_item");
    Optional<Category> category = category(row, "rate_category");
    Optional<BigDecimal> amount = rows.amount(row, "rate_amount", "the rate of " + item);
    Optional<Unit> unit = unit(row);
    if (category.isEmpty() || amount.isEmpty() || unit.isEmpty()) {
      return Optional.empty();
    }
    return band(row, item)
        .map(band -> new Rate(
            item,
            category.get(),
            rows.text(row, "rate_cost_code"),
            rows.text(row, "rate_quantity"),
            amount.get(),
            unit.get(),
            rows.text(row, "rate_crew"),
            band,
            part -> rows.where(row, "rate_" + part)));
  }

  private Optional<Rate.Band> band(int row, String item) {
    Optional<BigDecimal> from = bound(row, "rate_pitch_from", item, 0);
    Optional<BigDecimal> below = bound(row, "rate_pitch_below", item, OPEN);
    Optional<BigDecimal> low = bound(row, "rate_stories_from", item, 0);
    Optional<BigDecimal> high = bound(row, "rate_stories_below", item, OPEN);
    return from.isPresent() && below.isPresent() && low.isPresent() && high.isPresent()
        ? Optional.of(new Rate.Band(from.get(), below.get(), low.get(), high.get()))
        : Optional.empty();
  }

  private Optional<BigDecimal> bound(int row, String column, String item, double open) {
    return rows.text(row, column).isEmpty()
        ? Optional.of(decimal(open))
        : rows.amount(row, column, "the band of " + item).map(it -> decimal(it.doubleValue()));
  }

  /** Without a needless {@code .0}. */
  private static BigDecimal decimal(double value) {
    BigDecimal plain = BigDecimal.valueOf(value).stripTrailingZeros();
    return plain.scale() < 0 ? plain.setScale(0) : plain;
  }

  private Optional<Unit> unit(int row) {
    String text = rows.text(row, "rate_unit");
    try {
      return Optional.of(Unit.parse(text));
    } catch (IllegalArgumentException unreadable) {
      rows.says(rows.where(row, "rate_unit"), OwnWords.of(unreadable));
      return Optional.empty();
    }
  }

  private Terms terms() {
    Terms.Codes codes = new Terms.Codes(
        rows.text("overhead_code"),
        rows.text("profit_code"),
        rows.text("discount_code"),
        rows.text("tax_code"));
    try {
      return new Terms(
          currency,
          ratio("overhead_rate", "overhead"),
          profit(),
          discount(),
          tax(),
          shares(),
          codes);
    } catch (IllegalArgumentException refused) {
      rows.says(rows.whereSummed("payment_share"), OwnWords.of(refused));
      return new Terms(
          currency,
          ratio("overhead_rate", "overhead"),
          profit(),
          discount(),
          tax(),
          List.of(),
          codes);
    }
  }

  private Ratio ratio(String name, String what) {
    return rows.amount(name, what).map(Ratio::new).orElse(Ratio.ZERO);
  }

  private Profit profit() {
    Ratio rate = ratio("profit_rate", "the profit rate");
    try {
      return rows.text("profit_kind").equalsIgnoreCase("margin")
          ? new Profit.Margin(rate)
          : new Profit.Markup(rate);
    } catch (IllegalArgumentException refused) {
      rows.says(rows.where("profit_rate"), OwnWords.of(refused));
      return new Profit.Markup(Ratio.ZERO);
    }
  }

  private Discount discount() {
    Ratio share = ratio("discount_share", "the discount");
    BigDecimal amount = rows.amount("discount_amount", "the discount").orElse(BigDecimal.ZERO);
    boolean before = !rows.text("discount_when").equalsIgnoreCase("after tax");
    try {
      return new Discount(share, Money.of(currency, amount), before);
    } catch (IllegalArgumentException refused) {
      rows.says(rows.where("discount_share"), OwnWords.of(refused));
      return Discount.none(currency);
    }
  }

  private Tax tax() {
    Map<Category, String> applies = new HashMap<>();
    for (int row : rows.rows("tax_category", "the taxed categories")) {
      Category category = Category.of(rows.text(row, "tax_category"));
      if (!category.isBeforeDiscount()) {
        rows.says(rows.where(row, "tax_category"), "no tax is levied on " + category);
      } else if (applies.putIfAbsent(category, rows.text(row, "tax_applies")) != null) {
        rows.says(
            rows.where(row, "tax_category"),
            "category must stand once, but '" + category + "' stands above already");
      }
    }
    Tax.RoundingPoint point = rows.text("tax_rounding").equalsIgnoreCase("line")
        ? Tax.RoundingPoint.LINE
        : Tax.RoundingPoint.INVOICE;
    return new Tax(
        ratio("tax_rate", "the tax rate"), which(applies, "yes"), which(applies, "no"), point);
  }

  private static Set<Category> which(Map<Category, String> applies, String answer) {
    return applies.entrySet().stream()
        .filter(entry -> entry.getValue().equalsIgnoreCase(answer))
        .map(Map.Entry::getKey)
        .collect(Collectors.toSet());
  }

  private List<Terms.Share> shares() {
    List<Terms.Share> shares = new ArrayList<>();
    for (int row : rows.rows("payment_when", "the payments")) {
      rows.amount(row, "payment_share", "the share of a payment")
          .ifPresent(share ->
              shares.add(new Terms.Share(rows.text(row, "payment_when"), new Ratio(share))));
    }
    return shares;
  }
}
