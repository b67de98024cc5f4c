package squaresheet.estimate;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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

  /**
   * A crew as listed.
   *
   * @param name what rates call it by
   * @param hour what an hour of it costs, loaded
   * @param where the place of its name
   */
  public record Crew(String name, Money hour, Where where) {}

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
    List<Rate> fitting = rates.stream()
        .filter(rate -> rate.band().holdsPitch(rise) && rate.band().holdsStories(stories))
        .toList();
    Map<Rate, BigDecimal> costs = new LinkedHashMap<>();
    works(fitting).stream().filter(one -> one.size() == 1).forEach(one -> {
      Rate rate = one.get(0);
      BigDecimal hour =
          hour(rate.isHours() ? rate.crew() : "").map(Money::amount).orElse(BigDecimal.ONE);
      costs.put(rate, rate.amount().multiply(hour));
    });
    return costs;
  }

  /** The rates that share a work between them: those of one item and quantity. */
  static Collection<List<Rate>> works(List<Rate> rates) {
    return rates.stream()
        .collect(Collectors.groupingBy(
            rate -> List.of(rate.item(), rate.quantity()), LinkedHashMap::new, Collectors.toList()))
        .values();
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
    List<Crew> crews = new ArrayList<>();
    List<Rate> rates = new ArrayList<>();
    List<Finding> findings = new ArrayList<>(table.findings());
    for (Table.Line line : table.value().get()) {
      RateReader reader = new RateReader(line);
      if (reader.isCrew()) {
        reader.crew(currency).ifPresent(crews::add);
      } else {
        reader.rate().ifPresent(rates::add);
      }
      findings.addAll(reader.findings());
    }
    Read<Rates> once = once(crews, rates);
    findings.addAll(once.findings());
    return Read.of(once.value().orElseThrow(), findings);
  }

  /** Crews and rates as listed. What stands twice counts as it stands first, and is said where it stands again. */
  public static Read<Rates> once(List<Crew> crews, List<Rate> rates) {
    List<Finding> findings = new ArrayList<>();
    Map<String, Money> hours = new LinkedHashMap<>();
    for (Crew crew : crews) {
      if (hours.keySet().stream().anyMatch(crew.name()::equalsIgnoreCase)) {
        findings.add(twice(crew.where(), "the crew " + crew.name()));
      } else {
        hours.put(crew.name(), crew.hour());
      }
    }
    List<Rate> kept = new ArrayList<>();
    for (Rate rate : rates) {
      if (kept.stream().anyMatch(rate::isTwiceOf)) {
        findings.add(twice(rate.at("item"), "the rate of " + rate.item() + " for one band"));
      } else {
        kept.add(rate);
      }
    }
    return Read.of(new Rates(hours, kept), findings);
  }

  private static Finding twice(Where where, String what) {
    return new Finding(
        Complaints.RATE_NOT_READ, where, what + " must stand once, but stands above already");
  }

  /** What an hour of a crew costs; spreadsheets take its name in any letter case. */
  Optional<Money> hour(String crew) {
    return crews.entrySet().stream()
        .filter(entry -> entry.getKey().equalsIgnoreCase(crew))
        .map(Map.Entry::getValue)
        .findFirst();
  }
}
