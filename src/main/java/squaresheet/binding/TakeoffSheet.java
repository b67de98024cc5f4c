package squaresheet.binding;

import java.util.List;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Role;
import squaresheet.takeoff.Rule;

/** Every quantity of the job: each rule a live formula under its own defined name. */
final class TakeoffSheet {

  static final String NAME = "Takeoff";

  private static final int HEADING = 3;

  private final JobParts parts;
  private final DraftSheet sheet;

  TakeoffSheet(JobParts parts, DraftSheet sheet) {
    this.parts = parts;
    this.sheet = sheet;
  }

  void write(Draft draft) {
    Sheets.head(
        sheet,
        "Takeoff",
        "Every quantity is a rule of its own. Change a formula here to change the rule for this job;"
            + " names stand for cells and columns of the other sheets.");
    List<String> headings =
        List.of("Quantity", "Value", "Unit", "Product", "Rule", "How it is worked out", "Source");
    for (int at = 0; at < headings.size(); at++) {
      sheet.put(new Ref(HEADING, at), Entry.text(headings.get(at)).as(Role.HEADING));
    }
    int row = HEADING + 1;
    for (Rule rule : parts.rulebook().rules()) {
      if (rule.per() == Rule.Per.JOB && rule.isWorkedOut()) {
        rule(draft, rule, row++);
      }
    }
    List<Double> widths = List.of(46.0, 12.0, 12.0, 18.0, 24.0, 70.0, 18.0);
    for (int at = 0; at < widths.size(); at++) {
      sheet.width(at, widths.get(at));
    }
    Sheets.table(sheet, HEADING, 1);
  }

  private void rule(Draft draft, Rule rule, int row) {
    boolean order = rule.role().isPresent();
    Ref value = new Ref(row, 1);
    sheet.put(new Ref(row, 0), Entries.label(rule.label()));
    sheet.put(
        value,
        Entries.computed(
                parts.rulebook().formula(rule.name()).orElseThrow().toFile(), Entries.format(rule))
            .as(order ? Role.TOTAL : Role.COMPUTED));
    boolean number = rule.holds() == Rule.Holds.NUMBER;
    sheet.put(
        new Ref(row, 2),
        Entries.unit(order ? pack(rule) : number ? Entries.unit(rule.unit()) : "must be TRUE"));
    rule.role()
        .ifPresent(role -> sheet.put(
            new Ref(row, 3),
            Entries.computed("IF(" + role + "_product=\"\",\"\"," + role + "_product)", "@")));
    sheet.put(new Ref(row, 4), Entries.unit(rule.name()));
    sheet.put(new Ref(row, 5), Entries.note(rule.formula()));
    sheet.put(new Ref(row, 6), Entries.unit(rule.source()));
    draft.name(rule.name(), NAME + "!" + TableDraft.dollars(value));
  }

  /** The pack of the product chosen, else the unit of the rule. */
  private String pack(Rule rule) {
    return rule.role()
        .flatMap(parts.selection()::of)
        .map(product -> product.packing().pack().word(2))
        .orElseGet(() -> Entries.unit(rule.unit()));
  }
}
