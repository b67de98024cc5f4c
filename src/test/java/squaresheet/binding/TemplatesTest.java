package squaresheet.binding;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import squaresheet.job.JobCard;
import squaresheet.job.JobInput;
import squaresheet.job.JobResult;
import squaresheet.roof.PlaneNotes;
import squaresheet.roof.PlaneNotes.Measured;
import squaresheet.roof.RoofNotes;
import squaresheet.roof.Shape;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Draft;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.Workbook;
import squaresheet.units.Length;
import squaresheet.units.Pitch;
import squaresheet.xlsx.Existing;
import squaresheet.xlsx.Xlsx;

/** Keeps the files in {@code workbooks} in step with the code; {@code -Dsquaresheet.rewrite.templates=true} writes them anew. */
class TemplatesTest {

  private static final Path FOLDER = Path.of("workbooks");

  private static Map<String, Draft> templates() {
    RoofNotes roof = RoofNotes.of(plane("Front"), plane("Back"));
    JobInput example =
        new JobInput(JobCard.of("Name of the job"), roof, DemoJob.input().company());
    return Templates.all(example, JobResult.of(example).value().orElseThrow());
  }

  private static PlaneNotes plane(String id) {
    Shape shape = new Shape.Rectangle(Length.of(40, 0), Length.of(15, 0));
    return new PlaneNotes(id, shape, Measured.ON_SLOPE, Pitch.of(6));
  }

  @Test
  void the_files_hold_what_the_code_draws() throws Exception {
    if (Boolean.getBoolean("squaresheet.rewrite.templates")) {
      Files.createDirectories(FOLDER);
      templates()
          .forEach((name, draft) -> Xlsx.write(draft, FOLDER.resolve(name), Existing.REPLACE));
    }
    List<String> differ = new ArrayList<>();
    templates().forEach((name, draft) -> {
      Workbook file = Xlsx.read(FOLDER.resolve(name)).value().orElseThrow();
      Workbook drawn = draft.workbook();
      if (!cells(file).equals(cells(drawn))
          || !names(file).equals(names(drawn))
          || !validations(file).equals(validations(drawn))) {
        differ.add(name);
      }
    });
    assertThat(differ)
        .as("run the tests with -Dsquaresheet.rewrite.templates=true to write them anew")
        .isEmpty();
  }

  /** Without those that programs keep for printing. */
  private static List<String> names(Workbook book) {
    return book.names().stream()
        .filter(name -> !name.name().startsWith("_xlnm"))
        .map(name -> name.name() + "=" + name.text())
        .sorted()
        .toList();
  }

  /** What may be typed where. */
  private static Map<String, List<String>> validations(Workbook book) {
    Map<String, List<String>> validations = new LinkedHashMap<>();
    for (Sheet sheet : book.sheets()) {
      validations.put(
          sheet.name(),
          sheet.validations().stream().map(Sheet.Validation::toString).sorted().toList());
    }
    return validations;
  }

  /** Pictures are left out: their letters depend on the machine's fonts. */
  private static Map<String, Cell> cells(Workbook book) {
    Map<String, Cell> cells = new LinkedHashMap<>();
    for (Sheet sheet : book.sheets()) {
      sheet
          .cells()
          .filter(placed -> !placed.cell().isBlank())
          .forEach(placed -> cells.put(sheet.name() + "!" + placed.ref(), placed.cell()));
    }
    return cells;
  }

  @Test
  void the_blank_job_reads_back_without_a_word() throws Exception {
    Workbook file = Xlsx.read(FOLDER.resolve("blank-job.xlsx")).value().orElseThrow();
    assertThat(
            JobWorkbook.read(file, "blank-job.xlsx", DemoJob.input().company().rulebook())
                .findings())
        .isEmpty();
  }
}
