package squaresheet.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import squaresheet.binding.CellMap;
import squaresheet.binding.JobWorkbook;
import squaresheet.finding.Read;
import squaresheet.formula.Calculation;
import squaresheet.formula.Formula;
import squaresheet.job.Unread;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Workbook;
import squaresheet.takeoff.Rulebook;
import squaresheet.xlsx.Existing;
import squaresheet.xlsx.Saved;
import squaresheet.xlsx.Xlsx;

/** Plants slips of the kind people make in a copy of the demo's workbooks, as if it had been saved afterwards. */
final class Planted {

  private static final String REASON = "it is on the neighbour's roof";

  private Planted() {}

  /** Writes the copy and tells what was planted where. */
  static List<String> in(Path job, Path copy) {
    CellMap cells = JobBook.bound(job, Rulebook.standard()).cells();
    Address area = cell(cells, "plane Back", "gross_sloped_area");
    Address squares = cell(cells, "plane Porch", "plane_squares");
    Address waste = cell(cells, "job", "typed_waste");
    List<Edit> slips = List.of(
        new Edit.SetContent(area, new Content.Numeric(480)),
        new Edit.SetContent(squares, new Content.Blank()),
        new Edit.SetContent(waste, new Content.Numeric(10)));
    save(job, slips, copy);
    List<Edit> recalculated = recalculated(Books.read(copy).value().orElseThrow());
    save(copy, recalculated, copy);
    return List.of(
        area + ": the number 480 typed over the formula for an area",
        squares + ": a formula cleared",
        waste + ": waste typed 10 for 0.10");
  }

  /** Answers each row of the job's sheet that could not be read: it is left out, for a reason. Tells what was answered where. */
  static List<String> answer(Path job) {
    Workbook book = Books.read(job).value().orElseThrow();
    List<Edit> edits = new ArrayList<>();
    List<String> said = new ArrayList<>();
    JobWorkbook.answers(book).forEach((name, cells) -> {
      edits.add(
          new Edit.SetContent(cells.get(0), new Content.Text(Unread.Answer.LEFT_OUT.toString())));
      edits.add(new Edit.SetContent(cells.get(1), new Content.Text(REASON)));
      said.add(name + ": " + Unread.Answer.LEFT_OUT + "; " + REASON);
    });
    save(job, edits, job);
    save(job, recalculated(Books.read(job).value().orElseThrow()), job);
    return said;
  }

  /** Plants two slips in a filled copy of the demo's own form. */
  static List<String> inForm(Path form, Path copy) {
    Address squares = Address.of("Takeoff", "M7");
    Address waste = Address.of("Takeoff", "N18");
    save(
        form,
        List.of(
            new Edit.SetContent(squares, new Content.Numeric(6.5)),
            new Edit.SetContent(waste, new Content.Numeric(10))),
        copy);
    save(copy, recalculated(Books.read(copy).value().orElseThrow()), copy);
    return List.of(
        squares + ": the number 6.5 typed over the formula for squares",
        waste + ": waste typed 10 for 0.10");
  }

  private static void save(Path from, List<Edit> edits, Path to) {
    Read<Saved> saved = Xlsx.edit(from, edits, to, Existing.REPLACE);
    if (saved.value().isEmpty()) {
      throw new CannotBeDone(Exit.FAILED, saved.findings().get(0).says());
    }
  }

  private static Address cell(CellMap cells, String subject, String property) {
    return cells
        .cell(subject, property)
        .orElseThrow(() -> new IllegalStateException("no cell for " + subject + ": " + property));
  }

  /** What a spreadsheet program would store when it saves: every formula's value worked out anew. */
  static List<Edit> recalculated(Workbook workbook) {
    Calculation calculation = Calculation.of(workbook);
    List<Edit> edits = new ArrayList<>();
    for (Map.Entry<Address, Formula> entry : calculation.formulas().entrySet()) {
      Content now = calculation.value(entry.getKey()).content();
      String text = workbook
          .sheet(entry.getKey().sheet())
          .orElseThrow()
          .cell(entry.getKey().ref())
          .formula();
      if (!now.equals(workbook
          .sheet(entry.getKey().sheet())
          .orElseThrow()
          .cell(entry.getKey().ref())
          .stored())) {
        edits.add(new Edit.SetFormula(entry.getKey(), text, now));
      }
    }
    return edits;
  }
}
