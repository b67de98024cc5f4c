package squaresheet.binding;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import squaresheet.paper.Drawing;
import squaresheet.paper.Drawings;
import squaresheet.roof.EdgeKind;
import squaresheet.roof.Opening;
import squaresheet.sheet.Block;
import squaresheet.sheet.Content;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.sheet.DraftSheet.Paper;
import squaresheet.sheet.DraftSheet.Print;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Role;
import squaresheet.sheet.Sheet;
import squaresheet.takeoff.Rule;
import squaresheet.takeoff.Rulebook;

/** Draws the blank form: one sheet to fill in, one that says how. */
final class FieldForm {

  static final String NAME = "Field sheet";
  static final String HOW = "How to fill in";

  /** High enough to write in by hand. */
  private static final double HAND = 21;

  private static final int PIXELS = 900;
  /** How wide a picture stands on the sheet, in points: one column. */
  private static final double PICTURE_WIDE = 234;

  static final List<String> SHAPES =
      List.of("rectangle", "triangle", "trapezoid", "parallelogram", "polygon");
  private static final List<String> PLANE_HEADINGS = List.of(
      "Plane",
      "Shape",
      "Eave",
      "Up the slope",
      "Top",
      "Offset",
      "Pitch",
      "Measured on slope/plan",
      "Left edge",
      "Top edge",
      "Right edge",
      "Corners",
      "Edges in order",
      "Remarks");

  /** Where the second column of labels begins. */
  private static final int SECOND = 5;

  /** Settings that the form asks for; every other may be written under them by its label. */
  private static final List<String> ASKED =
      List.of("building_stories", "pipe_count", "waste_choice", "typed_waste", "nail_pattern");

  private static final Set<Role> SAYING =
      Set.of(Role.TITLE, Role.UNIT, Role.CAUTION, Role.TOTAL, Role.NOTE);

  private final Paper paper;
  private final boolean pictured;
  private final Draft draft = new Draft();
  private int row;

  FieldForm(Paper paper) {
    this(paper, true);
  }

  private FieldForm(Paper paper, boolean pictured) {
    this.paper = paper;
    this.pictured = pictured;
  }

  /** What the form says to whoever fills it in, besides its labels and headings: its titles and its sentences. */
  static Set<String> prose() {
    return words(NAME, SAYING);
  }

  /** Every word of the sheet that says how to fill it in. */
  static Set<String> how() {
    return words(HOW, Set.of(Role.values()));
  }

  private static Set<String> words(String name, Set<Role> roles) {
    Set<String> words = new HashSet<>();
    DraftSheet sheet = new FieldForm(Paper.LETTER, false).draw().find(name).orElseThrow();
    sheet.entries().forEach((ref, entry) -> {
      if (roles.contains(entry.role()) && entry.stored() instanceof Content.Text text) {
        words.add(text.value().strip());
      }
    });
    return words;
  }

  Draft draw() {
    DraftSheet sheet = draft.sheet(NAME);
    Sheets.head(
        sheet,
        "Field sheet",
        "Write lengths as you read them: 24' 6 1/2\" or 7.48 m. One row for each plane; the next sheet"
            + " shows what to measure.");
    caution(sheet);
    job(sheet);
    planes(sheet);
    int side = row;
    openings(sheet);
    row = side;
    edges(sheet);
    List<Double> widths =
        List.of(17.0, 14.0, 12.0, 12.0, 11.0, 10.0, 9.0, 11.0, 12.0, 14.0, 14.0, 22.0, 24.0, 22.0);
    for (int at = 0; at < widths.size(); at++) {
      sheet.width(at, widths.get(at));
    }
    sheet.print(new Print(paper, true, 0, "", NAME, 0.4));
    how(draft.sheet(HOW));
    Fit.fit(sheet);
    return draft;
  }

  private void caution(DraftSheet sheet) {
    for (int at = 0; at < 8; at++) {
      sheet.put(new Ref(2, at), Entry.blank().as(Role.CAUTION));
    }
    sheet.put(
        new Ref(2, 0),
        Entry.text("Measure from the ground or from plans where you can. " + Cautions.ALL.get(0)
                + " " + Cautions.ALL.get(1))
            .as(Role.CAUTION));
    sheet.merge(new Block(new Ref(2, 0), new Ref(2, 7)));
    row = 4;
  }

  private void job(DraftSheet sheet) {
    title(sheet, "Job");
    int first = row;
    label(sheet, "Job name");
    label(sheet, "Measured by");
    label(sheet, "Date");
    choice(
        sheet,
        label(sheet, "Unit for bare numbers"),
        1,
        List.of("feet", "inches", "metres", "millimetres"));
    choice(sheet, label(sheet, "Decimal mark"), 1, List.of("point", "comma"));
    label(sheet, "Eave overhang past the wall");
    label(sheet, "Layers to tear off");
    label(sheet, "Code edition");
    int last = row;
    row = first;
    SettingsSheet.CUSTOMER.forEach(name -> label(sheet, SECOND, SettingsSheet.LABELS.get(name)));
    ASKED.forEach(name -> Rulebook.standard().rule(name).ifPresent(rule -> setting(sheet, rule)));
    row = Math.max(last, row) + 1;
  }

  /** A setting in the second column of labels, as the job workbook calls it. */
  private void setting(DraftSheet sheet, Rule rule) {
    Ref at = label(sheet, SECOND, rule.label());
    if (!rule.choices().isEmpty()) {
      choice(sheet, at, 1, rule.choices());
    }
  }

  private void title(DraftSheet sheet, String text) {
    sheet.put(new Ref(row++, 0), Entry.text(text).as(Role.TOTAL));
  }

  private Ref label(DraftSheet sheet, String text) {
    return label(sheet, 0, text);
  }

  /** A label that begins in that column, so wide that long ones fit, and its box. */
  private Ref label(DraftSheet sheet, int column, String text) {
    Ref at = new Ref(row, column + (column == 0 ? 2 : 3));
    sheet.put(new Ref(row, column), Entry.text(text).as(Role.PLAIN));
    sheet.put(at, Entries.blankInput());
    sheet.put(at.plus(0, 1), Entries.blankInput());
    sheet.merge(new Block(at, at.plus(0, 1)));
    sheet.height(row++, HAND);
    return at;
  }

  private static void choice(DraftSheet sheet, Ref first, int rows, List<String> words) {
    Block block = new Block(first, first.plus(rows - 1, 0));
    sheet.validate(Sheet.Validation.choice(block, words, "one of: " + String.join(", ", words)));
  }

  /** A table of empty boxes; gives its first box. */
  private Ref table(DraftSheet sheet, String title, int left, List<String> headings, int rows) {
    sheet.put(new Ref(row++, left), Entry.text(title).as(Role.TOTAL));
    for (int at = 0; at < headings.size(); at++) {
      sheet.put(new Ref(row, left + at), Entry.text(headings.get(at)).as(Role.HEADING));
    }
    row++;
    Ref first = new Ref(row, left);
    for (int down = 0; down < rows; down++) {
      for (int at = 0; at < headings.size(); at++) {
        sheet.put(new Ref(row, left + at), Entries.blankInput().format("@"));
      }
      sheet.height(row++, HAND);
    }
    row++;
    return first;
  }

  private void planes(DraftSheet sheet) {
    int rows = 10;
    Ref first = table(sheet, "Planes", 0, PLANE_HEADINGS, rows);
    choice(sheet, first.plus(0, 1), rows, SHAPES);
    choice(sheet, first.plus(0, 7), rows, List.of("slope", "plan"));
    for (int edge = 8; edge <= 10; edge++) {
      choice(sheet, first.plus(0, edge), rows, EdgeKind.words());
    }
  }

  private void openings(DraftSheet sheet) {
    int rows = 7;
    Ref first = table(
        sheet,
        "Openings",
        0,
        List.of(
            "Opening", "In plane", "What", "Width", "Up the slope", "From left", "Up from eave"),
        rows);
    choice(sheet, first.plus(0, 2), rows, Opening.Kind.words());
  }

  private void edges(DraftSheet sheet) {
    int rows = 7;
    Ref first = table(
        sheet, "Edges", 8, List.of("Edge kind", "Plane", "Meets plane", "Length", "Remarks"), rows);
    choice(sheet, first, rows, EdgeKind.words());
  }

  private void how(DraftSheet sheet) {
    Sheets.head(sheet, "How to fill in", "Keep this sheet beside the form.");
    row = 3;
    shapes(sheet);
    for (String line : List.of(
        "Lengths: 24' 6 1/2\", 24-6 1/2, 24.54 ft, 294 1/2 in, 7.48 m. A number without a unit is taken in the unit named above the form.",
        "Careful with 24.6: it is read as 24.6 ft, not as 24 ft 6 in.",
        "Pitch: 6/12, 6 in 12, 26.57° or 50%. In a spreadsheet type 6:12 as text or 6; a typed 6/12 may turn into a date.",
        "Measured on slope/plan: slope where the tape lay on the roof, plan where it was held level or read off a drawing.",
        "Edges: eave, rake, ridge, hip, valley, sidewall, headwall, pitch break, open. Write ridge / B where a plane meets plane B.",
        "The table Edges is a check: tape a few hips, valleys and ridges once more and write them there.",
        "Offset: from the left end of the eave to below the left end of the top; to the left of it with a minus. Left empty, the top stands in the middle.")) {
      sheet.put(new Ref(row, 0), Entries.note(line));
      sheet.put(new Ref(row, 1), Entry.blank().as(Role.NOTE));
      sheet.put(new Ref(row, 2), Entry.blank().as(Role.NOTE));
      sheet.merge(new Block(new Ref(row, 0), new Ref(row, 2)));
      row++;
    }
    row++;
    for (String caution : Cautions.ALL) {
      sheet.put(new Ref(row, 0), Entry.text(caution).as(Role.CAUTION));
      sheet.put(new Ref(row, 1), Entry.blank().as(Role.CAUTION));
      sheet.put(new Ref(row, 2), Entry.blank().as(Role.CAUTION));
      sheet.merge(new Block(new Ref(row, 0), new Ref(row, 2)));
      row++;
    }
    sheet.width(0, 16).width(1, 44).width(2, 44);
    sheet.print(new Print(paper, false, 0, "", HOW, 0.5));
    Fit.fit(sheet);
  }

  private void shapes(DraftSheet sheet) {
    sheet.put(new Ref(row, 0), Entry.text("Shape").as(Role.HEADING));
    sheet.put(new Ref(row++, 1), Entry.text("What to measure").as(Role.HEADING));
    shape(
        sheet,
        "rectangle",
        "Eave along the bottom; up the slope along a rake (rake in the picture).");
    shape(
        sheet,
        "triangle",
        "Eave; up the slope square from the eave to the point (height in the picture); offset of the point.");
    shape(
        sheet,
        "trapezoid",
        "Eave; top (ridge in the picture); up the slope square between them (height); offset.");
    shape(
        sheet,
        "parallelogram",
        "Eave; up the slope square to the top (height); offset of the top.");
    shape(
        sheet,
        "polygon",
        "Every corner, along the eave and up the slope from the left end of the eave: 0, 0; 12', 0; 12', 8'; 0, 8'. Then the edges in the same order: eave, rake, ridge, rake.");
    pictures(sheet);
  }

  /** Two pictures beside each other under the table. */
  private void pictures(DraftSheet sheet) {
    if (!pictured || Drawing.obstacle().isPresent()) {
      row++;
      return;
    }
    List<String> words = Drawings.shapes();
    for (int i = 0; i < words.size(); i++) {
      Drawing drawing = Drawings.shape(words.get(i));
      Ref at = new Ref(row, 1 + i % 2);
      sheet.picture(new Block(at, at), drawing.png(PIXELS), drawing.title());
      sheet.height(row, PICTURE_WIDE * drawing.height() / drawing.width());
      row += i % 2 == 1 || i == words.size() - 1 ? 1 : 0;
    }
    row++;
  }

  private void shape(DraftSheet sheet, String word, String measure) {
    sheet.put(new Ref(row, 0), Entries.label(word));
    sheet.put(new Ref(row, 1), Entries.note(measure));
    sheet.put(new Ref(row, 2), Entry.blank().as(Role.NOTE));
    sheet.merge(new Block(new Ref(row, 1), new Ref(row, 2)));
    row++;
  }
}
