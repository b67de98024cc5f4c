package squaresheet.verify;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import squaresheet.estimate.Category;
import squaresheet.finding.Finding;
import squaresheet.sheet.Content;
import squaresheet.units.Money;

/**
 * Amounts for whoever does the books, of one workbook or of many. Only verdicts that passed carry amounts; the others are
 * listed apart with their reasons. There is no other way to make totals.
 */
public final class Totals {

  private final List<JobTotal> jobs;
  private final List<Withheld> withheld;

  private Totals(List<JobTotal> jobs, List<Withheld> withheld) {
    this.jobs = List.copyOf(jobs);
    this.withheld = List.copyOf(withheld);
  }

  /** The totals of the verdicts that passed and whose job stands in no other; the others are withheld. */
  public static Totals of(Collection<Verdict> verdicts) {
    return of(verdicts, List.of());
  }

  /** The same beside workbooks of which there is no verdict, because they could not be read, say. */
  public static Totals of(Collection<Verdict> verdicts, Collection<Withheld> others) {
    SameJobs same = new SameJobs(verdicts);
    List<JobTotal> jobs = new ArrayList<>();
    List<Withheld> withheld = new ArrayList<>();
    for (Verdict verdict : verdicts) {
      Optional<Withheld> why =
          verdict.total().isPresent() ? same.withheld(verdict) : Optional.of(Withheld.of(verdict));
      why.ifPresentOrElse(withheld::add, () -> jobs.add(verdict.total().orElseThrow()));
    }
    withheld.addAll(others);
    return new Totals(jobs, withheld);
  }

  /** The amounts of the jobs that passed. */
  public List<JobTotal> jobs() {
    return jobs;
  }

  /** The workbooks whose amounts are not given. */
  public List<Withheld> withheld() {
    return withheld;
  }

  /** The sum of all jobs, for each currency. */
  public Map<String, Money> sums() {
    Map<String, Money> sums = new TreeMap<>();
    jobs.forEach(job -> sums.merge(job.total().currency(), job.total(), Money::plus));
    return sums;
  }

  /**
   * A table as csv: one row for each job with its amounts by category and by cost code and how much of the way to the
   * price was held against the model, then a row of sums for each currency. Amounts are plain decimals; texts are safe to open in a spreadsheet program.
   */
  public String csv() {
    List<String> codes = jobs.stream()
        .flatMap(job -> job.byCostCode().keySet().stream())
        .collect(java.util.stream.Collectors.toCollection(TreeSet::new))
        .stream()
        .toList();
    List<List<String>> rows = new ArrayList<>();
    rows.add(heading(codes));
    jobs.forEach(job -> rows.add(row(job, codes)));
    sums().keySet().forEach(currency -> rows.add(row(sum(currency), codes)));
    return Content.csv(List.of(), rows);
  }

  private JobTotal sum(String currency) {
    return jobs.stream()
        .filter(job -> job.total().currency().equals(currency))
        .reduce(JobTotal.none(currency), JobTotal::plus);
  }

  private List<String> heading(List<String> codes) {
    List<String> heading = new ArrayList<>(List.of("job", "file", "currency"));
    Stream.of(Category.Known.values()).forEach(category -> heading.add(category.toString()));
    own().forEach(word -> heading.add(isNotSplit(word) ? word : "own category " + word));
    heading.addAll(List.of("total", "held against the model"));
    codes.forEach(code -> heading.add(code.isEmpty() ? "without cost code" : "cost code " + code));
    return heading;
  }

  private List<String> row(JobTotal job, List<String> codes) {
    List<String> row =
        new ArrayList<>(List.of(job.job(), job.file(), job.total().currency()));
    Money zero = Money.zero(job.total().currency());
    Stream.of(Category.Known.values())
        .forEach(category -> row.add(plain(job.byCategory().getOrDefault(category, zero))));
    own().forEach(word -> row.add(plain(job.byOwnCategory().getOrDefault(word, zero))));
    row.add(plain(job.total()));
    row.add(job.checked());
    codes.forEach(code -> row.add(plain(job.byCostCode().getOrDefault(code, zero))));
    return row;
  }

  /** The categories that are none of ours, what is not split behind the others. */
  private List<String> own() {
    Map<String, Money> words = JobTotal.words();
    jobs.forEach(job -> words.putAll(job.byOwnCategory()));
    return words.keySet().stream()
        .sorted(Comparator.comparing(Totals::isNotSplit).thenComparing(word -> word))
        .toList();
  }

  private static boolean isNotSplit(String word) {
    return word.equals(JobTotal.NOT_SPLIT);
  }

  private static String plain(Money money) {
    return money.toCents().amount().toPlainString();
  }

  /** The workbooks whose amounts are not given, as csv: file, place, check, and why, one row for each reason. */
  public String withheldCsv() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("file", "place", "check", "why"));
    for (Withheld each : withheld) {
      each.reasons().forEach(reason -> rows.add(row(each, reason)));
    }
    return Content.csv(List.of(), rows);
  }

  private static List<String> row(Withheld each, Finding reason) {
    return List.of(each.file(), reason.where().toString(), reason.info().id(), reason.says());
  }
}
