package squaresheet.cli;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Reads text files as spreadsheet programs write them: UTF-8, with or without a mark, or else Windows Western. */
final class TextFile {

  private static final Charset WESTERN = Charset.forName("windows-1252");
  private static final long LARGEST = 64L << 20;

  private TextFile() {}

  static String read(Path file) {
    if (!Files.isRegularFile(file)) {
      throw new CannotBeDone(
          Exit.WRONG_USE,
          file + " must be a file, but " + (Files.exists(file) ? "is not" : "is not there"));
    }
    try {
      if (Files.size(file) > LARGEST) {
        throw new CannotBeDone(Exit.FAILED, file + " must be at most 64 MB of text, but is larger");
      }
      return text(Files.readAllBytes(file));
    } catch (IOException unreadable) {
      throw new CannotBeDone(Exit.FAILED, file + " cannot be read: " + unreadable.getMessage());
    }
  }

  private static String text(byte[] bytes) {
    String text = decoded(bytes);
    return text.startsWith("\uFEFF") ? text.substring(1) : text;
  }

  private static String decoded(byte[] bytes) {
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException otherwise) {
      return new String(bytes, WESTERN);
    }
  }
}
