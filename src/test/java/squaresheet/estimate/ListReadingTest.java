package squaresheet.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;

/** The lists of a company: nothing in them is passed over in silence. */
class ListReadingTest {

  private static final String PRICES = "product,price,per";
  private static final String RATES = "item,category,quantity,amount,unit,crew";

  private static String file(String... lines) {
    return String.join("\n", lines) + "\n";
  }

  private static List<String> said(Read<?> read) {
    return read.findings().stream().map(ListReadingTest::said).toList();
  }

  private static String said(Finding finding) {
    return finding.where() + ": " + finding.says();
  }

  @Test
  void a_column_that_a_list_does_not_have_is_said() {
    Read<PriceList> prices =
        PriceList.read(file(PRICES + ",kategory,note", "a,1,roll,disposal,"), "prices.csv", "USD");
    Read<Rates> rates = Rates.read(
        file(RATES + ",storeys_from,supplier", "permit,permit,,9,$,,2,"), "rates.csv", "USD");
    Read<Terms> terms = Terms.read(file("name,value,code", "overhead,12%,A"), "terms.csv");
    assertThat(Stream.of(prices, rates, terms).map(Read::value)).allMatch(it -> it.isPresent());
    assertThat(said(prices))
        .containsExactly(
            "prices.csv: no column 'kategory' of the price list, so it is not read; nearest: 'category'");
    assertThat(said(rates))
        .containsExactly(
            "rates.csv: no column 'storeys_from' of the table of rates, so it is not read; nearest:"
                + " 'stories_from', 'stories_below'",
            "rates.csv: no column 'supplier' of the table of rates, so it is not read; nearest: 'quantity'");
    assertThat(said(terms))
        .containsExactly(
            "terms.csv: no column 'code' of the terms, so it is not read; nearest: 'cost_code',"
                + " 'note'");
  }

  @Test
  void the_columns_of_the_demo_lists_are_all_known() {
    assertThat(PriceList.read(
                file(PRICES + ",category,cost_code,effective,source,note", "a,1,roll,,,,,"),
                "p",
                "USD")
            .findings())
        .isEmpty();
    assertThat(Terms.read(file("name,value,cost_code,note", "overhead,12%,A,"), "t")
            .findings())
        .isEmpty();
  }

  @Test
  void what_stands_twice_counts_once_and_is_said_where_it_stands_again() {
    Read<Rates> rates = Rates.read(
        file(
            RATES,
            "roofer,crew,,46,$/hour,",
            "Roofer,crew,,99,$/hour,",
            "lift,equipment,,80,$,",
            "sweep,labour,plane_squares,1,hour/square,roofer",
            "Sweep,labour,plane_squares,2,hour/square,roofer",
            "sweep,labour,net_area,2,hour/square,roofer"),
        "rates.csv",
        "USD");
    Read<PriceList> prices =
        PriceList.read(file(PRICES, "nail,1,box", "Nail,2,box"), "prices.csv", "USD");
    assertThat(said(rates))
        .containsExactly(
            "rates.csv, line 3, item: the crew Roofer must stand once, but stands above already",
            "rates.csv, line 6, item: the rate of Sweep for one band must stand once, but stands above already");
    assertThat(rates.value().orElseThrow().crews()).hasToString("{roofer=USD 46}");
    assertThat(rates.value().orElseThrow().rates()).hasSize(3);
    assertThat(said(prices))
        .containsExactly(
            "prices.csv, line 3, price: the price of Nail must stand once, but stands above already");
    assertThat(prices.value().orElseThrow().prices().get("nail").amount()).hasToString("USD 1");
  }

  @Test
  void a_line_without_its_key_and_a_crew_paid_by_something_else_are_said() {
    Read<Rates> rates = Rates.read(
        file(
            RATES,
            "roofer,crew,,368,$/day,",
            ",crew,,46,$/hour,",
            ",permit,,185,$,",
            "labourer,crew,,33.50,USD/hour,"),
        "rates.csv",
        "USD");
    Read<PriceList> prices = PriceList.read(file(PRICES, ",1,box"), "prices.csv", "USD");
    Read<Terms> terms = Terms.read(file("name,value", "payment: ,100%"), "terms.csv");
    assertThat(said(rates))
        .containsExactly(
            "rates.csv, line 2, unit: roofer: unit must be $/hour for a crew, but reads '$/day'",
            "rates.csv, line 3, item: item must be named, but is empty",
            "rates.csv, line 4, item: item must be named, but is empty");
    assertThat(said(prices))
        .containsExactly(
            "prices.csv, line 2, price: the product of a price must be named, but is empty");
    assertThat(said(terms))
        .containsExactly("terms.csv, line 2, name: no term 'payment:'; nearest: 'payment: …'");
  }
}
