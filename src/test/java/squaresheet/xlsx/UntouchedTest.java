package squaresheet.xlsx;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.sheet.Address;
import squaresheet.sheet.Edit;

/** What an edit does not speak of keeps its bytes, in a workbook with everything, however it is packed. */
class UntouchedTest {

  private static final Path TOLD = Path.of("src", "test", "cases", "xlsx", "changes.txt");

  @TempDir
  Path folder;

  private Path write(ZipForm form) throws IOException {
    return Files.write(folder.resolve("boat-house.xlsx"), form.pack(Everything.parts()));
  }

  private Map<String, byte[]> edited(Path file, List<Edit> edits) {
    Path to = folder.resolve("edited.xlsx");
    Read<Saved> saved = Xlsx.edit(file, edits, to, Existing.REPLACE);
    assertThat(saved.findings()).isEmpty();
    return ZipParts.of(to);
  }

  /** All that each edit changes stands in a file, for people to read; {@code -Dsquaresheet.rewrite.changes=true} writes it anew. */
  @Test
  void an_edit_changes_the_tags_told_and_no_other_byte() throws IOException {
    Path file = write(ZipForm.SIZES_FIRST);
    StringBuilder all = new StringBuilder();
    for (OneEdit each : OneEdit.values()) {
      String told = Changes.told(Everything.parts(), edited(file, each.alone()));
      all.append("== ").append(each).append('\n').append(told).append('\n');
    }
    if (Boolean.getBoolean("squaresheet.rewrite.changes")) {
      Files.writeString(TOLD, all);
    }
    assertThat(all.toString()).isEqualTo(Files.readString(TOLD).replace("\r", ""));
  }

  @ParameterizedTest
  @EnumSource(ZipForm.class)
  void an_edit_changes_the_same_however_the_file_is_packed(ZipForm form) throws IOException {
    Path plain =
        Files.write(folder.resolve("plain.xlsx"), ZipForm.SIZES_FIRST.pack(Everything.parts()));
    Path file = write(form);
    for (OneEdit each : OneEdit.values()) {
      Map<String, byte[]> expected = edited(plain, each.alone());
      Map<String, byte[]> after = plainly(edited(file, each.alone()));
      assertThat(Changes.told(plainly(expected), after)).as(form + ": " + each).isEmpty();
    }
  }

  /** The parts under names that all spellings share, without folders. */
  private static Map<String, byte[]> plainly(Map<String, byte[]> parts) {
    Map<String, byte[]> named = new TreeMap<>();
    parts.forEach((name, part) -> {
      if (!name.endsWith("/")) {
        named.put(name.replace('\\', '/').toLowerCase(Locale.ROOT), part);
      }
    });
    return named;
  }

  @ParameterizedTest
  @EnumSource(ZipForm.class)
  void names_of_parts_and_folders_keep_their_spelling(ZipForm form) throws IOException {
    Path file = write(form);
    assertThat(edited(file, OneEdit.A_NUMBER.alone()).keySet())
        .containsAll(withoutCalculationOrder(ZipParts.of(file)).keySet());
  }

  private static Map<String, byte[]> withoutCalculationOrder(Map<String, byte[]> parts) {
    parts.keySet().removeIf(name -> name.toLowerCase(Locale.ROOT).contains("calcchain"));
    return parts;
  }

  @Test
  void all_edits_at_once_leave_a_workbook_that_another_library_opens() throws IOException {
    List<Edit> all = new ArrayList<>();
    Arrays.stream(OneEdit.values()).forEach(each -> all.addAll(each.alone()));
    edited(
        Files.write(
            folder.resolve("boat-house.xlsx"),
            ZipForm.SIZES_FIRST.pack(Everything.declaredParts())),
        all);
    Path edited = folder.resolve("edited.xlsx");
    assertThat(Xlsx.read(edited).findings()).isEmpty();
    try (XSSFWorkbook other = new XSSFWorkbook(Files.newInputStream(edited))) {
      XSSFSheet planes = other.getSheet("Planes");
      // Two conversations; the note is changed first and taken off then, as the edits go in their
      // order.
      assertThat(planes.getCellComments().keySet())
          .extracting(CellAddress::toString)
          .containsExactlyInAnyOrder("B4", "C4");
      assertThat(planes.getDrawingPatriarch().getCharts()).hasSize(1);
      assertThat(planes.getHyperlinkList()).hasSize(2);
      assertThat(planes.getSheetConditionalFormatting().getNumConditionalFormattings())
          .isEqualTo(2);
      assertThat(other.getSheet("Summary").getPivotTables()).hasSize(1);
      assertThat(other.getSheet("Found").getRow(0).getCell(0).getStringCellValue())
          .isEqualTo("nothing found");
    }
  }

  @Test
  void a_note_on_a_cell_with_a_conversation_is_refused() throws IOException {
    Path file = write(ZipForm.SIZES_FIRST);
    Address cell = Address.of("Planes", "C4");
    for (Edit edit :
        List.of(new Edit.SetComment(cell, "check", "look here"), new Edit.DropComment(cell))) {
      assertThat(Xlsx.edit(file, List.of(edit)).findings())
          .extracting(Finding::says)
          .containsExactly(
              "'boat-house.xlsx' was not changed: sheet 'Planes' has a conversation on C4,"
                  + " which only the program it was written in can change");
    }
    assertThat(ZipParts.of(file)).containsOnlyKeys(Everything.parts().keySet());
  }
}
