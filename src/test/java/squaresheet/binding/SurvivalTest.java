package squaresheet.binding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.SheetBuilder;
import squaresheet.sheet.Workbook;
import squaresheet.takeoff.Rulebook;

/** What people do to workbooks between writing and reading. */
class SurvivalTest {

  private static final Workbook JOB = new JobWriter(DemoJob.parts()).write().workbook();

  private static Read<BoundJob> read(Workbook book) {
    return JobWorkbook.read(book, "job.xlsx", Rulebook.standard());
  }

  private static void readsAsBefore(Workbook moved) {
    Read<BoundJob> read = read(moved);
    assertThat(read.findings()).isEmpty();
    BoundJob job = read.value().orElseThrow();
    BoundJob before = read(JOB).value().orElseThrow();
    assertThat(job.input().roof().planes()).hasSameSizeAs(before.input().roof().planes());
    assertThat(job.input().settings()).isEqualTo(before.input().settings());
    assertThat(job.cells().items().keySet()).isEqualTo(before.cells().items().keySet());
    assertThat(job.rules()).allMatch(BoundJob.BoundRule::isAsInRulebook);
    assertThat(job.coverage()).allMatch(BoundJob.Part::isWhole);
  }

  @Test
  void a_job_survives_rows_inserted_over_its_tables() {
    readsAsBefore(new Moved(new Moved(JOB).insertRow("Planes", 1)).insertRow("Takeoff", 10));
  }

  @Test
  void a_job_survives_columns_inserted_into_its_tables() {
    readsAsBefore(new Moved(new Moved(JOB).insertColumn("Planes", 3)).insertColumn("Job", 0));
  }

  @Test
  void a_job_survives_renamed_and_reordered_sheets() {
    Workbook renamed =
        new Moved(new Moved(JOB).rename("Planes", "Roof of J. Doe's")).rename("Job", "Settings");
    readsAsBefore(new Moved(renamed).reversed());
  }

  @Test
  void a_plane_added_without_its_second_row_is_said_at_its_cell() {
    Workbook inserted = new Moved(JOB).insertRow("Planes", 6);
    Workbook typed = typed(inserted, "Planes", 6, List.of("New", "rectangle"), List.of(10.0, 8.0));
    Read<BoundJob> read = read(typed);
    assertThat(read.findings())
        .extracting(finding -> finding.where() + ": " + finding.says())
        .contains(
            "job.xlsx, Planes!A7: plane 'New' must have a row on the sheet 'Plane work', but has none;"
                + " what it takes is not in the totals");
    BoundJob job = read.value().orElseThrow();
    assertThat(job.input().roof().planes()).hasSize(7);
    Address work = job.cells().cell("plane Back", "ice_area").orElseThrow();
    assertThat(work.sheet()).isEqualTo("Plane work");
    assertThat(work.ref().row()).isEqualTo(5);
    assertThat(job.rules().stream().filter(rule -> !rule.subject().equals("plane New")))
        .allMatch(BoundJob.BoundRule::isAsInRulebook);
  }

  private static Workbook typed(
      Workbook book, String sheet, int row, List<String> texts, List<Double> numbers) {
    List<Sheet> sheets = book.sheets().stream()
        .map(one -> {
          if (!one.name().equals(sheet)) {
            return one;
          }
          SheetBuilder builder = Sheet.builder(one.name());
          one.cells().forEach(placed -> {
            builder.content(
                placed.ref().row(),
                placed.ref().column(),
                placed.cell().format(),
                placed.cell().stored());
            if (placed.cell().isFormula()) {
              builder.formula(
                  placed.ref().row(), placed.ref().column(), placed.cell().formula());
            }
          });
          for (int at = 0; at < texts.size(); at++) {
            builder.content(row, at, "General", new Content.Text(texts.get(at)));
          }
          for (int at = 0; at < numbers.size(); at++) {
            builder.content(
                row, texts.size() + at, "General", new Content.Numeric(numbers.get(at)));
          }
          builder.content(row, 6, "General", new Content.Numeric(6));
          builder.content(row, 7, "General", new Content.Text("slope"));
          return builder.build();
        })
        .toList();
    return new Workbook(
        sheets, book.names(), false, book.calculation(), book.externalLinks(), book.properties());
  }

  @Test
  void a_sheet_that_is_gone_is_one_sentence_and_the_rest_is_read() {
    List<Sheet> left =
        JOB.sheets().stream().filter(sheet -> !sheet.name().equals("Edges")).toList();
    Workbook book = new Workbook(
        left, JOB.names(), false, JOB.calculation(), JOB.externalLinks(), JOB.properties());
    Read<BoundJob> read = read(book);
    assertThat(read.findings())
        .extracting(finding -> finding.where() + ": " + finding.says())
        .containsExactly(
            "job.xlsx: a job workbook must have the table of edges with its defined names,"
                + " but has none; nothing of it is read");
    assertThat(read.value().orElseThrow().input().roof().planes()).hasSize(6);
  }

  @Test
  void a_stored_binding_follows_inserted_rows_and_renamed_sheets() {
    Workbook book = Drawn.workbook(Drawn.sheet("Planes", """
        | Plane | Eave (ft) | Rafter (ft) | Pitch | Roof area (sf) |
        | A     | 40        | 15.65       | 6     | =B2*C2 ~ 626 |
        | B     | 40        | 15.65       | 6     | =B3*C3 ~ 626 |
        """));
    Edit.AddSheet add = (Edit.AddSheet) AnyLayout.of(book, "bid.xlsx").store().get(0);
    Draft hidden = new Draft();
    DraftSheet to = hidden.sheet(add.sheet().name());
    add.sheet().entries().forEach(to::put);
    Workbook stored =
        Drawn.workbook(book.sheets().get(0), hidden.workbook().sheets().get(0));
    Workbook moved = new Moved(
            new Moved(new Moved(stored).insertRow("Planes", 0)).insertColumn("Planes", 1))
        .rename("Planes", "Roof 2");
    AnyLayout again = AnyLayout.of(moved, "bid.xlsx");
    assertThat(again.bound())
        .extracting(guess -> guess.property() + " " + guess.at())
        .contains("eave 'Roof 2'!C2", "sloped_area 'Roof 2'!F2");
    assertThat(again.read().cells().cell(new Where.OfItem("plane B", "up_slope")))
        .contains(Address.of("Roof 2", "D4"));
  }
}
