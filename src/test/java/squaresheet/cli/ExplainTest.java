package squaresheet.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import squaresheet.sheet.Content;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.sheet.Ref;
import squaresheet.xlsx.Xlsx;

/** A cell is explained in the words and to the cent that its owner would use. */
class ExplainTest {

  @TempDir
  private Path folder;

  private Path book(String... more) {
    Draft draft = new Draft();
    draft
        .sheet("Bid")
        .put(Ref.parse("A1"), Entry.number(10_000))
        .put(Ref.parse("A2"), Entry.number(622.53))
        .put(Ref.parse("A3"), Entry.formula("A1+A2", new Content.Numeric(10_622.53)));
    for (String sheet : more) {
      draft.sheet(sheet);
    }
    Path file = folder.resolve("bid.xlsx");
    Xlsx.write(draft, file);
    return file;
  }

  @Test
  void cents_of_a_large_amount_are_told() {
    assertThat(Ran.of("explain", book().toString(), "Bid!A3").out())
        .as("by hand: 10,000 and 622.53")
        .contains("10622.53");
  }

  @Test
  void a_cell_alone_is_meant_on_the_only_sheet() {
    assertThat(Ran.of("explain", book().toString(), "A3").out()).contains("Bid!A3");
    assertThat(Ran.of("explain", book("Other").toString(), "A3").exit())
        .as("on one of two sheets nobody knows which")
        .isEqualTo(Exit.WRONG_USE.code());
  }
}
