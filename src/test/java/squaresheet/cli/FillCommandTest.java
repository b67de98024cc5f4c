package squaresheet.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Workbook;
import squaresheet.xlsx.Existing;
import squaresheet.xlsx.Xlsx;

/** A measured job filled into the demo workbooks of foreign layout, emptied as an estimator empties a form. */
class FillCommandTest {

  private static final String HIPPED = """
      Field sheet
      Job
      Job name,Fern Close 2
      Unit for bare numbers,feet
      ,
      Planes
      Plane,Shape,Eave,Up the slope,Top,Pitch,Measured
      South,trapezoid,44' 6",15-7 13/16,16',6/12,slope
      North,trapezoid,44' 6",15-7 13/16,16',6/12,slope
      East,triangle,28' 6",15-7 13/16,,6/12,slope
      """;

  /** By hand: twice (44.5 + 16) / 2 by 15.651041667, and 28.5 by 15.651041667 halved. */
  private static final double AREA = 60.5 * 15.651041667 + 28.5 * 15.651041667 / 2;

  @TempDir
  Path folder;

  private Path emptied(String name, String sheet, List<String> columns, List<Integer> rows) {
    List<Edit> edits = new ArrayList<>();
    for (String column : columns) {
      rows.forEach(row ->
          edits.add(new Edit.SetContent(Address.of(sheet, column + row), new Content.Blank())));
    }
    Path file = folder.resolve(name);
    Xlsx.edit(Path.of("demo-data", name), edits, file, Existing.REFUSE);
    return file;
  }

  private Path birch() {
    return emptied(
        "birch-court.xlsx",
        "Takeoff",
        List.of("A", "B", "C", "D", "E", "F"),
        List.of(4, 5, 6, 7, 8));
  }

  private Path mill() {
    return emptied(
        "mill-yard.xlsx", "House", List.of("B", "C", "D", "E"), List.of(4, 5, 6, 7, 8, 9, 11));
  }

  private Ran fill(Path file, Path to, String... more) throws IOException {
    Path tape = Files.writeString(folder.resolve("tape.csv"), HIPPED);
    List<String> words = new ArrayList<>(List.of(
        "fill",
        file.toString(),
        "--from",
        tape.toString(),
        "--company",
        "demo-data",
        "-o",
        to.toString()));
    words.addAll(Arrays.asList(more));
    return Ran.of(words.toArray(String[]::new));
  }

  private static double number(Path file, String sheet, String cell) {
    Workbook book = Xlsx.read(file).value().orElseThrow();
    return ((Content.Numeric) book.cell(Address.of(sheet, cell)).stored()).value();
  }

  @Test
  void a_form_with_planes_in_rows_is_filled_and_adds_up() throws IOException {
    Path to = folder.resolve("filled.xlsx");
    Ran ran = fill(birch(), to);
    assertThat(ran.out())
        .contains(
            "Takeoff!A4  South: plane  (empty) -> South",
            "Takeoff!C4  South: eave  (empty) -> 44.5",
            "Takeoff!B6  East: shape  (empty) -> triangle",
            "Bid!B15  tax rate  0.065 -> 0.0725")
        .doesNotContain("formula-differs-from-model");
    assertThat(number(to, "Takeoff", "I9")).isCloseTo(AREA, within(1e-3));
    assertThat(Ran.of("verify", to.toString()).out()).doesNotContain("ERROR", "stale");
  }

  @Test
  void a_form_with_planes_in_columns_is_filled_in_metres_and_degrees() throws IOException {
    Path to = folder.resolve("filled.xlsx");
    Ran ran = fill(mill(), to, "--sheet", "House");
    assertThat(ran.out())
        .contains("House!B4  South: plane  (empty) -> South", "House!B6  South: eave");
    // one square metre is 10.763910416709722 sq ft, from the definition of the foot
    assertThat(number(to, "House", "F10")).isCloseTo(AREA / 10.763910416709722, within(1e-3));
    // 44' 6" is 13.5636 m, exact
    assertThat(number(to, "House", "B6")).isEqualTo(13.5636);
  }

  @Test
  void a_full_sheet_is_not_written_and_the_rows_to_insert_are_said() throws IOException {
    Path to = folder.resolve("filled.xlsx");
    Ran ran = fill(Path.of("demo-data/birch-court.xlsx"), to);
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.out())
        .contains("need 3 free rows, but there are 0; insert 3 rows above row 8 of Takeoff");
    assertThat(to).doesNotExist();
  }

  @Test
  void a_field_sheet_without_a_roof_ends_in_a_sentence() throws IOException {
    Path bare = folder.resolve("bare.csv");
    Files.writeString(bare, "Unit for bare numbers,feet\nPlane,Shape,Eave,Up the slope,Pitch\n");
    Path to = folder.resolve("filled.xlsx");
    Ran ran = Ran.of(
        "fill",
        birch().toString(),
        "--from",
        bare.toString(),
        "--company",
        "demo-data",
        "-o",
        to.toString());
    assertThat(ran.exit()).isEqualTo(Exit.FAILED.code());
    assertThat(ran.err()).contains("makes a roof; nothing was written").doesNotContain("Exception");
    assertThat(to).doesNotExist();
  }

  @Test
  void what_the_roof_cannot_take_is_said_as_import_says_it() throws IOException {
    Path sheet = folder.resolve("steep.csv");
    Files.writeString(sheet, HIPPED + "Bad,triangle,0,10',,6/12,slope\n");
    Ran filled = Ran.of(
        "fill",
        birch().toString(),
        "--from",
        sheet.toString(),
        "--company",
        "demo-data",
        "-o",
        folder.resolve("filled.xlsx").toString());
    Ran imported = Ran.of(
        "import",
        sheet.toString(),
        "--company",
        "demo-data",
        "-o",
        folder.resolve("job.xlsx").toString());
    List<String> said = imported
        .out()
        .lines()
        .filter(line -> line.matches("(ERROR|WARNING) .*"))
        .toList();
    assertThat(said).isNotEmpty();
    assertThat(filled.out().lines()).containsAll(said);
  }

  @Test
  void the_workbook_stays_as_it_is_and_untouched_parts_keep_every_byte() throws IOException {
    Path file = mill();
    byte[] before = Files.readAllBytes(file);
    Path to = folder.resolve("filled.xlsx");
    fill(file, to, "--sheet", "House");
    assertThat(Files.readAllBytes(file)).isEqualTo(before);
    try (ZipFile one = new ZipFile(file.toFile());
        ZipFile other = new ZipFile(to.toFile())) {
      for (String part : List.of("xl/styles.xml", "xl/worksheets/sheet3.xml", "docProps/app.xml")) {
        assertThat(other.getInputStream(other.getEntry(part)).readAllBytes())
            .as(part)
            .isEqualTo(one.getInputStream(one.getEntry(part)).readAllBytes());
      }
    }
    assertThat(fill(file, to, "--sheet", "House").exit()).isEqualTo(1);
    Ran forced = fill(file, to, "--sheet", "House", "--force");
    assertThat(forced.out()).contains("kept what was there as ");
  }

  @Test
  void what_is_filled_from_a_job_workbook_is_what_the_job_workbook_has() throws IOException {
    Path tape = Files.writeString(folder.resolve("tape.csv"), HIPPED);
    Path job = folder.resolve("job.xlsx");
    Ran.of("import", tape.toString(), "--company", "demo-data", "-o", job.toString());
    Path to = folder.resolve("filled.xlsx");
    Ran ran = Ran.of("fill", birch().toString(), "--from", job.toString(), "-o", to.toString());
    assertThat(ran.out()).contains("Takeoff!C6  East: eave  (empty) -> 28.5");
    assertThat(number(to, "Takeoff", "I9")).isCloseTo(AREA, within(1e-3));
  }

  @Test
  void a_file_that_is_none_is_one_sentence() {
    assertThat(Ran.of("fill", "demo-data/birch-court.xlsx", "--from", "nowhere.xlsx")
            .all())
        .contains("nowhere.xlsx")
        .doesNotContain("Exception");
  }
}
