package squaresheet.binding;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Role;

/** The sheet {@code Job}: what is said about the job, then every setting with its value, unit and source, each a defined name. */
final class SettingsSheet {

  static final String NAME = "Job";
  static final String TOLERANCE = "tape_tolerance";

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
    labels.put("job_date", "Measured on");
    labels.put("job_measured_by", "Measured by");
    labels.put("job_unit", "Lengths on the tape sheet in");
    return labels;
  }

  private void label(Draft draft, String name, String label) {
    Ref at = new Ref(row, 1);
    sheet.put(new Ref(row, 0), Entries.label(label));
    sheet.put(at, Entries.input(parts.labels().getOrDefault(name, "")));
    sheet.put(new Ref(row, 4), Entries.unit(name));
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
    headings("Setting", "Value", "Unit", "Where it comes from", "Name");
    tolerance(draft);
    SettingRow settings = new SettingRow(parts, draft);
    Downward down = new Downward(sheet, row);
    parts.rulebook().settings().stream()
        .filter(rule -> !LayoutSheet.isLaying(rule))
        .forEach(rule -> settings.write(down, rule, 3, 4));
    List.of(52.0, 20.0, 10.0, 34.0, 22.0).forEach(new Widths(sheet)::next);
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

  private void tolerance(Draft draft) {
    Ref at = new Ref(row, 1);
    sheet.put(new Ref(row, 0), Entries.label("Two tape readings of one edge may differ by"));
    sheet.put(at, Entries.input(parts.notes().tapeTolerance().toInches(), "0.00##"));
    sheet.put(new Ref(row, 2), Entries.unit("in"));
    sheet.put(new Ref(row, 3), Entries.note("common practice"));
    sheet.put(new Ref(row, 4), Entries.unit(TOLERANCE));
    draft.name(TOLERANCE, NAME + "!" + TableDraft.dollars(at));
    row++;
  }
}
