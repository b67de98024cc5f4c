package squaresheet.binding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import squaresheet.estimate.Estimate;
import squaresheet.finding.Read;
import squaresheet.formula.Value;
import squaresheet.job.JobInput;
import squaresheet.job.JobResult;
import squaresheet.roof.EdgeKind;
import squaresheet.roof.Roof;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.sheet.Workbook;
import squaresheet.takeoff.Rule;
import squaresheet.takeoff.Rulebook;
import squaresheet.takeoff.Takeoff;
import squaresheet.units.Money;
import squaresheet.xlsx.Existing;
import squaresheet.xlsx.Xlsx;

class JobWorkbookTest {

  private static final JobParts PARTS = DemoJob.parts();

  private static Draft draft() {
    return new JobWriter(PARTS).write();
  }

  private static Map<Address, Content> computed(Draft draft) {
    Map<Address, Content> computed = new LinkedHashMap<>();
    for (DraftSheet sheet : draft.sheets()) {
      sheet.entries().forEach((ref, entry) -> {
        if (!entry.formula().isEmpty()) {
          computed.put(new Address(sheet.name(), ref), entry.stored());
        }
      });
    }
    return computed;
  }

  /** Takes the stored values away, so that the other program must work everything out. */
  private static Draft bare() {
    Draft draft = draft();
    for (DraftSheet sheet : draft.sheets()) {
      Map.copyOf(sheet.entries()).forEach((ref, entry) -> {
        if (!entry.formula().isEmpty()) {
          sheet.put(
              ref, new Entry(new Content.Blank(), entry.formula(), entry.role(), entry.format()));
        }
      });
    }
    return draft;
  }

  @Test
  void every_formula_comes_to_the_same_in_another_program(@TempDir Path folder) {
    SecondProgram.needed();
    Path file = folder.resolve("job.xlsx");
    Xlsx.write(bare(), file, Existing.REPLACE);
    Workbook theirs = Xlsx.read(SecondProgram.resave(file)).value().orElseThrow();
    List<String> differ = new ArrayList<>();
    computed(draft()).forEach((cell, ours) -> {
      if (!isAlike(ours, theirs.cell(cell).stored(), 1e-9)) {
        differ.add(cell + ": ours " + ours + ", theirs " + theirs.cell(cell).stored());
      }
    });
    assertThat(differ).isEmpty();
  }

  private static boolean isAlike(Content ours, Content theirs, double tolerance) {
    if (ours instanceof Content.Numeric one && theirs instanceof Content.Numeric other) {
      return Math.abs(one.value() - other.value())
          <= tolerance * Math.max(1, Math.abs(one.value()));
    }
    boolean empty = ours instanceof Content.Text text && text.value().isEmpty();
    return ours.equals(theirs) || (empty && theirs.isBlank());
  }

  @Test
  void every_quantity_equals_that_of_the_takeoff() {
    Draft draft = draft();
    Takeoff takeoff = DemoJob.result().takeoff();
    Workbook book = draft.workbook();
    List<String> differ = new ArrayList<>();
    for (Rule rule : PARTS.rulebook().rules()) {
      if (rule.per() == Rule.Per.JOB) {
        Address cell = book.name(rule.name()).flatMap(Workbook.Name::cell).orElseThrow();
        Content model = takeoff.value(rule.name()).content();
        if (!isAlike(model, book.cell(cell).stored(), 1e-7)) {
          differ.add(rule.name() + ": " + model + ", cell " + book.cell(cell).stored());
        }
      }
    }
    assertThat(differ).isEmpty();
  }

  @Test
  void what_was_written_reads_back_the_same() {
    Read<BoundJob> read = JobWorkbook.read(draft().workbook(), "job.xlsx", PARTS.rulebook());
    assertThat(read.findings()).isEmpty();
    BoundJob job = read.value().orElseThrow();
    JobInput input = job.input();
    assertThat(input.card()).isEqualTo(DemoJob.input().card());
    assertThat(input.selection()).isEqualTo(PARTS.selection());
    assertThat(input.company().catalogue()).isEqualTo(PARTS.catalogue());
    assertThat(input.company().terms()).isEqualTo(PARTS.pricing().terms());
    assertThat(input.company().prices().prices().keySet())
        .isEqualTo(PARTS.pricing().prices().prices().keySet());
    assertThat(input.settings()).hasSize(PARTS.rulebook().settings().size());
    assertThat(job.coverage()).allMatch(BoundJob.Part::isWhole);
    Roof roof = Roof.resolve(input.roof()).value().orElseThrow();
    assertThat(roof.slopedArea()).isEqualTo(PARTS.roof().slopedArea());
    for (EdgeKind kind : EdgeKind.values()) {
      assertThat(roof.length(kind).inches())
          .as(kind.word())
          .isCloseTo(PARTS.roof().length(kind).inches(), within(1e-9));
    }
  }

  @Test
  void the_job_rebuilt_from_the_cells_comes_to_the_same_price() {
    BoundJob job = JobWorkbook.read(draft().workbook(), "job.xlsx", PARTS.rulebook())
        .value()
        .orElseThrow();
    JobResult again = JobResult.of(job.input()).value().orElseThrow();
    assertThat(again.estimate().total()).isEqualTo(DemoJob.result().estimate().total());
    assertThat(again.estimate().byCostCode())
        .isEqualTo(DemoJob.result().estimate().byCostCode());
  }

  @Test
  void the_live_estimate_is_that_of_the_library_to_the_cent() {
    Workbook book = draft().workbook();
    Estimate estimate = DemoJob.result().estimate();
    assertThat(number(book, "estimate_cost")).isEqualTo(cents(estimate.cost()));
    assertThat(number(book, "estimate_price")).isEqualTo(cents(estimate.price()));
    assertThat(number(book, "estimate_total")).isEqualTo(cents(estimate.total()));
    assertThat(number(book, "tax_by_line")).isEqualTo(cents(estimate.taxes().byLine()));
    assertThat(number(book, "tax_by_invoice")).isEqualTo(cents(estimate.taxes().byInvoice()));
    assertThat(number(book, "category_total")).isEqualTo(number(book, "code_total"));
  }

  private static BigDecimal number(Workbook book, String name) {
    Address cell = book.name(name).flatMap(Workbook.Name::cell).orElseThrow();
    Content.Numeric number = (Content.Numeric) book.cell(cell).stored();
    return BigDecimal.valueOf(number.value()).setScale(2, RoundingMode.HALF_UP);
  }

  private static BigDecimal cents(Money money) {
    return money.amount().setScale(2, RoundingMode.HALF_UP);
  }

  @Test
  void every_rule_stands_in_its_cells_as_in_the_rulebook() {
    BoundJob job = JobWorkbook.read(draft().workbook(), "job.xlsx", Rulebook.standard())
        .value()
        .orElseThrow();
    assertThat(job.rules()).isNotEmpty().allMatch(BoundJob.BoundRule::isAsInRulebook);
    assertThat(job.rules().stream().map(BoundJob.BoundRule::name).distinct())
        .containsAll(Rulebook.standard().inOrder().stream().map(Rule::name).toList());
  }

  @Test
  void a_name_is_never_shaped_like_a_cell() {
    assertThat(draft().names()).allMatch(name -> Workbook.Name.isValid(name.name()));
  }

  @Test
  void names_headings_and_values_survive_another_program(@TempDir Path folder) {
    SecondProgram.needed();
    Path file = folder.resolve("job.xlsx");
    Xlsx.write(draft(), file, Existing.REPLACE);
    Workbook resaved = Xlsx.read(SecondProgram.resave(file)).value().orElseThrow();
    Read<BoundJob> read = JobWorkbook.read(resaved, "job.xlsx", Rulebook.standard());
    assertThat(read.findings()).isEmpty();
    BoundJob job = read.value().orElseThrow();
    BoundJob before = JobWorkbook.read(draft().workbook(), "job.xlsx", Rulebook.standard())
        .value()
        .orElseThrow();
    assertThat(job.cells().items()).isEqualTo(before.cells().items());
    assertThat(job.rules()).allMatch(BoundJob.BoundRule::isAsInRulebook);
    assertThat(job.input().settings()).isEqualTo(before.input().settings());
  }

  @Test
  void text_where_a_number_must_be_is_said_with_its_cell_and_the_rest_is_read() {
    Draft draft = draft();
    DraftSheet planes = draft.find("Planes").orElseThrow();
    planes.put("C6", Entry.text("forty-four"));
    DraftSheet settings = draft.find("Job").orElseThrow();
    Address waste =
        draft.workbook().name("typed_waste").flatMap(Workbook.Name::cell).orElseThrow();
    settings.put(waste.ref(), Entry.text("ten"));
    Read<BoundJob> read = JobWorkbook.read(draft.workbook(), "job.xlsx", Rulebook.standard());
    assertThat(read.findings())
        .extracting(finding -> finding.where() + ": " + finding.says())
        .contains(
            "job.xlsx, Planes!C6: length must read like 24' 6 1/2\" or 7.48 m, but reads 'forty-four'",
            "job.xlsx, " + waste + ": Waste rate typed by the estimator must be a number, but reads"
                + " 'ten'; the usual value counts instead");
    assertThat(read.value().orElseThrow().input().roof().planes()).hasSize(5);
  }

  @Test
  void a_workbook_without_planes_is_said_to_have_none() {
    Read<BoundJob> read = JobWorkbook.read(
        Drawn.workbook(Drawn.sheet("Letter", "| Dear customer |")),
        "letter.xlsx",
        Rulebook.standard());
    assertThat(read.findings())
        .extracting(finding -> finding.where() + ": " + finding.says())
        .containsExactly(
            "letter.xlsx: a job workbook must have the table of planes with its defined names"
                + " (plane_name, pitch_rise, …), but has none");
  }

  @Test
  void a_formula_in_the_place_of_a_typed_value_is_worked_out_anew() {
    Draft draft = draft();
    Address waste =
        draft.workbook().name("typed_waste").flatMap(Workbook.Name::cell).orElseThrow();
    draft
        .find("Job")
        .orElseThrow()
        .put(waste.ref(), Entry.formula("0.1+0.02", new Content.Numeric(0.9)));
    BoundJob job = JobWorkbook.read(draft.workbook(), "job.xlsx", Rulebook.standard())
        .value()
        .orElseThrow();
    assertThat(((Value.Number) job.input().settings().get("typed_waste")).value())
        .isCloseTo(0.12, within(1e-12));
  }
}
