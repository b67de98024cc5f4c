package squaresheet.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import squaresheet.sheet.Content;
import squaresheet.sheet.Edit;

/** A category that is none of ours: asked about until the terms say whether it is taxed, then summed apart and said. */
class OwnCategoryTest {

  @TempDir
  Path folder;

  private Path company;

  @BeforeEach
  void company() throws IOException {
    company = Files.createDirectory(folder.resolve("company"));
    for (String list : new String[] {"products.csv", "prices.csv", "rates.csv", "terms.csv"}) {
      Files.copy(Path.of("demo-data", list), company.resolve(list));
    }
  }

  private void change(String list, String from, String to) throws IOException {
    String text = Files.readString(company.resolve(list));
    assertThat(text).contains(from);
    Files.writeString(company.resolve(list), text.replace(from, to));
  }

  private Ran imported(Path book) {
    return Ran.of(
        "import", DemoSheet.sound(), "--company", company.toString(), "-o", book.toString());
  }

  private JobFile job() {
    return JobFile.imported(folder.resolve("job.xlsx"));
  }

  @Test
  void a_word_typed_on_prices_or_rates_is_asked_about_at_its_cell_and_withholds_the_totals() {
    for (String list : new String[] {"price", "rate"}) {
      JobFile job = job();
      String key = list.equals("price") ? "price_product" : "rate_item";
      String item = list.equals("price") ? "laminated-metric" : "lift hire";
      String cell = job.beside(key, item, list + "_category").toString();
      job.type(job.beside(key, item, list + "_category"), "Materials");
      Ran verified = Ran.of("verify", job.path().toString());
      assertThat(verified.exit()).isEqualTo(3);
      assertThat(verified.out())
          .contains(
              "job.xlsx, " + cell + "  [category-not-on-terms]",
              "but reads 'Materials'; nearest: 'material'",
              "job.xlsx: 1 finding ");
      Ran totals = Ran.of("totals", job.path().toString());
      assertThat(totals.exit()).isEqualTo(3);
      assertThat(totals.out()).contains("withheld: job.xlsx", "category-not-on-terms");
      job.path().toFile().delete();
    }
  }

  @Test
  void a_number_or_nothing_in_the_place_of_a_category_is_said_at_its_cell() {
    JobFile job = job();
    var cell = job.beside("rate_item", "lift hire", "rate_category");
    for (Content content : new Content[] {new Content.Numeric(410), new Content.Blank()}) {
      job.edit(new Edit.SetContent(cell, content));
      Ran verified = Ran.of("verify", job.path().toString());
      assertThat(verified.exit()).isEqualTo(3);
      assertThat(verified.out()).contains("job.xlsx, " + cell, "category must be one of material");
    }
  }

  @Test
  void a_word_on_the_terms_is_summed_apart_and_said() {
    JobFile job = job();
    job.edit(
        new Edit.SetContent(
            job.beside("rate_item", "lift hire", "rate_category"), new Content.Text("Hauling")),
        new Edit.SetContent(job.free("tax_category"), new Content.Text("hauling")),
        new Edit.SetContent(job.free("tax_applies"), new Content.Text("no")));
    Ran verified = Ran.of("verify", job.path().toString());
    assertThat(verified.exit()).as(verified.out()).isZero();
    assertThat(verified.out())
        .contains("[category-of-your-own]", "its lines, 130.00 USD, are summed apart");
    Ran totals = Ran.of("totals", job.path().toString());
    assertThat(totals.exit()).isZero();
    // as before: 10151.79 in all, of which 130.00 were equipment
    assertThat(totals.out())
        .contains("tax,own category Hauling,total", ",303.70,130.00,10151.79,")
        .contains("job.xlsx: 130.00 USD are in a category of your own, 'Hauling'");
  }

  @Test
  void company_lists_may_have_words_of_their_own_that_the_terms_tax_or_not() throws IOException {
    change("rates.csv", "equipment", "Hauling");
    change("terms.csv", "tax_on,material", "tax_on,material|hauling");
    Path book = folder.resolve("own.xlsx");
    assertThat(imported(book).out()).doesNotContain("category-not-on-terms");
    Ran totals = Ran.of("totals", book.toString());
    // 7.25 % of 4189.00 and 130.00: 313.1275 in the place of 303.7025
    assertThat(totals.out()).contains(",313.13,130.00,10161.22,");
  }

  @Test
  void a_word_that_only_the_terms_or_only_the_lists_know_is_an_error() throws IOException {
    change("terms.csv", "tax_on,material", "tax_on,materail");
    Ran misspelt = imported(folder.resolve("a.xlsx"));
    assertThat(misspelt.exit()).isEqualTo(3);
    assertThat(misspelt.out()).contains("'materail' does neither; nearest: 'material'");
    change("terms.csv", "tax_on,materail", "tax_on,material");
    change("rates.csv", "equipment", "Hauling");
    Ran untold = imported(folder.resolve("b.xlsx"));
    assertThat(untold.exit()).isEqualTo(3);
    assertThat(untold.out()).contains("but reads 'Hauling'");
  }

  @Test
  void what_people_call_our_categories_is_ours() throws IOException {
    change("rates.csv", "labour", "Labor");
    Path book = folder.resolve("labor.xlsx");
    imported(book);
    assertThat(Ran.of("totals", book.toString()).out()).contains(",4189.00,2550.00,");
  }

  @Test
  void a_formula_that_names_a_sheet_that_is_not_there_is_named_and_stops_nothing() {
    JobFile job = job();
    JobFile good = JobFile.imported(folder.resolve("good.xlsx"));
    var cell = job.beside("rate_item", "lift hire", "rate_amount");
    job.enter(cell, "Gone!B3*2");
    Ran ran = Ran.of("totals", job.path().toString(), good.path().toString());
    assertThat(ran.exit()).isEqualTo(3);
    assertThat(ran.out())
        .contains("job.xlsx, " + cell, "=Gone!B3*2 makes", "total of 1 job: 10,151.79 USD");
  }
}
