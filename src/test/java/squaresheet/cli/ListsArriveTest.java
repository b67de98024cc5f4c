package squaresheet.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import squaresheet.cli.RandomLists.Typed;

/**
 * What a company types into its lists stands in the job workbook as typed, whoever opens it (read here with Apache POI), and
 * is what the job is priced by.
 */
class ListsArriveTest {

  private static final Pattern PRICE = Pattern.compile("Price, tax included: ([\\d,.]+) USD");
  private static final Pattern TOTAL = Pattern.compile("total of 1 job: ([\\d,.]+) USD");

  @Property(tries = 3)
  void every_number_of_every_list_arrives_as_typed(@ForAll long seed) throws IOException {
    for (int more = 0; more < Integer.getInteger("squaresheet.lists", 1); more++) {
      arrives(seed + more);
    }
  }

  private static void arrives(long seed) throws IOException {
    Path company = Files.createTempDirectory("lists");
    Path job = company.resolve("job.xlsx");
    List<Typed> typed = new RandomLists(seed).write(company);
    Ran imported =
        Ran.of("import", DemoSheet.sound(), "--company", company.toString(), "-o", job.toString());
    assertThat(imported.err()).isEmpty();
    assertThat(typed).hasSizeGreaterThan(100);
    try (Workbook book = new XSSFWorkbook(Files.newInputStream(job))) {
      assertThat(typed.stream().filter(it -> !stands(book, it))).isEmpty();
    }
    Ran totals = Ran.of("totals", job.toString());
    assertThat(group(TOTAL, totals.out())).isEqualTo(group(PRICE, imported.out()));
  }

  private static String group(Pattern pattern, String text) {
    Matcher matcher = pattern.matcher(text);
    assertThat(matcher.find()).as("%s in %s", pattern, text).isTrue();
    return matcher.group(1);
  }

  /** Whether a row with that key holds the number: as a number, or written out in a rule. */
  private static boolean stands(Workbook book, Typed typed) {
    return StreamSupport.stream(book.spliterator(), false)
        .flatMap(sheet -> StreamSupport.stream(sheet.spliterator(), false))
        .filter(row -> typed.key().isEmpty()
            || cells(row, CellType.STRING)
                .anyMatch(it -> it.getStringCellValue().equals(typed.key())))
        .anyMatch(row ->
            cells(row, CellType.NUMERIC).anyMatch(it -> isSame(it.getNumericCellValue(), typed))
                || (typed.inRule()
                    && cells(row, CellType.STRING)
                        .anyMatch(it -> it.getStringCellValue().contains(typed.text()))));
  }

  /** Lengths in millimetres are no finite number of inches; all others are the very same double. */
  private static boolean isSame(double there, Typed typed) {
    return typed.text().endsWith("mm")
        ? Math.abs(there - typed.number()) < 1e-9
        : there == typed.number();
  }

  private static Stream<Cell> cells(Row row, CellType type) {
    return StreamSupport.stream(row.spliterator(), false)
        .filter(cell -> cell.getCellType() == type);
  }
}
