package squaresheet.judge.score;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import squaresheet.judge.slip.Slip;
import squaresheet.sheet.Workbook;
import squaresheet.verify.Verdict;
import squaresheet.verify.Verify;
import squaresheet.xlsx.Xlsx;

/** Asks the verify pass, and correct, about the bytes of a file, as the commands of those names do. */
final class Verdicts {

  private static final String NAME = "judged.xlsx";

  private final Workbook book;
  private final Verdict verdict;

  private Verdicts(Workbook book) {
    this.book = book;
    verdict = Verify.of(book, NAME);
  }

  static Verdicts of(byte[] file, Path folder) {
    Path path = folder.resolve(NAME);
    try {
      Files.write(path, file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new Verdicts(Xlsx.read(path).value().orElseThrow());
  }

  List<Heard> heard() {
    return verdict.findings().stream().map(Heard::of).toList();
  }

  /** What correct makes of it, given the faults in it and what the cells should show. */
  @SuppressWarnings(
      "ReferenceEquality") // the very workbook that was verified already, or else another pass
  Mended mended(List<Slip> slips, Map<String, Double> right) {
    return Mended.of(book, each -> each == book ? verdict : Verify.of(each, NAME), slips, right);
  }
}
