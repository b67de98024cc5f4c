package squaresheet.xlsx;

import java.nio.ByteBuffer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Parts in other letters than UTF-8, which the format allows and hardly any program writes. */
final class Wide {

  /** How many bytes of a part are enough to tell. */
  static final int TELLING = 256;

  private static final Pattern DECLARED =
      Pattern.compile("^\\s*<\\?xml[^>]*?encoding\\s*=\\s*[\"']([^\"']*)[\"']");

  private Wide() {}

  /** UTF-16, told by its mark or by how its first angle bracket looks; all else readers tell by themselves. */
  static Optional<Charset> charset(byte[] start) {
    char first = start.length < 2 ? 0 : ByteBuffer.wrap(start).getChar();
    return switch (first) {
      case 0xFEFF, 0xFFFE -> Optional.of(StandardCharsets.UTF_16);
      case 0x003C -> Optional.of(StandardCharsets.UTF_16BE);
      case 0x3C00 -> Optional.of(StandardCharsets.UTF_16LE);
      default -> Optional.empty();
    };
  }

  /** The letters of a part that is not in UTF-8, told by how it starts. */
  static Optional<Charset> other(byte[] start) {
    Optional<Charset> wide = charset(start);
    Matcher declared = DECLARED.matcher(new String(start, StandardCharsets.ISO_8859_1));
    return wide.isPresent() || !declared.find() ? wide : named(declared.group(1));
  }

  private static Optional<Charset> named(String name) {
    try {
      return Optional.of(Charset.forName(name))
          .filter(
              it -> !it.equals(StandardCharsets.UTF_8) && !it.equals(StandardCharsets.US_ASCII));
    } catch (IllegalArgumentException unknown) {
      throw new Refusal("holds a part in letters that are not known here ('" + Excerpt.of(name)
          + "') and must be saved once in a spreadsheet program before it is changed");
    }
  }

  /** The part in UTF-8. */
  static byte[] narrowed(byte[] part) {
    return other(java.util.Arrays.copyOf(part, Math.min(part.length, TELLING)))
        .map(letters -> new String(part, letters)
            .replaceFirst("encoding\\s*=\\s*[\"'][^\"']*[\"']", "encoding=\"UTF-8\"")
            .getBytes(StandardCharsets.UTF_8))
        .orElse(part);
  }
}
