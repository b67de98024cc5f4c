package squaresheet.verify;

import java.math.BigDecimal;
import squaresheet.estimate.Category;
import squaresheet.estimate.Line;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.units.Money;

/**
 * A line of the estimate in a job workbook.
 *
 * @param estimate all of it
 * @param row 0 and up
 */
record PricedLine(EstimateCells estimate, int row) {

  /** Half a cent, and the last digits that another program's multiplication moves around it. */
  private static final BigDecimal HALF_CENT = new BigDecimal("0.0050001");

  Book book() {
    return estimate.book();
  }

  Address at(String column) {
    return estimate.at(column, row).orElseThrow();
  }

  String item() {
    return estimate.text("line_item", row);
  }

  Category category() {
    return Category.of(estimate.text("line_category", row));
  }

  String code() {
    return estimate.text("line_cost_code", row);
  }

  /** Whether it is a cost; what is put on and taken off has no quantity and price of its own. */
  boolean isCost() {
    return category().isCost();
  }

  BigDecimal number(String column) {
    return estimate.number(column, row);
  }

  Money amount() {
    return Money.of(estimate.currency(), number("line_amount")).toCents();
  }

  /** Quantity times price, rounded half up to the cent. */
  Money extended() {
    BigDecimal quantity = number("line_quantity").round(Line.Quantity.CELL);
    return Money.of(estimate.currency(), quantity.multiply(number("line_price")))
        .toCents();
  }

  /** Whether the amount is that product rounded to the cent; a product of half a cent may go either way. */
  boolean isExtended() {
    BigDecimal exact = number("line_quantity").multiply(number("line_price"));
    BigDecimal off = exact.subtract(amount().amount()).abs();
    return off.compareTo(HALF_CENT) <= 0;
  }

  /** The line as the estimate takes it. */
  Line line() {
    return new Line(category(), code(), item(), Line.Quantity.once(), amount(), amount(), "");
  }

  static Value value(Money money) {
    return new Value.Number(money.amount().doubleValue());
  }
}
