package squaresheet.binding;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.sheet.Draft;
import squaresheet.sheet.Workbook;

/** The summary speaks of the currency that the terms name. */
class SummaryCurrencyTest {

  @Test
  void a_currency_typed_anew_on_the_terms_stands_beside_the_price_on_the_summary() {
    Draft draft = JobWorkbook.write(DemoJob.input(), DemoJob.result());
    Address typed =
        draft.workbook().name("terms_currency").flatMap(Workbook.Name::cell).orElseThrow();
    draft.sheets().stream()
        .filter(sheet -> sheet.name().equals(typed.sheet()))
        .forEach(sheet -> sheet.put(typed.ref(), Entries.input("CAD")));
    Workbook book = draft.workbook();
    BookValues values = new BookValues(book);
    assertThat(book.sheet("Summary").orElseThrow().cells()).anySatisfy(placed -> {
      assertThat(placed.cell().formula()).isEqualTo("estimate_total");
      Address beside = new Address("Summary", placed.ref().plus(0, 1));
      assertThat(values.value(beside)).isEqualTo(new Value.Text("CAD"));
    });
  }
}
