package squaresheet.verify;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import squaresheet.formula.Calculation;
import squaresheet.formula.Value;
import squaresheet.judge.made.KnownCell;
import squaresheet.judge.made.Layouts;
import squaresheet.judge.made.MadeBook;
import squaresheet.judge.made.Meaning;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Edit;
import squaresheet.xlsx.Xlsx;

/** Putting workbooks of other layouts right: what is in order stays as it is, and no right cell is ever turned wrong. */
class CorrectionsTest {

  /** How many made workbooks are tried, all layouts in turn: {@code -Dsquaresheet.made=240} in a long run. */
  private static final int MADE = Integer.getInteger("squaresheet.made", 4);

  @TempDir
  Path folder;

  private squaresheet.sheet.Workbook saved(Consumer<Workbook> fill) throws IOException {
    Path file = folder.resolve("book.xlsx");
    try (Workbook book = new XSSFWorkbook();
        var out = Files.newOutputStream(file)) {
      fill.accept(book);
      book.getCreationHelper().createFormulaEvaluator().evaluateAll();
      book.write(out);
    }
    return Xlsx.read(file).value().orElseThrow();
  }

  private squaresheet.sheet.Workbook typed(String... sheets) throws IOException {
    return saved(book -> Stream.of(sheets).forEach(sheet -> CleanBooksTest.type(book, sheet)));
  }

  private squaresheet.sheet.Workbook made(MadeBook made) throws IOException {
    Path file = folder.resolve("made.xlsx");
    Files.write(file, made.file());
    return Xlsx.read(file).value().orElseThrow();
  }

  private static Corrections corrections(squaresheet.sheet.Workbook book, String... taken) {
    return Corrections.of(book, each -> Verify.of(each, "book.xlsx"), cell -> List.of(taken)
        .contains(cell.toString()));
  }

  @TestFactory
  Stream<DynamicTest> a_workbook_in_order_stays_as_it_is() {
    Stream<DynamicTest> layouts = CleanLayouts.ALL.stream()
        .map(layout -> DynamicTest.dynamicTest(
            layout.name(), () -> stays(typed(layout.sheets().toArray(String[]::new)))));
    Stream<DynamicTest> styles = CleanBooksTest.STYLES.stream()
        .map(style -> DynamicTest.dynamicTest(style.name(), () -> stays(saved(style.fill()))));
    return Stream.concat(layouts, styles);
  }

  @TestFactory
  Stream<DynamicTest> a_workbook_made_by_another_writer_stays_as_it_is() {
    return books().map(made -> DynamicTest.dynamicTest(made.name(), () -> stays(made(made))));
  }

  private static void stays(squaresheet.sheet.Workbook book) {
    Corrections corrections = corrections(book);
    assertThat(corrections.changes()).isEmpty();
    assertThat(corrections.edits()).isEmpty();
  }

  private static Stream<MadeBook> books() {
    List<String> names = Stream.concat(Layouts.names(false).stream(), Layouts.names(true).stream())
        .toList();
    long seed = System.nanoTime() % 10_000;
    return IntStream.range(0, MADE)
        .mapToObj(i ->
            Layouts.book(names.get((int) ((seed + i) % names.size())), seed + i / names.size()));
  }

  /**
   * Any number of a made workbook is mistyped, or a formula typed over, and beside it sometimes a right number stands in the
   * place of a formula. Whatever is changed then is the wrong cell, and it holds what it held before.
   */
  @TestFactory
  Stream<DynamicTest> no_right_cell_is_turned_wrong() {
    return books().flatMap(made -> IntStream.range(0, 3)
        .mapToObj(seed -> DynamicTest.dynamicTest(
            made.name() + ", slip " + seed, () -> neverHarms(made, new Random(seed)))));
  }

  private void neverHarms(MadeBook made, Random random) throws IOException {
    squaresheet.sheet.Workbook right = made(made);
    squaresheet.sheet.Workbook start = right;
    if (random.nextBoolean()) {
      Address still = cell(any(made.cells(), random, known -> !known.typed()));
      start = put(right, still, number(right, still));
    }
    Address slip = cell(any(made.cells(), random, known -> true));
    double wrong = slipped(number(right, slip), random);
    squaresheet.sheet.Workbook book = put(start, slip, wrong);
    Corrections corrections = corrections(book);
    squaresheet.sheet.Workbook after = book.after(corrections.edits());
    for (Corrections.Change change : corrections.changes()) {
      assertThat(change.cell()).as(made.name() + ": " + change).isEqualTo(slip);
      assertThat(number(after, slip))
          .as(made.name() + ": " + change)
          .isCloseTo(number(right, slip), within(2e-5 * Math.max(1, Math.abs(wrong))));
    }
  }

  private static KnownCell any(List<KnownCell> cells, Random random, Predicate<KnownCell> which) {
    List<KnownCell> some = cells.stream()
        .filter(which)
        .filter(known -> known.meaning() != Meaning.PLANE_NAME)
        .toList();
    return some.get(random.nextInt(some.size()));
  }

  private static Address cell(KnownCell known) {
    int mark = known.at().lastIndexOf('!');
    return Address.of(known.at().substring(0, mark), known.at().substring(mark + 1));
  }

  private static squaresheet.sheet.Workbook put(
      squaresheet.sheet.Workbook book, Address cell, double number) {
    List<Edit> edits = List.of(new Edit.SetContent(cell, new Content.Numeric(number)));
    return book.after(Calculation.settled(book, edits));
  }

  private static double number(squaresheet.sheet.Workbook book, Address cell) {
    return Value.of(book.cell(cell).stored()) instanceof Value.Number number ? number.value() : 0;
  }

  /** What fingers and eyes make of a number: the point moved, digits swapped, a number near it, another one. */
  private static double slipped(double number, Random random) {
    return switch (random.nextInt(4)) {
      case 0 -> number * 10;
      case 1 -> Math.rint(number * 54.5) / 50;
      case 2 -> Math.rint(number * 1.3) + 1;
      default -> Math.rint(number * (70 + random.nextInt(50))) / 100 + 0.01;
    };
  }

  @Test
  void a_typed_amount_stays_where_what_it_is_worked_out_from_was_mistyped() throws IOException {
    var book = typed("""
        Roof
        Plane|Plan area (sf)|Pitch x/12|Factor|Roof area (sf)
        Front|389.91|6|=SQRT(1+(C2/12)^2)|=B2*D2
        Back|600|6|=SQRT(1+(C3/12)^2)|435.93
        Left|212.5|6|=SQRT(1+(C4/12)^2)|=B4*D4
        Right|212.5|6|=SQRT(1+(C5/12)^2)|=B5*D5
        Porch|96|6|=SQRT(1+(C6/12)^2)|=B6*D6
        Total|=SUM(B2:B6)|||=SUM(E2:E6)""");
    Corrections corrections = corrections(book);
    assertThat(corrections.changes()).isEmpty();
    assertThat(corrections.left())
        .anyMatch(left -> left.change().cell().equals(Address.of("Roof", "E3"))
            && left.why().equals("a number that it is worked out from may be wrong instead"));
  }

  @Test
  void a_value_that_is_taken_is_put_in_to_the_last_digit() throws IOException {
    var book = typed("""
        Roof
        Plane|Plan area (sf)|Pitch x/12|Factor|Roof area (sf)
        Front|390|7|1.17|=B2*D2
        Back|390|7|1.1577|=B3*D3
        Left|212.5|7|1.1577|=B4*D4
        Right|212.5|7|1.1577|=B5*D5
        Total|=SUM(B2:B5)|||=SUM(E2:E5)""");
    Address cell = Address.of("Roof", "D2");
    assertThat(corrections(book).changes()).isEmpty();
    Corrections taken = corrections(book, cell.toString());
    assertThat(taken.changes()).extracting(Corrections.Change::cell).containsExactly(cell);
    // √(1 + (7/12)²), by hand
    assertThat(number(book.after(taken.edits()), cell)).isEqualTo(Math.sqrt(193) / 12);
  }

  @Test
  void many_cells_are_put_right_at_once_and_one_in_doubt_among_them_is_left() throws IOException {
    StringBuilder sheet = new StringBuilder("Bid\nItem|Qty|Price|Amount");
    for (int row = 2; row <= 331; row++) {
      double amount = row * 1234.5 / 10;
      String typed = row % 3 == 0 ? swapped(amount) : "=B" + row + "*C" + row;
      sheet
          .append("\nItem ")
          .append(row)
          .append('|')
          .append(row)
          .append("|123.45|")
          .append(row == 90 ? "4999.5" : typed);
    }
    sheet.append("\nTotal|||=SUM(D2:D331)");
    var book = typed(sheet.toString());
    Corrections corrections = corrections(book);
    assertThat(corrections.changes()).hasSizeGreaterThan(60);
    assertThat(corrections.left())
        .anyMatch(left -> left.change().cell().equals(Address.of("Bid", "D90")));
    var after = book.after(corrections.edits());
    corrections.changes().forEach(change -> assertThat(after.cell(change.cell()).formula())
        .isEqualTo(
            "B" + (change.cell().ref().row() + 1) + "*C" + (change.cell().ref().row() + 1)));
  }

  /** The amount with its second and third digits swapped. */
  private static String swapped(double amount) {
    String digits = BigDecimal.valueOf(amount).setScale(2, RoundingMode.HALF_UP).toPlainString();
    return digits.charAt(1) == digits.charAt(2) || digits.charAt(2) == '.'
        ? "=0+" + digits
        : "" + digits.charAt(0) + digits.charAt(2) + digits.charAt(1) + digits.substring(3);
  }

  @Test
  void a_formula_that_somebody_wrote_otherwise_is_left() throws IOException {
    String bid = """
        Bid
        Item|Qty|Unit|Price|Amount
        Shingles|54|bundle|39.5|=B2*D2
        Starter|4|bundle|44.25|=B3*D3
        Dump fee|2|load|95|=MAX(250,B4*D4)
        Felt|5|roll|78|=B5*D5
        Nails|3|box|46|=B6*D6
        Total||||=SUM(E2:E6)""";
    assertThat(corrections(typed(bid)).changes()).isEmpty();
    assertThat(corrections(typed(bid), "Bid!E4").changes()).isEmpty();
  }
}
