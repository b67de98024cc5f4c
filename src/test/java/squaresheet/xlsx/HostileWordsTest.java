package squaresheet.xlsx;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Content;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Role;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.Workbook;

/** Whatever people call a plane, every reader takes the file, and it is called the same when it is read back. */
class HostileWordsTest {

  @Provide
  Arbitrary<String> words() {
    return HostileWords.any();
  }

  private static String formula(String words) {
    return "IF(A1=\"" + words.replace("\"", "\"\"") + "\",1,2)";
  }

  private static DraftSheet sheet(DraftSheet sheet, String words) {
    sheet.put("A1", Entry.text(words));
    sheet.put("A2", Entry.formula(formula(words), new Content.Text(words)));
    sheet.put("A3", Entry.number(3).as(Role.INPUT).format("0.0"));
    sheet.comment(Ref.parse("B1"), words, words);
    sheet.link(
        new Sheet.Link(Block.parse("C1"), "#" + Address.quoted(sheet.name()) + "!A1", words));
    sheet.validate(new Sheet.Validation(
        List.of(Block.parse("D1")),
        Sheet.Validation.Kind.LIST,
        Sheet.Validation.Comparison.BETWEEN,
        "$A$1:$A$2",
        "",
        words));
    sheet.picture(Block.parse("E1:F4"), Drafts.png(), words);
    return sheet.print(new DraftSheet.Print(DraftSheet.Paper.A4, false, 1, words, words, 0.5));
  }

  /** Holds a file against the strict parser, another library, and our own reader. */
  private static void hold(Path file, String tab, String words) throws IOException {
    HostileWords.parse(file);
    try (XSSFWorkbook other = new XSSFWorkbook(Files.newInputStream(file))) {
      XSSFSheet sheet = other.getSheetAt(other.getNumberOfSheets() - 1);
      assertThat(sheet.getRow(0).getCell(0).getStringCellValue()).isEqualTo(words);
      assertThat(sheet.getCellComment(new CellAddress("B1")).getString().getString())
          .isEqualTo(words);
      assertThat(other.getAllPictures()).isNotEmpty();
    }
    Workbook read = Xlsx.read(file).value().orElseThrow();
    Sheet sheet = read.sheet(tab).orElseThrow();
    assertThat(sheet.cell(Ref.parse("A1")).stored()).isEqualTo(new Content.Text(words));
    assertThat(sheet.cell(Ref.parse("A2")).stored()).isEqualTo(new Content.Text(words));
    assertThat(sheet.cell(Ref.parse("A2")).formula()).isEqualTo(formula(words));
    assertThat(sheet.comments().get(Ref.parse("B1")).text()).isEqualTo(words);
    assertThat(sheet.comments().get(Ref.parse("B1")).author()).isEqualTo(words);
    assertThat(sheet.links()).extracting(Sheet.Link::tip).contains(words);
    assertThat(sheet.validations()).extracting(Sheet.Validation::message).contains(words);
  }

  private static Path drafted(Path folder, String words) {
    Draft draft = new Draft();
    DraftSheet sheet = sheet(draft.sheet(draft.freeName(words + "Roof")), words);
    draft.title(words).property("note", words);
    draft.name("called", Address.quoted(sheet.name()) + "!$A$1");
    Path file = folder.resolve("draft.xlsx");
    assertThat(Xlsx.write(draft, file, Existing.REPLACE).value()).isPresent();
    return file;
  }

  @Property(tries = 60)
  void a_workbook_written_anew_takes_any_words(@ForAll("words") String words) throws IOException {
    Path folder = Files.createTempDirectory("words");
    Path file = drafted(folder, words);
    String tab = Xlsx.read(file).value().orElseThrow().sheets().get(0).name();
    hold(file, tab, words);
    delete(folder);
  }

  @Property(tries = 60)
  void a_workbook_that_is_changed_takes_any_words(@ForAll("words") String words)
      throws IOException {
    Path folder = Files.createTempDirectory("words");
    Path file = folder.resolve("plain.xlsx");
    Draft plain = new Draft();
    plain.sheet("Planes").put("A1", Entry.text("plain"));
    assertThat(Xlsx.write(plain, file, Existing.REPLACE).value()).isPresent();
    Workbook before = Xlsx.read(file).value().orElseThrow();
    DraftSheet added = sheet(Draft.sheetFor(before, words + "Roof"), words);
    List<Edit> edits = List.of(
        new Edit.AddSheet(added),
        new Edit.SetContent(Address.of("Planes", "A1"), new Content.Text(words)),
        new Edit.SetFormula(Address.of("Planes", "A2"), formula(words), new Content.Text(words)),
        new Edit.SetComment(Address.of("Planes", "B1"), words, words),
        new Edit.SetLink(Address.of("Planes", "C1"), "#Planes!A1", words),
        new Edit.AddPicture(
            "Planes",
            new DraftSheet.Picture(Block.parse("E1:F4"), DraftSheet.Png.of(Drafts.png()), words)),
        new Edit.SetProperty("note", words));
    assertThat(Xlsx.edit(file, edits, file, Existing.REPLACE).findings()).isEmpty();
    hold(file, added.name(), words);
    Edit again = new Edit.SetContent(Address.of("Planes", "A3"), new Content.Numeric(1));
    assertThat(Xlsx.edit(file, List.of(again), file, Existing.REPLACE).findings())
        .isEmpty();
    hold(file, added.name(), words);
    assertThat(Xlsx.read(file).value().orElseThrow().properties()).containsEntry("note", words);
    delete(folder);
  }

  private static void delete(Path folder) throws IOException {
    try (var files = Files.list(folder)) {
      for (Path file : files.toList()) {
        Files.delete(file);
      }
    }
    Files.delete(folder);
  }
}
