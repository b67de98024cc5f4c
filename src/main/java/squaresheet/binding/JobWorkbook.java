package squaresheet.binding;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import squaresheet.finding.Read;
import squaresheet.job.JobInput;
import squaresheet.job.JobResult;
import squaresheet.sheet.Address;
import squaresheet.sheet.Draft;
import squaresheet.sheet.Workbook;
import squaresheet.takeoff.Rulebook;

/**
 * The job as a workbook that a person edits in an ordinary spreadsheet program: every number live, every rule a formula. It
 * is read back by its defined names and headings, so it survives inserted rows and columns and renamed and reordered sheets.
 */
public final class JobWorkbook {

  private JobWorkbook() {}

  /** Writes a job and what it came to. */
  public static Draft write(JobInput input, JobResult result) {
    return new JobWriter(JobParts.of(input, result, Optional.empty())).write();
  }

  /** Writes a job that came from a field sheet: its wording stands beside the numbers, and what was not read is listed. */
  public static Draft write(JobInput input, JobResult result, FieldNotes notes) {
    return new JobWriter(JobParts.of(input, result, Optional.of(notes))).write();
  }

  /**
   * Reads a job workbook of that file name. What is missing or cannot be read is said, one sentence each; the rest is read.
   *
   * @param rulebook the rules that the cells are held against
   */
  public static Read<BoundJob> read(Workbook workbook, String file, Rulebook rulebook) {
    return new JobReader(workbook, file, rulebook).read();
  }

  /** Whether this is a job workbook of our own layout, whatever has become of its sheets and names. */
  public static boolean isOne(Workbook workbook) {
    boolean named =
        workbook.name("plane_name").isPresent() && workbook.name("pitch_rise").isPresent();
    return named || workbook.properties().containsKey(Format.JOB);
  }

  /**
   * Where a job workbook is answered for the rows of the tape sheet that could not be read: by the name of the row, the cell of
   * the answer and the cell of the reason.
   */
  public static Map<String, List<Address>> answers(Workbook workbook) {
    NamedCells names = new NamedCells(workbook, "");
    Map<String, List<Address>> answers = new LinkedHashMap<>();
    names.block(NotReadSheet.KIND).ifPresent(block -> {
      for (int row = 0; row < block.rows(); row++) {
        String name = Cells.text(workbook.cell(at(names, NotReadSheet.CALLED, row)));
        boolean isRow = !workbook.cell(at(names, NotReadSheet.KIND, row)).isBlank();
        if (isRow) {
          answers.put(
              name,
              List.of(at(names, NotReadSheet.ANSWER, row), at(names, NotReadSheet.REASON, row)));
        }
      }
    });
    return answers;
  }

  private static Address at(NamedCells names, String column, int row) {
    Address first = names.cell(column).orElseThrow();
    return new Address(first.sheet(), first.ref().plus(row, 0));
  }
}
