package squaresheet.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import squaresheet.binding.FieldNotes;
import squaresheet.binding.FieldSheet;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.formula.Value;
import squaresheet.job.Company;
import squaresheet.job.JobInput;
import squaresheet.sheet.Content;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.sheet.DraftSheet.Paper;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Sheet;
import squaresheet.takeoff.Rule;
import squaresheet.takeoff.Rulebook;
import squaresheet.xlsx.Existing;
import squaresheet.xlsx.Xlsx;

/** Every cell of a field sheet that is not empty is taken, or told with its place. */
class EveryCellTest {

  private static final Path DEMO = Path.of("demo-data/tape-sheet.csv");

  /** Every so many cells of a row are replaced, one at a time; 1 takes each. */
  private static final int STEP = Integer.getInteger("squaresheet.cells", 7);

  @TempDir
  Path folder;

  /** A sheet as rows of cells. */
  private static List<List<String>> demo() throws IOException {
    Read<FieldNotes> read = FieldSheet.read(Files.readString(DEMO), "tape.csv", Locale.US);
    assertThat(read.value()).isPresent();
    List<List<String>> rows = new ArrayList<>();
    for (String line : Files.readAllLines(DEMO)) {
      List<String> cells = new ArrayList<>();
      StringBuilder cell = new StringBuilder();
      boolean quoted = false;
      for (char letter : (line + ",").toCharArray()) {
        if (letter == '"') {
          quoted = !quoted;
        } else if (letter == ',' && !quoted) {
          cells.add(cell.toString());
          cell.setLength(0);
        } else {
          cell.append(letter);
        }
      }
      rows.add(cells);
    }
    return rows;
  }

  private static String csv(List<List<String>> rows) {
    return rows.stream()
        .map(row -> row.stream()
            .map(cell -> cell.contains(",") ? '"' + cell + '"' : cell)
            .collect(Collectors.joining(",")))
        .collect(Collectors.joining("\n"));
  }

  private static Draft draft(List<List<String>> rows) {
    Draft draft = new Draft();
    DraftSheet sheet = draft.sheet("Tape");
    for (int row = 0; row < rows.size(); row++) {
      for (int column = 0; column < rows.get(row).size(); column++) {
        if (!rows.get(row).get(column).isEmpty()) {
          sheet.put(new Ref(row, column), Entry.text(rows.get(row).get(column)));
        }
      }
    }
    return draft;
  }

  private Path file(List<List<String>> rows, String kind) throws IOException {
    Path file = folder.resolve("tape." + kind);
    if (kind.equals("csv")) {
      return Files.writeString(file, csv(rows));
    }
    Xlsx.write(draft(rows), file, Existing.REPLACE);
    return file;
  }

  /** What import says and what its workbook holds, if it writes one. */
  private String imported(Path file) {
    Path book = folder.resolve("job.xlsx");
    Ran ran = Ran.of(
        "import", file.toString(), "--company", "demo-data", "-o", book.toString(), "--force");
    return ran.all() + (Files.exists(book) ? text(book) : "");
  }

  private static String text(Path book) {
    return Xlsx.read(book).value().orElseThrow().sheets().stream()
        .flatMap(Sheet::cells)
        .map(placed -> placed.cell().stored())
        .filter(Content.Text.class::isInstance)
        .map(content -> ((Content.Text) content).value())
        .collect(Collectors.joining("\n"));
  }

  private static String mark(int row, int column) {
    return "mk" + row + "x" + column + "q";
  }

  @ParameterizedTest
  @ValueSource(strings = {"csv", "xlsx"})
  void a_marker_in_every_empty_cell_and_around_is_found_again(String kind) throws IOException {
    List<List<String>> rows = demo();
    int width = rows.get(0).size() + 3;
    for (int more = 0; more < 4; more++) {
      rows.add(new ArrayList<>());
    }
    List<String> markers = new ArrayList<>();
    for (int row = 0; row < rows.size(); row++) {
      List<String> cells = rows.get(row);
      while (cells.size() < width) {
        cells.add("");
      }
      for (int column = 0; column < width; column++) {
        if (cells.get(column).isEmpty()) {
          cells.set(column, mark(row, column));
          markers.add(mark(row, column));
        }
      }
    }
    assertThat(markers).hasSizeGreaterThan(300);
    assertThat(imported(file(rows, kind))).contains(markers);
  }

  @ParameterizedTest
  @ValueSource(strings = {"csv", "xlsx"})
  void a_marker_beside_and_below_every_table_goes_into_the_workbook(String kind)
      throws IOException {
    List<List<String>> rows = demo();
    List<String> markers = new ArrayList<>();
    for (int row = 0; row < rows.size(); row++) {
      List<String> cells = rows.get(row);
      boolean blank = cells.stream().allMatch(String::isEmpty);
      int from = blank ? 3 : cells.size() + 1;
      while (cells.size() <= from) {
        cells.add("");
      }
      cells.set(from, mark(row, from));
      markers.add(mark(row, from));
    }
    rows.add(List.of("", "", "", "", "", "", "", "", ""));
    rows.add(List.of("", mark(90, 1)));
    rows.add(List.of(mark(91, 0), "", mark(91, 2)));
    markers.addAll(List.of(mark(90, 1), mark(91, 0), mark(91, 2)));
    imported(file(rows, kind));
    assertThat(text(folder.resolve("job.xlsx"))).contains(markers);
  }

  /** Everything that reading the sheet and making a job of it yields, in words. */
  private static String yields(Read<FieldNotes> read, Company company) {
    Read<JobInput> job = read.flatMap(notes -> notes.job(company));
    return read.value() + "\n" + job.value() + "\n" + job.findings();
  }

  @ParameterizedTest
  @ValueSource(strings = {"csv", "xlsx"})
  void a_marker_in_place_of_any_one_cell_is_found_again(String kind) throws IOException {
    Company company = CompanyFolder.read(Path.of("demo-data")).value().orElseThrow();
    List<String> lost = new ArrayList<>();
    List<List<String>> whole = demo();
    for (int row = 0; row < whole.size(); row++) {
      for (int column = row % STEP; column < whole.get(row).size(); column += STEP) {
        List<List<String>> rows = new ArrayList<>();
        whole.forEach(cells -> rows.add(new ArrayList<>(cells)));
        rows.get(row).set(column, mark(row, column));
        Read<FieldNotes> read = kind.equals("csv")
            ? FieldSheet.read(csv(rows), "tape.csv", Locale.US)
            : FieldSheet.read(draft(rows).workbook(), "tape.xlsx", Locale.US);
        if (!yields(read, company).contains(mark(row, column))) {
          lost.add(mark(row, column));
        }
      }
    }
    assertThat(lost).isEmpty();
  }

  @Test
  void our_own_form_filled_in_leaves_nothing_over() {
    Draft form = FieldSheet.blank(Paper.LETTER);
    DraftSheet sheet = form.find("Field sheet").orElseThrow();
    type(sheet, "Customer", 3, "Jane Roe");
    type(sheet, "Address", 3, "12 Elm Street");
    type(sheet, "Phone", 3, "555 0100");
    type(sheet, "Stories up to the eaves", 3, "2");
    type(sheet, "Pipes through the roof", 3, "three");
    type(sheet, "Where the waste rate comes from", 3, "simulated");
    type(sheet, "Nailing pattern", 3, "high wind");
    type(sheet, "Unit for bare numbers", 2, "feet");
    int row = type(sheet, "Plane", 0, "Plane") + 1;
    List<String> cells = List.of(
        "A",
        "rectangle",
        "40'",
        "15'",
        "40'",
        "-",
        "6:12",
        "slope",
        "rake",
        "ridge / none",
        "rake");
    for (int at = 0; at < cells.size(); at++) {
      sheet.put(new Ref(row, at), Entry.text(cells.get(at)));
    }
    Read<FieldNotes> read = FieldSheet.read(form.workbook(), "field.xlsx", Locale.US);
    assertThat(read.findings()).isEmpty();
    FieldNotes notes = read.value().orElseThrow();
    assertThat(notes.remarks()).isEmpty();
    assertThat(notes.unread()).isEmpty();
    JobInput job = notes
        .job(CompanyFolder.read(Path.of("demo-data")).value().orElseThrow())
        .value()
        .orElseThrow();
    assertThat(job.card().customer().name()).isEqualTo("Jane Roe");
    assertThat(job.card().customer().address()).isEqualTo("12 Elm Street");
    assertThat(job.card().customer().phone()).isEqualTo("555 0100");
    assertThat(job.settings())
        .containsEntry("building_stories", Value.of(2))
        .containsEntry("pipe_count", Value.of(3))
        .containsEntry("waste_choice", new Value.Text("simulated"))
        .containsEntry("nail_pattern", new Value.Text("high wind"));
  }

  /** Types so many columns right of the label; gives its row. */
  private static int type(DraftSheet sheet, String label, int right, String text) {
    Ref at = sheet.entries().entrySet().stream()
        .filter(entry -> entry.getValue().stored().equals(new Content.Text(label)))
        .findFirst()
        .orElseThrow()
        .getKey();
    sheet.put(at.plus(0, right), Entry.text(text));
    return at.row();
  }

  @Test
  void every_setting_is_given_by_the_label_that_the_workbook_shows() {
    Company company = CompanyFolder.read(Path.of("demo-data")).value().orElseThrow();
    List<Rule> settings = Rulebook.standard().settings();
    assertThat(settings).hasSizeGreaterThan(60);
    for (Rule rule : settings) {
      String sheet = '"' + rule.label() + "\"," + usual(rule)
          + "\nPlane,Shape,Eave,Up the slope,Pitch,Measured\n" + "A,rectangle,40',15',6/12,slope\n";
      Read<FieldNotes> read = FieldSheet.read(sheet, "tape.csv", Locale.US);
      Read<JobInput> job = read.flatMap(notes -> notes.job(company));
      assertThat(job.value().orElseThrow().settings())
          .as("%s: %s", rule.label(), job.findings())
          .containsKey(rule.name());
      assertThat(read.value().orElseThrow().remarks()).as(rule.label()).isEmpty();
    }
  }

  private static String usual(Rule rule) {
    String unit = rule.unit().toString();
    return rule.formula() + (unit.equals("in") || unit.equals("ft") ? " " + unit : "");
  }

  @Test
  void what_is_said_of_the_customer_stands_in_the_workbook() throws IOException {
    List<List<String>> rows = demo();
    rows.add(2, List.of("Customer", "Jane Roe", "", "", "Phone", "555 0100"));
    rows.add(2, List.of("Address", "12 Elm Street"));
    rows.add(2, List.of("Pipes: two"));
    imported(file(rows, "csv"));
    JobFile file = new JobFile(folder.resolve("job.xlsx"));
    assertThat(file.book().cell(file.at("job_customer", 0)).stored())
        .isEqualTo(new Content.Text("Jane Roe"));
    assertThat(file.book().cell(file.at("job_address", 0)).stored())
        .isEqualTo(new Content.Text("12 Elm Street"));
    assertThat(file.book().cell(file.at("job_phone", 0)).stored())
        .isEqualTo(new Content.Text("555 0100"));
    assertThat(file.book().cell(file.at("pipe_count", 0)).stored())
        .isEqualTo(new Content.Numeric(2));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # written | instead | what is said
      Back,rectangle | Back,rect | but is 'rect'; nearest: 'rectangle'
      Wing end,triangle | Wing end,tri | but is 'tri'; nearest: 'triangle'
      slope,rake,headwall | slope,wall,headwall | but is 'wall'; nearest: 'headwall', 'sidewall'
      Back,chimney | Back,brick chimney | but is 'brick chimney'; nearest: 'chimney'
      Back,chimney | Back,vent pipe | a pipe is no opening: count it beside 'Pipes through the roof'
      chimney,3' | chimney,32 | reads as 32 feet; 32 inches?
      wall,1' 6" | wall,18 | should it be 18 inches?
      Layers to tear off | Layer to tear of | nearest: 'Layers torn off'
      rectangle,16',"8'-2 15/16\""",, | rectangle,16',"8'-2 15/16\""",18', | is 16' long at its top, but 18' is written; a trapezoid?
      rectangle,16',"8'-2 15/16\""",,, | rectangle,16',"8'-2 15/16\""",,3', | has no offset, but 3' is written; a parallelogram?
      """)
  void near_misses_are_offered_and_not_taken(String written, String instead, String says)
      throws IOException {
    String sheet = Files.readString(DEMO);
    assertThat(sheet).contains(written);
    Company company = CompanyFolder.read(Path.of("demo-data")).value().orElseThrow();
    Read<JobInput> job = FieldSheet.read(sheet.replace(written, instead), "tape.csv", Locale.US)
        .flatMap(notes -> notes.job(company));
    assertThat(job.findings()).extracting(Finding::says).anyMatch(text -> text.contains(says));
  }

  @Test
  void a_quotation_mark_left_open_swallows_no_rows() throws IOException {
    List<String> lines = Files.readAllLines(DEMO);
    for (int line = 0; line < lines.size(); line += 3) {
      List<String> spoilt = new ArrayList<>(lines);
      spoilt.set(line, '"' + lines.get(line));
      Read<FieldNotes> read = FieldSheet.read(String.join("\n", spoilt), "tape.csv", Locale.US);
      assertThat(read.value()
              .map(notes -> notes.roof().planes().size() + notes.unread().size()))
          .as("line %d: %s", line + 1, read.findings())
          .hasValueSatisfying(rows -> assertThat(rows).isGreaterThanOrEqualTo(7));
    }
  }

  @Test
  void a_cell_of_several_lines_stays_one_cell() {
    Read<FieldNotes> read = FieldSheet.read("""
        Plane,Shape,Eave,Up the slope,Pitch,Measured,Remarks
        A,rectangle,40',15',6/12,slope,"steep
        and, where it is wet, slippery"
        B,rectangle,40',15',6/12,slope,
        """, "tape.csv", Locale.US);
    assertThat(read.findings()).isEmpty();
    assertThat(read.value().orElseThrow().remarks())
        .extracting(FieldNotes.Remark::text)
        .containsExactly("steep\nand, where it is wet, slippery");
  }

  @Test
  void readings_under_unknown_headings_of_a_table_withhold() {
    String sheet = """
        Unit;feet
        Plane;Shape;Eave;Up the slope;Pitch;Measured;gap;Opening;In plane;What;Width;Up the slope
        A;rectangle;40';15';6/12;slope;;C;A;chimney;2';2'
        B;rectangle;40';15';6/12;slope;west
        """;
    FieldNotes notes = FieldSheet.read(sheet, "tape.csv", Locale.US).value().orElseThrow();
    assertThat(notes.unread())
        .extracting(unread -> String.join(" | ", unread.written()))
        .containsExactly("C | A | chimney | 2' | 2'");
  }

  @Test
  void words_of_our_form_are_told_where_they_stand_for_something() {
    Read<FieldNotes> read = FieldSheet.read("""
        Shape,rectangle
        Plane,Shape,Eave,Up the slope,Pitch,Measured
        A,rectangle,40',15',6/12,slope
        """, "tape.csv", Locale.US);
    assertThat(read.value().orElseThrow().remarks())
        .extracting(FieldNotes.Remark::about, FieldNotes.Remark::text)
        .containsExactly(org.assertj.core.groups.Tuple.tuple("Shape", "rectangle"));
  }

  @Test
  void a_company_may_give_settings_of_its_own_on_the_sheet() throws IOException {
    Company company = CompanyFolder.read(Path.of("demo-data")).value().orElseThrow();
    Rulebook own = company.rulebook().overriddenBy("""
            name,per,kind,formula,unit,choices,orders,label,source,note
            travel_days,job,setting,0,ratio,,,Days of travel,common practice,
            """, "rulebook.csv").value().orElseThrow();
    Company with =
        new Company(company.catalogue(), own, company.prices(), company.rates(), company.terms());
    String sheet = "Days of travel,3\n" + Files.readString(DEMO);
    JobInput job = FieldSheet.read(sheet, "tape.csv", Locale.US, own)
        .flatMap(notes -> notes.job(with))
        .value()
        .orElseThrow();
    assertThat(job.settings()).containsEntry("travel_days", Value.of(3));
  }
}
