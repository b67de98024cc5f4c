package squaresheet.verify;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import squaresheet.binding.AnyLayout;
import squaresheet.finding.Finding;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Role;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.Workbook;

/**
 * Writes what a pass says into the workbook: as a note at each cell, and as a list on a sheet of its own. Notes that other
 * people wrote stay, ours stand behind them; a later pass replaces ours and the list.
 */
public final class Marks {

  /** The name of the sheet with the list. */
  static final String SHEET = "Squaresheet findings";

  private static final String AUTHOR = "Squaresheet";
  private static final String MARK = "Squaresheet found: ";
  private static final List<String> HEADINGS =
      List.of("Weight", "Place", "What", "There is", "Should be", "Worth", "Check");
  private static final List<Integer> WIDTHS = List.of(10, 18, 52, 16, 16, 28, 22);
  private static final int FIRST = 3;
  /** The height of a line in points. */
  private static final double LINE = 14;
  /** Texts from here to the right take several lines. */
  private static final int WRAPPED = 2;

  private static final String THREAD = "[Threaded comment]";

  private final Workbook book;
  private final Verdict verdict;
  private final List<Edit> edits = new ArrayList<>();

  private Marks(Workbook book, Verdict verdict) {
    this.book = book;
    this.verdict = verdict;
  }

  /** The edits that mark a workbook with what the pass says of it. */
  public static List<Edit> of(Workbook book, Verdict verdict) {
    Marks marks = new Marks(book, verdict);
    marks.notes();
    marks.list();
    return List.copyOf(marks.edits);
  }

  /** The workbook without the notes that an earlier pass wrote at its cells. */
  static Workbook unmarked(Workbook book) {
    List<Edit> edits = new ArrayList<>();
    book.sheets().forEach(sheet -> sheet.comments().forEach((ref, note) -> {
      if (note.text().contains(MARK)) {
        edits.add(without(new Address(sheet.name(), ref), note));
      }
    }));
    return edits.isEmpty() ? book : book.after(edits);
  }

  private void notes() {
    Map<Address, List<Finding>> found = new LinkedHashMap<>();
    verdict.findings().forEach(finding -> Folding.cell(finding)
        .ifPresent(
            cell -> found.computeIfAbsent(cell, fresh -> new ArrayList<>()).add(finding)));
    for (Sheet sheet : book.sheets()) {
      sheet.comments().forEach((ref, note) -> {
        Address cell = new Address(sheet.name(), ref);
        if (note.text().contains(MARK) && !found.containsKey(cell)) {
          edits.add(without(cell, note));
        }
      });
    }
    found.forEach(this::say);
  }

  /** Takes ours away and leaves what others wrote. */
  private static Edit without(Address cell, Sheet.Comment note) {
    String theirs = theirs(note);
    return theirs.isEmpty()
        ? new Edit.DropComment(cell)
        : new Edit.SetComment(cell, note.author(), theirs);
  }

  private static String theirs(Sheet.Comment note) {
    int ours = note.text().indexOf(MARK);
    return (ours < 0 ? note.text() : note.text().substring(0, ours)).strip();
  }

  private void say(Address cell, List<Finding> findings) {
    Optional<Sheet.Comment> note =
        book.sheet(cell.sheet()).map(sheet -> sheet.comments().get(cell.ref()));
    String theirs = note.map(Marks::theirs).orElse("");
    if (theirs.contains(THREAD)) {
      return;
    }
    String ours = MARK + String.join("\n\n", findings.stream().map(Marks::text).toList());
    edits.add(new Edit.SetComment(
        cell,
        theirs.isEmpty() ? AUTHOR : note.map(Sheet.Comment::author).orElse(AUTHOR),
        theirs.isEmpty() ? ours : theirs + "\n\n" + ours));
  }

  private static String text(Finding finding) {
    return finding.info().severity() + ": " + finding.says()
        + (finding.expected().isEmpty() ? "" : "\nShould be " + finding.expected())
        + (finding.worth().isEmpty() ? "" : "\nWorth: " + finding.worth());
  }

  private void list() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of(AnyLayout.titleOfFindings()));
    rows.add(List.of(
        verdict.findings().isEmpty()
            ? "nothing; what was not checked is not in this list"
            : verdict.findings().size()
                + " findings; replaced each time the workbook is marked. Cells that are not in the"
                + " list are not thereby right."));
    rows.add(HEADINGS);
    verdict
        .findings()
        .forEach(finding -> rows.add(List.of(
            finding.info().severity().toString(),
            Folding.cell(finding).map(Address::toString).orElse(finding.where().toString()),
            finding.says(),
            finding.found(),
            finding.expected(),
            finding.worth(),
            finding.info().id())));
    edits.addAll(Edit.renewing(book, sheet(rows)));
  }

  private DraftSheet sheet(List<List<String>> rows) {
    DraftSheet sheet = Draft.sheetFor(book, SHEET);
    sheet.height(0, 2 * LINE).height(1, LINE);
    for (int row = 0; row < rows.size(); row++) {
      if (row >= FIRST) {
        sheet.height(row, lines(rows.get(row)) * LINE);
      }
      for (int column = 0; column < rows.get(row).size(); column++) {
        String text = rows.get(row).get(column);
        boolean remark = row == 1 || column >= WRAPPED;
        Role role = row == 0
            ? Role.TITLE
            : row == FIRST - 1 ? Role.HEADING : remark ? Role.NOTE : Role.PLAIN;
        if (!text.isEmpty()) {
          sheet.put(new Ref(row, column), Entry.text(text).as(role));
        }
      }
    }
    for (int column = 0; column < WIDTHS.size(); column++) {
      sheet.width(column, WIDTHS.get(column));
    }
    sheet.merge(new Block(new Ref(1, 0), new Ref(1, WIDTHS.size() - 1)));
    sheet.print(new DraftSheet.Print(DraftSheet.Paper.LETTER, true, FIRST, "", SHEET, 0.5));
    return sheet;
  }

  /** How many lines the longest text of a row takes in its column. */
  private static int lines(List<String> texts) {
    return IntStream.range(WRAPPED, texts.size())
        .map(column -> 1 + texts.get(column).length() / WIDTHS.get(column))
        .max()
        .orElse(1);
  }
}
