package squaresheet.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import squaresheet.finding.Read;
import squaresheet.sheet.Draft;
import squaresheet.sheet.Edit;
import squaresheet.xlsx.Existing;
import squaresheet.xlsx.SafeFile;
import squaresheet.xlsx.Saved;
import squaresheet.xlsx.Xlsx;

/** Writes files: never over one that is there unless told to, and then a copy of it is kept. */
final class Saving {

  private final Console console;
  private final Existing existing;

  Saving(Console console, boolean force) {
    this.console = console;
    this.existing = force ? Existing.KEEP_COPY : Existing.REFUSE;
  }

  void workbook(Draft draft, Path file) {
    said(Xlsx.write(draft, file, existing), file);
  }

  /** Carries out edits on a workbook file and writes it elsewhere, or in place. */
  void edited(Path from, List<Edit> edits, Path to) {
    said(Xlsx.edit(from, edits, to, existing), to);
  }

  void text(String text, Path file) {
    bytes(text.getBytes(StandardCharsets.UTF_8), file);
  }

  void bytes(byte[] bytes, Path file) {
    said(SafeFile.save(file, bytes, existing), file);
  }

  private void said(Read<Saved> read, Path file) {
    said(console, read, existing, file);
  }

  /** Says what became of a file, or ends the command where it could not be written. */
  static void said(Console console, Read<Saved> read, Existing existing, Path file) {
    Saved saved = read.value()
        .orElseThrow(() -> new CannotBeDone(
            Exit.FAILED,
            read.findings().get(0).says()
                + (existing == Existing.REFUSE ? "; --force keeps a copy and goes on" : "")));
    console.say(read.findings());
    saved.previous().ifPresent(copy -> console.say("kept what was there as " + copy));
    console.say("wrote " + file);
  }
}
