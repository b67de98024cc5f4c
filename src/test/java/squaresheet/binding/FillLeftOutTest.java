package squaresheet.binding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import squaresheet.finding.Finding;
import squaresheet.job.JobCard;
import squaresheet.job.JobInput;
import squaresheet.job.JobResult;
import squaresheet.roof.PlaneNotes;
import squaresheet.roof.RoofNotes;
import squaresheet.roof.Shape;
import squaresheet.sheet.Workbook;
import squaresheet.units.Length;
import squaresheet.units.Pitch;

/** A new plane that a sum of the sheet would leave out is never left out without a word. */
class FillLeftOutTest {

  private static List<String> said(String sheet) {
    Workbook book = Drawn.workbook(Drawn.sheet("Bid", sheet));
    PlaneNotes plane = new PlaneNotes(
        "New",
        new Shape.Rectangle(Length.of(40, 0), Length.of(15, 0)),
        PlaneNotes.Measured.ON_SLOPE,
        Pitch.of(6));
    JobInput input = new JobInput(
        JobCard.of("Elm Row 3"), new RoofNotes(List.of(plane)), DemoJob.input().company());
    JobResult job = JobResult.of(input).value().orElseThrow();
    return AnyLayout.of(book, "bid.xlsx").fill(job, "").findings().stream()
        .map(Finding::says)
        .filter(says -> says.contains("leaves"))
        .toList();
  }

  @Test
  void a_summed_column_that_nothing_is_written_into_is_said() {
    assertThat(said("""
        | Plane | Type      | Eave (ft) | Slope length (ft) | Pitch | Roof area (sf) | Sheathing   |
        | Old   | rectangle | 24        | 15                | 5     | =C2*D2         | 373.6       |
        |       |           |           |                   |       |                |             |
        | Total |           |           |                   |       | =SUM(F2:F3)    | =SUM(G2:G3) |
        """))
        .singleElement()
        .asString()
        .contains("'Sheathing' is added up in Bid!G4", "New", "the sum leaves it out");
  }

  @Test
  void a_summed_column_whose_formula_goes_on_is_not() {
    assertThat(said("""
        | Plane | Type      | Eave (ft) | Slope length (ft) | Pitch | Roof area (sf) | Sheathing   |
        | Old   | rectangle | 24        | 15                | 5     | =C2*D2         | =F2*1.1     |
        |       |           |           |                   |       |                |             |
        | Total |           |           |                   |       | =SUM(F2:F3)    | =SUM(G2:G3) |
        """)).isEmpty();
  }

  @Test
  void a_column_that_not_every_plane_has_something_in_is_not() {
    assertThat(said("""
        | Plane | Type      | Eave (ft) | Slope length (ft) | Pitch | Roof area (sf) | Extra hours |
        | Old   | rectangle | 24        | 15                | 5     | =C2*D2         | 2           |
        | Shed  | rectangle | 12        | 10                | 5     | =C3*D3         |             |
        |       |           |           |                   |       |                |             |
        | Total |           |           |                   |       | =SUM(F2:F4)    | =SUM(G2:G4) |
        """)).isEmpty();
  }
}
