package squaresheet.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.product.Catalogue;
import squaresheet.units.Money;

/** Every list of a company reads numbers alike: with a decimal point, and commas between thousands. */
class NumbersInListsTest {

  private static Read<PriceList> prices(String number) {
    return PriceList.read(
        "product,price,per\nbox," + quoted(number) + ",box\n", "prices.csv", "USD");
  }

  private static Read<Rates> rates(String number) {
    return Rates.read(
        "item,category,amount,unit,quantity,crew\nPermit,permit," + quoted(number) + ",$,job,\n",
        "rates.csv",
        "USD");
  }

  private static Read<Terms> terms(String number) {
    return Terms.read("name,value\ndiscount_amount," + quoted(number) + "\n", "terms.csv");
  }

  private static Read<Catalogue> products(String number) {
    return Catalogue.read(
        "id,kind,pack,pieces_per_pack,length_in\nn,nail,box," + quoted(number) + ",1 1/4\n",
        "products.csv");
  }

  private static String quoted(String number) {
    return '"' + number + '"';
  }

  @Test
  void a_comma_sets_thousands_apart_in_each_of_them() {
    BigDecimal number = new BigDecimal("1200");
    assertThat(prices("1,200").value().orElseThrow().prices().get("box").amount())
        .isEqualTo(Money.of("USD", number));
    assertThat(rates("1,200").value().orElseThrow().rates().get(0).amount()).isEqualTo(number);
    assertThat(terms("1,200").value().orElseThrow().discount().amount())
        .isEqualTo(Money.of("USD", number));
    assertThat(
            products("1,200").value().orElseThrow().products().get(0).packing().pieces())
        .isEqualTo(1200);
  }

  @ParameterizedTest
  @ValueSource(strings = {"7,48", "12f", "0x1p3", "1e3", "-5", "two", "NaN", "1,20", "10%"})
  void what_is_no_such_number_is_said_in_each_of_them(String number) {
    for (Read<?> read : List.of(prices(number), rates(number), terms(number), products(number))) {
      assertThat(read.findings())
          .anySatisfy(finding -> assertThat(finding.says()).contains(number));
      assertThat(read.findings()).anyMatch(Finding::isError);
    }
  }
}
