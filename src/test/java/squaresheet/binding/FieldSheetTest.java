package squaresheet.binding;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import squaresheet.finding.Read;
import squaresheet.roof.EdgeKind;
import squaresheet.roof.Roof;

class FieldSheetTest {

  private static Read<FieldNotes> demo() throws IOException {
    String csv = Files.readString(Path.of("demo-data/tape-sheet.csv"));
    return FieldSheet.read(csv, "tape-sheet.csv", Locale.ENGLISH);
  }

  private static String all(Read<?> read) {
    return read.findings().stream()
        .map(finding -> finding.info().severity() + " " + finding.where() + ": " + finding.says())
        .reduce("", (one, other) -> one + "\n" + other);
  }

  @Test
  void the_demo_sheet_reads_all_but_its_one_wet_line() throws IOException {
    Read<FieldNotes> read = demo();
    System.out.println(all(read)); FieldNotes notes = read.value().orElseThrow();
    System.out.println(all(read));
    notes.unread().forEach(System.out::println);
    Read<Roof> roof = Roof.resolve(notes.roof());
    System.out.println(all(roof));
    System.out.println(roof.value().orElseThrow().length(EdgeKind.VALLEY));
    System.out.println(notes);
    assertThat(notes.unread()).hasSize(1);
  }
}
