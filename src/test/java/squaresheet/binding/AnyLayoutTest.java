package squaresheet.binding;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.roof.Roof;
import squaresheet.sheet.Address;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.Workbook;

/** Workbooks as estimators lay them out, each read through what their own headings, units and formulas say. */
class AnyLayoutTest {

  private static final Sheet PLANES = Drawn.sheet("Planes", """
      | Roof planes |             |          |       |        |                |                |         |
      | Plane  | Length (ft) | Run (ft) | Slope x/12 | Factor | Plan area (sf) | Roof area (sf) | Squares | Waste | Sq to order |
      | P1     | 40          | 14       | 6     | =SQRT(1+(D3/12)^2) ~ 1.118033988749895 | =B3*C3 ~ 560 | =F3*E3 ~ 626.0990336999411 | =G3/100 ~ 6.26 | 10% | =H3*(1+I3) ~ 6.89 |
      | P2     | 40          | 14       | 6     | =SQRT(1+(D4/12)^2) ~ 1.118033988749895 | =B4*C4 ~ 560 | =F4*E4 ~ 626.0990336999411 | =G4/100 ~ 6.26 | 10% | =H4*(1+I4) ~ 6.89 |
      | P3     | 20          | 10       | 6     | =SQRT(1+(D5/12)^2) ~ 1.118033988749895 | =B5*C5/2 ~ 100 | =F5*E5 ~ 111.80 | =G5/100 ~ 1.118 | 15% | =H5*(1+I5) ~ 1.29 |
      | Total  |             |          |       |        | =SUM(F3:F5) ~ 1220 | =SUM(G3:G5) ~ 1364 | =SUM(H3:H5) ~ 13.64 |  | =SUM(J3:J5) ~ 15.07 |
      """);

  private static final Sheet QUOTE = Drawn.sheet("Quote", """
      | Quote |
      | Sales tax rate | 7.25% |
      | Materials      | =Materials!E5 ~ 1400 |
      | Labor total    | 2600 |
      | Grand total    | =B3+B4 ~ 4000 |
      """);

  private static final Sheet MATERIALS = Drawn.sheet("Materials", """
      | Item     | Qty | Unit | Unit price | Amount |
      | Shingles | 31  | bdl  | 38.50      | =B2*D2 ~ 1193.5 |
      | Starter  | 4   | bdl  | 41.00      | =B3*D3 ~ 164 |
      | Nails    | 1   | box  | 42.50      | =B4*D4 ~ 42.5 |
      | Total    |     |      |            | =SUM(E2:E4) ~ 1400 |
      """);

  private static Workbook book() {
    return Drawn.workbook(PLANES, MATERIALS, QUOTE);
  }

  @Test
  void an_estimators_own_workbook_is_bound_without_asking_where_it_says_enough() {
    AnyLayout layout = AnyLayout.of(book(), "bid.xlsx");
    assertThat(layout.bound().stream()
            .filter(guess -> guess.at().sheet().equals("Planes"))
            .map(guess -> guess.at().ref() + " " + guess.property() + " " + guess.unit()))
        .containsExactly(
            "A2 plane ",
            "B2 eave ft",
            "C2 run ft",
            "D2 pitch per 12",
            "E2 factor ",
            "F2 plan_area sq ft",
            "G2 sloped_area sq ft",
            "H2 squares squares",
            "I2 waste_rate ",
            "J2 gross_squares squares");
    assertThat(layout.bound().stream()
            .filter(guess -> guess.table().equals("job"))
            .map(guess -> guess.at() + " " + guess.property()))
        .contains(
            "Quote!B2 tax_rate",
            "Quote!B3 material_total",
            "Quote!B4 labour_total",
            "Quote!B5 price_total");
  }

  @Test
  void its_planes_become_a_roof_with_triangles_where_the_formula_halves() {
    BoundBook bound = AnyLayout.of(book(), "bid.xlsx").read();
    Roof roof = Roof.resolve(bound.roof()).value().orElseThrow();
    assertThat(roof.planes())
        .extracting(plane -> plane.id() + " " + plane.shape().word())
        .containsExactly("P1 rectangle", "P2 rectangle", "P3 triangle");
    // by hand: (560 + 560 + 100) sq ft in plan
    assertThat(roof.planArea().squareFeet())
        .isCloseTo(1220, org.assertj.core.api.Assertions.within(0.01));
    assertThat(bound.cells().cell("plane P2", "sloped_area")).contains(Address.of("Planes", "G4"));
    assertThat(bound.cells().cell("all planes", "squares")).contains(Address.of("Planes", "H6"));
    assertThat(bound.units()).containsEntry(new Where.OfItem("plane P2", "run"), "ft");
  }

  @Test
  void a_plane_whose_ridge_is_nought_is_a_triangle() {
    BoundBook bound =
        AnyLayout.of(Drawn.workbook(Drawn.sheet("Areas", """
            | Face  | Eave (ft) | Ridge (ft) | Rafter (ft) | Pitch | Area (sf)       |
            | Front | 40        | 20         | 16.8        | 6     | =(B2+C2)/2*D2 ~ 504 |
            | Left  | 30        | 0          | 16.8        | 6     | =(B3+C3)/2*D3 ~ 252 |
            """)), "hip.xlsx").read();
    assertThat(bound.roof().planes())
        .extracting(plane -> plane.id() + " " + plane.shape().word())
        .containsExactly("Front trapezoid", "Left triangle");
  }

  @Test
  void a_waste_row_behind_the_total_is_a_single_value_and_no_plane() {
    BoundBook bound =
        AnyLayout.of(Drawn.workbook(Drawn.sheet("Areas", """
            | Face  | Eave (ft) | Rafter (ft) | Pitch | Area (sf)       |
            | Front | 40        | 16.8        | 6     | =B2*C2 ~ 672    |
            | Back  | 40        | 16.8        | 6     | =B3*C3 ~ 672    |
            | Total |           |             |       | =SUM(E2:E3) ~ 1344 |
            |       |           |             |       |                 |
            | Waste | 12%       |             |       |                 |
            """)), "hip.xlsx").read();
    assertThat(bound.roof().planes()).hasSize(2);
    assertThat(bound.cells().cell("job", "waste_rate")).contains(Address.of("Areas", "B6"));
  }

  @Test
  void what_is_bound_and_what_is_not_is_counted() {
    BoundBook bound = AnyLayout.of(book(), "bid.xlsx").read();
    assertThat(bound.coverage())
        .extracting(BoundJob.Part::toString)
        .contains(
            "planes on Planes (3 rows): 10 of 10",
            "materials on Materials (3 rows): 5 of 5",
            "waste rate, tax rate and price: 2 of 3");
    assertThat(AnyLayout.of(Drawn.workbook(QUOTE), "quote.xlsx").read().findings())
        .extracting(finding -> finding.where() + ": " + finding.says())
        .contains("quote.xlsx: no table of planes is bound; what stands in it is not checked");
  }

  @Test
  void a_length_without_a_unit_is_asked_and_stays_unbound_until_answered() {
    Workbook book = Drawn.workbook(Drawn.sheet("Sheet1", """
        | Section | Length | Width | Pitch | Area |
        | A       | 40     | 15.65 | 6     | =B2*C2 ~ 626 |
        | B       | 40     | 15.65 | 6     | =B3*C3 ~ 626 |
        """));
    AnyLayout layout = AnyLayout.of(book, "short.xlsx");
    assertThat(layout.questions())
        .extracting(Guess::property)
        .containsExactly("eave", "up_slope", "sloped_area");
    AnyLayout answered = layout.asking(guess ->
        guess.property().equals("sloped_area") ? Optional.empty() : Optional.of(guess.in("ft")));
    assertThat(answered.bound())
        .extracting(guess -> guess.property() + " " + guess.unit())
        .contains("eave ft", "up_slope ft")
        .doesNotContain("sloped_area ");
    assertThat(answered.read().roof().planes()).hasSize(0);
  }

  @Test
  void units_in_number_formats_and_in_cells_are_read() {
    Workbook book = Drawn.workbook(Drawn.sheet("Dach", """
        | Plane | Eave   | Up the slope | Pitch  | Sloped area (m²) |
        | A     | 12.2 m | 4.77 m       | 26.57° | =1 ~ 58.2 |
        | B     | 12.2 m | 4.77 m       | 26.57° | =1 ~ 58.2 |
        """));
    BoundBook bound = AnyLayout.of(book, "dach.xlsx").read();
    assertThat(bound.roof().planes()).hasSize(2);
    assertThat(FormatUnits.of("0.00\" ft\"")).map(UnitWord::symbol).contains("ft");
    assertThat(FormatUnits.of("#,##0.0 \"m²\"")).map(UnitWord::symbol).contains("m²");
  }

  @Test
  void one_sheet_for_each_building_keeps_their_planes_apart() {
    String house = """
        | Plane | Eave (ft) | Rafter (ft) | Pitch | Roof area (sf) |
        | A     | 40        | 15.65       | 6     | =B2*C2 ~ 626 |
        | B     | 40        | 15.65       | 6     | =B3*C3 ~ 626 |
        """;
    Workbook book = Drawn.workbook(Drawn.sheet("House", house), Drawn.sheet("Garage", house));
    BoundBook bound = AnyLayout.of(book, "two.xlsx").read();
    assertThat(bound.cells().cell("plane A on House", "eave")).contains(Address.of("House", "B2"));
    assertThat(bound.cells().cell("plane A on Garage", "eave"))
        .contains(Address.of("Garage", "B2"));
  }

  @Test
  void defined_names_say_what_they_stand_for() {
    Workbook plain = Drawn.workbook(Drawn.sheet("Inputs", "| w | 10% |\n| b | 3 |"));
    Workbook book = new Workbook(
        plain.sheets(),
        List.of(
            Workbook.Name.of("WasteRate", "Inputs!$B$1"),
            Workbook.Name.of("BundlesPerSquare", "Inputs!$B$2")),
        false,
        Workbook.Calculation.USUAL,
        List.of(),
        Map.of());
    assertThat(AnyLayout.of(book, "names.xlsx").bound())
        .extracting(guess -> guess.property() + " " + guess.at())
        .containsExactlyInAnyOrder("waste_rate Inputs!B1", "bundles_per_square Inputs!B2");
  }

  @Test
  void a_mapping_file_goes_before_every_guess_and_its_bad_lines_are_said() {
    Read<AnyLayout> mapped = AnyLayout.of(book(), "bid.xlsx").mapped("""
        sheet,cell,table,property,unit,items
        Planes,C2,planes,up_slope,ft,down
        Planes,E2,-,-,,
        Garage,B2,planes,eave,ft,down
        Planes,B2,planes,eves,ft,down
        """, "map.csv");
    assertThat(mapped.findings())
        .extracting(finding -> finding.where() + ": " + finding.says())
        .containsExactly(
            "map.csv, line 4: sheet must be one of the workbook, but there is no 'Garage'",
            "map.csv, line 5: no property 'planes.eves'; known: plane, shape, eave, up_slope, run,"
                + " across, top, offset, pitch, measured, left_edge, top_edge, right_edge, corners,"
                + " edges, remarks, system, factor, plan_area, sloped_area, net_area, opening_area, squares,"
                + " waste_rate, gross_squares, bundles, courses, underlayment_layers, title");
    assertThat(mapped.value().orElseThrow().bound())
        .filteredOn(guess -> guess.at().sheet().equals("Planes"))
        .extracting(Guess::property)
        .contains("up_slope")
        .doesNotContain("run", "factor", "eave");
  }

  @Test
  void a_mapping_written_out_reads_back_as_it_was() {
    AnyLayout layout = AnyLayout.of(book(), "bid.xlsx");
    AnyLayout again = layout.mapped(layout.mapping(), "map.csv").value().orElseThrow();
    assertThat(again.bound())
        .extracting(Guess::at, Guess::property, Guess::unit)
        .containsExactlyInAnyOrderElementsOf(layout.bound().stream()
            .map(guess ->
                org.assertj.core.groups.Tuple.tuple(guess.at(), guess.property(), guess.unit()))
            .toList());
  }

  @Test
  void a_stored_binding_is_kept_through_another_program_and_counts_before_any_guess(
      @TempDir Path folder) {
    SecondProgram.needed();
    Path file = folder.resolve("bid.xlsx");
    List<Edit> store = AnyLayout.of(book(), "bid.xlsx")
        .mapped(
            "sheet,cell,table,property,unit,items\nPlanes,C2,planes,up_slope,ft,down\n", "m.csv")
        .value()
        .orElseThrow()
        .store();
    Workbooks.write(book(), store, file);
    Workbook resaved =
        squaresheet.xlsx.Xlsx.read(SecondProgram.resave(file)).value().orElseThrow();
    AnyLayout again = AnyLayout.of(resaved, "bid.xlsx");
    assertThat(again.questions()).isEmpty();
    assertThat(again.bound())
        .extracting(guess -> guess.at() + " " + guess.property())
        .contains("Planes!C2 up_slope", "Planes!G2 sloped_area", "Quote!B5 price_total");
  }

  @Test
  void values_are_written_into_the_estimators_own_cells_in_their_own_units() {
    Workbook book = Drawn.workbook(Drawn.sheet("Dach", """
        | Plane | Eave (m) | Up the slope (m) | Pitch (degrees) | Sloped area (m²) |
        | A     | 12.2     | 4.77             | 26.57           | =B2*C2 ~ 58.2 |
        | B     | 12.2     | 4.77             | 26.57           | =B3*C3 ~ 58.2 |
        """));
    BookEdits edits = AnyLayout.of(book, "dach.xlsx")
        .edits()
        .put(new Where.OfItem("plane B", "eave"), 41)
        .put(new Where.OfItem("plane B", "sloped_area"), 640)
        .put(new Where.OfItem("plane C", "eave"), 10);
    // 41 ft = 12.4968 m, exact
    assertThat(edits.edits()).singleElement().satisfies(edit -> {
      Edit.SetContent set = (Edit.SetContent) edit;
      assertThat(set.cell()).isEqualTo(Address.of("Dach", "B3"));
      assertThat(((squaresheet.sheet.Content.Numeric) set.content()).value())
          .isCloseTo(12.4968, org.assertj.core.api.Assertions.within(1e-9));
    });
    assertThat(edits.findings())
        .extracting(finding -> finding.where() + ": " + finding.says())
        .containsExactly(
            "Dach!E3: plane B: sloped_area is worked out by a formula there; it is left alone",
            "plane C: eave: plane C: eave must be bound to a cell to be written, but is not; nothing"
                + " is changed");
  }
}
