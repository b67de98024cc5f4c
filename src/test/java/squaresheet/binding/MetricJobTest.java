package squaresheet.binding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import squaresheet.finding.Read;
import squaresheet.formula.Value;
import squaresheet.job.JobInput;
import squaresheet.job.JobResult;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Draft;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Workbook;
import squaresheet.takeoff.Rulebook;

/** A roof measured in other units than feet is typed, shown and read back in them. */
class MetricJobTest {

  /** One roof, 40 ft by 16 ft with a wing by its corners; 0.3048 m is a foot (international foot, NIST SP 811). */
  private static String sheet(String unit, double foot) {
    return """
        Unit for bare numbers,%s
        Plane,Shape,Eave,Up the slope,Pitch,Measured,Top edge,Corners,Edges in order
        Front,rectangle,%s,%s,6/12,slope,ridge / Back,,
        Back,rectangle,%s,%s,6/12,slope,ridge / Front,,
        Wing,polygon,,,4/12,plan,,"0, 0; %s, 0; %s, %s; 0, %s","eave, rake, headwall, rake"

        Opening,In plane,What,Width,Up the slope,From left,Up from eave
        Flue,Front,chimney,%s,%s,%s,%s

        Edge,Plane,Meets,Length
        ridge,Front,Back,%s
        """.formatted(
            unit, 40 * foot, 16 * foot, 40 * foot, 16 * foot, 10 * foot, 10 * foot, 8 * foot,
            6 * foot, 3 * foot, 2 * foot, 20 * foot, 9 * foot, 40 * foot);
  }

  private static JobResult job(String unit, double foot) {
    FieldNotes notes =
        FieldSheet.read(sheet(unit, foot), "notes.csv", Locale.ENGLISH).value().orElseThrow();
    JobInput input = notes.job(DemoJob.input().company()).value().orElseThrow();
    return JobResult.of(input).value().orElseThrow();
  }

  @ParameterizedTest
  @CsvSource(textBlock = """
      # unit       | in a foot
      metres       | 0.3048
      millimetres  | 304.8
      inches       | 12
      """, delimiter = '|')
  void the_same_roof_takes_the_same_whatever_the_tape(String unit, double foot) {
    JobResult feet = job("feet", 1);
    JobResult other = job(unit, foot);
    Draft draft = JobWorkbook.write(other.input(), other);
    Workbook book = draft.workbook();
    for (String name :
        new String[] {"net_area", "plan_area_total", "ridge_length", "rake_length"}) {
      double expected = ((Value.Number) feet.takeoff().value(name)).value();
      Address cell = book.name(name).flatMap(Workbook.Name::cell).orElseThrow();
      assertThat(((Content.Numeric) book.cell(cell).stored()).value())
          .as(name)
          .isCloseTo(expected, within(1e-6 * expected));
    }
  }

  @Test
  void what_is_typed_is_in_the_tapes_unit_and_reads_back_the_same() {
    JobResult job = job("metres", 0.3048);
    Workbook book = JobWorkbook.write(job.input(), job).workbook();
    Address eave = book.name("eave_width_typed").flatMap(Workbook.Name::cell).orElseThrow();
    assertThat(book.cell(eave).stored()).isEqualTo(new Content.Numeric(12.192));
    Read<BoundJob> read = JobWorkbook.read(book, "job.xlsx", Rulebook.standard());
    assertThat(read.findings()).isEmpty();
    assertThat(read.value().orElseThrow().roof().planes().get(0).shape())
        .isEqualTo(job.input().roof().planes().get(0).shape());
    assertThat(read.value().orElseThrow().coverage()).allMatch(BoundJob.Part::isWhole);
  }

  @Test
  void a_length_typed_anew_moves_the_area() {
    JobResult job = job("metres", 0.3048);
    Draft draft = JobWorkbook.write(job.input(), job);
    Workbook book = draft.workbook();
    Address eave = book.name("eave_width_typed").flatMap(Workbook.Name::cell).orElseThrow();
    Address area = book.name("gross_sloped_area").flatMap(Workbook.Name::cell).orElseThrow();
    draft.sheets().stream()
        .filter(sheet -> sheet.name().equals(eave.sheet()))
        .forEach(sheet -> sheet.put(eave.ref(), Entries.input(6.096, "0.000")));
    Value worked = new BookValues(draft.workbook()).value(area);
    assertThat(((Value.Number) worked).value())
        .as("6.096 m is 20 ft; 20 by 16 ft")
        .isCloseTo(320, within(1e-6));
  }

  @ParameterizedTest
  @CsvSource(textBlock = """
      # setting           | typed  | unit | counted | source
      shingle_overhang    | 19.05  | mm   | 0.75    | 25.4 mm an inch (NIST SP 811)
      ice_inside_wall     | 609.6  | mm   | 24      | 25.4 mm an inch (NIST SP 811)
      valley_roll_from    | 7.62   | m    | 25      | 0.3048 m a foot (NIST SP 811)
      tape_tolerance      | 25.4   | mm   | 1       | 25.4 mm an inch (NIST SP 811)
      """, delimiter = '|')
  void a_setting_of_length_is_typed_in_metric_units_and_counted_in_the_rules_unit(
      String setting, double typed, String unit, double counted, String source) {
    JobResult job = job("millimetres", 304.8);
    Workbook book = JobWorkbook.write(job.input(), job).workbook();
    Address cell = book.name(setting + "_typed").flatMap(Workbook.Name::cell).orElseThrow();
    Address beside = new Address(cell.sheet(), new Ref(cell.ref().row(), 2));
    assertThat(book.cell(cell).stored()).as(source).isEqualTo(new Content.Numeric(typed));
    assertThat(book.cell(beside).stored()).isEqualTo(new Content.Text(unit));
    Address read = book.name(setting).flatMap(Workbook.Name::cell).orElseThrow();
    assertThat(new BookValues(book).value(read)).isEqualTo(Value.of(counted));
  }

  @Test
  void a_setting_typed_anew_in_millimetres_is_what_the_job_is_read_with() {
    JobResult job = job("metres", 0.3048);
    Draft draft = JobWorkbook.write(job.input(), job);
    Address cell = draft
        .workbook()
        .name("rake_overhang_typed")
        .flatMap(Workbook.Name::cell)
        .orElseThrow();
    draft.sheets().stream()
        .filter(sheet -> sheet.name().equals(cell.sheet()))
        .forEach(sheet -> sheet.put(cell.ref(), Entries.input(25.4, "0.0")));
    BoundJob read = JobWorkbook.read(draft.workbook(), "job.xlsx", Rulebook.standard())
        .value()
        .orElseThrow();
    assertThat(read.input().settings().get("rake_overhang"))
        .as("25.4 mm an inch (NIST SP 811)")
        .isEqualTo(Value.of(1));
  }
}
