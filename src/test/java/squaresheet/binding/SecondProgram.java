package squaresheet.binding;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;

/** Another spreadsheet program, LibreOffice, where this machine has it. */
final class SecondProgram {

  private SecondProgram() {}

  /** Skips the test, and says so, where the program is not there. */
  static void needed() {
    Assumptions.assumeTrue(isThere(), "soffice is not on the path: recalculation is not compared");
  }

  private static boolean isThere() {
    String path = System.getenv().getOrDefault("PATH", "");
    for (String folder : path.split(java.io.File.pathSeparator)) {
      if (Files.isExecutable(Path.of(folder, "soffice"))) {
        return true;
      }
    }
    return false;
  }

  /** Opens the file, works it out and saves it anew in a folder beside it; gives the new file. */
  static Path resave(Path file) {
    try {
      Path folder = Files.createDirectories(file.resolveSibling("resaved"));
      Path profile = file.resolveSibling("profile");
      Process process = new ProcessBuilder(
              "soffice",
              "-env:UserInstallation=" + profile.toUri(),
              "--headless",
              "--convert-to",
              "xlsx:Calc MS Excel 2007 XML",
              "--outdir",
              folder.toString(),
              file.toString())
          .redirectErrorStream(true)
          .redirectOutput(file.resolveSibling("soffice.log").toFile())
          .start();
      if (!process.waitFor(180, TimeUnit.SECONDS)) {
        process.destroyForcibly();
        throw new IllegalStateException("soffice did not finish in 180 s");
      }
      return folder.resolve(file.getFileName());
    } catch (IOException broken) {
      throw new IllegalStateException(broken);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(stopped);
    }
  }
}
