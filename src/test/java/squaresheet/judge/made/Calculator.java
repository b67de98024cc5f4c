package squaresheet.judge.made;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Another program that works a workbook out and stores what it makes. */
public interface Calculator {

  /** The spreadsheet program now and then leaves without a word, and is asked again. */
  int ATTEMPTS = 3;

  /** The files, in their order, worked out anew and saved. */
  List<byte[]> calculated(List<byte[]> files);

  /** The library that also writes the made workbooks. A file it cannot work out keeps its stored values. */
  Calculator LIBRARY = files -> files.stream().map(Calculator::byLibrary).toList();

  private static byte[] byLibrary(byte[] file) {
    try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(file));
        ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      try {
        book.getCreationHelper().createFormulaEvaluator().evaluateAll();
      } catch (RuntimeException circleOrUnknown) {
        book.setForceFormulaRecalculation(true);
      }
      book.write(out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The spreadsheet program on this machine, started once for all files, in a folder of its own. */
  static Calculator office(Path folder) {
    return files -> {
      try {
        return byOffice(files, Files.createTempDirectory(folder, "office"));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        throw new IllegalStateException(e);
      }
    };
  }

  /** Whether the spreadsheet program is on this machine. */
  static boolean isHere() {
    return Arrays.stream(System.getenv("PATH").split(File.pathSeparator))
        .anyMatch(each -> Files.isExecutable(Path.of(each, "soffice")));
  }

  private static boolean isDone(Path folder, int files) {
    return Files.exists(folder.resolve("out").resolve(files - 1 + ".xlsx"));
  }

  private static void start(List<String> command, Path folder, int files)
      throws IOException, InterruptedException {
    Process process = new ProcessBuilder(command)
        .redirectErrorStream(true)
        .redirectOutput(folder.resolve("said.txt").toFile())
        .start();
    if (!process.waitFor(60 + 20L * files, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      throw new IllegalStateException("the spreadsheet program did not come to an end");
    }
  }

  private static List<byte[]> byOffice(List<byte[]> files, Path folder)
      throws IOException, InterruptedException {
    Path user = Files.createDirectories(folder.resolve("profile/user"));
    Files.writeString(user.resolve("registrymodifications.xcu"), """
        <?xml version="1.0" encoding="UTF-8"?>
        <oor:items xmlns:oor="http://openoffice.org/2001/registry">
          <item oor:path="/org.openoffice.Office.Calc/Formula/Load">
            <prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop>
          </item>
        </oor:items>
        """);
    List<String> command = new ArrayList<>(List.of(
        "soffice",
        "-env:UserInstallation=" + folder.resolve("profile").toAbsolutePath().toUri(),
        "--headless",
        "--convert-to",
        "xlsx:Calc MS Excel 2007 XML",
        "--outdir",
        folder.resolve("out").toString()));
    for (int i = 0; i < files.size(); i++) {
      command.add(Files.write(folder.resolve(i + ".xlsx"), files.get(i)).toString());
    }
    for (int attempt = 0; attempt < ATTEMPTS && !isDone(folder, files.size()); attempt++) {
      start(command, folder, files.size());
    }
    List<byte[]> out = new ArrayList<>();
    for (int i = 0; i < files.size(); i++) {
      out.add(Files.readAllBytes(folder.resolve("out").resolve(i + ".xlsx")));
    }
    return out;
  }
}
