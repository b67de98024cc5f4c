package squaresheet.xlsx;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import squaresheet.finding.Read;
import squaresheet.sheet.Draft;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Workbook;

/** The door to workbook files. */
public final class Xlsx {

  private Xlsx() {}

  /**
   * Reads a workbook file: {@code .xlsx}, or {@code .xlsm} without running its macros. Never throws for what is in the
   * file: what cannot be read is told in the findings, and the rest is read.
   */
  public static Read<Workbook> read(Path file) {
    return WorkbookReader.read(file);
  }

  /** Carries out edits on a workbook file, all or none; the file as it was is kept beside it under another name. */
  public static Read<Saved> edit(Path file, List<Edit> edits) {
    return edit(file, edits, file, Existing.KEEP_COPY);
  }

  /**
   * Carries out edits on a workbook file, all or none, and saves it elsewhere, under a name with the same ending, or in
   * place. Whatever no edit speaks of is kept byte by byte.
   */
  public static Read<Saved> edit(Path file, List<Edit> edits, Path to, Existing existing) {
    return WorkbookEditor.edit(file, edits, to, existing);
  }

  /** Writes a new workbook; a file that is there already is kept beside it under another name. */
  public static Read<Saved> write(Draft draft, Path file) {
    return write(draft, file, Existing.KEEP_COPY);
  }

  /** Writes a new workbook into a file that must end in {@code .xlsx}. The same draft gives the same bytes. */
  public static Read<Saved> write(Draft draft, Path file, Existing existing) {
    return SafeFile.save(file, existing, out -> {
      FileKind.refuseUnlessEnding(file, ".xlsx");
      out.write(bytes(draft));
    });
  }

  /** The bytes of a new workbook's file. The same draft gives the same bytes. */
  public static byte[] bytes(Draft draft) {
    try {
      return DraftWriter.bytes(draft);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }
}
