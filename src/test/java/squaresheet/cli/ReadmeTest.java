package squaresheet.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import squaresheet.binding.FieldNotes;
import squaresheet.binding.FieldSheet;
import squaresheet.binding.JobWorkbook;
import squaresheet.estimate.PriceList;
import squaresheet.estimate.Rates;
import squaresheet.estimate.Terms;
import squaresheet.job.Company;
import squaresheet.job.JobInput;
import squaresheet.job.JobResult;
import squaresheet.job.Unread;
import squaresheet.product.Catalogue;
import squaresheet.takeoff.Rulebook;
import squaresheet.verify.Totals;
import squaresheet.verify.Verdict;
import squaresheet.verify.Verify;
import squaresheet.xlsx.Xlsx;

/** The README's example, its commands and its links hold. */
class ReadmeTest {

  @TempDir
  Path folder;

  private String path() throws IOException {
    // from here to the mark the lines are those of the README
    Company company = new Company(
        Catalogue.read(Path.of("demo-data/products.csv")).value().orElseThrow(),
        Rulebook.standard(),
        PriceList.read(Files.readString(Path.of("demo-data/prices.csv")), "prices.csv", "USD")
            .value()
            .orElseThrow(),
        Rates.read(Files.readString(Path.of("demo-data/rates.csv")), "rates.csv", "USD")
            .value()
            .orElseThrow(),
        Terms.read(Files.readString(Path.of("demo-data/terms.csv")), "terms.csv")
            .value()
            .orElseThrow());
    FieldNotes notes = FieldSheet.read(
            Files.readString(Path.of("demo-data/tape-sheet.csv")), "tape-sheet.csv", Locale.US)
        .value()
        .orElseThrow();
    JobInput input = notes
        .job(company)
        .value()
        .orElseThrow()
        .answered("Skylight?", Unread.Answer.LEFT_OUT, "it is on the neighbour's roof");
    JobResult result = JobResult.of(input).value().orElseThrow();
    Path file = folder.resolve("alder-lane.xlsx");
    Xlsx.write(JobWorkbook.write(input, result, notes), file);
    Verdict verdict = Verify.of(Xlsx.read(file).value().orElseThrow(), "alder-lane.xlsx");
    String totals = Totals.of(List.of(verdict)).csv();
    // mark
    assertThat(verdict.findings())
        .allMatch(finding -> finding.info().severity() == squaresheet.finding.Severity.NOTE);
    return totals;
  }

  @Test
  void its_library_example_gives_totals() throws IOException {
    assertThat(path()).contains("Alder Lane house");
  }

  @Test
  void its_library_example_is_the_code_that_is_run_and_under_fifteen_statements()
      throws IOException {
    String readme = Files.readString(Path.of("README.md"));
    Matcher block = Pattern.compile("```java\n(.*?)```", Pattern.DOTALL).matcher(readme);
    assertThat(block.find()).isTrue();
    String test = Files.readString(Path.of("src/test/java/squaresheet/cli/ReadmeTest.java"));
    assertThat(bare(test)).contains(bare(block.group(1)));
    assertThat(block.group(1).chars().filter(each -> each == ';').count()).isLessThan(15);
  }

  private static String bare(String code) {
    return code.replaceAll("\\s+", "");
  }

  @Test
  void its_links_lead_somewhere() throws IOException {
    Matcher links =
        Pattern.compile("\\]\\(([^)#:]+)\\)").matcher(Files.readString(Path.of("README.md")));
    while (links.find()) {
      assertThat(Path.of(links.group(1))).exists();
    }
  }

  @Test
  void its_table_names_every_command() throws IOException {
    String readme = Files.readString(Path.of("README.md"));
    for (String command :
        List.of("import", "bind", "verify", "totals", "explain", "draw", "blank", "demo")) {
      assertThat(readme).contains("| `" + command + " ");
      Ran help = Ran.of(command, "--help");
      assertThat(help.exit()).isZero();
      assertThat(help.out()).contains("Example: squaresheet " + command);
    }
  }
}
