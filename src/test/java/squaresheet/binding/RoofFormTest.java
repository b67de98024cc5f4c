package squaresheet.binding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import squaresheet.job.JobResult;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Workbook;
import squaresheet.xlsx.Existing;
import squaresheet.xlsx.Xlsx;

/** The blank form of the demo data, filled from its tape sheet. */
class RoofFormTest {

  private static final Path FORM = Path.of("demo-data/roof-form.xlsx");

  @TempDir
  Path folder;

  private JobResult job;
  private Workbook book;

  @BeforeEach
  void read() {
    job = JobResult.of(DemoJob.input()).value().orElseThrow();
    book = Xlsx.read(FORM).value().orElseThrow();
  }

  private static double number(Workbook book, String cell) {
    return ((Content.Numeric) book.cell(Address.of("Takeoff", cell)).stored()).value();
  }

  @Test
  void another_program_works_out_the_models_numbers_in_it() throws IOException {
    SecondProgram.needed();
    Path full = folder.resolve("full.xlsx");
    Filled filled = AnyLayout.of(book, "roof-form.xlsx").fillWithLayout(job, "");
    Xlsx.edit(FORM, filled.edits(), full, Existing.REFUSE);
    Workbook after = Xlsx.read(SecondProgram.resave(full)).value().orElseThrow();
    // by hand: front 44 x 15' 7 13/16" less a notch of 20 x 11' 2 3/16" / 2; back 44 x 15' 7
    // 13/16";
    // wings twice 14 and end 20 / 2 by 11' 2 3/16"; porch 16 x 8' 2 15/16"
    double high = 15 + (7 + 13 / 16.0) / 12;
    double wing = 11 + (2 + 3 / 16.0) / 12;
    double area = 88 * high + (28 + 10 - 10) * wing + 16 * (8 + (2 + 15 / 16.0) / 12);
    assertThat(number(after, "I16")).isCloseTo(area, within(1e-3));
    assertThat(number(after, "L16")).isCloseTo(job.roof().slopedArea().squareFeet(), within(1e-3));
    assertThat(number(after, "J16"))
        .isCloseTo(job.roof().grossPlanArea().squareFeet(), within(1e-3));
  }

  @Test
  void empty_cells_beside_their_labels_are_filled_and_no_label_is_written_over() {
    Filled filled = AnyLayout.of(book, "roof-form.xlsx").fill(job, "");
    assertThat(filled.findings()).isEmpty();
    Workbook after = book.after(filled.edits());
    assertThat(number(after, "N18")).as("waste").isGreaterThan(0);
    assertThat(after.cell(Address.of("Takeoff", "I3")).stored())
        .isEqualTo(new Content.Text("Date measured"));
    assertThat(after.cell(Address.of("Takeoff", "B3")).stored())
        .isEqualTo(new Content.Text("Alder Lane house"));
  }

  @Test
  void kinds_of_edge_that_stand_there_without_a_length_get_theirs() {
    Workbook after =
        book.after(AnyLayout.of(book, "roof-form.xlsx").fill(job, "").edits());
    // by the tape sheet: front 12 + 12, back 44, wings twice 14, end 20, porch 16
    assertThat(number(after, "B19")).isCloseTo(132, within(1e-6));
    assertThat(after.cell(Address.of("Takeoff", "A26")).isBlank()).isTrue();
  }

  @Test
  void the_area_of_a_plane_of_free_shape_replaces_the_formula_of_a_prepared_row() {
    Filled filled = AnyLayout.of(book, "roof-form.xlsx").fill(job, "");
    assertThat(filled.changes())
        .filteredOn(change -> change.cell().equals(Address.of("Takeoff", "I6")))
        .singleElement()
        .satisfies(change -> assertThat(change.before()).isEqualTo("=(C6+E6)/2*D6"));
    // by hand: 44 by 15' 7 13/16" less half of 20 by 11' 2 3/16"
    assertThat(number(book.after(filled.edits()), "I6"))
        .isCloseTo(
            44 * (15 + (7 + 13 / 16.0) / 12) - 10 * (11 + (2 + 3 / 16.0) / 12), within(1e-3));
  }
}
