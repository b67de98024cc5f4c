package squaresheet.xlsx;

import java.io.IOException;
import java.util.Locale;
import java.util.Map;

/** Why a file could not be written, in words of our own: what a system calls it differs from one to the next. */
final class Unwritable {

  private static final Map<String, String> CAUSES = Map.of(
      "no space left|not enough space|disk full|disk is full|quota", "the disk is full",
      "file too large", "it is larger than is allowed there",
      "name too long|file name.*too long|path.*too long", "its name is too long",
      "read-only|write protect", "the disk may only be read",
      "used by another process|text file busy|resource busy|locked", "another program has it open");

  private Unwritable() {}

  static String why(IOException failure) {
    String system = String.valueOf(failure.getMessage()).toLowerCase(Locale.ROOT);
    return CAUSES.entrySet().stream()
        .filter(cause -> system.matches("(?s).*(" + cause.getKey() + ").*"))
        .map(Map.Entry::getValue)
        .findFirst()
        .orElse("the system does not let it be written there");
  }
}
