package squaresheet.xlsx;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIf;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import squaresheet.sheet.Address;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Content;
import squaresheet.sheet.Draft;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Role;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.Workbook;

/** Expected values and formulas are those that LibreOffice shows for the same file. */
@EnabledIf("squaresheet.xlsx.Office#isHere")
class OfficeTest {

  @TempDir
  Path folder;

  private static Workbook read(Path file) {
    var read = Xlsx.read(file);
    assertThat(read.findings()).isEmpty();
    return read.value().orElseThrow();
  }

  /** Every cell that the other program shows must be read here alike, and none besides. */
  private void sameAsShown(Path file, int number) {
    Office office = new Office(folder);
    Sheet sheet = read(file).sheets().get(number - 1);
    List<List<String>> values = office.cells(file, number, false);
    List<List<String>> formulas = office.cells(file, number, true);
    int seen = 0;
    for (int row = 0; row < values.size(); row++) {
      for (int column = 0; column < values.get(row).size(); column++) {
        Cell cell = sheet.cell(new Ref(row, column));
        String shown = values.get(row).get(column);
        String formula = formulas.get(row).get(column);
        String place = sheet.name() + "!" + new Ref(row, column);
        assertThat(value(cell.stored(), shown)).as(place).isEqualTo(shown);
        if (formula.startsWith("=") || cell.isFormula()) {
          assertThat("=" + cell.formula())
              .as(place)
              .isEqualTo(formula.replace("{", "").replace("}", ""));
        }
        seen += cell.isBlank() ? 0 : 1;
      }
    }
    assertThat(seen)
        .isEqualTo((int) sheet.cells().filter(it -> !it.cell().isBlank()).count())
        .isPositive();
  }

  /** The value spelled as the other program spells it, which gives numbers in their shortest form. */
  private static String value(Content stored, String shown) {
    if (stored instanceof Content.Numeric it) {
      boolean same = !shown.isEmpty() && Double.parseDouble(shown) == it.value();
      return same ? shown : Double.toString(it.value());
    }
    if (stored instanceof Content.Truth it) {
      return it.value() ? "TRUE" : "FALSE";
    }
    return stored instanceof Content.Text it
        ? it.value()
        : stored instanceof Content.Fault it ? it.code() : "";
  }

  @ParameterizedTest
  @ValueSource(strings = {"planes-in-rows", "planes-in-columns", "merged-and-metric"})
  void a_file_it_wrote_reads_as_it_shows_it(String layout) {
    Path source = Path.of("src/test/cases/xlsx/" + layout + ".fods");
    sameAsShown(new Office(folder).convert(source, "xlsx", "written"), 1);
  }

  @Test
  void a_workbook_of_ours_opens_there_and_reads_the_same_after_it_was_saved_again()
      throws IOException {
    Path file = folder.resolve("ours.xlsx");
    Draft draft = Drafts.ofEverything();
    // LibreOffice drops control characters, which people cannot type either.
    draft.find("Planes").orElseThrow().put("A6", "two\nlines & <marks> \u00bd", Role.NOTE);
    Files.write(file, Xlsx.bytes(draft));
    Workbook ours = read(file);
    Workbook back = read(new Office(folder).convert(file, "xlsx", "again"));
    for (Sheet sheet : ours.sheets()) {
      assertThat(filled(back.sheet(sheet.name()).orElseThrow())).isEqualTo(filled(sheet));
    }
    assertThat(back.name("total_area").orElseThrow().cell()).contains(Address.of("Planes", "D4"));
    assertThat(back.properties()).containsEntry("binding", "one");
    assertThat(back.sheet("Planes").orElseThrow().comments()).hasSize(1);
    assertThat(back.sheet("Notes").orElseThrow().visibility()).isEqualTo(Sheet.Visibility.HIDDEN);
  }

  @Test
  void an_edited_workbook_opens_there_recalculated() throws IOException {
    Path file = folder.resolve("rich.xlsx");
    Files.write(file, Rich.workbook());
    Content none = new Content.Numeric(0);
    List<Edit> edits = List.of(
        new Edit.SetContent(Address.of("Planes", "B2"), new Content.Numeric(100)),
        new Edit.SetFormula(Address.of("Planes", "A30"), "SUM(D2:D5)", none),
        new Edit.SetFormula(Address.of("Planes", "A31"), "IFNA(D2,1)", none),
        new Edit.AddSheet(Drafts.ofEverything().find("Notes").orElseThrow()),
        new Edit.SetContent(Address.of("Notes", "B7"), new Content.Text("kept & shown")));
    assertThat(Xlsx.edit(file, edits).findings()).isEmpty();
    Workbook back = read(new Office(folder).convert(file, "xlsx", "again"));
    // by hand: 100 x 12 = 1200; 22.5, 23.5 and 24.5 x 12 make 270, 282 and 294; 2046 in all
    assertThat(back.cell(Address.of("Planes", "D2")).stored()).isEqualTo(new Content.Numeric(1200));
    assertThat(back.cell(Address.of("Planes", "A30")).stored())
        .isEqualTo(new Content.Numeric(2046));
    assertThat(back.cell(Address.of("Planes", "A31")).stored())
        .isEqualTo(new Content.Numeric(1200));
    assertThat(back.cell(Address.of("Planes", "A31")).formula()).isEqualTo("IFNA(D2,1)");
    assertThat(back.cell(Address.of("Notes", "B7")).stored())
        .isEqualTo(new Content.Text("kept & shown"));
  }

  /** That program turns a typed TRUE into the formula TRUE(), which comes to the same. */
  private static List<String> filled(Sheet sheet) {
    return sheet
        .cells()
        .filter(placed -> !placed.cell().isBlank())
        .map(placed -> placed.ref() + " " + placed.cell().stored() + " ="
            + placed.cell().formula().replaceAll("^(TRUE|FALSE)\\(\\)$", ""))
        .collect(Collectors.toList());
  }
}
