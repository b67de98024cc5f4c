package squaresheet.cli;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.sheet.Ref;
import squaresheet.xlsx.Xlsx;

/** A company that keeps its lists as workbooks gets what it gets from the same lists as csv. */
class CompanySheetsTest {

  private static final List<String> LISTS = List.of("products", "prices", "rates", "terms");

  @TempDir
  Path folder;

  /** The demo list as a sheet, numbers as numbers and percentages as a program keeps them. */
  private static void sheet(Draft draft, String list) throws IOException {
    DraftSheet sheet = draft.sheet("My " + list);
    String csv = Files.readString(Path.of("demo-data", list + ".csv"));
    try (var lines = CsvReader.builder().commentStrategy(CommentStrategy.SKIP).ofCsvRecord(csv)) {
      int row = 2;
      for (var line : lines) {
        for (int column = 0; column < line.getFieldCount(); column++) {
          if (!line.getField(column).isEmpty()) {
            sheet.put(new Ref(row, column), entry(line.getField(column)));
          }
        }
        row++;
      }
    }
  }

  private static Entry entry(String text) {
    if (text.matches("\\d+(\\.\\d+)?%")) {
      return Entry.number(Double.parseDouble(text.replace("%", "")) / 100).format("0.0#%");
    }
    return text.matches("[1-9]\\d*(\\.\\d+)?")
        ? Entry.number(Double.parseDouble(text))
        : Entry.text(text);
  }

  private Path workbook(String name, List<String> lists) throws IOException {
    Draft draft = new Draft();
    for (String list : lists) {
      sheet(draft, list);
    }
    Path file = folder.resolve(name);
    Xlsx.write(draft, file);
    return file;
  }

  private String totals(Path company) {
    Path job = folder.resolve("job-" + company.getFileName() + ".xlsx");
    Ran imported = Ran.of(
        "import",
        DemoSheet.sound(),
        "--company",
        company.toString(),
        "--force",
        "-o",
        job.toString());
    assertThat(imported.err()).isEmpty();
    String csv = Ran.of("totals", job.toString()).out();
    return csv.replace(job.getFileName().toString(), "job");
  }

  @Test
  void one_workbook_each_and_one_for_all_give_the_totals_of_the_csv_files() throws IOException {
    String csv = totals(Path.of("demo-data"));
    assertThat(csv).contains("Alder Lane house", "total of 1 job");
    workbook("company.xlsx", LISTS);
    assertThat(totals(folder)).isEqualTo(csv);
    Files.delete(folder.resolve("company.xlsx"));
    for (String list : LISTS) {
      workbook(list + ".xlsx", List.of(list));
    }
    assertThat(totals(folder)).isEqualTo(csv);
  }

  @Test
  void a_list_that_stands_twice_or_has_no_such_sheet_is_one_sentence() throws IOException {
    workbook("company.xlsx", LISTS);
    Files.copy(Path.of("demo-data/prices.csv"), folder.resolve("prices.csv"));
    String[] command = {"import", DemoSheet.sound(), "--company", folder.toString()};
    assertThat(Ran.of(command).err().strip())
        .isEqualTo("the company's prices must stand in one file, but stand in prices.csv and in"
            + " company.xlsx; keep the one that holds");
    Files.delete(folder.resolve("prices.csv"));
    workbook("prices.xlsx", List.of("terms"));
    Files.delete(folder.resolve("company.xlsx"));
    workbook("company.xlsx", List.of("products", "rates", "terms"));
    assertThat(Ran.of(command).err())
        .contains("prices.xlsx must have a sheet with the headings product, price, per");
  }

  @Test
  void what_cannot_be_read_is_said_at_its_cell() throws IOException {
    Draft draft = new Draft();
    for (String list : LISTS) {
      sheet(draft, list);
    }
    draft.find("My prices").orElseThrow().put(new Ref(3, 1), Entry.text("ask"));
    Xlsx.write(draft, folder.resolve("company.xlsx"));
    Path job = folder.resolve("job.xlsx");
    assertThat(Ran.of(
                "import", DemoSheet.sound(), "--company", folder.toString(), "-o", job.toString())
            .out())
        .contains("company.xlsx, 'My prices'!B4");
  }
}
