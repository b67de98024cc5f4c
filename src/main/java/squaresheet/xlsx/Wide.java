package squaresheet.xlsx;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Parts in UTF-16, which the format allows and hardly any program writes. */
final class Wide {

  private Wide() {}

  /** UTF-16, told by its mark or by how its first angle bracket looks; all else readers tell by themselves. */
  static Optional<Charset> charset(byte[] start) {
    char first = start.length < 2 ? 0 : java.nio.ByteBuffer.wrap(start).getChar();
    return switch (first) {
      case 0xFEFF, 0xFFFE -> Optional.of(StandardCharsets.UTF_16);
      case 0x003C -> Optional.of(StandardCharsets.UTF_16BE);
      case 0x3C00 -> Optional.of(StandardCharsets.UTF_16LE);
      default -> Optional.empty();
    };
  }

  /** The part in UTF-8. */
  static byte[] narrowed(byte[] part) {
    return charset(part)
        .map(wide -> new String(part, wide)
            .replaceFirst("encoding=[\"'][^\"']*[\"']", "encoding=\"UTF-8\"")
            .getBytes(StandardCharsets.UTF_8))
        .orElse(part);
  }
}
