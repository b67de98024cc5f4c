package squaresheet.binding;

import java.util.List;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Role;

/** The usual cautions, in plain words, on everything that sends someone up. */
final class Cautions {

  static final String NAME = "Cautions";

  /** One line that stands on every first page. */
  static final String LINE =
      "Roof work can kill. Local code, the product's printed instructions and licensed practice go"
          + " before anything in this workbook; see the cautions.";

  static final List<String> ALL = List.of(
      "Falls: protection is needed from 6 ft up; a roof above 4:12 is a steep roof and asks for more.",
      "Ladders: one foot out for every four up, tied, and 3 ft above the landing.",
      "Power lines: look up before a ladder, a brake or a length of metal goes up; keep well away.",
      "Heat: shingles and deck are far hotter than the air; water, shade and rest, and never alone.",
      "Load: spread bundles along the ridge; a stack in one place can break a deck.",
      "Tear-off: old material may contain asbestos; have it tested before it is disturbed.",
      "Structure: an extra layer, a sagging ridge or a soft deck is a question for an engineer.",
      "Ventilation: a vent count here follows a general rule; the attic itself must be looked at.",
      "Numbers: a wrong tape reading makes a wrong order; measure twice, and have the workbook verified.");

  private Cautions() {}

  static void write(DraftSheet sheet) {
    Sheets.head(sheet, "Cautions", "Common to all roof work; your local code decides.");
    int row = 3;
    for (String caution : ALL) {
      sheet.put(new Ref(row, 0), Entry.text(caution).as(Role.CAUTION));
      sheet.height(row++, 32);
    }
    sheet.width(0, 90);
    Sheets.page(sheet);
  }
}
