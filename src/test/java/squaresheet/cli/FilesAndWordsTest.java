package squaresheet.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Files under their right names, and sentences that help. */
class FilesAndWordsTest {

  private static final String SHEET = "demo-data/tape-sheet.csv";
  private static final String LIBRARY =
      "Exception|when reading record|Unmatched|Missing required|Invalid value|java\\.|at squaresheet";

  @TempDir
  Path folder;

  private Path file(String name) {
    return folder.resolve(name);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "UTF-16",
        "UTF-16LE",
        "UTF-16BE",
        "x-UTF-16LE-BOM",
        "X-UTF-32LE-BOM",
        "windows-1252"
      })
  void text_is_read_however_wide_its_letters_are(String charset) throws IOException {
    String text = Files.readString(Path.of(SHEET)).replaceAll("[^\\x00-\\xFF]", "-");
    Path plain = Files.write(file("plain.csv"), text.getBytes(StandardCharsets.UTF_8));
    Path wide = Files.write(file("wide.csv"), text.getBytes(Charset.forName(charset)));
    assertThat(TextFile.read(wide)).isEqualTo(TextFile.read(plain));
  }

  @Test
  void what_is_no_text_is_called_what_it_is() throws IOException {
    Map<String, byte[]> kinds = Map.of(
        "a workbook or another zip", Files.readAllBytes(Path.of("demo-data/birch-court.xlsx")),
        "a PDF", "%PDF-1.4 \n%".getBytes(StandardCharsets.ISO_8859_1),
        "a web page", "<html><body>".getBytes(StandardCharsets.ISO_8859_1),
        "no text at all", new byte[301]);
    for (Map.Entry<String, byte[]> kind : kinds.entrySet()) {
      Path sheet = Files.write(file("sheet.csv"), kind.getValue());
      Ran ran = Ran.of(
          "import",
          sheet.toString(),
          "--company",
          "demo-data",
          "-o",
          file("x.xlsx").toString());
      assertThat(ran.exit()).isEqualTo(1);
      assertThat(ran.err()).contains("must be a text table (.csv), but is " + kind.getKey());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"nonsense", "xx-YY", "en-ZZ", "", "12", "de-", "en-US-"})
  void a_locale_there_is_not_is_refused(String locale) {
    Ran ran = Ran.of("import", SHEET, "--locale", locale, "-o", file("x.xlsx").toString());
    assertThat(ran.exit()).isEqualTo(2);
    assertThat(ran.err())
        .contains("--locale must be a language and a country such as en-US or de-DE");
    assertThat(file("x.xlsx")).doesNotExist();
  }

  @ParameterizedTest
  @ValueSource(strings = {"en-US", "de-DE", "de_DE", "fr", "pt-br"})
  void a_locale_there_is_is_taken(String locale) {
    assertThat(WrittenLocale.of(locale).getLanguage()).hasSize(2);
  }

  @ParameterizedTest
  @CsvSource({
    "import demo-data/tape-sheet.csv -o, x.ods",
    "import demo-data/tape-sheet.csv -o, x",
    "import demo-data/tape-sheet.csv -o, x.xlsm",
    "blank, x.xls",
    "fill demo-data/roof-form.xlsx --from demo-data/tape-sheet.csv -o, x.xlsm",
    "mark demo-data/birch-court.xlsx -o, x.csv",
    "bind demo-data/birch-court.xlsx --keep --no-questions -o, x.ods",
    "bind demo-data/birch-court.xlsx --no-questions --fill-in, x.xlsx",
    "totals demo-data/birch-court.xlsx -o, x.xlsx",
    "draw demo-data/birch-court.xlsx -o, x.svg"
  })
  void nothing_is_written_under_a_name_that_says_something_else(String command, String name)
      throws IOException {
    List<String> words = Stream.concat(
            Stream.of(command.split(" ")), Stream.of(file(name).toString()))
        .toList();
    Ran ran = Ran.of(words.toArray(String[]::new));
    assertThat(ran.exit()).as(ran.all()).isEqualTo(2);
    assertThat(ran.err()).contains("nothing was written");
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files).isEmpty();
    }
  }

  @Test
  void force_is_advised_only_where_it_helps() throws IOException {
    Path there = Files.writeString(file("x.xlsx"), "mine");
    assertThat(Ran.of("blank", there.toString()).err())
        .contains("; --force keeps a copy and goes on");
    Files.createDirectory(file("d.xlsx"));
    assertThat(Ran.of("blank", file("d.xlsx").toString()).err())
        .contains("is a folder")
        .doesNotContain("--force");
    assertThat(Ran.of("blank", file("no/x.xlsx").toString()).err())
        .contains("must be there, but is not")
        .doesNotContain("--force");
    Files.writeString(file(".~lock.y.xlsx#"), "");
    Files.writeString(file("y.xlsx"), "mine");
    assertThat(Ran.of("blank", file("y.xlsx").toString(), "--force").err())
        .doesNotContain("--force");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "import",
        "import x y z",
        "draw x --locle",
        "vrify x",
        "import x --paper a5",
        "totals",
        "import x -o",
        "import x --paper a4 --paper a4",
        "fill x",
        "explain",
        "verify \u0000"
      })
  void a_wrong_command_gets_words_of_our_own(String command) {
    Ran ran = Ran.of(command.split(" "));
    assertThat(ran.exit()).isIn(1, 2, 3);
    assertThat(ran.all()).isNotBlank().doesNotContainPattern(LIBRARY);
  }

  @Test
  void a_broken_list_of_the_company_is_told_by_its_line() throws IOException {
    for (String name : List.of("products.csv", "prices.csv", "rates.csv", "terms.csv")) {
      Files.copy(Path.of("demo-data", name), file(name));
    }
    Path prices = file("prices.csv");
    String right = Files.readString(prices);
    String[] lines = right.split("\n");
    String last = lines[lines.length - 1];
    Files.writeString(prices, right.replace(last, last + ",1,2"));
    Ran more = imported();
    assertThat(more.out())
        .contains(
            "prices.csv, line " + lines.length, "a comma within a value needs quotes around it");
    Files.writeString(prices, right.replace(last, "\"" + last));
    assertThat(imported().all())
        .contains("has a quote on line " + lines.length + " that is never closed");
    Files.writeString(prices, right);
    Path terms = file("terms.csv");
    Files.writeString(terms, Files.readString(terms).replace("USD", "QQQQ"));
    Ran currency = imported();
    for (Ran ran : List.of(more, currency)) {
      assertThat(ran.all()).doesNotContainPattern(LIBRARY).doesNotContain("Unknown currency");
    }
  }

  private Ran imported() {
    return Ran.of(
        "import",
        SHEET,
        "--company",
        folder.toString(),
        "-o",
        file("x.xlsx").toString(),
        "--force");
  }
}
