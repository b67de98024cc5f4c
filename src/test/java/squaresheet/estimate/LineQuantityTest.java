package squaresheet.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import squaresheet.estimate.Line.Quantity;
import squaresheet.units.Money;
import squaresheet.units.Unit;

class LineQuantityTest {

  @Test
  void a_hair_under_a_half_cent_that_only_a_double_makes_still_rounds_up() {
    // 29.4725 hours at 46.00 are 1355.735, half up 1355.74 (worked by hand); as a double sum it may
    // be a hair less
    Quantity hours = new Quantity(new BigDecimal("29.472499999999997"), Unit.parse("hour"));
    Line line = Line.extended(
        Category.Known.LABOUR, "", "lay", hours, Money.of("USD", new BigDecimal("46")), "by hand");
    assertThat(line.amount()).isEqualTo(Money.of("USD", new BigDecimal("1355.74")));
  }

  @Test
  void a_quantity_that_is_really_less_than_the_half_cent_rounds_down() {
    Quantity hours = new Quantity(new BigDecimal("29.47249"), Unit.parse("hour"));
    Line line = Line.extended(
        Category.Known.LABOUR, "", "lay", hours, Money.of("USD", new BigDecimal("46")), "by hand");
    assertThat(line.amount()).isEqualTo(Money.of("USD", new BigDecimal("1355.73")));
  }
}
