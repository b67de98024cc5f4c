package squaresheet.binding;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Draft;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Workbook;
import squaresheet.takeoff.Rulebook;
import squaresheet.verify.Totals;
import squaresheet.verify.Verdict;
import squaresheet.verify.Verify;
import squaresheet.xlsx.Existing;
import squaresheet.xlsx.Xlsx;

/** A job workbook of ours, clean and with a slip, and what people and programs do to it before it is verified again. */
class JobSurvivalTest {

  @TempDir
  Path folder;

  private static Workbook read(Path file) {
    return Xlsx.read(file).value().orElseThrow();
  }

  private static Verdict verdict(Workbook book) {
    return Verify.of(book, "job.xlsx");
  }

  private Path clean() {
    Draft draft = new JobWriter(DemoJob.parts()).write();
    Path file = folder.resolve("job.xlsx");
    assertThat(Xlsx.write(draft, file).value()).isPresent();
    return file;
  }

  /** Sixty bundles typed over the formula that makes the shingles to order. */
  private Path spoilt() {
    Path file = clean();
    Address bundles = JobWorkbook.read(read(file), "job.xlsx", Rulebook.standard())
        .value()
        .orElseThrow()
        .cells()
        .cell("job", "shingle_bundles")
        .orElseThrow();
    Edit edit = new Edit.SetContent(bundles, new Content.Numeric(60));
    assertThat(Xlsx.edit(file, List.of(edit), file, Existing.REPLACE).value()).isPresent();
    return file;
  }

  /** Rows and columns inserted, sheets renamed and reordered, by Apache POI. */
  private Path changedByAnother(Path file) throws IOException {
    Path changed = folder.resolve("changed.xlsx");
    try (InputStream in = Files.newInputStream(file);
        XSSFWorkbook book = new XSSFWorkbook(in);
        OutputStream out = Files.newOutputStream(changed)) {
      for (String name : List.of("Planes", "Takeoff", "Estimate")) {
        var sheet = book.getSheet(name);
        sheet.shiftRows(1, sheet.getLastRowNum(), 1);
      }
      book.setSheetName(book.getSheetIndex("Planes"), "Roof of '26");
      book.setSheetOrder("Estimate", 0);
      book.write(out);
    }
    return changed;
  }

  private static void isJudgedAlike(Workbook before, Workbook after) {
    Verdict one = verdict(before);
    Verdict other = verdict(after);
    assertThat(other.findings())
        .extracting(
            it -> it.info().id() + " " + it.found() + " " + it.expected() + " " + it.worth())
        .as("the order of the sheets aside")
        .containsExactlyInAnyOrderElementsOf(one.findings().stream()
            .map(it -> it.info().id() + " " + it.found() + " " + it.expected() + " " + it.worth())
            .toList());
    assertThat(other.moneyPath().modelled()).isEqualTo(one.moneyPath().modelled());
    assertThat(Totals.of(List.of(other)).csv())
        .isEqualTo(Totals.of(List.of(one)).csv());
  }

  @Test
  void rows_and_columns_inserted_and_sheets_renamed_and_reordered_change_no_total() {
    Workbook book = read(clean());
    assertThat(verdict(book).total()).isPresent();
    Workbook moved = new Moved(
            new Moved(new Moved(new Moved(book).insertRow("Estimate", 1)).insertColumn("Planes", 0))
                .insertColumn("Estimate", 2))
        .rename("Planes", "Roof of '26");
    isJudgedAlike(book, new Moved(moved).reversed());
  }

  @Test
  void a_slip_is_found_alike_after_another_library_moved_everything() throws IOException {
    Path file = spoilt();
    assertThat(verdict(read(file)).isPassed()).isFalse();
    isJudgedAlike(read(file), read(changedByAnother(file)));
  }

  @Test
  void a_job_saved_anew_by_another_program_has_the_same_totals_and_the_same_slip()
      throws IOException {
    SecondProgram.needed();
    Path clean = clean();
    Workbook saved = read(SecondProgram.resave(changedByAnother(clean)));
    isJudgedAlike(read(clean), saved);
    assertThat(saved.properties()).containsEntry(Format.JOB, "format 1");
    isJudgedAlike(read(spoilt()), read(SecondProgram.resave(spoilt())));
  }

  @Test
  void a_newer_format_is_said_and_what_is_known_is_read() {
    Path file = clean();
    Edit newer = new Edit.SetProperty(Format.JOB, "format 2");
    assertThat(Xlsx.edit(file, List.of(newer), file, Existing.REPLACE).value()).isPresent();
    var read = JobWorkbook.read(read(file), "job.xlsx", Rulebook.standard());
    assertThat(read.findings())
        .extracting(finding -> finding.where() + ": " + finding.says())
        .containsExactly(
            "job.xlsx: the format must be 1 or older to be read for certain, but is 2, of a"
                + " newer version of this program; what is known of it is read, and no totals are given,"
                + " because something may be missing");
    assertThat(read.value().orElseThrow().roof().planes()).hasSize(6);
    assertThat(verdict(read(file)).total()).isEmpty();
  }
}
