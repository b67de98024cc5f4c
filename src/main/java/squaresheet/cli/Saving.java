package squaresheet.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.sheet.Draft;
import squaresheet.sheet.Edit;
import squaresheet.xlsx.Existing;
import squaresheet.xlsx.SafeFile;
import squaresheet.xlsx.SafeFolder;
import squaresheet.xlsx.Saved;
import squaresheet.xlsx.Xlsx;

/** Writes files: never over one that is there unless told to, and then a copy of it is kept. */
final class Saving {

  /** The card of what is said where a file is there already: the one case in which force helps. */
  private static final String TAKEN = "file-is-there";

  private final Console console;
  private final Existing existing;

  Saving(Console console, boolean force) {
    this.console = console;
    this.existing = force ? Existing.KEEP_COPY : Existing.REFUSE;
  }

  /** Ends the command before anything is written, where one of these files is there and is to stay. */
  void refuse(List<Path> files) {
    files.stream()
        .filter(file -> existing == Existing.REFUSE && Files.isRegularFile(file))
        .findFirst()
        .ifPresent(file -> {
          throw new CannotBeDone(
              Exit.FAILED,
              "'" + Books.name(file)
                  + "' is there already and was left alone; choose another name; --force keeps"
                  + " a copy and goes on");
        });
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

  /** A set of files, all or none, in a folder of its own. */
  void set(Path parent, String name, Path origin, Map<String, byte[]> files) {
    Read<SafeFolder.SavedSet> read = SafeFolder.save(parent, name, origin, files, existing);
    SafeFolder.SavedSet saved = done(read, existing, "draws them anew");
    saved
        .kept()
        .forEach(copy -> console.say(
            "kept what was changed since it was drawn as " + saved.folder().resolve(copy)));
    saved
        .left()
        .forEach(old -> console.say("left " + saved.folder().resolve(old)
            + ": it is of the last time, but was changed since it was drawn"));
    saved.files().forEach(file -> console.say("wrote " + saved.folder().resolve(file)));
  }

  private void said(Read<Saved> read, Path file) {
    said(console, read, existing, file);
  }

  /** Says what became of a file, or ends the command where it could not be written. */
  static void said(Console console, Read<Saved> read, Existing existing, Path file) {
    Saved saved = done(read, existing, "keeps a copy and goes on");
    console.say(read.findings());
    saved.previous().ifPresent(copy -> console.say("kept what was there as " + copy));
    console.say("wrote " + file);
  }

  /** What was saved; where nothing was, the command ends, with the advice that helps. */
  private static <T> T done(Read<T> read, Existing existing, String force) {
    return read.value().orElseThrow(() -> {
      Finding why = read.findings().get(0);
      boolean taken = existing == Existing.REFUSE && why.info().id().equals(TAKEN);
      return new CannotBeDone(Exit.FAILED, why.says() + (taken ? "; --force " + force : ""));
    });
  }
}
