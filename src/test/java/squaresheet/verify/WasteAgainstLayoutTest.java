package squaresheet.verify;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import squaresheet.binding.JobWorkbook;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.job.JobInput;
import squaresheet.job.JobResult;
import squaresheet.roof.PlaneNotes;
import squaresheet.roof.RoofNotes;
import squaresheet.roof.Shape;
import squaresheet.takeoff.Rulebook;
import squaresheet.units.Length;
import squaresheet.units.Pitch;

/**
 * Two planes of 32 ft 8 3/4 in by 14 ft, 916.42 sq ft together. With 1/2 in past each rake a course is 393 3/4 in, ten
 * shingles of 39 3/8 in; 3/4 in past the eave and 168 in make 30 courses of 5 5/8 in, lines not rounded. By hand:
 *
 * <ul>
 *   <li>both ends of a cut shingle used, each course takes 10: 600 pieces, 0.0070 over the area, 28 bundles of 22;
 *   <li>none used again, the whole-shingle course of every six takes 10 and the other five 11: 650 pieces, 0.0909 over the
 *       area, 30 bundles.
 * </ul>
 */
class WasteAgainstLayoutTest {

  private static final RoofNotes ROOF = RoofNotes.of(plane("Front", 6), plane("Back", 9));

  private static PlaneNotes plane(String id, int rise) {
    return new PlaneNotes(
        id,
        new Shape.Rectangle(Length.parse("32' 8 3/4\""), Length.parse("14'")),
        PlaneNotes.Measured.ON_SLOPE,
        Pitch.of(rise));
  }

  private static JobInput job(String reuse, double typed) {
    return DemoWorkbook.job(ROOF, Rulebook.standard())
        .with("tape_step", 0)
        .with("cut_reuse", reuse)
        .with("typed_waste", typed);
  }

  private static List<Finding> said(JobInput input) {
    JobResult result = JobResult.of(input).value().orElseThrow();
    return Verify.of(
            JobWorkbook.write(input, result).workbook(),
            "two-planes.xlsx",
            input.company().rulebook())
        .findings();
  }

  @ParameterizedTest(name = "typed {1}, reuse {0}: {3}")
  @CsvSource(delimiter = '|', textBlock = """
          # reuse | typed  | check                 | what it says, by hand
            none  | 0.05   | waste-under-layout    | 28.44, so 29 bundles; 1 short
            none  | 0      | waste-under-layout    | 27.08, so 28 bundles; 2 short
            none  | 0.0909 |                       | 29.55, so 30 bundles: what the layout takes
            none  | 0.08   |                       | 29.25: less, but 30 bundles all the same
            none  | 0.13   |                       | less than 0.05 over the layout
            none  | 0.15   |                       | 0.1409, in whole percent
            none  | 0.19   | waste-far-over-layout | 32.23, so 33 bundles; 0.15 makes 31.14, so 32
            plane | 0      |                       | 28 bundles, which 600 pieces take
            plane | 0.05   |                       | less than 0.05 over the layout
            plane | 0.10   | waste-far-over-layout | 29.79, so 30 bundles; 0.06 makes 28.71, so 29
            plane | 0.06   |                       | 28.71: more, but 29 bundles all the same
          """)
  void a_rate_is_spoken_of_where_it_moves_the_order_by_a_bundle(
      String reuse, double typed, String check, String why) {
    List<String> ids =
        said(job(reuse, typed)).stream().map(finding -> finding.info().id()).toList();
    assertThat(ids).as(why).isEqualTo(check == null ? List.of() : List.of(check));
  }

  @Test
  void too_little_says_how_many_bundles_are_missing_and_what_they_cost() {
    assertThat(said(job("none", 0))).singleElement().satisfies(finding -> {
      assertThat(finding.info().severity()).isEqualTo(Severity.WARNING);
      assertThat(finding.where().toString()).startsWith("two-planes.xlsx, Job!B");
      assertThat(finding.says())
          .isEqualTo(
              "is a waste rate of 0, but laying out every course of the roof takes 0.09094, so the order is 2"
                  + " bundles short");
      assertThat(finding.expected()).isEqualTo("at least 0.09094");
      assertThat(finding.worth())
          .contains("Shingles: 2 bundles too little")
          .containsPattern("Total: [0-9,]+[.][0-9]{2} USD too little");
    });
  }

  @Test
  void too_much_says_how_many_bundles_nobody_lays_and_what_they_cost() {
    assertThat(said(job("plane", 0.10))).singleElement().satisfies(finding -> {
      assertThat(finding.info().severity()).isEqualTo(Severity.NOTE);
      assertThat(finding.says())
          .isEqualTo(
              "is a waste rate of 0.1, but laying out every course of the roof takes 0.007022, and with 0.05"
                  + " spare 0.06 is enough; the rest buys 1 bundle that nobody lays");
      assertThat(finding.worth())
          .contains("Shingles: 1 bundle too much")
          .containsPattern("Total: [0-9,]+[.][0-9]{2} USD too much");
    });
  }

  @Test
  void the_spare_is_a_setting() {
    assertThat(said(job("plane", 0.10).with("waste_spare", 0.10))).isEmpty();
  }

  @Test
  void the_simulated_rate_itself_is_never_spoken_of() {
    assertThat(said(job("none", 0).with("waste_choice", "simulated"))).isEmpty();
  }

  @Test
  void a_rate_for_each_plane_is_held_against_that_plane() {
    String own = """
        name,per,kind,formula,unit,choices,orders,label,source,note
        plane_waste,plane,rule,"IF(pitch_rise>8,0.3,0.01)",ratio,,,Waste of the plane,our own,
        gross_area,job,rule,"SUMPRODUCT(shingled_area,1+plane_waste)",sq ft sloped,,,Gross area,our own,
        plane_shingles,plane,rule,shingled_area*(1+plane_waste)/shingle_cover,piece,,,Shingles,our own,
        """;
    Rulebook rules = Rulebook.standard().overriddenBy(own, "own.csv").value().orElseThrow();
    JobInput input = DemoWorkbook.job(ROOF, rules).with("tape_step", 0).with("cut_reuse", "none");
    assertThat(said(input))
        .satisfiesExactly(
            under -> {
              assertThat(under.info().id()).isEqualTo("waste-under-layout");
              assertThat(under.where().toString()).contains("Plane work");
              assertThat(under.says())
                  .isEqualTo(
                      "is a waste rate of 0.01, but laying out every course of plane Front takes 0.09094, so the"
                          + " order is 1 bundle short");
            },
            over -> {
              assertThat(over.info().id()).isEqualTo("waste-far-over-layout");
              assertThat(over.says()).contains("of plane Back takes 0.09094");
            });
  }

  @Test
  void an_error_behind_a_low_rate_is_still_said() {
    DemoWorkbook book = new DemoWorkbook();
    book.type(book.at("typed_waste", 0), 0.01);
    book.enter(book.at("bundle_load", 0), "1/0");
    Verdict verdict = Verify.of(book.saved(), "demo.xlsx");
    assertThat(verdict.isPassed()).isFalse();
    assertThat(verdict.findings())
        .anyMatch(finding -> finding.info().id().equals("waste-under-layout"));
  }
}
