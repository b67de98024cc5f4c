package squaresheet.xlsx;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A workbook with what a file in use may hold and this program knows nothing about: a chart, a pivot table with its cache, a
 * slicer, extended formats and checks, sparklines, a conversation, custom XML, printer settings, extensions and parts of no
 * known kind. Its parts lie in {@code src/test/cases/xlsx/everything}, written by hand after ECMA-376 and [MS-XLSX].
 */
final class Everything {

  private static final Path FOLDER = Path.of("src", "test", "cases", "xlsx", "everything");
  private static final int PRINTER_SETTINGS = 300;

  private Everything() {}

  static Map<String, byte[]> parts() {
    Map<String, byte[]> parts = new TreeMap<>();
    try (Stream<Path> files = Files.walk(FOLDER)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        parts.put(name(file), Files.readAllBytes(file));
      }
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
    parts.put("xl/printerSettings/printerSettings1.bin", printerSettings());
    parts.put("docProps/thumbnail.jpeg", new byte[0]);
    return parts;
  }

  /** The same without the part that no content type is given for, which some libraries refuse a file for. */
  static Map<String, byte[]> declaredParts() {
    Map<String, byte[]> parts = parts();
    parts.remove("xl/unheard/of.part");
    return parts;
  }

  private static String name(Path file) {
    return FOLDER.relativize(file).toString().replace('\\', '/');
  }

  /** Bytes of every value, which are no text in any encoding. */
  private static byte[] printerSettings() {
    byte[] bytes = new byte[PRINTER_SETTINGS];
    for (int i = 0; i < bytes.length; i++) {
      bytes[i] = (byte) i;
    }
    return bytes;
  }
}
