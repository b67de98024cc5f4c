package squaresheet.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Content;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Workbook;

/** A row that a person adds by hand to a list of a job workbook has its effect, or is found at its cell. */
class ListRowsTest {

  @TempDir
  Path folder;

  private JobFile job;
  private final List<Edit> edits = new ArrayList<>();

  @BeforeEach
  void the_demo_is_imported() {
    job = JobFile.imported(folder.resolve("job.xlsx"));
  }

  private int rows(String column) {
    return job.book()
        .name(column)
        .flatMap(Workbook.Name::block)
        .map(Block::rows)
        .orElseThrow();
  }

  /** Types a row, {@code column=text}, counted from the first of the list; gives the cell of its first column. */
  private Address row(int row, String... cells) {
    for (String cell : cells) {
      String[] parts = cell.split("=");
      Content content = parts[1].matches("[\\d.]+")
          ? new Content.Numeric(Double.parseDouble(parts[1]))
          : new Content.Text(parts[1]);
      edits.add(new Edit.SetContent(job.at(parts[0], row), content));
    }
    return job.at(cells[0].split("=")[0], row);
  }

  /** Types a row two rows below the short one that ends the list. */
  private Address below(String... cells) {
    return row(rows(cells[0].split("=")[0]) + 2, cells);
  }

  /** Types a row into the short one that ends the list. */
  private Address last(String... cells) {
    return row(rows(cells[0].split("=")[0]) - 1, cells);
  }

  private void isFoundAt(Stream<Address> cells) {
    job.edit(edits.toArray(Edit[]::new));
    Ran verify = Ran.of("verify", job.path().toString());
    assertThat(verify.exit()).isEqualTo(Exit.WITHHELD.code());
    List<String> lines = verify.out().lines().toList();
    assertThat(cells).allSatisfy(cell -> assertThat(lines)
        .contains("ERROR   job.xlsx, " + cell + "  [row-not-read]"));
    assertThat(Ran.of("totals", job.path().toString()).exit()).isEqualTo(Exit.WITHHELD.code());
  }

  @Test
  void a_row_outside_its_list_is_found() {
    isFoundAt(Stream.of(
        below("rate_item=crane", "rate_category=equipment", "rate_amount=900", "rate_unit=$"),
        row(rows("crew_name"), "crew_name=helper", "crew_rate=25"),
        below("price_product=coil-nail", "price_amount=99", "price_per=box"),
        below("catalogue_id=new-nail", "catalogue_kind=nail", "catalogue_pieces_per_pack=9"),
        below("own_rule_name=typed_waste", "own_rule_formula=0.2"),
        below("payment_when=retention", "payment_share=0.1"),
        below("opening_name=Vent", "opening_plane=Porch", "opening_width=3")));
  }

  @Test
  void a_row_within_its_list_that_no_line_takes_up_is_found() {
    edits.add(new Edit.SetContent(
        job.beside("payment_when", "on completion", "payment_share"), new Content.Numeric(0.2)));
    isFoundAt(Stream.of(
        last("rate_item=crane", "rate_category=equipment", "rate_amount=900", "rate_unit=$"),
        last("payment_when=retention", "payment_share=0.1"),
        last("price_amount=99"),
        last("crew_rate=25"),
        row(0, "own_rule_formula=0.2")));
  }

  @Test
  void a_price_typed_into_the_short_row_counts_and_words_for_people_may_stand_anywhere() {
    Ran before = Ran.of("totals", job.path().toString());
    edits.add(new Edit.SetContent(
        job.beside("price_product", "coil-nail", "price_product"),
        new Content.Text("nail-of-old")));
    last("price_product=coil-nail", "price_amount=41", "price_per=box", "price_category=material");
    below("price_product=ask the yard in May");
    job.edit(edits.toArray(Edit[]::new));
    Ran verify = Ran.of("verify", job.path().toString());
    assertThat(verify.out())
        .contains("no product 'nail-of-old' in the catalogue", "words outside the prices are for");
    assertThat(verify.exit()).as(verify.out()).isZero();
    assertThat(total(Ran.of("totals", job.path().toString()))).isEqualTo(total(before));
  }

  private static String total(Ran ran) {
    return ran.out().lines().filter(it -> it.startsWith("total of")).findFirst().orElseThrow();
  }
}
