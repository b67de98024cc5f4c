package squaresheet.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import de.siegmar.fastcsv.reader.CsvReader;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SheetTest {

  @Property(tries = 200)
  void cells_put_in_any_order_are_found_and_run_by_row_and_column(
      @ForAll @Size(max = 300) List<@IntRange(max = 4000) Integer> places) {
    SheetBuilder builder = Sheet.builder("any");
    Map<Ref, Double> expected = new HashMap<>();
    for (int i = 0; i < places.size(); i++) {
      Ref ref = new Ref(places.get(i) / 40, places.get(i) % 40);
      builder.number(ref.row(), ref.column(), (short) 0, i);
      if (i % 3 == 0) {
        builder.formula(ref.row(), ref.column(), "ROW()+" + i);
      }
      expected.put(ref, (double) i);
    }
    Sheet sheet = builder.build();
    assertThat(sheet.cells().map(Sheet.Placed::ref).toList())
        .isSorted()
        .containsExactlyInAnyOrderElementsOf(expected.keySet());
    expected.forEach((ref, value) -> {
      assertThat(sheet.cell(ref).stored()).isEqualTo(new Content.Numeric(value));
      assertThat(sheet.cell(ref).formula())
          .isEqualTo(value % 3 == 0 ? "ROW()+" + (int) (double) value : "");
    });
  }

  @Test
  void a_blank_with_a_format_does_not_count_as_used() {
    SheetBuilder builder = Sheet.builder("any");
    builder.number(3, 2, (short) 0, 1);
    builder.blank(900, 90, builder.format("0.00"));
    Sheet sheet = builder.build();
    assertThat(sheet.used()).contains(Block.parse("C4"));
    assertThat(sheet.cell(new Ref(900, 90)).format()).isEqualTo("0.00");
    assertThat(sheet.cell("B2")).isSameAs(Cell.EMPTY);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '"', textBlock = """
      # wish                                  | free                            | why (ECMA-376 Part 1, 18.2.19 and what programs refuse)
        Main roof                             | Main roof 2                     | taken, small and capital letters alike
        a/b:c                                 | a b c                           | characters that references need
        'quoted'                              | quoted                          | apostrophes at the ends
        a name much longer than any tab bears | a name much longer than any tab | 31 characters
        history                               | Sheet                           | reserved
      """)
  void a_free_name_is_one_a_tab_can_bear(String wish, String free, String why) {
    Draft draft = new Draft();
    draft.sheet("MAIN ROOF");
    assertThat(draft.freeName(wish)).as(why).isEqualTo(free);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '"', textBlock = """
      # text           | safe              | source
        =1+1           | '=1+1             | OWASP, CSV injection: = + - @ tab and return start a formula
        +1+1           | '+1+1             | same
        -2+3           | '-2+3             | same
        @SUM(A1)       | '@SUM(A1)         | same
        -12.5          | -12.5             | a plain number is no formula
        12' 6 1/2      | 12' 6 1/2         | an ordinary length
        a=b            | a=b               | not at the start
        a;=1+1         | a;'=1+1           | OWASP: a sign between values may begin a cell within the text
        a; -5          | a; '-5            | same
        a;b            | a;b               | nothing starts there
      """)
  void a_csv_text_cannot_start_a_formula(String text, String safe, String source) {
    assertThat(Content.safeForCsv(text)).as(source).isEqualTo(safe);
  }

  @Property(tries = 300)
  void no_cell_of_a_csv_file_starts_a_formula_whatever_sign_parts_the_values(
      @ForAll @Size(max = 4)
          List<
                  @CharRange(from = 'a', to = 'b')
                  @Chars({'=', '+', '-', '@', '|', ';', '\t', '\n', ' ', ',', '1'}) String>
              texts) {
    String csv = Content.csv(List.of(), List.of(texts));
    List<String> cells = new ArrayList<>(List.of(csv.split("[;\n]")));
    cells.addAll(List.of(csv.split("[\t\n]")));
    CsvReader.builder().ofCsvRecord(csv).forEach(line -> cells.addAll(line.getFields()));
    assertThat(cells).as(csv).allMatch(SheetTest::startsNoFormula);
  }

  /** A plain number is no formula, nor is one with a comma after it, which is what a program parting by others sees of a row. */
  private static boolean startsNoFormula(String cell) {
    String seen = cell.replaceAll("^[\\s\"]+", "").replaceAll("[\\s\"]+$", "");
    return !seen.matches("(?s)[=+\\-@|].*") || seen.matches("(?s)[-+]?\\d+(\\.\\d+)?%?(,.*)?");
  }

  @ParameterizedTest
  @CsvSource({
    "tax_rate,true",
    "A1,false",
    "XFD9,false",
    "R1C1,false",
    "r,false",
    "true,false",
    "two words,false",
    "Ü_1,true",
    "_xlnm.Print_Titles,true"
  })
  void a_defined_name_is_valid_in_every_program_or_not(String name, boolean valid) {
    assertThat(Workbook.Name.isValid(name)).isEqualTo(valid);
  }

  @Test
  void a_name_tells_its_cell_and_block() {
    Workbook.Name name = Workbook.Name.of("planes", "'Main roof'!$B$2:$D$9");
    assertThat(name.cell()).contains(Address.of("Main roof", "B2"));
    assertThat(name.block()).contains(Block.parse("B2:D9"));
    assertThat(Workbook.Name.of("x", "SUM(A!A1)").cell()).isEmpty();
  }

  @Test
  void a_literal_d_is_no_day() {
    // ECMA-376 Part 1, 18.8.31: text in quotes and after a backslash is shown as it is
    assertThat(new Cell(new Content.Numeric(1), "", "\"d\"0").isDate()).isFalse();
    assertThat(new Cell(new Content.Numeric(1), "", "0\\d").isDate()).isFalse();
    assertThat(new Cell(new Content.Numeric(1), "", "0.0%").isPercent()).isTrue();
  }

  @Test
  void a_draft_refuses_what_no_program_takes() {
    Draft draft = new Draft();
    assertThatThrownBy(() -> draft.sheet("a:b"))
        .hasMessage("a sheet's name must be new, 1 to 31 characters, without []:*?/\\ and without"
            + " apostrophes at its ends, but is 'a:b'");
    assertThatThrownBy(() -> draft.name("A1", "X!$A$1"))
        .hasMessage("a defined name must be new and a word not shaped like a cell, but is 'A1'");
    assertThatThrownBy(() -> DraftSheet.Entry.formula("=A1", new Content.Blank()))
        .hasMessage("a formula must be given without its equals sign, but is '=A1'");
  }
}
