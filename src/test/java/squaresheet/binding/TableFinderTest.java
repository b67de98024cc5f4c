package squaresheet.binding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Sheets as estimators draw them, each with what a reader of the sheet would say its columns are. */
class TableFinderTest {

  private static List<FoundTable> find(String name, String drawing) {
    return TableFinder.find(new SheetGrid("book.xlsx", Drawn.sheet(name, drawing)));
  }

  private static FoundTable only(String name, String drawing) {
    List<FoundTable> found = find(name, drawing);
    assertThat(found).extracting(FoundTable::table).hasSize(1);
    return found.get(0);
  }

  @Test
  void a_plane_list_with_units_in_its_headings_is_read() {
    FoundTable table = only("Takeoff", """
        | Alder Lane    |             |          |       |        |                |                |         |
        |               |             |          |       |        |                |                |         |
        | Roof section  | Length (ft) | Run (ft) | Slope | Factor | Plan area (sf) | Roof area (sf) | Squares |
        | Front         | 40          | 14       | 6     | =1     | =560           | =626.1         | =6.261  |
        | Back          | 40          | 14       | 6     | =1     | =560           | =626.1         | =6.261  |
        | Total         |             |          |       |        | =SUM(F4:F5)    | =SUM(G4:G5)    | =SUM(H4:H5) |
        | Measured by tape, see photos |   |      |       |        |                |                |         |
        """);
    assertThat(table.table()).isEqualTo("planes");
    assertThat(Drawn.columns(table).toString())
        .isEqualTo("{A3=plane, B3=eave [ft], C3=run [ft], D3=pitch, E3=factor,"
            + " F3=plan_area [sq ft], G3=sloped_area [sq ft], H3=squares [squares]}");
    assertThat(Drawn.items(table)).containsExactly("Front", "Back");
    assertThat(table.rows(FoundTable.Row.TOTAL)).containsExactly(5);
  }

  @Test
  void two_heading_rows_with_merged_titles_are_read_together() {
    FoundTable table = only("Sheet1", """
        | Plane | Eave | Rafter | Pitch | Area | >      | Squares | >    |
        |       | ft   | ft     | x/12  | Plan | Sloped | Net     | Gross |
        | A     | 30   | 16.8   | 6     | =450 | =503   | =5.03   | =5.53 |
        | B     | 30   | 16.8   | 6     | =450 | =503   | =5.03   | =5.53 |
        """);
    assertThat(Drawn.columns(table).toString())
        .isEqualTo("{A2=plane, B2=eave [ft], C2=up_slope [ft], D2=pitch [per 12], E2=plan_area,"
            + " F2=sloped_area, G2=squares, H2=gross_squares}");
    assertThat(Drawn.items(table)).containsExactly("A", "B");
  }

  @Test
  void section_bands_and_their_subtotals_are_no_planes() {
    FoundTable table = only("Planes", """
        | Plane      | Eave, ft | Up the slope, ft | Pitch | Area, sq ft |
        | Main house |          |                  |       |             |
        | Front      | 40       | 15.65            | 6     | =B3*C3      |
        | Back       | 40       | 15.65            | 6     | =B4*C4      |
        | Subtotal   |          |                  |       | =SUM(E3:E4) |
        | Garage     |          |                  |       |             |
        | Left       | 24       | 12               | 4     | =B7*C7      |
        | Right      | 24       | 12               | 4     | =B8*C8      |
        | Subtotal   |          |                  |       | =SUM(E7:E8) |
        | Grand total |         |                  |       | =E5+E9      |
        """);
    assertThat(Drawn.items(table)).containsExactly("Front", "Back", "Left", "Right");
    assertThat(table.bands().lowerEntry(7).getValue()).isEqualTo("Garage");
    assertThat(table.rows(FoundTable.Row.BAND)).containsExactly(1, 5);
    assertThat(table.rows(FoundTable.Row.TOTAL)).containsExactly(4, 8, 9);
  }

  @Test
  void planes_in_columns_are_found_on_their_side() {
    FoundTable table = only("Roof", """
        | Plane          | Front | Back  | Porch |
        | Eave (ft)      | 40    | 40    | 16    |
        | Slope length (ft) | 15.65 | 15.65 | 8.25 |
        | Pitch          | 6     | 6     | 3     |
        | Roof area (sq ft) | =B2*B3 | =C2*C3 | =D2*D3 |
        """);
    assertThat(table.isOnItsSide()).isTrue();
    assertThat(Drawn.columns(table).toString())
        .isEqualTo("{A1=plane, A2=eave [ft], A3=up_slope [ft], A4=pitch, A5=sloped_area [sq ft]}");
    assertThat(Drawn.items(table)).containsExactly("Front", "Back", "Porch");
  }

  @Test
  void a_metric_list_is_read_in_its_own_units() {
    FoundTable table = only("Dach", """
        | Plane | Eave [m] | Up the slope [m] | Pitch (degrees) | Sloped area (m²) |
        | 1     | 12.2     | 4.77             | 26.57           | =B2*C2           |
        | 2     | 12.2     | 4.77             | 26.57           | =B3*C3           |
        """);
    assertThat(Drawn.columns(table).toString())
        .isEqualTo("{A1=plane, B1=eave [m], C1=up_slope [m], D1=pitch [°], E1=sloped_area [m²]}");
  }

  @Test
  void tables_side_by_side_and_below_each_other_are_told_apart() {
    List<FoundTable> found = find("Job", """
        | Plane | Eave (ft) | Rafter (ft) | Pitch | | Edge type | Length (ft) |
        | A     | 30        | 16.8        | 6     | | Eave      | 60          |
        | B     | 30        | 16.8        | 6     | | Ridge     | 30          |
        |       |           |             |       | | Rake      | 67.2        |
        |       |           |             |       | |           |             |
        |       |           |             |       | |           |             |
        | Item  | Qty       | Unit price  | Amount | |          |             |
        | Shingles | 31     | 38.50       | =B8*C8 | |          |             |
        | Starter  | 4      | 41.00       | =B9*C9 | |          |             |
        """);
    assertThat(found).extracting(FoundTable::table).containsExactly("planes", "edges", "materials");
    assertThat(Drawn.items(found.get(1))).containsExactly("Eave", "Ridge", "Rake");
    assertThat(Drawn.items(found.get(2))).containsExactly("Shingles", "Starter");
  }

  @Test
  void a_doubtful_heading_is_proposed_but_not_sure() {
    FoundTable table = only("Planes", """
        | Plane | Eave (ft) | Rafter (ft) | Pitch | Area    |
        | A     | 30        | 16.8        | 6     | =B2*C2  |
        """);
    assertThat(Drawn.columns(table)).containsEntry("E1", "sloped_area?");
  }

  @Test
  void a_footnote_number_below_the_total_is_no_plane() {
    FoundTable table = only("Planes", """
        | Plane | Eave (ft) | Rafter (ft) | Pitch | Roof area (sf) |
        | A     | 30        | 16.8        | 6     | =B2*C2  |
        | B     | 30        | 16.8        | 6     | =B3*C3  |
        | Total |           |             |       | =SUM(E2:E3) |
        |       |           |             |       |         |
        |       |           |             |       | 114     |
        """);
    assertThat(Drawn.items(table)).containsExactly("A", "B");
  }

  @Test
  void prepared_rows_are_no_planes_and_do_not_end_the_table() {
    FoundTable table = only("Planes", """
        | Plane | Eave (ft) | Rafter (ft) | Pitch | Roof area (sf) |
        | A     | 30        | 16.8        | 6     | =B2*C2  |
        |       |           |             |       | =B3*C3  |
        |       |           |             |       | =B4*C4  |
        | Total |           |             |       | =SUM(E2:E4) |
        """);
    assertThat(Drawn.items(table)).containsExactly("A");
    assertThat(table.rows(FoundTable.Row.PREPARED)).containsExactly(2, 3);
    assertThat(table.rows(FoundTable.Row.TOTAL)).containsExactly(4);
  }

  @Test
  void a_letter_is_no_table() {
    assertThat(find("Letter", """
        | Dear customer,                         |  |
        | thank you for asking us for a price.   |  |
        | Price                                  | 18400 |
        | Work starts within four weeks.         |  |
        """)).isEmpty();
  }
}
