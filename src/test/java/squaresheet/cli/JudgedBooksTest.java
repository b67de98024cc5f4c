package squaresheet.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import squaresheet.binding.JobWorkbook;
import squaresheet.judge.made.Calculator;
import squaresheet.judge.made.Layouts;
import squaresheet.judge.made.MadeBook;
import squaresheet.judge.own.OwnBooks;
import squaresheet.judge.slip.Faults;
import squaresheet.sheet.Workbook;
import squaresheet.verify.Verdict;
import squaresheet.verify.Verify;
import squaresheet.xlsx.Xlsx;

/** What the judge hears of a made workbook is what the command says of its file. */
class JudgedBooksTest {

  @TempDir
  Path folder;

  @Test
  void a_job_workbook_is_judged_as_one_after_another_program_saved_it() throws IOException {
    assumeTrue(Calculator.isHere(), "soffice is not on the path: job workbooks are not judged");
    MadeBook made = OwnBooks.book(3, folder);
    Path file = Files.write(folder.resolve("own.xlsx"), made.file());
    Workbook workbook = Xlsx.read(file).value().orElseThrow();
    Verdict verdict = Verify.of(workbook, "own.xlsx");
    assertThat(JobWorkbook.isOne(workbook)).isTrue();
    assertThat(verdict.total()).isPresent();
    assertThat(verdict.tallies().stream()
            .filter(tally -> tally.check().id().equals("value-off-model"))
            .mapToInt(tally -> tally.asked())
            .sum())
        .as("cells held against the model")
        .isGreaterThan(300);
    assertThat(Ran.of("verify", file.toString()).out())
        .contains("own.xlsx: 0 findings", "totals can be given");
  }

  @Test
  void what_is_said_of_a_spoilt_workbook_is_what_the_command_says() throws IOException {
    MadeBook made = Layouts.book("one flat sheet", 3);
    int told = 0;
    for (int kind = 0; kind < 8; kind++) {
      for (Faults.Pending pending : Faults.one(made, kind, 3).stream().toList()) {
        byte[] bytes = Calculator.LIBRARY.calculated(List.of(pending.file())).get(0);
        Path file = Files.write(folder.resolve("spoilt.xlsx"), bytes);
        Verdict verdict = Verify.of(Xlsx.read(file).value().orElseThrow(), "spoilt.xlsx");
        String said = Ran.of("verify", file.toString()).out();
        assertThat(verdict.findings()).allSatisfy(finding -> assertThat(said)
            .contains(finding.where() + "  [" + finding.info().id() + "]"));
        told += verdict.findings().size();
      }
    }
    assertThat(told).isGreaterThan(3);
  }
}
