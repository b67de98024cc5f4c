package squaresheet.cli;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Reads text files as spreadsheet programs write them: UTF-8 or UTF-16, with or without a mark, or else Windows Western. */
final class TextFile {

  private static final Charset WESTERN = Charset.forName("windows-1252");
  private static final long LARGEST = 64L << 20;
  /** One zero in so many bytes may have strayed into a text. */
  private static final int STRAY = 100;

  private static final List<String> ENDINGS = List.of(".csv", ".txt", ".tsv");

  /** How files begin that are no text, and what they are. */
  private static final Map<String, String> OTHERS = Map.of(
      "PK\u0003\u0004", "a workbook or another zip; if it is a workbook, give it the ending .xlsx",
      "\u00D0\u00CF\u0011\u00E0", "an old workbook (.xls); save it as .xlsx or as .csv",
      "%PDF", "a PDF",
      "\u0089PNG", "a picture",
      "\u00FF\u00D8\u00FF", "a picture",
      "<htm", "a web page",
      "<!DO", "a web page",
      "<?xm", "an XML file",
      "{\\rt", "a formatted text (.rtf); save it as plain text or as .csv");

  private TextFile() {}

  /** Whether the name says that it is a text table. */
  static boolean isOne(Path file) {
    String name = Books.name(file).toLowerCase(Locale.ROOT);
    return ENDINGS.stream().anyMatch(name::endsWith);
  }

  static String read(Path file) {
    if (!Files.isRegularFile(file)) {
      throw new CannotBeDone(
          Exit.WRONG_USE,
          file + " must be a file, but is "
              + (Files.exists(file) ? "a folder or a device" : "not there"));
    }
    try {
      if (Files.size(file) > LARGEST) {
        throw new CannotBeDone(Exit.FAILED, file + " must be at most 64 MB of text, but is larger");
      }
      return text(file, Files.readAllBytes(file));
    } catch (IOException unreadable) {
      throw new CannotBeDone(
          Exit.FAILED, file + " cannot be read; access to it may be denied, or the disk at fault");
    }
  }

  private static String text(Path file, byte[] bytes) {
    String text = wide(bytes).map(charset -> new String(bytes, charset)).orElseGet(() -> {
      refuseOther(file, bytes);
      return narrow(bytes);
    });
    return text.startsWith("\uFEFF") ? text.substring(1) : text;
  }

  /** Text of two or four bytes a character, by its mark, or by the zeros that stand beside plain letters. */
  private static Optional<Charset> wide(byte[] bytes) {
    if (begins(bytes, 0xFF, 0xFE, 0, 0) || begins(bytes, 0, 0, 0xFE, 0xFF)) {
      return Optional.of(Charset.forName("UTF-32"));
    }
    if (begins(bytes, 0xFF, 0xFE) || begins(bytes, 0xFE, 0xFF)) {
      return Optional.of(StandardCharsets.UTF_16);
    }
    int first = zeros(bytes, 0);
    int second = zeros(bytes, 1);
    boolean half = bytes.length % 2 == 0 && 4 * Math.max(first, second) > bytes.length;
    return !half || Math.min(first, second) * 20 > bytes.length
        ? Optional.empty()
        : Optional.of(first > second ? StandardCharsets.UTF_16BE : StandardCharsets.UTF_16LE);
  }

  private static boolean begins(byte[] bytes, int... with) {
    for (int at = 0; at < with.length; at++) {
      if (at >= bytes.length || (bytes[at] & 0xFF) != with[at]) {
        return false;
      }
    }
    return true;
  }

  /** How many of every second byte, from the first or the second on, are zero. */
  private static int zeros(byte[] bytes, int from) {
    int zeros = 0;
    for (int at = from; at < bytes.length; at += 2) {
      zeros += bytes[at] == 0 ? 1 : 0;
    }
    return zeros;
  }

  private static void refuseOther(Path file, byte[] bytes) {
    String start = new String(bytes, 0, Math.min(bytes.length, 4), StandardCharsets.ISO_8859_1);
    Optional<String> other = OTHERS.entrySet().stream()
        .filter(kind -> start.startsWith(kind.getKey()))
        .map(Map.Entry::getValue)
        .findFirst();
    int zeros = zeros(bytes, 0) + zeros(bytes, 1);
    if (other.isPresent() || zeros * STRAY > bytes.length) {
      throw new CannotBeDone(
          Exit.FAILED,
          file + " must be a text table (.csv), but is " + other.orElse("no text at all"));
    }
  }

  private static String narrow(byte[] bytes) {
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException otherwise) {
      return new String(bytes, WESTERN);
    }
  }
}
