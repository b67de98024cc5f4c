package squaresheet.estimate;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.product.Catalogue;
import squaresheet.units.Money;

/**
 * The company's rates: what an hour of each crew costs, and hours or money by the unit of work. Text form: a table.
 *
 * @param crews name of a crew to the loaded rate of its hour: wage, insurance, taxes on wages
 * @param rates the rates, in the order of the table
 */
public record Rates(Map<String, Money> crews, List<Rate> rates) {

  private static final Table.Shape SHAPE = new Table.Shape(
      "the table of rates",
      Complaints.RATE_NOT_READ,
      List.of("item", "category", "quantity", "amount", "unit", "crew"),
      List.of(
          "pitch_from_in_per_12",
          "pitch_below_in_per_12",
          "stories_from",
          "stories_below",
          "cost_code",
          "source",
          "note"));

  public Rates {
    crews = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(crews));
    rates = List.copyOf(rates);
  }

  /**
   * What one unit of each item comes to on a plane of this pitch; an item for which no rate, or more than one, fits is left
   * out.
   *
   * @param rise per 12
   */
  public Map<Rate, BigDecimal> at(double rise, double stories) {
    Map<String, List<Rate>> items = rates.stream()
        .filter(rate -> rate.band().holdsPitch(rise) && rate.band().holdsStories(stories))
        .collect(Collectors.groupingBy(Rate::item, LinkedHashMap::new, Collectors.toList()));
    Map<Rate, BigDecimal> costs = new LinkedHashMap<>();
    items.values().stream().filter(fitting -> fitting.size() == 1).forEach(fitting -> {
      Rate rate = fitting.get(0);
      BigDecimal hour = rate.isHours() && crews.containsKey(rate.crew())
          ? crews.get(rate.crew()).amount()
          : BigDecimal.ONE;
      costs.put(rate, rate.amount().multiply(hour));
    });
    return costs;
  }

  /** Reads a table of rates in this currency. Rates that cannot be read are left out and said. */
  public static Read<Rates> read(String text, String file, String currency) {
    return read(Table.read(text, file, SHAPE), currency);
  }

  /** The same of rows that stand elsewhere, such as on a sheet. */
  public static Read<Rates> read(List<Catalogue.Row> rows, Where table, String currency) {
    return read(Table.of(rows, table, SHAPE), currency);
  }

  private static Read<Rates> read(Read<List<Table.Line>> table, String currency) {
    if (table.value().isEmpty()) {
      return Read.nothing(table.findings());
    }
    Map<String, Money> crews = new LinkedHashMap<>();
    List<Rate> rates = new ArrayList<>();
    List<Finding> findings = new ArrayList<>(table.findings());
    for (Table.Line line : table.value().get()) {
      RateReader reader = new RateReader(line);
      if (reader.isCrew()) {
        reader
            .number("amount", BigDecimal.ZERO)
            .ifPresent(amount -> crews.put(line.text("item"), Money.of(currency, amount)));
      } else {
        reader.rate().ifPresent(rates::add);
      }
      findings.addAll(reader.findings());
    }
    return Read.of(new Rates(crews, rates), findings);
  }
}
