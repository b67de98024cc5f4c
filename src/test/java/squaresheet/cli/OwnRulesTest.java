package squaresheet.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.Workbook;
import squaresheet.xlsx.Existing;
import squaresheet.xlsx.Xlsx;

/** A company that has rules of its own works by them, and is verified by them. */
class OwnRulesTest {

  @TempDir
  Path company;

  private Path book;

  @BeforeEach
  void a_job_is_imported_by_the_companys_rules() throws IOException {
    for (String name : new String[] {"products.csv", "prices.csv", "rates.csv", "terms.csv"}) {
      Files.copy(Path.of("demo-data", name), company.resolve(name));
    }
    Files.copy(Path.of("demo-data/own-rules.csv"), company.resolve("rulebook.csv"));
    book = company.resolve("job.xlsx");
    Ran ran =
        Ran.of("import", DemoSheet.sound(), "--company", company.toString(), "-o", book.toString());
    assertThat(ran.err()).isEmpty();
  }

  @Test
  void the_same_rules_find_nothing() {
    Ran ran = Ran.of("verify", book.toString(), "--company", company.toString());
    assertThat(ran.out()).contains("job.xlsx: 0 findings");
    assertThat(ran.exit()).isZero();
  }

  @Test
  void the_workbook_keeps_the_rules_it_was_made_by() {
    Ran ran = Ran.of("verify", book.toString());
    assertThat(ran.out()).contains("job.xlsx: 0 findings");
    assertThat(ran.exit()).isZero();
  }

  @Test
  void a_rule_changed_on_purpose_is_named_until_it_is_written_down_too() {
    Address rule = first("starter_run");
    Path changed = edited(
        book, "changed.xlsx", new Edit.SetFormula(rule, "eave_length+4", new Content.Numeric(136)));
    assertThat(Ran.of("verify", changed.toString()).out()).contains(rule + "  [");

    Path declared = edited(
        changed,
        "declared.xlsx",
        new Edit.SetContent(ownFormula(), new Content.Text("eave_length+4")));
    assertThat(Ran.of("verify", declared.toString()).out()).doesNotContain(rule.toString());
  }

  /** The cell of the formula in the row of the starter's rule. */
  private Address ownFormula() {
    Address names = first("own_rule_name");
    Sheet sheet = opened().sheet(names.sheet()).orElseThrow();
    int row = names.ref().row();
    while (!sheet
        .cell(new Ref(row, names.ref().column()))
        .stored()
        .equals(new Content.Text("starter_run"))) {
      row++;
    }
    return new Address(
        names.sheet(), new Ref(row, first("own_rule_formula").ref().column()));
  }

  private Address first(String name) {
    return opened().name(name).flatMap(Workbook.Name::cell).orElseThrow();
  }

  private Workbook opened() {
    return Xlsx.read(book).value().orElseThrow();
  }

  private Path edited(Path from, String name, Edit edit) {
    Path to = company.resolve(name);
    assertThat(Xlsx.edit(from, List.of(edit), to, Existing.REPLACE).value()).isPresent();
    return to;
  }

  @Test
  void a_new_rule_is_explained_with_its_unit() {
    Ran ran = Ran.of("explain", book.toString(), "tarp_area");
    assertThat(ran.out()).contains("sq ft plan", "1.1");
  }

  @Test
  void a_folder_that_is_not_there_is_told() {
    Ran ran =
        Ran.of("verify", book.toString(), "--company", company.resolve("gone").toString());
    assertThat(ran.exit()).isEqualTo(2);
    assertThat(ran.err()).contains("the company's folder must be a folder, but ", "gone");
  }
}
