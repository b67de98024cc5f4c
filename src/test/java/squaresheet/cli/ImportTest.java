package squaresheet.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From the demo's tape sheet to a workbook, and what happens where that cannot be. */
class ImportTest {

  private static final String SHEET = "demo-data/tape-sheet.csv";

  @TempDir
  Path folder;

  @Test
  void writes_a_workbook_and_lists_the_row_it_could_not_read() {
    Path book = folder.resolve("job.xlsx");
    Ran ran = Ran.of("import", SHEET, "-o", book.toString());
    assertThat(book).exists();
    assertThat(ran.out())
        .contains(
            "tape-sheet.csv, line 23, Width",
            "'about two foot'",
            "NOT TO BE ORDERED: opening Skylight? is missing")
        .contains("wrote " + book);
    assertThat(ran.err()).isEmpty();
  }

  @Test
  void a_metric_sheet_becomes_a_metric_workbook_that_verifies() {
    Path book = folder.resolve("metric.xlsx");
    Ran ran = Ran.of("import", "demo-data/tape-sheet-metric.csv", "-o", book.toString());
    assertThat(ran.exit()).as(ran.out()).isZero();
    // By hand: (12.6+4.2)/2 x 4.85 twice, 8.4 x 4.85 / 2 twice, 3.6 x 2.63, 11.25 / cos 20, less
    // 0.78 x 1.18.
    assertThat(ran.out()).contains("Mill Row workshop: 6 planes, 142.7 m\u00b2 on the slope");
    assertThat(Ran.of("verify", book.toString()).out()).contains("metric.xlsx: 0 findings");
  }

  @Test
  void a_setting_in_words_is_priced_as_in_figures() throws IOException {
    String figures = price("Layers to tear off;2");
    assertThat(price("Layers to tear off;two")).isEqualTo(figures);
    assertThat(price("Layers to tear off;2 layers")).isEqualTo(figures);
    assertThat(price("Layers to tear off;none")).isEqualTo(price("Layers to tear off;0"));
    assertThat(figures).isNotEqualTo(price("Layers to tear off;1"));
  }

  /** The price that import prints for the demo's metric sheet with this line of layers on it. */
  private String price(String line) throws IOException {
    Path sheet = folder.resolve("words.csv");
    Files.writeString(
        sheet,
        Files.readString(Path.of("demo-data/tape-sheet-metric.csv"))
            .replaceFirst("(?m)^Layers to tear off;.*$", line));
    Ran ran = Ran.of(
        "import",
        sheet.toString(),
        "--company",
        "demo-data",
        "--force",
        "-o",
        folder.resolve("words.xlsx").toString());
    assertThat(ran.exit()).as(ran.all()).isZero();
    return ran.out().lines().filter(it -> it.startsWith("Price")).findFirst().orElseThrow();
  }

  @Test
  void a_plane_too_flat_for_shingles_is_named_above_the_price() throws IOException {
    Path flat = folder.resolve("flat.csv");
    Files.writeString(
        flat, Files.readString(Path.of(SHEET)).replace("3 in 12,slope", "1 in 12,slope"));
    Path book = folder.resolve("flat.xlsx");
    Ran ran = Ran.of("import", flat.toString(), "--company", "demo-data", "-o", book.toString());
    assertThat(ran.out())
        .contains(
            "too flat for shingles, none ordered there: Porch; underlayment, metal and work there are still"
                + " ordered and priced, and verify withholds the totals");
    assertThat(Ran.of("verify", book.toString()).out()).contains("totals withheld");
    assertThat(Ran.of("draw", book.toString(), "-o", folder.resolve("d").toString())
            .out())
        .contains("Porch: TOO FLAT, NO SHINGLES");
  }

  @Test
  void does_not_overwrite_unless_forced_and_then_keeps_a_copy() throws IOException {
    Path book = folder.resolve("job.xlsx");
    Files.writeString(book, "precious");
    Ran refused = Ran.of("import", SHEET, "-o", book.toString());
    assertThat(refused.exit()).isEqualTo(1);
    assertThat(refused.err()).contains("--force");
    assertThat(Files.readString(book)).isEqualTo("precious");

    Ran forced = Ran.of("import", SHEET, "-o", book.toString(), "--force");
    assertThat(forced.out()).contains("kept what was there as ");
    try (var files = Files.list(folder)) {
      assertThat(files.filter(file -> !file.equals(book)))
          .singleElement()
          .satisfies(copy -> assertThat(Files.readString(copy)).isEqualTo("precious"));
    }
  }

  @Test
  void prints_on_the_paper_asked_for() throws IOException {
    Path book = folder.resolve("a4.xlsx");
    Ran.of("import", SHEET, "-o", book.toString(), "--paper", "a4");
    try (XSSFWorkbook read = new XSSFWorkbook(Files.newInputStream(book))) {
      assertThat(read).isNotEmpty().allSatisfy(sheet -> assertThat(
              sheet.getPrintSetup().getPaperSize())
          .isEqualTo(PrintSetup.A4_PAPERSIZE));
    }
  }

  @Test
  void names_the_file_that_the_company_lacks() throws IOException {
    Path sheet = Files.copy(Path.of(SHEET), folder.resolve("sheet.csv"));
    Ran ran = Ran.of("import", sheet.toString());
    assertThat(ran.exit()).isEqualTo(2);
    assertThat(ran.err()).contains("has no products.csv", "--company");
  }

  @Test
  void an_empty_sheet_makes_no_workbook() throws IOException {
    Path sheet = Files.writeString(folder.resolve("empty.csv"), "");
    Ran ran = Ran.of(
        "import",
        sheet.toString(),
        "--company",
        "demo-data",
        "-o",
        folder.resolve("x.xlsx").toString());
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(folder.resolve("x.xlsx")).doesNotExist();
    assertThat(ran.all()).doesNotContain("Exception", "\tat ");
  }

  @Test
  void reads_a_sheet_saved_in_windows_letters() throws IOException {
    String western = Files.readString(Path.of(SHEET))
        .replace("11′ 2 3/16″", "11' 2 3/16\"\"")
        .replace("”", "\u201d");
    Path sheet = folder.resolve("western.csv");
    Files.write(sheet, western.replace("11' 2 3/16\"\"", "11’ 2 3/16”").getBytes("windows-1252"));
    Ran ran = Ran.of(
        "import",
        sheet.toString(),
        "--company",
        "demo-data",
        "-o",
        folder.resolve("w.xlsx").toString());
    assertThat(ran.out()).contains("6 planes");
    assertThat(new String(Files.readAllBytes(sheet), StandardCharsets.ISO_8859_1))
        .contains("\u0094");
  }

  @Test
  void verify_tells_a_missing_file_and_goes_on_with_the_next() {
    Path book = folder.resolve("job.xlsx");
    Ran.of("import", SHEET, "-o", book.toString());
    Ran ran = Ran.of("verify", folder.resolve("none.xlsx").toString(), book.toString());
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.out()).contains("none.xlsx", "is not there", "job.xlsx: ");
  }

  @Test
  void a_wrong_command_is_told_in_a_sentence() {
    Ran ran = Ran.of("frobnicate");
    assertThat(ran.exit()).isEqualTo(2);
    assertThat(ran.err()).contains("frobnicate", "squaresheet --help");
    assertThat(ran.out()).isEmpty();
  }
}
