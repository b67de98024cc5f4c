package squaresheet.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import squaresheet.binding.BoundJob;
import squaresheet.binding.JobWorkbook;
import squaresheet.job.JobResult;
import squaresheet.sheet.Content;
import squaresheet.sheet.Workbook;
import squaresheet.takeoff.Rulebook;
import squaresheet.xlsx.Xlsx;

/**
 * One job has one price, to the cent: the one that import prints, the workbook as our engine and as another engine work it
 * out, the library over what the workbook holds, and totals. Over random jobs: 50 in the build, 1,000 with the profile
 * {@code long}; {@code -Dsquaresheet.jobs.from=7 -Dsquaresheet.jobs=1} repeats one.
 */
class OnePriceTest {

  /** A rate above it is withheld, wherever it comes from. */
  private static final double MOST_WASTE = 0.5;

  private static final int USUAL = 50;

  /** How many jobs; with more than the usual ones totals and typed settings are asked of every one, not of every tenth. */
  private static final int JOBS = Integer.getInteger("squaresheet.jobs", USUAL);

  private static final Pattern PRINTED = Pattern.compile("Price, tax included: ([\\d,.]+) USD");
  private static final Pattern TOTALLED = Pattern.compile("total of 1 job: ([\\d,.]+) USD");

  @TempDir
  Path folder;

  @BeforeEach
  void company() throws IOException {
    for (String list : List.of("products.csv", "prices.csv", "rates.csv")) {
      Files.copy(Path.of("demo-data", list), folder.resolve(list));
    }
  }

  private static BigDecimal money(Pattern pattern, Ran ran) {
    Matcher found = pattern.matcher(ran.out());
    assertThat(found.find()).as(ran.all()).isTrue();
    return new BigDecimal(found.group(1).replace(",", ""));
  }

  private static BigDecimal cents(double number) {
    return new BigDecimal(Double.toString(number)).setScale(2, RoundingMode.HALF_UP);
  }

  private Map<String, BigDecimal> prices(RandomJob job, boolean all) throws IOException {
    Path sheet = folder.resolve("sheet.csv");
    Path book = folder.resolve("book.xlsx");
    Files.writeString(sheet, job.sheet());
    Files.writeString(folder.resolve("terms.csv"), job.terms());
    Files.deleteIfExists(book);
    Ran imported = Ran.of("import", sheet.toString(), "-o", book.toString());
    assertThat(imported.exit()).as(imported.all()).isZero();
    Map<String, BigDecimal> prices = new LinkedHashMap<>();
    prices.put("import", money(PRINTED, imported));
    prices.putAll(pricesOf(book, all));
    return prices;
  }

  /** The same workbook after settings were typed into it in another program. */
  private Map<String, BigDecimal> pricesWithSettings(RandomJob job) throws IOException {
    Path book = folder.resolve("book.xlsx");
    try (OtherProgram program = OtherProgram.open(book)) {
      job.settings().forEach((name, value) -> type(program.cell(name), value));
      program.save();
    }
    return pricesOf(book, true);
  }

  private static void type(Cell cell, Object value) {
    if (cell.getCellType() == CellType.FORMULA) {
      return; // on a metric job the length is typed in a cell beside it
    }
    if (value instanceof Number number) {
      cell.setCellValue(number.doubleValue());
    } else {
      cell.setCellValue(value.toString());
    }
  }

  private static Map<String, BigDecimal> pricesOf(Path file, boolean all) throws IOException {
    Workbook book = Xlsx.read(file).value().orElseThrow();
    Map<String, BigDecimal> prices = new LinkedHashMap<>();
    var total =
        book.cell(book.name("estimate_total").flatMap(Workbook.Name::cell).orElseThrow());
    prices.put("our engine", cents(((Content.Numeric) total.stored()).value()));
    BoundJob bound =
        JobWorkbook.read(book, file.toString(), Rulebook.standard()).value().orElseThrow();
    JobResult result = JobResult.of(bound.input()).value().orElseThrow();
    prices.put("library", result.estimate().total().amount().setScale(2));
    try (OtherProgram program = OtherProgram.open(file)) {
      prices.put("other engine", cents(program.recalculate().number("estimate_total")));
    }
    if (all) {
      boolean isWithheld = result.takeoff().number("waste_rate").orElseThrow() > MOST_WASTE;
      Ran totals = Ran.of("totals", file.toString());
      assertThat(totals.exit()).as(totals.all()).isEqualTo(isWithheld ? 3 : 0);
      if (isWithheld) {
        assertThat(totals.all()).contains("the waste rate must be a ratio from 0 to 0.5");
      } else {
        prices.put("totals", money(TOTALLED, totals));
      }
    }
    return prices;
  }

  @Test
  void a_job_has_one_price() {
    int from = Integer.getInteger("squaresheet.jobs.from", 1);
    List<String> wrong = new ArrayList<>();
    for (int seed = from; seed < from + JOBS; seed++) {
      String job = "job " + seed + ": ";
      differing(seed).ifPresent(it -> wrong.add(job + it));
    }
    assertThat(wrong).as(wrong.size() + " of " + JOBS).isEmpty();
  }

  private Optional<String> differing(int seed) {
    RandomJob job = new RandomJob(seed);
    try {
      boolean all = Boolean.getBoolean("squaresheet.jobs.all") || JOBS > USUAL || seed % 10 == 0;
      Optional<String> asWritten = differing(prices(job, all));
      return asWritten.isPresent() || !all
          ? asWritten
          : differing(pricesWithSettings(job)).map(it -> it + " with " + job.settings());
    } catch (IOException | RuntimeException | AssertionError broken) {
      return Optional.of(broken.toString());
    }
  }

  private static Optional<String> differing(Map<String, BigDecimal> prices) {
    return prices.values().stream().distinct().count() > 1
        ? Optional.of(prices.toString())
        : Optional.empty();
  }
}
