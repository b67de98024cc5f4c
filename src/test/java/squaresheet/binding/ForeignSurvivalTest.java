package squaresheet.binding;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.Workbook;
import squaresheet.verify.Verdict;
import squaresheet.verify.Verify;
import squaresheet.xlsx.Existing;
import squaresheet.xlsx.Xlsx;

/** A foreign workbook with its binding kept in it, and what people and programs do to it before it is verified again. */
class ForeignSurvivalTest {

  @TempDir
  Path folder;

  private static Workbook read(Path file) {
    return Xlsx.read(file).value().orElseThrow();
  }

  /** The demo with its binding kept, and 309 typed for five rolls at 78. */
  private Path kept() throws java.io.IOException {
    Path file = Files.copy(Path.of("demo-data/birch-court.xlsx"), folder.resolve("birch.xlsx"));
    List<Edit> edits = new ArrayList<>(AnyLayout.of(read(file), "birch.xlsx").store());
    edits.add(new Edit.SetContent(Address.of("Bid", "E7"), new Content.Numeric(309)));
    assertThat(Xlsx.edit(file, edits, file, Existing.REPLACE).value()).isPresent();
    return file;
  }

  private static void isJudgedAsBefore(Workbook before, Workbook after) {
    Verdict one = Verify.of(before, "birch.xlsx");
    Verdict other = Verify.of(after, "birch.xlsx");
    assertThat(one.isPassed()).isFalse();
    assertThat(other.findings())
        .extracting(
            it -> it.info().id() + " " + it.found() + " " + it.expected() + " " + it.worth())
        .isEqualTo(one.findings().stream()
            .map(it -> it.info().id() + " " + it.found() + " " + it.expected() + " " + it.worth())
            .toList());
    assertThat(other.moneyPath().modelled()).isEqualTo(one.moneyPath().modelled());
    assertThat(other.moneyPath().notChecked()).hasSameSizeAs(one.moneyPath().notChecked());
  }

  @Test
  void renamed_and_reordered_sheets_and_inserted_rows_and_columns_get_the_same_verdict()
      throws java.io.IOException {
    Workbook book = read(kept());
    Workbook moved = new Moved(
            new Moved(new Moved(book).insertRow("Takeoff", 1)).insertColumn("Takeoff", 0))
        .rename("Takeoff", "Roof of '26");
    isJudgedAsBefore(book, new Moved(moved).reversed());
  }

  @Test
  void a_workbook_saved_by_another_program_gets_the_same_verdict() throws java.io.IOException {
    SecondProgram.needed();
    Path file = kept();
    isJudgedAsBefore(read(file), read(SecondProgram.resave(file)));
  }

  @Test
  void a_workbook_whose_binding_was_deleted_is_guessed_anew_and_says_so()
      throws java.io.IOException {
    Workbook kept = read(kept());
    List<Sheet> left =
        kept.sheets().stream().filter(sheet -> !StoredBinding.isOne(sheet)).toList();
    Workbook book = new Workbook(
        left,
        kept.names(),
        kept.date1904(),
        kept.calculation(),
        kept.externalLinks(),
        kept.properties());
    assertThat(Verify.of(book, "birch.xlsx").findings())
        .extracting(finding -> finding.info().id())
        .contains("binding-is-gone");
    assertThat(AnyLayout.of(book, "birch.xlsx").read().findings())
        .extracting(finding -> finding.where() + ": " + finding.says())
        .contains(
            "birch.xlsx: the workbook was bound once, but the hidden sheet 'Squaresheet binding'"
                + " with the binding is gone; what its cells are is guessed anew, so look it over with bind"
                + " and keep it again");
    assertThat(AnyLayout.of(book, "birch.xlsx").bound()).isNotEmpty();
  }

  @Test
  void a_binding_of_a_newer_format_is_said_and_read_as_far_as_known() throws java.io.IOException {
    Path file = kept();
    Edit newer = new Edit.SetContent(
        Address.of(StoredBinding.SHEET, "A1"), new Content.Text("squaresheet binding, format 3"));
    assertThat(Xlsx.edit(file, List.of(newer), file, Existing.REPLACE).value()).isPresent();
    AnyLayout layout = AnyLayout.of(read(file), "birch.xlsx");
    assertThat(layout.bound()).isNotEmpty();
    assertThat(layout.read().findings())
        .extracting(finding -> finding.where() + ": " + finding.says())
        .anyMatch(says ->
            says.startsWith("birch.xlsx, 'Squaresheet binding'!A1: the format must be 1 or older"));
  }
}
