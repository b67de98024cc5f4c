package squaresheet.verify;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import squaresheet.finding.Severity;
import squaresheet.finding.Where;
import squaresheet.sheet.Address;
import squaresheet.takeoff.Rulebook;

/** Every cell of a job workbook that takes a pitch: one that became a date is named there, once, with what it must have been. */
class DatedPitchTest {

  /** 46185 is 12 June 2026 and 46362 is 6 December 2026, which programs make of a typed 6/12. */
  @ParameterizedTest
  @CsvSource({
    "pitch_rise,0,46185",
    "least_slope,0,46185",
    "double_layer_below,0,46185",
    "steep_ice_slope,0,46185",
    "special_nailing_above,0,46185",
    "catalogue_minimum_slope_in_per_ft,0,46185",
    "rate_pitch_from,3,46362",
    "rate_pitch_below,2,46185"
  })
  void a_date_is_named_at_its_own_cell(String name, int row, int serial) {
    DemoWorkbook book = new DemoWorkbook();
    Address at = book.at(name, row);
    book.typeDate(at, serial);
    Verdict verdict = Verify.of(book.saved(), "demo.xlsx", Rulebook.standard());
    assertThat(verdict.findings())
        .filteredOn(finding -> finding.info().severity() != Severity.NOTE)
        .singleElement()
        .satisfies(finding -> {
          assertThat(finding.where()).isEqualTo(new Where.InCell("demo.xlsx", at));
          assertThat(finding.info().id()).isEqualTo("pitch-became-date");
          assertThat(finding.expected()).isEqualTo("6:12");
        });
    assertThat(verdict.total()).isEmpty();
  }

  /** 12 tan 26.56° is 5.9987, under the demo company's rates from 6:12; 12 tan 22.6° is 4.9951, where nothing turns. */
  @ParameterizedTest
  @CsvSource({"5.9987,true", "4.9951,false"})
  void a_rise_from_a_rounded_angle_is_named_where_something_turns(double rise, boolean named) {
    DemoWorkbook book = new DemoWorkbook();
    Address at = book.at("pitch_rise", 1);
    book.type(at, rise);
    Verdict verdict = Verify.of(book.saved(), "demo.xlsx", Rulebook.standard());
    assertThat(verdict.findings().stream()
            .filter(finding -> finding.where().equals(new Where.InCell("demo.xlsx", at)))
            .anyMatch(finding -> finding.info().id().equals("pitch-off-named")
                && finding.expected().equals("6")))
        .isEqualTo(named);
    assertThat(verdict.total().isEmpty()).isEqualTo(named);
  }
}
