package squaresheet.verify;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import squaresheet.estimate.Category;
import squaresheet.estimate.Discount;
import squaresheet.estimate.Profit;
import squaresheet.estimate.Tax;
import squaresheet.estimate.Terms;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.units.Money;
import squaresheet.units.Ratio;

/** The priced part of a job workbook, by its defined names, with values worked out anew. */
final class EstimateCells {

  private final Book book;
  private final List<PricedLine> lines = new ArrayList<>();

  private EstimateCells(Book book) {
    this.book = book;
    Cells amounts = book.named("line_amount").orElseThrow();
    for (int row = 0; row < amounts.block().rows(); row++) {
      if (!text("line_category", row).isEmpty()) {
        lines.add(new PricedLine(this, row));
      }
    }
  }

  /** The estimate of the workbook, where it has one. */
  static Optional<EstimateCells> of(Book book) {
    boolean there = List.of(
            "line_item", "line_category", "line_amount", "estimate_total", "terms_currency")
        .stream()
        .allMatch(name -> book.named(name).isPresent());
    return there ? Optional.of(new EstimateCells(book)) : Optional.empty();
  }

  Book book() {
    return book;
  }

  List<PricedLine> lines() {
    return lines;
  }

  /** The cell of a named column in a row, or of a named cell in row 0. */
  Optional<Address> at(String name, int row) {
    return book.named(name)
        .filter(cells -> row < cells.block().rows())
        .map(cells -> new Address(cells.sheet(), cells.block().first().plus(row, 0)));
  }

  Value value(String name, int row) {
    return at(name, row).map(book::value).orElse(new Value.Blank());
  }

  String text(String name, int row) {
    return text(value(name, row));
  }

  /** The text of a code or a word; a number may be one too. */
  static String text(Value value) {
    return value instanceof Value.Text text
        ? text.value().strip()
        : value instanceof Value.Number number ? Shown.plain(number.value()) : "";
  }

  BigDecimal number(String name, int row) {
    return value(name, row) instanceof Value.Number number
        ? BigDecimal.valueOf(number.value())
        : BigDecimal.ZERO;
  }

  Money money(String name) {
    return Money.of(currency(), number(name, 0)).toCents();
  }

  /** The currency; where the reader of the terms could not read it, the one that it takes instead. */
  String currency() {
    String code = text("terms_currency", 0);
    try {
      return Money.zero(code).currency();
    } catch (IllegalArgumentException unknown) {
      return "USD";
    }
  }

  /**
   * The terms as typed.
   *
   * @throws IllegalArgumentException with a sentence, where they cannot be
   */
  Terms terms() {
    return termsWithout("");
  }

  /**
   * The terms as typed, with nothing in the place of one of them.
   *
   * @throws IllegalArgumentException with a sentence, where the others cannot be
   */
  Terms termsWithout(String name) {
    Ratio rate = term("profit_rate", name);
    Profit profit = text("profit_kind", 0).equalsIgnoreCase("margin")
        ? new Profit.Margin(rate)
        : new Profit.Markup(rate);
    Discount discount = new Discount(
        term("discount_share", name),
        Money.of(currency(), term("discount_amount", name).value()),
        !text("discount_when", 0).equalsIgnoreCase("after tax"));
    return new Terms(
        currency(),
        term("overhead_rate", name),
        profit,
        discount,
        new Tax(term("tax_rate", name), taxed(), Set.of(), rounding()),
        shares(),
        new Terms.Codes(
            text("overhead_code", 0),
            text("profit_code", 0),
            text("discount_code", 0),
            text("tax_code", 0)));
  }

  private Ratio term(String name, String without) {
    return name.equals(without) ? Ratio.ZERO : new Ratio(number(name, 0));
  }

  private Tax.RoundingPoint rounding() {
    return text("tax_rounding", 0).equalsIgnoreCase("line")
        ? Tax.RoundingPoint.LINE
        : Tax.RoundingPoint.INVOICE;
  }

  private Set<Category> taxed() {
    return rows("tax_category")
        .filter(row -> text("tax_applies", row).equalsIgnoreCase("yes"))
        .mapToObj(row -> Category.of(text("tax_category", row)))
        .collect(Collectors.toSet());
  }

  private List<Terms.Share> shares() {
    List<Terms.Share> shares = rows("payment_share")
        .filter(row -> number("payment_share", row).signum() > 0)
        .mapToObj(row ->
            new Terms.Share(text("payment_when", row), new Ratio(number("payment_share", row))))
        .toList();
    BigDecimal sum = shares.stream()
        .map(share -> share.share().value())
        .reduce(BigDecimal.ZERO, BigDecimal::add);
    return sum.compareTo(BigDecimal.ONE) == 0 ? shares : List.of();
  }

  private IntStream rows(String name) {
    return IntStream.range(
        0, book.named(name).map(cells -> cells.block().rows()).orElse(0));
  }
}
