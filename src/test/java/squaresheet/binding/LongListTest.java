package squaresheet.binding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import squaresheet.finding.Where;
import squaresheet.sheet.Address;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.SheetBuilder;
import squaresheet.sheet.Workbook;

/** A list as long as an accountant's: bound in time and memory that grow with its length, not with its square. */
class LongListTest {

  private static final int ROWS = 40_000;

  private static Workbook book() {
    SheetBuilder sheet = Sheet.builder("Quote");
    String[] headings = {"Description", "Category", "Cost code", "Qty", "Unit price", "Amount"};
    for (int column = 0; column < headings.length; column++) {
      sheet.text(0, column, (short) 0, headings[column]);
    }
    for (int row = 1; row <= ROWS; row++) {
      sheet.text(row, 0, (short) 0, "Line " + row);
      sheet.text(row, 1, (short) 0, "Material");
      sheet.number(row, 2, (short) 0, 100 + row % 7);
      sheet.number(row, 3, (short) 0, 2);
      sheet.number(row, 4, (short) 0, 12.5);
      sheet.number(row, 5, (short) 0, 25);
      sheet.formula(row, 5, "D" + (row + 1) + "*E" + (row + 1));
    }
    sheet.text(ROWS + 1, 0, (short) 0, "Total");
    sheet.number(ROWS + 1, 5, (short) 0, 25.0 * ROWS);
    sheet.formula(ROWS + 1, 5, "SUM(F2:F" + (ROWS + 1) + ")");
    sheet.text(ROWS + 4, 0, (short) 0, "Grand total");
    sheet.number(ROWS + 4, 1, (short) 0, 25.0 * ROWS);
    sheet.formula(ROWS + 4, 1, "F" + (ROWS + 2));
    return Drawn.workbook(sheet.build());
  }

  /** Looking for the name of every row among all names before it took minutes; a busy machine needs some seconds now. */
  @Test
  void forty_thousand_rows_and_the_total_under_them_are_bound_in_seconds() {
    BoundBook bound = assertTimeoutPreemptively(
        Duration.ofSeconds(40), () -> AnyLayout.of(book(), "long.xlsx").read());
    assertThat(bound.cells().cell(new Where.OfItem("line Line 40000", "amount")))
        .contains(Address.of("Quote", "F40001"));
    assertThat(bound.cells().cell("job", "price_total")).contains(Address.of("Quote", "B40005"));
  }
}
