package squaresheet.verify;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import squaresheet.binding.JobWorkbook;
import squaresheet.estimate.Category;
import squaresheet.estimate.PriceList;
import squaresheet.estimate.Rate;
import squaresheet.estimate.Rates;
import squaresheet.estimate.Terms;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.finding.Severity;
import squaresheet.job.Company;
import squaresheet.job.JobInput;
import squaresheet.job.JobResult;
import squaresheet.product.Catalogue;
import squaresheet.takeoff.Rule;
import squaresheet.takeoff.Rulebook;
import squaresheet.units.Money;
import squaresheet.units.Unit;

/** Whatever a company's lists hold or lack, the estimate that is written is that of the library, and nothing else is found in it. */
class WrittenEstimateTest {

  private static final Rulebook RULES = Rulebook.standard();

  private static final List<Rule> QUANTITIES =
      RULES.rules().stream().filter(rule -> rule.holds() == Rule.Holds.NUMBER).toList();

  private static final Rate.Band EVERYWHERE =
      new Rate.Band(BigDecimal.ZERO, Rate.Band.OPEN, BigDecimal.ZERO, Rate.Band.OPEN);

  private final Random random = new Random(1);

  @Property(tries = 4)
  void the_estimate_that_is_written_is_the_one_that_was_worked_out(@ForAll long seed) {
    for (int more = 0; more < Integer.getInteger("squaresheet.lists", 1); more++) {
      random.setSeed(seed + more);
      holds(company(DemoWorkbook.demo().company()));
    }
  }

  @Test
  void a_job_without_a_single_line_of_cost_is_no_circle() {
    Company demo = DemoWorkbook.demo().company();
    PriceList prices = new PriceList(Map.of());
    Rates none = new Rates(Map.of(), List.of());
    holds(new Company(new Catalogue(List.of()), RULES, prices, none, demo.terms()));
  }

  @Test
  void rates_by_the_edge_and_by_another_unit_than_the_quantitys_are_written_as_they_are_priced() {
    Company demo = DemoWorkbook.demo().company();
    List<Rate> rates = List.of(
        rate("sweep", "net_area", "0.5", "hour/square", "roofer"),
        rate("hoist", "net_area", "6.5", "$/square", ""),
        rate("line", "edge_length", "0.31", "$/ft", ""),
        rate("chalk", "edge_length", "0.02", "hour/m", "roofer"),
        rate("hoist", "", "88", "$", ""));
    Rates all = new Rates(Map.of("Roofer", dollars(46)), rates);
    Verdict verdict = holds(new Company(demo.catalogue(), RULES, demo.prices(), all, demo.terms()));
    assertThat(verdict.total()).isPresent();
  }

  private static Rate rate(String item, String of, String amount, String unit, String crew) {
    return new Rate(
        item,
        crew.isEmpty() ? Category.Known.EQUIPMENT : Category.Known.LABOUR,
        "",
        of,
        new BigDecimal(amount),
        Unit.parse(unit),
        crew,
        EVERYWHERE);
  }

  /** What is written passes with the price of the library, or is withheld where the library has an error. */
  private static Verdict holds(Company company) {
    JobInput demo = DemoWorkbook.demo();
    JobInput job = new JobInput(demo.card(), demo.roof(), company).with("eave_overhang", 18);
    Read<JobResult> result = JobResult.of(job);
    Verdict verdict = Verify.of(
        JobWorkbook.write(job, result.value().orElseThrow()).workbook(), "job.xlsx", RULES);
    assertThat(verdict.findings()).noneMatch(it -> it.info().id().equals("circular-formula"));
    if (result.findings().stream().anyMatch(Finding::isError)) {
      assertThat(verdict.isPassed()).isFalse();
      return verdict;
    }
    assertThat(verdict.findings(Severity.ERROR)).isEmpty();
    assertThat(verdict.findings(Severity.WARNING)).isEmpty();
    assertThat(verdict.total().orElseThrow().total())
        .isEqualTo(result.value().orElseThrow().estimate().total());
    return verdict;
  }

  private <T> List<T> some(List<T> all) {
    List<T> some = new ArrayList<>(all);
    Collections.shuffle(some, random);
    return some.subList(0, random.nextInt(4) == 0 ? 0 : random.nextInt(all.size() + 1));
  }

  private Company company(Company demo) {
    int lack = random.nextInt(4);
    Catalogue products =
        switch (lack) {
          case 0 -> new Catalogue(List.of());
          case 1 -> new Catalogue(some(demo.catalogue().products()));
          default -> demo.catalogue();
        };
    Map<String, Money> crews = new LinkedHashMap<>();
    some(List.of("roofer", "labourer", "Roofer 2"))
        .forEach(crew -> crews.put(crew, dollars(20 + random.nextInt(2_000))));
    List<Rate> rates = new ArrayList<>();
    for (int more = random.nextInt(8); more > 0; more--) {
      rates.add(rate(lack == 2 ? "work" : "work " + more, crews));
    }
    PriceList prices = lack == 0 ? new PriceList(Map.of()) : demo.prices();
    return new Company(products, RULES, prices, new Rates(crews, rates), terms(demo.terms()));
  }

  private static Money dollars(long amount) {
    return Money.of("USD", BigDecimal.valueOf(amount));
  }

  private Rate rate(String item, Map<String, Money> crews) {
    boolean once = random.nextInt(5) == 0;
    Rule of = QUANTITIES.get(random.nextInt(QUANTITIES.size()));
    boolean hours = random.nextBoolean() && !crews.isEmpty();
    Unit paid = Unit.parse(hours ? "hour" : "$");
    return new Rate(
        item,
        hours ? Category.Known.LABOUR : Category.Known.EQUIPMENT,
        Stream.of("", "A", "B7").skip(random.nextInt(3)).findFirst().orElseThrow(),
        once ? "" : of.name(),
        BigDecimal.valueOf(random.nextInt(4_000_000), 3),
        once ? paid : paid.over(unit(of.unit())),
        hours ? List.copyOf(crews.keySet()).get(0) : "",
        band(of.per() == Rule.Per.PLANE && !once));
  }

  /** The unit of the quantity, or another one of its kind. */
  private Unit unit(Unit unit) {
    return Stream.of("square", "in", "m", "sq in")
        .map(Unit::parse)
        .filter(other -> random.nextBoolean() && other.isLike(unit))
        .findFirst()
        .orElse(unit);
  }

  private Rate.Band band(boolean pitches) {
    boolean steep = pitches && random.nextBoolean();
    return new Rate.Band(
        BigDecimal.ZERO,
        BigDecimal.valueOf(steep ? 4 : 1000),
        BigDecimal.ZERO,
        BigDecimal.valueOf(random.nextInt(4) == 0 ? 1 : 1000));
  }

  private Terms terms(Terms demo) {
    return random.nextBoolean()
        ? demo
        : new Terms(
            demo.currency(),
            demo.overhead(),
            demo.profit(),
            demo.discount(),
            demo.tax(),
            List.of(),
            Terms.Codes.none());
  }
}
