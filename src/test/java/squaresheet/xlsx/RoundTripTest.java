package squaresheet.xlsx;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import squaresheet.finding.Read;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Draft;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.Workbook;

class RoundTripTest {

  @TempDir
  Path folder;

  @Test
  void a_draft_reads_back_as_it_was_drafted() throws IOException {
    Draft draft = Drafts.ofEverything();
    Path file = folder.resolve("roof.xlsx");
    Files.write(file, Xlsx.bytes(draft));
    Read<Workbook> read = Xlsx.read(file);
    assertThat(read.findings()).isEmpty();
    Workbook back = read.value().orElseThrow();
    Workbook drafted = draft.workbook();
    assertThat(back.properties()).isEqualTo(drafted.properties());
    assertThat(back.calculation()).isEqualTo(drafted.calculation());
    assertThat(back.names()).containsAll(drafted.names());
    for (int i = 0; i < drafted.sheets().size(); i++) {
      same(back.sheets().get(i), drafted.sheets().get(i));
    }
  }

  private static void same(Sheet back, Sheet drafted) {
    assertThat(back.name()).isEqualTo(drafted.name());
    assertThat(back.visibility()).isEqualTo(drafted.visibility());
    assertThat(filled(back)).isEqualTo(filled(drafted));
    assertThat(back.used()).isEqualTo(drafted.used());
    assertThat(back.merged()).isEqualTo(drafted.merged());
    assertThat(back.comments()).isEqualTo(drafted.comments());
    assertThat(back.validations()).isEqualTo(drafted.validations());
    assertThat(back.links()).isEqualTo(drafted.links());
    assertThat(back.frozenRows()).isEqualTo(drafted.frozenRows());
    assertThat(back.frozenColumns()).isEqualTo(drafted.frozenColumns());
  }

  private static List<String> filled(Sheet sheet) {
    return sheet
        .cells()
        .filter(placed -> !placed.cell().isBlank())
        .map(placed -> placed.ref() + " " + show(placed.cell()))
        .collect(Collectors.toList());
  }

  private static String show(Cell cell) {
    return cell.stored() + " =" + cell.formula() + " " + cell.format();
  }
}
