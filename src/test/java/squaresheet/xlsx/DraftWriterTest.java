package squaresheet.xlsx;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import squaresheet.sheet.Draft;
import squaresheet.sheet.Workbook;

class DraftWriterTest {

  @Test
  void the_same_draft_gives_the_same_bytes_on_another_day() throws InterruptedException {
    byte[] once = Xlsx.bytes(Drafts.ofEverything());
    Thread.sleep(2100);
    assertThat(Xlsx.bytes(Drafts.ofEverything())).isEqualTo(once);
  }

  @Test
  void a_hidden_name_is_hidden_and_no_other() throws IOException {
    Draft draft = Drafts.ofEverything();
    draft.name(new Workbook.Name("kept_apart", "", "Planes!$A$1", true));
    draft.name(new Workbook.Name("kept_apart", "Planes", "Planes!$A$2", false));
    try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(Xlsx.bytes(draft)))) {
      assertThat(workbook.getAllNames().stream()
              .filter(name -> name.isHidden())
              .map(name -> name.getNameName() + "=" + name.getRefersToFormula()))
          .containsExactly("kept_apart=Planes!$A$1");
    }
  }

  @Test
  void another_library_reads_back_what_was_drafted() throws IOException {
    byte[] bytes = Xlsx.bytes(Drafts.ofEverything());
    try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(bytes))) {
      XSSFSheet planes = workbook.getSheet("Planes");
      assertThat(planes.getRow(2).getCell(3).getCellFormula()).isEqualTo("B3*C3");
      assertThat(planes.getRow(2).getCell(3).getNumericCellValue()).isEqualTo(294);
      assertThat(planes.getRow(4).getCell(2).getCellFormula()).isEqualTo("_xlfn.IFNA(1/0,2)");
      assertThat(planes.getRow(4).getCell(0).getStringCellValue()).isEqualTo("fine");
      assertThat(planes.getRow(5).getCell(0).getStringCellValue())
          .isEqualTo("two\nlines & <marks> \u0007 _x0041_ \u00bd");
      assertThat(planes.getDataValidations()).hasSize(2);
      assertThat(
              planes.getDataValidations().get(1).getValidationConstraint().getExplicitListValues())
          .containsExactly("A", "B");
      assertThat(planes
              .getCellComment(new org.apache.poi.ss.util.CellAddress("B3"))
              .getString()
              .getString())
          .isEqualTo("measured twice");
      assertThat(workbook.isSheetHidden(1)).isTrue();
      assertThat(workbook.getName("total_area").getRefersToFormula()).isEqualTo("Planes!$D$4");
      assertThat(workbook.getForceFormulaRecalculation()).isTrue();
      assertThat(workbook.getAllPictures()).hasSize(1);
    }
  }
}
