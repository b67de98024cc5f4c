package squaresheet.judge.score;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import squaresheet.judge.made.MadeBook;
import squaresheet.sheet.Workbook;
import squaresheet.takeoff.Rulebook;
import squaresheet.verify.Verdict;
import squaresheet.verify.Verify;
import squaresheet.xlsx.Xlsx;

/** Asks the verify pass about the bytes of a file. */
final class Verdicts {

  private Verdicts() {}

  static List<Heard> of(MadeBook made, byte[] file, Path folder) {
    Path path = folder.resolve("judged.xlsx");
    try {
      Files.write(path, file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Workbook book = Xlsx.read(path).value().orElseThrow();
    Verdict verdict = made.own()
        ? Verify.job(book, "judged.xlsx", Rulebook.standard())
        : Verify.workbook(book, "judged.xlsx");
    return verdict.findings().stream().map(Heard::of).toList();
  }
}
