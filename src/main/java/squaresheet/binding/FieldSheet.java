package squaresheet.binding;

import java.util.List;
import java.util.Locale;
import squaresheet.finding.OwnWords;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet.Paper;
import squaresheet.sheet.Workbook;
import squaresheet.takeoff.Rulebook;
import squaresheet.tape.DateSystem;

/**
 * The tape-and-paper sheet: a form to print and fill in on the roof, and the way back from a filled one. Rows that cannot
 * be read are listed with what was understood of them; the rest is imported.
 */
public final class FieldSheet {

  private FieldSheet() {}

  /** The blank form for that paper, with pictures of what to measure where this machine can draw them. */
  public static Draft blank(Paper paper) {
    return new FieldForm(paper).draw();
  }

  /** Reads a filled field sheet from a workbook of that file name; text is read with the locale's decimal mark. */
  public static Read<FieldNotes> read(Workbook workbook, String file, Locale locale) {
    return read(workbook, file, locale, Rulebook.standard());
  }

  /**
   * Reads a filled field sheet from a workbook.
   *
   * @param rulebook the rules whose settings may be given on the sheet, by their labels
   */
  public static Read<FieldNotes> read(
      Workbook workbook, String file, Locale locale, Rulebook rulebook) {
    DateSystem dates = workbook.date1904() ? DateSystem.SINCE_1904 : DateSystem.SINCE_1900;
    List<Grid> grids = workbook.sheets().stream()
        .map(sheet -> (Grid) new SheetGrid(file, sheet))
        .toList();
    return new FieldReader(file, locale, dates, grids, rulebook).read();
  }

  /** Reads a filled field sheet from the text of a csv file of that name. */
  public static Read<FieldNotes> read(String csv, String file, Locale locale) {
    return read(csv, file, locale, Rulebook.standard());
  }

  /**
   * Reads a filled field sheet from the text of a csv file.
   *
   * @param rulebook the rules whose settings may be given on the sheet, by their labels
   */
  public static Read<FieldNotes> read(String csv, String file, Locale locale, Rulebook rulebook) {
    try {
      LineGrid lines = LineGrid.of(file, csv);
      FieldReader reader =
          new FieldReader(file, locale, DateSystem.SINCE_1900, List.of(lines), rulebook);
      return Read.of(lines, lines.findings()).flatMap(it -> reader.read());
    } catch (IllegalArgumentException broken) {
      return Read.nothing(Complaint.NOTHING_THERE.at(new Where.InFile(file), OwnWords.of(broken)));
    }
  }
}
