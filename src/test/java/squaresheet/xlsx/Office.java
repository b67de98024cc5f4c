package squaresheet.xlsx;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** Another spreadsheet program, run without a window, in a profile of its own. */
final class Office {

  private static final int PATIENCE_SECONDS = 120;

  /** The setting that makes it recalculate every file it opens; of itself it trusts stored values. */
  private static final String ALWAYS_RECALCULATE = """
      <?xml version="1.0" encoding="UTF-8"?>
      <oor:items xmlns:oor="http://openoffice.org/2001/registry"
          xmlns:xs="http://www.w3.org/2001/XMLSchema" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
        <item oor:path="/org.openoffice.Office.Calc/Formula/Load">
          <prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop>
        </item>
      </oor:items>
      """;

  private final Path folder;

  Office(Path folder) {
    this.folder = folder;
    try {
      Path user = Files.createDirectories(folder.resolve("profile").resolve("user"));
      Path settings = user.resolve("registrymodifications.xcu");
      if (Files.notExists(settings)) {
        Files.writeString(settings, ALWAYS_RECALCULATE);
      }
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  /** Whether the program is on this machine; asked by the tests' conditions. */
  static boolean isHere() {
    return Arrays.stream(System.getenv("PATH").split(java.io.File.pathSeparator))
        .anyMatch(each -> Files.isExecutable(Path.of(each, "soffice")));
  }

  /** The file opened and saved in another form, such as {@code xlsx}, with options of that form. */
  Path convert(Path file, String form, String into) {
    try {
      Path out = Files.createDirectories(folder.resolve(into));
      // The program now and then leaves without a word, so it is asked again.
      for (int attempt = 0; attempt < 3 && isEmpty(out, file); attempt++) {
        run(file, form, out);
      }
      String name = file.getFileName().toString();
      String ending = form.substring(0, form.indexOf(':') < 0 ? form.length() : form.indexOf(':'));
      return out.resolve(name.substring(0, name.lastIndexOf('.')) + "." + ending);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(stopped);
    }
  }

  private static boolean isEmpty(Path out, Path file) throws IOException {
    String name = file.getFileName().toString();
    String start = name.substring(0, name.lastIndexOf('.'));
    try (Stream<Path> files = Files.list(out)) {
      return files.noneMatch(it -> it.getFileName().toString().startsWith(start));
    }
  }

  private void run(Path file, String form, Path out) throws IOException, InterruptedException {
    Process process = new ProcessBuilder(
            "soffice",
            "-env:UserInstallation=" + folder.resolve("profile").toUri(),
            "--headless",
            "--norestore",
            "--convert-to",
            form,
            "--outdir",
            out.toString(),
            file.toString())
        .redirectErrorStream(true)
        .redirectOutput(folder.resolve("soffice.log").toFile())
        .start();
    if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      throw new IllegalStateException("the other program did not finish");
    }
  }

  /** The cells of a sheet, numbered from 1, as that program has them: formulas as text, or their raw values. */
  List<List<String>> cells(Path file, int sheet, boolean formulas) {
    String options = "44,34,76,1,,0,false,false,false," + formulas + ",false," + sheet;
    Path any = convert(
        file, "csv:Text - txt - csv (StarCalc):" + options, "csv-" + sheet + "-" + formulas);
    String name = any.getFileName().toString().replace(".csv", "-");
    try (Stream<Path> files = Files.list(any.getParent())) {
      Path csv = files
          .filter(it -> it.getFileName().toString().startsWith(name))
          .findFirst()
          .orElse(any);
      List<List<String>> rows = new ArrayList<>();
      try (CsvReader<CsvRecord> reader =
          CsvReader.builder().skipEmptyLines(false).ofCsvRecord(csv)) {
        reader.forEach(each -> rows.add(each.getFields()));
      }
      Files.delete(csv);
      return rows;
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
