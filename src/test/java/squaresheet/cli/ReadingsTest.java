package squaresheet.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import squaresheet.binding.JobWorkbook;
import squaresheet.formula.Calculation;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Workbook;
import squaresheet.takeoff.Rulebook;
import squaresheet.verify.Readings;
import squaresheet.xlsx.Existing;
import squaresheet.xlsx.Xlsx;

/** What the tape's tolerance does to an order, held against the workbook worked out with the tape off. */
class ReadingsTest {

  @TempDir
  Path folder;

  private Path job(String sheet) {
    Path job = folder.resolve("job.xlsx");
    Ran.of("import", sheet, "-o", job.toString(), "--force");
    return job;
  }

  private static Readings readings(Path job) {
    Workbook workbook = Xlsx.read(job).value().orElseThrow();
    assertThat(JobWorkbook.isOne(workbook)).isTrue();
    return Readings.of(workbook, "job.xlsx", Rulebook.standard()).value().orElseThrow();
  }

  /** The other way round: type the reading anew in a copy, and work the whole copy out. */
  private double with(Path job, Address reading, double value, Address order) {
    Path copy = folder.resolve("copy.xlsx");
    Xlsx.edit(
        job,
        List.of(new Edit.SetContent(reading, new Content.Numeric(value))),
        copy,
        Existing.REPLACE);
    Calculation calculation = Calculation.of(Xlsx.read(copy).value().orElseThrow());
    return ((Value.Number) calculation.value(order)).value();
  }

  @Test
  void a_reading_that_is_named_changes_the_order_when_it_is_typed_anew() {
    assertThat(confirmed(DemoSheet.sound())).isPositive();
  }

  @Test
  void a_metric_workbook_is_off_by_as_much_in_its_own_unit() {
    Path job = job("demo-data/tape-sheet-metric.csv");
    double half = readings(job).off().toMetres();
    assertThat(half).as("half an inch").isEqualTo(0.0127);
    confirmed("demo-data/tape-sheet-metric.csv");
    Address eave = Address.of("Planes", "C5");
    Readings.Ordered shingles = readings(job).orders().get(0);
    assertThat(shingles.range().contains(with(job, eave, 12.6 + half, shingles.cell())))
        .isTrue();
  }

  /** How many of the named readings change their order when they are typed anew; every result lies in the range told. */
  private int confirmed(String sheet) {
    Path job = job(sheet);
    Workbook workbook = Xlsx.read(job).value().orElseThrow();
    Readings readings = readings(job);
    double inFeet = readings.off().toFeet();
    double inMetres = readings.off().toMetres();
    int confirmed = 0;
    for (Readings.Ordered order : readings.orders()) {
      if (!order.isFollowed()) {
        assertThat(order.label()).as("where a plane is a polygon").isEqualTo("Ice barrier");
        continue;
      }
      assertThat(order.range().contains(order.now())).as(order.label()).isTrue();
      for (String again : order.again().stream().limit(2).toList()) {
        int mark = again.lastIndexOf('!');
        Address reading = Address.of(again.substring(0, mark), again.substring(mark + 1));
        double off = sheet.contains("metric") ? inMetres : inFeet;
        double now = ((Content.Numeric) workbook.cell(reading).stored()).value();
        double less = with(job, reading, now - off, order.cell());
        double more = with(job, reading, now + off, order.cell());
        assertThat(order.range().contains(less) && order.range().contains(more)).isTrue();
        confirmed += less == order.now() && more == order.now() ? 0 : 1;
      }
    }
    return confirmed;
  }

  @Test
  void the_command_says_which_lengths_to_take_again() {
    Ran ran = Ran.of("readings", job(DemoSheet.sound()).toString());
    assertThat(ran.exit()).isZero();
    assertThat(ran.out())
        .contains("each of which may be off by 1/2\"", "Shingles (Takeoff!", "59 to 60")
        .contains("alone changes it by a pack: ", "Planes!D6")
        .contains("could not be followed: Ice barrier");
  }

  @Test
  void a_workbook_of_another_layout_is_told_apart() {
    Ran ran = Ran.of("readings", "workbooks/totals-book.xlsx");
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.out()).contains("must have the table of planes");
  }
}
