package squaresheet.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import squaresheet.estimate.Tax.RoundingPoint;
import squaresheet.finding.Read;
import squaresheet.reference.Reference;
import squaresheet.reference.Reference.Row;
import squaresheet.units.Money;
import squaresheet.units.Ratio;

class EstimateTest {

  private static final List<Category.Known> COSTS =
      java.util.Arrays.stream(Category.Known.values()).filter(Category::isCost).toList();

  private static Money dollars(String amount) {
    return Money.of("USD", new BigDecimal(amount));
  }

  private static Line line(Category category, String code, String amount) {
    return Line.extended(category, code, "item", Line.Quantity.once(), dollars(amount), "test");
  }

  private static Terms terms(String overhead, String profit, Discount discount, Tax tax) {
    List<Terms.Share> thirds = List.of(
        new Terms.Share("first", Ratio.parse("33.33%")),
        new Terms.Share("second", Ratio.parse("33.33%")),
        new Terms.Share("last", Ratio.parse("33.34%")));
    return new Terms(
        "USD",
        Ratio.parse(overhead),
        Profit.parse(profit),
        discount,
        tax,
        thirds,
        Terms.Codes.none());
  }

  private static Tax tax(String rate, RoundingPoint point) {
    return new Tax(Ratio.parse(rate), Set.of(Category.Known.MATERIAL), Set.of(), point);
  }

  @TestFactory
  Stream<DynamicTest> sales_tax_rounds_half_up_to_the_cent_as_published() {
    return Reference.rows("unit-conversions.csv").stream()
        .filter(row -> row.quantity().equals("tax rounding to the cent"))
        .map(row -> dynamicTest(row.toString(), () -> assertThat(taxOf(row).amount())
            .as(row.source())
            .isEqualByComparingTo(row.published())));
  }

  /** Either the tax itself before rounding, or an amount and a rate. */
  private static Money taxOf(Row row) {
    double[] numbers = Row.numbers(row.inputs());
    String rate =
        numbers.length > 1 ? BigDecimal.valueOf(numbers[1]).toPlainString() + "%" : "100%";
    return tax(rate, RoundingPoint.INVOICE)
        .on(
            List.of(dollars(BigDecimal.valueOf(numbers[0]).toPlainString())),
            "USD",
            RoundingPoint.INVOICE);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # cost   | profit      | price    | worked by hand
      10000    | markup 25%  | 12500.00 | 10000 x 1.25
      10000    | margin 25%  | 13333.33 | 10000 / 0.75
      10000    | margin 20%  | 12500.00 | 10000 / 0.80: the markup of 25 %
      0        | margin 20%  | 0.00     | nothing from nothing
      """)
  void markup_is_on_the_cost_and_margin_of_the_price(
      String cost, String profit, String price, String source) {
    assertThat(Profit.parse(profit).priceOf(dollars(cost)).toCents())
        .as(source)
        .isEqualTo(dollars(price));
  }

  @Test
  void markup_and_margin_are_told_apart() {
    assertThat(Profit.parse("markup 25%").toMargin().stated()).isEqualTo(Ratio.parse("20%"));
    assertThat(Profit.parse("margin 20%").toMarkup().stated()).isEqualTo(Ratio.parse("25%"));
  }

  @Test
  void tax_rounded_on_lines_and_on_the_invoice_differ_and_both_are_shown() {
    // 7.25 % of 10.10 is 0.73225: three lines of 0.73 make 2.19, the sum 30.30 makes 2.19675, that
    // is 2.20: by hand
    List<Line> lines = List.of(
        line(Category.Known.MATERIAL, "a", "10.10"),
        line(Category.Known.MATERIAL, "a", "10.10"),
        line(Category.Known.MATERIAL, "b", "10.10"),
        line(Category.Known.LABOUR, "b", "100"));
    Estimate byLine = Estimate.of(
        lines, terms("0%", "markup 0%", Discount.none("USD"), tax("7.25%", RoundingPoint.LINE)));
    Estimate byInvoice = Estimate.of(
        lines, terms("0%", "markup 0%", Discount.none("USD"), tax("7.25%", RoundingPoint.INVOICE)));
    assertThat(byLine.total()).isEqualTo(dollars("132.49"));
    assertThat(byInvoice.total()).isEqualTo(dollars("132.50"));
    assertThat(byInvoice.taxes().difference()).isEqualTo(dollars("-0.01"));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # before tax | discount | tax   | total  | worked by hand: 100 of material, 10 % off, 10 % tax
      true         | -10.00   | 9.00  | 99.00  | tax on 90
      false        | -11.00   | 10.00 | 99.00  | 10 % off 110
      """)
  void a_discount_comes_off_before_tax_or_after(
      boolean before, String discount, String tax, String total, String source) {
    Discount off = new Discount(Ratio.parse("10%"), Money.zero("USD"), before);
    Estimate estimate = Estimate.of(
        List.of(line(Category.Known.MATERIAL, "a", "100")),
        terms("0%", "markup 0%", off, tax("10%", RoundingPoint.INVOICE)));
    assertThat(estimate.byCategory().get(Category.Known.DISCOUNT))
        .as(source)
        .isEqualTo(dollars(discount));
    assertThat(estimate.byCategory().get(Category.Known.TAX)).as(source).isEqualTo(dollars(tax));
    assertThat(estimate.total()).as(source).isEqualTo(dollars(total));
  }

  @Property(tries = 300)
  void any_estimate_foots_and_cross_foots_and_its_payments_make_the_total(
      @ForAll @Size(min = 1, max = 30) List<@IntRange(min = 0, max = 5_000_000) Integer> cents,
      @ForAll @IntRange(min = 0, max = 4000) int overhead,
      @ForAll @IntRange(min = 0, max = 6000) int profit,
      @ForAll @IntRange(min = 0, max = 5000) int off,
      @ForAll boolean margin,
      @ForAll boolean beforeTax,
      @ForAll RoundingPoint point) {
    List<Line> lines = IntStream.range(0, cents.size())
        .mapToObj(i -> line(
            COSTS.get(i % 6),
            "code " + i % 4,
            BigDecimal.valueOf(cents.get(i), 2).toPlainString()))
        .toList();
    Discount discount = new Discount(percent(off), Money.zero("USD"), beforeTax);
    Profit put = margin ? new Profit.Margin(percent(profit)) : new Profit.Markup(percent(profit));
    Terms terms = terms("0%", "markup 0%", discount, tax("7.25%", point));
    Estimate estimate = Estimate.of(
        lines,
        new Terms(
            "USD", percent(overhead), put, discount, terms.tax(), terms.payments(), terms.codes()));
    long total = sum(estimate.lines().stream().map(Line::amount));
    assertThat(cents(estimate.total())).isEqualTo(total);
    assertThat(sum(estimate.byCategory().values().stream())).isEqualTo(total);
    assertThat(sum(estimate.byCostCode().values().stream())).isEqualTo(total);
    assertThat(sum(estimate.payments().stream().map(Estimate.Payment::amount))).isEqualTo(total);
    assertThat(cents(estimate.cost()))
        .isEqualTo(cents.stream().mapToLong(Integer::longValue).sum());
    assertThat(Math.abs(cents(estimate.taxes().difference())))
        .isLessThanOrEqualTo(cents.size() / 2 + 1);
  }

  private static Ratio percent(int hundredths) {
    return new Ratio(BigDecimal.valueOf(hundredths, 4));
  }

  private static long cents(Money money) {
    return money.amount().setScale(2, RoundingMode.UNNECESSARY).unscaledValue().longValueExact();
  }

  private static long sum(Stream<Money> amounts) {
    return amounts.mapToLong(EstimateTest::cents).sum();
  }

  @Test
  void terms_that_cannot_be_read_are_said_each_in_a_sentence() {
    Read<Terms> read = Terms.read("""
        name,value
        profit,25%
        tax_on,material||labour
        tax_raet,7%
        payment: on signing,30%
        payment: at the end,60%
        """, "terms.csv");
    assertThat(read.value()).isEmpty();
    assertThat(read.findings())
        .extracting(finding -> finding.where() + ": " + finding.says())
        .containsExactly(
            "terms.csv, line 4, name: no term 'tax_raet'; nearest: 'tax_rate', 'tax_on'",
            "terms.csv, line 2, value: profit: profit must read like markup 25% or margin 20%, but reads '25%'",
            "terms.csv, line 3, value: tax_on: categories must read like material|equipment, but one of 'material||labour' is empty",
            "terms.csv: the shares of the payments must total 100%, but total 90%");
  }
}
