package squaresheet.product;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.units.Length;

class CatalogueTest {

  private static final String HEADINGS =
      "id,kind,pack,pieces_per_pack,length_in,height_in,exposure_in,stated_coverage_sq_ft\n";

  private static Read<Catalogue> read(String lines) {
    return Catalogue.read(HEADINGS + lines, "products.csv");
  }

  private static List<String> says(Read<Catalogue> read) {
    return read.findings().stream()
        .map(finding -> finding.where() + ": " + finding.says())
        .toList();
  }

  @Test
  void the_demo_catalogue_reads_without_a_word() {
    Read<Catalogue> read = Catalogue.read(Path.of("demo-data/products.csv"));
    assertThat(read.findings()).isEmpty();
    assertThat(Selection.firstOfEach(read.value().orElseThrow()).products())
        .containsOnlyKeys(Role.values());
  }

  @Test
  void a_product_that_is_written_reads_back_equal() {
    for (Product product :
        Catalogue.read(Path.of("demo-data/products.csv")).value().orElseThrow().products()) {
      Catalogue.Row row =
          new Catalogue.Row(Catalogue.cells(product), column -> new Where.OfItem("row", column));
      Read<Catalogue> read =
          Catalogue.read(Catalogue.headings(), List.of(row), new Where.InFile("again"));
      assertThat(read.value().orElseThrow().products()).containsExactly(product);
    }
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # heading   | text        | 1/320 mm | source
      length_in   | 39.375      | 320040   | 39 3/8 in x 8128
      length_in   | 39 3/8      | 320040   | 39 3/8 in x 8128
      length_in   | 3' 3 3/8"   | 320040   | 39 3/8 in x 8128
      length_in   | 1000 mm     | 320000   | 1000 mm x 320
      length_ft   | 3.28125     | 320040   | 3.28125 ft = 39.375 in
      length_mm   | 1000.1      | 320032   | 1000.1 mm x 320
      length_cm   | 100         | 320000   | 100 cm = 1000 mm
      length_m    | 1           | 320000   | 1 m = 1000 mm
      """)
  void a_length_is_exact_in_the_unit_of_its_heading_or_its_own(
      String heading, String text, long units, String source) {
    String table = "id,kind,pack,exposure_in,height_in," + heading + "\nx,shingle,bundle,5,12,\""
        + text.replace("\"", "\"\"") + "\"\n";
    Shingle shingle = (Shingle)
        Catalogue.read(table, "p.csv").value().orElseThrow().products().get(0);
    assertThat(shingle.length()).as(source).isEqualTo(new Length(units));
  }

  @Test
  void what_cannot_be_read_is_said_with_its_place_and_the_rest_is_read() {
    Read<Catalogue> read = read("""
        good,shingle,bundle,27,36,12,5,33.75
        late,shingel,bundle,27,36,12,5,
        deep,shingle,bundle,27,36,9,5,
        text,shingle,bundle,many,36,12,5,
        long,shingle,bundle,27,three feet,12,5,
        good,shingle,bundle,27,36,12,5,
        """);
    assertThat(read.value().orElseThrow().products())
        .extracting(Product::id)
        .containsExactly("good");
    assertThat(says(read))
        .containsExactly(
            "products.csv, line 3, kind: no kind of product 'shingel'; nearest: 'shingle'",
            "products.csv, line 4: deep: height must be at least two exposures of 5\", so that the headlap is not negative, but is 9\"",
            "products.csv, line 5, pieces_per_pack: pieces_per_pack must be a whole number like 21, but reads 'many'",
            "products.csv, line 6, length_in: length must read like 13.25, 13 1/4 or 1' 1 1/4\" and be whole in 64ths of an inch or tenths of a millimetre, but reads 'three feet'",
            "products.csv, line 7, id: id must be used once, but 'good' stands above already");
  }

  @Test
  void a_stated_coverage_off_by_more_than_its_last_digit_is_said() {
    // 27 x 36 x 5 / 144 = 33.75 sq ft by hand; 33.8 and 34 are that, rounded; 33.3 is a third of a
    // square
    assertThat(says(read("a,shingle,bundle,27,36,12,5,33.8\n"))).isEmpty();
    assertThat(says(read("a,shingle,bundle,27,36,12,5,34\n"))).isEmpty();
    assertThat(says(read("a,shingle,bundle,27,36,12,5,33.3\n")))
        .containsExactly(
            "products.csv, line 2, stated_coverage_sq_ft: a: stated coverage is 33.3 sq ft per bundle, but 27 pieces of 3' showing 5\" cover 33.75 sq ft");
  }

  @Test
  void an_unknown_product_gets_its_neighbours() {
    Catalogue catalogue =
        read("laminated,shingle,bundle,22,39,13,5,\nthree-tab,shingle,bundle,27,36,12,5,\n")
            .value()
            .orElseThrow();
    Read<Product> found = catalogue.find("laminatd", new Where.InFile("job"));
    assertThat(found.findings())
        .extracting(Finding::says)
        .containsExactly("no product 'laminatd'; nearest: 'laminated'");
  }

  @Test
  void a_table_that_is_none_gives_one_sentence() {
    assertThat(says(Catalogue.read("", "products.csv")))
        .containsExactly(
            "products.csv: the catalogue must hold a heading line and a product or more, but holds none");
    assertThat(says(Catalogue.read("name,size\nx,1\n", "products.csv")))
        .containsExactly(
            "products.csv: the catalogue must have the columns id, kind and pack, but lacks id and kind and pack");
    assertThat(
            says(Catalogue.read("id,kind,pack,leng_in\nb,pipe_boot,piece,red\n", "products.csv")))
        .containsExactly(
            "products.csv: no column 'leng_in', so it is not read; nearest: 'length_in'");
    assertThat(says(Catalogue.read(Path.of("demo-data/none.csv"))))
        .containsExactly(
            "none.csv: the catalogue must be a readable text file in UTF-8, but cannot be read");
  }

  @Test
  void a_product_can_only_play_its_part() {
    Catalogue catalogue =
        Catalogue.read(Path.of("demo-data/products.csv")).value().orElseThrow();
    Read<Selection> read = Selection.read(
        catalogue,
        Map.of(
            Role.CAP, new Selection.Choice("cap-cut", new Where.InFile("job")),
            Role.STARTER, new Selection.Choice("felt-30", new Where.InFile("job"))));
    assertThat(read.value().orElseThrow().products().keySet()).containsExactly(Role.CAP);
    assertThat(read.findings().stream().map(Finding::says).collect(Collectors.toList()))
        .containsExactly(
            "starter must be a product of kind starter, but felt-30 is of kind underlayment");
  }

  @Test
  void more_may_not_show_than_the_product_allows() {
    Selection selection = Selection.firstOfEach(
        Catalogue.read(Path.of("demo-data/products.csv")).value().orElseThrow());
    Where where = new Where.InFile("job");
    assertThat(selection.exposureFindings(Length.ofInches(45, 8), where)).isEmpty();
    assertThat(selection.exposureFindings(Length.ofInches(361, 64), where))
        .extracting(Finding::says)
        .containsExactly(
            "exposure laid must be at most the 5 5/8\" of laminated-metric, but is 5 41/64\"");
  }

  @Test
  void two_edge_metals_are_for_eaves_and_rakes_and_one_alone_for_both() throws Exception {
    String demo = java.nio.file.Files.readString(java.nio.file.Path.of("demo-data/products.csv"));
    Selection two =
        Selection.firstOfEach(Catalogue.read(demo, "two.csv").value().orElseThrow());
    assertThat(two.of(Role.EAVE_METAL).map(Product::id)).contains("edge-eave");
    assertThat(two.of(Role.RAKE_METAL).map(Product::id)).contains("edge-rake");
    String alone = demo.lines()
        .filter(line -> !line.startsWith("edge-rake"))
        .collect(java.util.stream.Collectors.joining("\n"));
    Selection one =
        Selection.firstOfEach(Catalogue.read(alone, "one.csv").value().orElseThrow());
    assertThat(one.of(Role.EAVE_METAL).map(Product::id)).contains("edge-eave");
    assertThat(one.of(Role.RAKE_METAL).map(Product::id)).contains("edge-eave");
  }
}
