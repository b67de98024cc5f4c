package squaresheet.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Edges that lie between two planes as a rule, and meet none here: on the field sheet, in the workbook, in the totals. */
class MeetsNoPlaneTest {

  private static final String TWO_SHEDS = """
      Shed A,rectangle,20',10',,,4:12,slope,rake,ridge / none,rake
      Shed B,rectangle,20',10',,,4:12,slope,rake,ridge / none,rake
      """;

  /** A gable dormer over an opening: its two planes share a ridge, and each ends in a valley on the roof below. */
  private static final String DORMER = """
      Main,rectangle,40',20',,,6:12,slope,rake,ridge / none,rake
      Dormer left,parallelogram,6',5',,-5',6:12,slope,valley / none,ridge / Dormer right,open
      Dormer right,parallelogram,6',5',,5',6:12,slope,open,ridge / Dormer left,valley / none
      """;

  @TempDir
  Path folder;

  private Path imported(String planes, String edges) {
    Path sheet = folder.resolve("sheet.csv");
    Path book = folder.resolve("book.xlsx");
    try {
      Files.writeString(sheet, """
          Job
          Job name,Sheds
          Unit for bare numbers,feet

          Planes
          Plane,Shape,Eave,Up the slope,Top,Offset,Pitch,Measured,Left edge,Top edge,Right edge
          %s
          Edges
          Edge,Plane,Meets,Length
          %s""".formatted(planes, edges));
    } catch (IOException unwritable) {
      throw new UncheckedIOException(unwritable);
    }
    Ran ran = Ran.of(
        "import", sheet.toString(), "--company", "demo-data", "-o", book.toString(), "--force");
    assertThat(ran.out()).as(ran.all()).contains("wrote " + book);
    return book;
  }

  private static double number(Path book, String name) {
    try (OtherProgram program = OtherProgram.open(book)) {
      return program.number(name);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static void type(Path book, String column, String edge, String text) {
    try (OtherProgram program = OtherProgram.open(book)) {
      program.cell(column, "edge_name", edge).setCellValue(text);
      program.save();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static void passes(Path book) {
    Ran verified = Ran.of("verify", book.toString());
    assertThat(verified.out())
        .contains("0 findings")
        .doesNotContain("is taken to meet", "must be on two planes");
    assertThat(verified.exit()).as(verified.all()).isZero();
    Ran totals = Ran.of("totals", book.toString());
    assertThat(totals.exit()).as(totals.all()).isZero();
  }

  @Test
  void two_ridges_that_meet_none_are_two_on_an_untouched_workbook() {
    Path book = imported(TWO_SHEDS, "");
    assertThat(number(book, "ridge_length")).isEqualTo(40);
    passes(book);
  }

  @Test
  void the_valleys_of_a_dormer_meet_none() {
    Path book = imported(DORMER, "");
    // By hand: each valley is the diagonal of 5 ft along the eave and 5 ft up the slope; the ridges
    // 40 and 6 ft.
    assertThat(number(book, "valley_length")).isCloseTo(2 * Math.hypot(5, 5), within(1e-9));
    assertThat(number(book, "ridge_length")).isEqualTo(46);
    passes(book);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      ridge,Shed A,none,20' 0 1/2"
      ridge,Shed A / top,None,
      ridge,Shed A,-,
      """)
  void none_under_the_edges_of_the_field_sheet_counts_like_that_beside_the_plane(String edge) {
    String planes = TWO_SHEDS.replaceFirst("ridge / none", "ridge");
    Path book = imported(planes, edge.strip() + "\nridge,Shed B,none,20'\n");
    assertThat(number(book, "ridge_length")).isCloseTo(40, within(0.05));
    passes(book);
  }

  @Test
  void an_edge_said_to_meet_none_and_a_plane_is_asked_about() {
    Path book = folder.resolve("book.xlsx");
    imported(TWO_SHEDS, "ridge,Shed A,Shed B,20'\n");
    Ran ran = Ran.of(
        "import",
        folder.resolve("sheet.csv").toString(),
        "--company",
        "demo-data",
        "-o",
        book.toString(),
        "--force");
    assertThat(ran.out())
        .contains(
            "neither 'Shed A' nor 'Shed B' has just one ridge left for it; the row is not used");
    assertThat(number(book, "ridge_length")).isEqualTo(40);
  }

  @ParameterizedTest
  @ValueSource(strings = {"none", " NONE ", "-"})
  void none_typed_in_the_workbook_leaves_the_edge_its_whole_length(String none) {
    Path book = imported(
        TWO_SHEDS.replace("ridge / none", "ridge").replace("B,rectangle,20'", "B,rectangle,23'"),
        "ridge,Shed A,none,\nridge,Shed B,none,\n");
    type(book, "edge_meets", "Shed A top", none);
    type(book, "edge_meets", "Shed B top", none);
    assertThat(number(book, "ridge_length")).isEqualTo(43);
    passes(book);
  }

  @Test
  void none_typed_over_the_other_plane_parts_the_edge_and_asks_for_the_second() {
    Path book = imported("""
        Front,rectangle,20',10',,,4:12,slope,rake,ridge / Back,rake
        Back,rectangle,20',12',,,4:12,slope,rake,ridge / Front,rake
        """, "ridge,Front,Back,20' 1\"\n");
    double shared = number(book, "ridge_length");
    assertThat(shared).isCloseTo(20 + 0.5 / 12, within(1e-9));
    type(book, "edge_meets", "Front top", "none");
    assertThat(number(book, "ridge_length")).as("as taped").isCloseTo(20 + 1 / 12.0, within(1e-9));
    Ran verified = Ran.of("verify", book.toString());
    assertThat(verified.exit()).isEqualTo(3);
    assertThat(verified.out())
        .contains("an edge that meets no plane must name no side of one, but names 'top'; clear"
            + " that cell, and give the edge of the other plane a row of its own");
  }

  @Test
  void a_plane_said_on_the_field_sheet_that_is_none_is_kept_in_the_workbook_and_asked_for() {
    Path book = imported(TWO_SHEDS.replace("ridge / none", "ridge / Barn"), "");
    Ran verified = Ran.of("verify", book.toString());
    assertThat(verified.exit()).isEqualTo(3);
    assertThat(verified.out()).contains("no plane 'Barn'");
    assertThat(number(book, "ridge_length")).isEqualTo(40);
  }

  @Test
  void no_plane_is_called_none() {
    Path book =
        imported(TWO_SHEDS + "None,rectangle,20',10',,,4:12,slope,rake,ridge / none,rake\n", "");
    assertThat(number(book, "ridge_length")).isEqualTo(40);
  }
}
