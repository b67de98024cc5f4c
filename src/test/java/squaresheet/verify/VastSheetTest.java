package squaresheet.verify;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.SheetBuilder;
import squaresheet.sheet.Workbook;

/** Sheets that are far larger than a roof needs cost no more than what stands on them. */
class VastSheetTest {

  private static Book book(Sheet sheet) {
    Workbook workbook = new Workbook(
        List.of(sheet), List.of(), false, Workbook.Calculation.USUAL, List.of(), Map.of());
    return Book.of("vast.xlsx", workbook);
  }

  /** The block is all that a sheet can have, 17,179,869,184 cells: no memory holds a value for each. */
  @Test
  void an_array_over_the_whole_sheet_is_not_written_out() {
    SheetBuilder sheet = Sheet.builder("Vast");
    sheet.number(0, 0, (short) 0, 5);
    sheet.formula(0, 0, "2+3");
    sheet.array(Block.parse("A1:XFD1048576"));
    Book book = assertTimeoutPreemptively(Duration.ofSeconds(20), () -> book(sheet.build()));
    assertThat(book.value(Address.of("Vast", "XFD1048576"))).isEqualTo(new Value.Number(5));
  }

  /** The definition: from the cell backwards, one place after the other. */
  @Test
  void the_nearest_text_is_the_one_that_stepping_back_finds() {
    Random random = new Random(7);
    SheetBuilder builder = Sheet.builder("Texts");
    for (int row = 0; row < 40; row++) {
      for (int column = 0; column < 40; column++) {
        if (random.nextInt(6) == 0) {
          builder.text(row, column, (short) 0, random.nextInt(4) == 0 ? "  " : "t" + row + column);
        }
      }
    }
    Sheet sheet = builder.build();
    for (Axis axis : Axis.values()) {
      TextPlaces places = new TextPlaces(sheet, axis);
      for (int along = 0; along < 42; along++) {
        for (int across = 0; across < 42; across++) {
          int before = along - 1;
          while (before >= 0
              && TextPlaces.text(sheet.cell(axis.ref(before, across))).isEmpty()) {
            before--;
          }
          assertThat(places.own(along, across)).isEqualTo(before);
          assertThat(places.any(along, across)).isEqualTo(before);
        }
      }
    }
  }

  @Test
  void a_merged_heading_stands_over_all_its_columns() {
    SheetBuilder builder = Sheet.builder("Merged");
    builder.text(0, 0, (short) 0, "Area");
    builder.number(90_000, 2, (short) 0, 12);
    builder.merged(Block.parse("A1:C2"));
    Tab tab = book(builder.build()).tab("Merged");
    assertThat(tab.headings(new Ref(90_000, 2))).isEqualTo("Area Area");
    assertThat(tab.headings(new Ref(90_000, 3))).isEmpty();
  }
}
