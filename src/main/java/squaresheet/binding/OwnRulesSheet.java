package squaresheet.binding;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.finding.Severity;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;
import squaresheet.takeoff.Rule;
import squaresheet.takeoff.RuleLine;
import squaresheet.takeoff.Rulebook;

/** The rules by which this job is worked out instead of, or beside, the standard ones; kept so that it is checked by them. */
final class OwnRulesSheet {

  static final String NAME = "Own rules";

  private static final int HEADING = 3;
  /** Room to write down a rule that was changed for this job only. */
  private static final int FREE = 6;

  private static final Map<String, Double> WIDTHS =
      Map.of("name", 24.0, "formula", 50.0, "label", 30.0, "note", 24.0);

  private OwnRulesSheet() {}

  static void write(Draft draft, Rulebook rulebook) {
    DraftSheet sheet = draft.sheet(NAME);
    Sheets.head(
        sheet,
        "Own rules",
        "The rules this job follows in place of the standard ones, or beside them. When you change a"
            + " rule on purpose, write it here too, in names, and the check holds the workbook to it.");
    List<List<String>> lines = own(rulebook).stream().map(RuleLine::texts).toList();
    TableDraft table = new TableDraft(sheet, HEADING, lines.size() + FREE);
    for (int at = 0; at < RuleLine.columns().size(); at++) {
      table.add(column(at, lines));
    }
    table.write(draft);
    Sheets.table(sheet, HEADING, 1);
  }

  private static Column column(int at, List<List<String>> lines) {
    String name = RuleLine.columns().get(at);
    return Column.of(
        cells(name),
        Character.toUpperCase(name.charAt(0)) + name.substring(1),
        WIDTHS.getOrDefault(name, 10.0),
        item ->
            Entries.input(item < lines.size() ? lines.get(item).get(at) : "").format("@"));
  }

  /** The defined name of a column's cells. */
  static String cells(String column) {
    return "own_rule_" + column;
  }

  private static List<Rule> own(Rulebook rulebook) {
    Rulebook standard = Rulebook.standard();
    return rulebook.rules().stream()
        .filter(rule -> standard.rule(rule.name()).filter(rule::equals).isEmpty())
        .toList();
  }

  /** The rulebook as the workbook wants it; a workbook without the sheet wants it as it is. */
  static Read<Rulebook> read(Rulebook rulebook, NamedCells names, NamedRows rows) {
    if (names.cell(cells("name")).isEmpty()) {
      return Read.of(rulebook);
    }
    List<RuleLine> lines = new ArrayList<>();
    for (int row : rows.rows(cells("name"), "the rules of this job")) {
      Map<String, String> texts = new LinkedHashMap<>();
      RuleLine.columns().forEach(column -> texts.put(column, rows.text(row, cells(column))));
      lines.add(new RuleLine(texts, column -> rows.where(row, cells(column))));
    }
    Read<Rulebook> read = lines.isEmpty() ? Read.of(rulebook) : rulebook.overriddenBy(lines);
    return Read.of(read.value().orElse(rulebook), worthSaying(read.findings()));
  }

  /** That a rule here goes before the standard one is what the sheet is for. */
  private static List<Finding> worthSaying(List<Finding> findings) {
    return findings.stream()
        .filter(finding -> finding.info().severity() != Severity.NOTE)
        .toList();
  }
}
