package squaresheet.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static squaresheet.cli.Workshop.cell;
import static squaresheet.cli.Workshop.change;
import static squaresheet.cli.Workshop.repeated;
import static squaresheet.cli.Workshop.typed;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Edit;

/** Papers that leave the office: what they say, when they are withheld, and where they are put. */
class DrawTest {

  private static final String SHINGLES = "Laminated shingle, metric size";
  private static final String JOB = "alder-lane-house";

  @TempDir
  static Path measured;

  @TempDir
  Path folder;

  private Workshop shop;
  private Path book;

  @BeforeAll
  static void measure() {
    new Workshop(measured).job("alder");
  }

  @BeforeEach
  void copied() throws IOException {
    shop = new Workshop(folder);
    book = Files.copy(measured.resolve("alder.xlsx"), folder.resolve("alder.xlsx"));
  }

  private Address takeoff() {
    return cell(book, "job", "shingle_bundles");
  }

  private Address priced() {
    return cell(book, "line " + SHINGLES, "line_quantity");
  }

  private Address summary() {
    return repeated(book, "Summary", "shingle_bundles");
  }

  private static Edit note(Address at, String text) {
    return new Edit.SetComment(at, "estimator", text);
  }

  private static Edit formula(Address at, String formula) {
    return new Edit.SetFormula(at, formula, new Content.Blank());
  }

  /** Draws what the workbook is now, and gives what the order list says of the shingles. */
  private String ordered() {
    Ran ran = shop.draw(book, "papers", "--force");
    assertThat(ran.exit()).as(ran.all()).isZero();
    List<String> texts = shop.texts("papers", "order-list");
    return texts.get(texts.indexOf(SHINGLES) - 1);
  }

  private void withheld(Ran ran) {
    assertThat(ran.exit()).as(ran.all()).isEqualTo(3);
    assertThat(ran.out()).contains("DOES NOT PASS: no order list was written");
    assertThat(shop.files("papers"))
        .anyMatch(file -> file.contains("crew-sheet"))
        .noneMatch(file -> file.contains("order"));
    shop.files("papers").stream().filter(file -> file.endsWith(".svg")).forEach(file -> assertThat(
            Workshop.texts(folder.resolve("papers").resolve(file)))
        .as(file)
        .contains("DOES NOT PASS"));
  }

  @Test
  void an_order_leaves_only_a_workbook_that_passes() {
    assertThat(ordered()).as("by the summary of the import").isEqualTo("59 bundles");
    assertThat(shop.texts("papers", "crew-sheet")).doesNotContain("DOES NOT PASS");
    change(book, typed(cell(book, "job", "typed_waste"), 10));
    withheld(shop.draw(book, "papers", "--force"));
  }

  @Test
  void no_other_command_gives_orders_of_a_workbook_that_does_not_pass() {
    String form = "demo-data/roof-form.xlsx";
    String filled = folder.resolve("filled.xlsx").toString();
    change(book, typed(priced(), 62));
    Ran other = Ran.of("fill", form, "--from", book.toString(), "-o", filled);
    assertThat(other.exit()).as(other.all()).isEqualTo(3);
    assertThat(other.err()).contains("orders other packs than its planes and settings make");
    change(book, typed(cell(book, "job", "typed_waste"), 10));
    Ran readings = Ran.of("readings", book.toString());
    assertThat(readings.exit()).isEqualTo(3);
    assertThat(readings.out()).startsWith("DOES NOT PASS");
    Ran fill = Ran.of("fill", form, "--from", book.toString(), "-o", filled);
    assertThat(fill.exit()).isEqualTo(3);
    assertThat(fill.err()).contains("does not pass the verify check; nothing was written");
    assertThat(Path.of(filled)).doesNotExist();
  }

  @Test
  void a_workbook_read_in_part_only_has_no_order() throws IOException {
    Workshop.cutOff(book, "Cautions");
    withheld(shop.draw(book, "papers"));
  }

  @Test
  void the_order_is_what_the_workbook_says_wherever_it_was_changed_on_purpose() {
    change(book, formula(takeoff(), "ROUNDUP(gross_area/bundle_cover*(1-1E-9),0)+3"));
    assertThat(ordered()).as("by a rule of this job").isEqualTo("62 bundles");
    change(book, formula(takeoff(), "ROUNDUP(gross_area/bundle_cover*(1-1E-9),0)"));
    Address priced = priced();
    change(book, typed(priced, 62));
    assertThat(ordered()).as("typed in the estimate").isEqualTo("62 bundles");
    change(book, formula(priced, "shingle_bundles"));

    Address summary = summary();
    change(book, typed(summary, 62), note(summary, "fixed: whole pallets"));
    Ran ran = shop.draw(book, "papers", "--force");
    assertThat(ran.exit()).isZero();
    assertThat(ran.out())
        .contains("order-as-changed", "is 62 here, which is what is ordered", "makes 59");
    assertThat(shop.texts("papers", "order-list"))
        .as("typed on the summary")
        .contains("62 bundles");
    change(book, typed(priced, 61));
    Ran two = shop.draw(book, "papers", "--force");
    withheld(two);
    assertThat(two.out()).contains("two-orders-told", "make them one");
  }

  @Test
  void half_a_pack_is_not_ordered() {
    change(book, typed(priced(), 59.5));
    Ran ran = shop.draw(book, "papers");
    withheld(ran);
    assertThat(ran.out()).contains("must be a number of whole packs to be ordered, but is 59.5");
  }

  @Test
  void the_lines_of_the_crew_are_those_of_the_workbook() {
    change(book, formula(cell(book, "job", "line_interval"), "27"));
    Ran ran = shop.draw(book, "papers");
    withheld(ran);
    assertThat(ran.out()).contains("is 27 in by the rule here, but is drawn at 28 in");
    change(
        book,
        formula(
            cell(book, "job", "line_interval"),
            "IF(tape_step=0,line_spacing,ROUNDDOWN(line_spacing/tape_step*(1+1E-9),0)*tape_step)"),
        typed(repeated(book, "Layout", "mark_one"), 30));
    assertThat(Ran.of("verify", book.toString()).out())
        .as("a mark typed over on the sheet that is printed for the crew")
        .contains("is a typed 30 in the row", "the sheets behind it make 28");
  }

  @Test
  void each_job_has_a_folder_of_its_own() throws IOException {
    Path birch = shop.job("birch", "Birch: Court/../2");
    Path again = Files.copy(book, folder.resolve("again.xlsx"));
    shop.draw(book, "papers");
    shop.draw(birch, "papers");
    shop.draw(again, "papers");
    assertThat(shop.files("papers"))
        .contains(JOB + "/01-roof.svg", "birch-court-2/01-roof.svg", JOB + "-2/01-roof.svg");
    Ran refused = shop.draw(again, "papers");
    assertThat(refused.exit()).isEqualTo(1);
    assertThat(refused.err())
        .contains(JOB + "-2' has these papers already", "--force draws them anew");
    assertThat(shop.draw(again, "papers", "--force").exit()).isZero();
    assertThat(shop.files("papers")).noneMatch(file -> file.contains("previous"));
  }

  @Test
  void only_papers_of_ours_as_we_left_them_are_taken_away() throws IOException {
    shop.draw(book, "papers");
    Path papers = folder.resolve("papers").resolve(JOB);
    List<String> before = shop.files("papers");
    Files.writeString(papers.resolve("photos.txt"), "mine");
    String roof = Files.readString(papers.resolve("01-roof.svg")) + "<!-- mine -->";
    Files.writeString(papers.resolve("01-roof.svg"), roof);
    String order =
        before.stream().filter(it -> it.contains("order")).findFirst().orElseThrow();
    Files.writeString(folder.resolve("papers").resolve(order), "mine");
    change(book, typed(cell(book, "job", "typed_waste"), 10));
    Ran ran = shop.draw(book, "papers", "--force");
    assertThat(ran.exit()).isEqualTo(3);
    assertThat(papers.resolve("photos.txt")).hasContent("mine");
    assertThat(papers.resolve("01-roof (previous 1).svg")).hasContent(roof);
    assertThat(folder.resolve("papers").resolve(order)).hasContent("mine");
    assertThat(ran.out()).contains("order-list", "but was changed since it was drawn");
    assertThat(shop.files("papers")).hasSize(before.size() + 2);
  }
}
