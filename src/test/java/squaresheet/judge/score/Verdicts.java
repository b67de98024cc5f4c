package squaresheet.judge.score;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import squaresheet.sheet.Workbook;
import squaresheet.verify.Verdict;
import squaresheet.verify.Verify;
import squaresheet.xlsx.Xlsx;

/** Asks the verify pass about the bytes of a file. */
final class Verdicts {

  private Verdicts() {}

  static List<Heard> of(byte[] file, Path folder) {
    Path path = folder.resolve("judged.xlsx");
    try {
      Files.write(path, file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Workbook book = Xlsx.read(path).value().orElseThrow();
    Verdict verdict = Verify.of(book, "judged.xlsx");
    return verdict.findings().stream().map(Heard::of).toList();
  }
}
