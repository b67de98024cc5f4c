package squaresheet.xlsx;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/** The files that are measured: written by another library, the same every time. */
final class SampleFiles {

  private SampleFiles() {}

  /** A takeoff of so many rows of twenty cells: words, numbers and formulas. */
  static Path ofRows(int rows) {
    Path file = Path.of("target", "bench", "rows-" + rows + ".xlsx");
    try {
      if (Files.notExists(file)) {
        Files.createDirectories(file.getParent());
        write(file, rows);
      }
      return file;
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  private static void write(Path file, int rows) throws IOException {
    Random random = new Random(1);
    try (OutputStream out = Files.newOutputStream(file);
        Workbook workbook = new Workbook(out, "bench", "1.0")) {
      Worksheet sheet = workbook.newWorksheet("Planes");
      for (int row = 0; row < rows; row++) {
        sheet.value(row, 0, "plane " + row);
        for (int column = 1; column < 16; column++) {
          sheet.value(row, column, Math.rint(random.nextDouble() * 100_000) / 100);
        }
        sheet.value(row, 16, random.nextBoolean() ? "eave" : "rake");
        for (int column = 17; column < 20; column++) {
          sheet.formula(row, column, "B" + (row + 1) + "*C" + (row + 1));
        }
        if (row % 1000 == 0) {
          sheet.flush();
        }
      }
    }
  }
}
