package squaresheet.binding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.formula.Value;
import squaresheet.job.Company;
import squaresheet.job.JobInput;
import squaresheet.roof.Shape;
import squaresheet.sheet.Content;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.SheetBuilder;
import squaresheet.units.Length;

/** What stands beside the labels of a field sheet becomes a setting, or is said with its place; it never vanishes. */
class FieldSettingsTest {

  private static final String PLANES = """
      Plane;Shape;Eave;Up the slope;Pitch;Measured
      A;rectangle;40 ft;15 ft;6/12;slope
      """;

  private static final Company COMPANY = DemoJob.input().company();

  private static Read<JobInput> job(String labels, Locale locale) {
    return FieldSheet.read("Unit;feet\n" + labels + "\n\n" + PLANES, "tape.csv", locale)
        .flatMap(notes -> notes.job(COMPANY));
  }

  private static Optional<Value> setting(Read<JobInput> read, String name) {
    return Optional.ofNullable(read.value().orElseThrow().settings().get(name));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # label              | written       | setting          | comes to, worked by hand
      Layers to tear off   | two           | tear_off_layers  | 2
      Layers to tear off   | none          | tear_off_layers  | 0
      Layers to tear off   | 2 layers      | tear_off_layers  | 2
      Layers to tear off   | Three Layers  | tear_off_layers  | 3
      Courses per line     | four courses  | courses_per_line | 4
      Waste rate           | ten percent   | typed_waste      | 0.1
      Waste rate           | 12.5 %        | typed_waste      | 0.125
      Waste rate           | 0.08          | typed_waste      | 0.08
      Code edition         | 2018 edition  | code_edition     | 2018
      Eave overhang        | none          | eave_overhang    | 0
      Eave overhang        | 1' 6"         | eave_overhang    | 18
      Eave overhang, in    | 18            | eave_overhang    | 18
      """)
  void a_setting_in_words_or_figures_counts(
      String label, String written, String setting, double number) {
    Read<JobInput> read = job(label + ";" + written, Locale.US);
    assertThat(read.findings()).isEmpty();
    assertThat(setting(read, setting)).contains(Value.of(number));
  }

  @ParameterizedTest
  @CsvSource({
    "Layers to tear off, a few",
    "Layers to tear off, thirteen",
    "Layers to tear off, 12f",
    "Layers to tear off, 0x1p3",
    "Layers to tear off, '7,48'",
    "Layers to tear off, 2 days",
    "Layers to tear off, 50%",
    "Layers to tear off, ?",
    "Waste rate, a tenth",
    "Waste rate, '0,1'",
    "Code edition, the newest",
    "Eave overhang, a foot or so",
    "Wall offset, 6 cubits",
  })
  void a_setting_that_cannot_be_read_is_said_with_its_place_and_what_counts(
      String label, String written) {
    Read<JobInput> read = job(label + ";" + written, Locale.US);
    assertThat(read.findings()).singleElement().satisfies(finding -> {
      assertThat(finding.isError()).isTrue();
      assertThat(finding.where()).hasToString("tape.csv, line 2, " + label);
      assertThat(finding.says()).contains(written).matches(".*; the usual \\S+ counts instead");
    });
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      # label            | written | must be
      Courses per line   | 2.5     | a whole number from 1 to 20 (course), but is 2.5
      Courses per line   | 0       | a whole number from 1 to 20 (course), but is 0
      Courses per line   | 1,200   | a whole number from 1 to 20 (course), but is 1200
      Layers to tear off | -0.05   | a whole number from 0 to 6 (layer), but is -0.05
      Waste rate         | 10      | from 0 to 0.5, but is 10; 10 percent is written 10%
      Waste rate         | 80%     | from 0 to 0.5, but is 0.8
      Code edition       | 21      | a whole number from 2000 to 2100, but is 21
      Eave overhang      | 32      | from 0 to 72 in, but is 384; read as 32 feet: should it be 32 inches?
      Eave overhang      | -1 ft   | from 0 to 72 in, but is -12
      Tape tolerance     | 40 in   | from 0 to 12 in, but is 40
      """)
  void a_number_that_cannot_be_meant_is_said_and_does_not_count(
      String label, String written, String mustBe) {
    Read<JobInput> read = job(label + ";" + written, Locale.US);
    assertThat(read.findings()).singleElement().satisfies(finding -> {
      assertThat(finding.isError()).isTrue();
      assertThat(finding.where()).hasToString("tape.csv, line 2, " + label);
      assertThat(finding.says()).contains(" must be " + mustBe + "; the usual ");
    });
    assertThat(read.value().orElseThrow().settings()).isEmpty();
    assertThat(read.value().orElseThrow().roof().tapeTolerance()).isEqualTo(Length.ofInches(1));
  }

  /** Whatever a person writes: it is read, or it is an error at its place. */
  @Property(tries = 100)
  void nothing_beside_a_label_vanishes(
      @ForAll("labels") String label, @ForAll("writings") String written) {
    Assume.that(!written.isBlank());
    Read<JobInput> read = job(label + ";" + written, Locale.US);
    String all = read.findings().toString();
    assertThat(read.value().orElseThrow().settings().isEmpty())
        .as(written + all)
        .isEqualTo(read.findings().stream().anyMatch(Finding::isError));
  }

  @Provide
  Arbitrary<String> labels() {
    return Arbitraries.of(
        "Layers to tear off", "Courses per line", "Waste rate", "Code edition", "Eave overhang");
  }

  @Provide
  Arbitrary<String> writings() {
    return Arbitraries.of(
            "",
            "-",
            "+",
            "~",
            "about ",
            "no",
            "two",
            "1,2",
            "3.5",
            "4",
            "%",
            " percent",
            " layers",
            " ft",
            "\u00BD",
            "?",
            " or ",
            "/",
            "x")
        .list()
        .ofMinSize(1)
        .ofMaxSize(4)
        .map(parts -> String.join("", parts));
  }

  @Example
  void thousands_are_set_apart_by_the_other_mark() {
    assertThat(setting(job("Code edition;2,021", Locale.US), "code_edition"))
        .contains(Value.of(2021));
    assertThat(setting(job("Code edition;2.021", Locale.GERMANY), "code_edition"))
        .contains(Value.of(2021));
  }

  @Example
  void a_declared_mark_goes_before_the_locale_for_lengths_and_settings_alike() {
    for (String mark : List.of(".", "point", "Decimal point")) {
      Read<JobInput> read =
          job("Decimal mark;" + mark + "\nWaste rate;0.08\nEave overhang;1.5 ft", Locale.GERMANY);
      assertThat(read.findings()).as(mark).isEmpty();
      assertThat(setting(read, "typed_waste")).contains(Value.of(0.08));
      assertThat(setting(read, "eave_overhang")).contains(Value.of(18));
    }
    Read<JobInput> comma =
        job("Decimal mark;comma\nWaste rate;0,08\nEave overhang;1,5 ft", Locale.US);
    assertThat(comma.findings()).isEmpty();
    assertThat(setting(comma, "typed_waste")).contains(Value.of(0.08));
    assertThat(setting(comma, "eave_overhang")).contains(Value.of(18));
  }

  @Example
  void an_unknown_mark_is_said_with_the_one_that_counts() {
    Read<JobInput> read = job("Decimal mark;apostrophe", Locale.US);
    assertThat(read.findings())
        .extracting(Finding::says)
        .containsExactly(
            "decimal mark must be point or comma, but is 'apostrophe'; numbers are read with a decimal point");
  }

  @Example
  void numbers_in_cells_are_no_text_in_any_locale() {
    SheetBuilder sheet = Sheet.builder("Tape");
    text(sheet, 0, "Unit", "feet");
    text(sheet, 1, "Decimal mark", "comma");
    sheet.content(2, 0, "General", new Content.Text("Waste rate"));
    sheet.content(2, 1, "0%", new Content.Numeric(0.125));
    sheet.content(3, 0, "General", new Content.Text("Eave overhang"));
    sheet.content(3, 1, "General", new Content.Numeric(1.5));
    sheet.content(4, 0, "General", new Content.Text("Layers to tear off"));
    sheet.content(4, 1, "d-mmm", new Content.Numeric(46023));
    text(sheet, 6, "Plane", "Shape", "Eave", "Up the slope", "Pitch", "Measured");
    text(sheet, 7, "A", "rectangle", "40", "15", "6/12", "slope");
    Read<JobInput> read = FieldSheet.read(Drawn.workbook(sheet.build()), "tape.xlsx", Locale.US)
        .flatMap(notes -> notes.job(COMPANY));
    assertThat(setting(read, "typed_waste")).contains(Value.of(0.125));
    assertThat(setting(read, "eave_overhang")).contains(Value.of(18));
    assertThat(read.findings().stream().filter(Finding::isError))
        .extracting(finding -> finding.info().id() + " " + finding.where())
        .containsExactly("number-became-date tape.xlsx, Tape!B5");
    assertThat(read.value().orElseThrow().roof().planes().get(0).shape())
        .isEqualTo(new Shape.Rectangle(Length.of(40, 0), Length.of(15, 0)));
  }

  private static void text(SheetBuilder sheet, int row, String... cells) {
    for (int at = 0; at < cells.length; at++) {
      sheet.content(row, at, "General", new Content.Text(cells[at]));
    }
  }
}
