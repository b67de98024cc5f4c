package squaresheet.binding;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Role;
import squaresheet.takeoff.Rule;
import squaresheet.units.Unit;

/** The sheet {@code Job}: what is said about the job, then every setting with its value, unit and source, each a defined name. */
final class SettingsSheet {

  static final String NAME = "Job";
  /** What is said of the customer. */
  static final List<String> CUSTOMER = List.of("job_customer", "job_address", "job_phone");

  /** What the roof is resolved by; the rules of the takeoff do not ask for it. */
  static final Rule TOLERANCE = new Rule(
      "tape_tolerance",
      Rule.Per.JOB,
      Rule.Kind.SETTING,
      "1",
      Unit.parse("in"),
      Rule.Holds.NUMBER,
      List.of(),
      "",
      "Two tape readings of one edge may differ by",
      "common practice",
      "");

  /** What is said about a job, and the defined names of the cells that say it. */
  static final Map<String, String> LABELS = labels();

  private final JobParts parts;
  private final DraftSheet sheet;
  private int row = 3;

  SettingsSheet(JobParts parts, DraftSheet sheet) {
    this.parts = parts;
    this.sheet = sheet;
  }

  private static Map<String, String> labels() {
    Map<String, String> labels = new LinkedHashMap<>();
    labels.put("job_name", "Job name");
    labels.put("job_number", "Job number");
    labels.put("job_customer", "Customer");
    labels.put("job_address", "Address");
    labels.put("job_phone", "Phone");
    labels.put("job_date", "Measured on");
    labels.put("job_measured_by", "Measured by");
    labels.put("job_unit", "Lengths on the tape sheet in");
    return labels;
  }

  private void label(Draft draft, String name, String label) {
    Ref at = new Ref(row, 1);
    sheet.put(new Ref(row, 0), Entries.label(label));
    sheet.put(at, Entries.input(parts.labels().getOrDefault(name, "")));
    sheet.put(new Ref(row, parts.isMetric() ? 5 : 4), Entries.unit(name));
    draft.name(name, NAME + "!" + TableDraft.dollars(at));
    row++;
  }

  void write(Draft draft) {
    Sheets.head(
        sheet,
        "Job",
        "Everything the estimator decides for this job. Rates are ratios: 0.10 or 10% is ten percent.");
    headings("About the job", "Value", "", "");
    LABELS.forEach((name, label) -> label(draft, name, label));
    row++;
    settings(draft);
    List<Double> widths = parts.isMetric()
        ? List.of(52.0, 20.0, 10.0, 14.0, 34.0, 22.0)
        : List.of(52.0, 20.0, 10.0, 34.0, 22.0);
    widths.forEach(new Widths(sheet)::next);
    Sheets.page(sheet);
    sheet.freeze(3, 1);
  }

  /** Gives widths to columns from the left. */
  private static final class Widths {
    private final DraftSheet sheet;
    private int column;

    Widths(DraftSheet sheet) {
      this.sheet = sheet;
    }

    void next(double width) {
      sheet.width(column++, width);
    }
  }

  private void headings(String... texts) {
    for (int at = 0; at < texts.length; at++) {
      sheet.put(new Ref(row, at), Entry.text(texts[at]).as(Role.HEADING));
    }
    row++;
  }

  private void settings(Draft draft) {
    boolean metric = parts.isMetric();
    Downward down = new Downward(sheet, row);
    down.headings(
        metric
            ? List.of("Setting", "Value", "Unit", "For formulas", "Where it comes from", "Name")
            : List.of("Setting", "Value", "Unit", "Where it comes from", "Name"));
    SettingRow.Columns columns =
        metric ? new SettingRow.Columns(3, 4, 5) : new SettingRow.Columns(2, 3, 4);
    SettingRow settings = new SettingRow(parts, draft);
    settings.write(down, TOLERANCE, columns);
    parts.rulebook().settings().stream()
        .filter(rule -> !LayoutSheet.isLaying(rule))
        .forEach(rule -> settings.write(down, rule, columns));
  }
}
