package squaresheet.xlsx;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import squaresheet.sheet.Content;

/**
 * The list, in a folder, of the files that were written into it: what they were made from, and the SHA-256 checksum of each,
 * a line for each as {@code sha256sum} writes them.
 *
 * @param origin what they were made from
 * @param entries the files
 */
record SetList(String origin, List<Entry> entries) {

  static final String NAME = "list-of-papers.txt";

  private static final String FROM = "drawn from: ";
  private static final Pattern LINE = Pattern.compile("([0-9a-f]{64})  ([^/\\\\]+)");

  SetList {
    origin = line(origin);
    entries = List.copyOf(entries);
  }

  /** A file as it was written. */
  record Entry(String sum, String name) {
    static Entry of(String name, byte[] bytes) {
      return new Entry(checksum(bytes), name);
    }

    /** Whether the file is there as it was written, and no link to another. */
    boolean isUnchanged(Path folder) throws IOException {
      Path file = folder.resolve(name);
      return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
          && sum.equals(checksum(Files.readAllBytes(file)));
    }
  }

  static SetList of(String origin, Map<String, byte[]> files) {
    List<Entry> entries = new ArrayList<>();
    files.forEach((name, bytes) -> entries.add(Entry.of(name, bytes)));
    return new SetList(origin, entries);
  }

  /** The list of a folder; nothing where it has none that is ours. */
  static Optional<SetList> in(Path folder) throws IOException {
    Path file = folder.resolve(NAME);
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      return Optional.empty();
    }
    String text = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
    List<String> lines = text.lines().toList();
    List<Entry> entries = lines.stream()
        .map(LINE::matcher)
        .filter(Matcher::matches)
        .map(line -> new Entry(line.group(1), line.group(2)))
        .toList();
    return lines.stream()
        .filter(line -> line.startsWith(FROM))
        .findFirst()
        .map(line -> new SetList(line.substring(FROM.length()), entries));
  }

  /** What both lists name: what may be in a folder while one set takes the place of the other. */
  SetList and(SetList other) {
    return new SetList(
        origin, Stream.concat(entries.stream(), other.entries.stream()).toList());
  }

  byte[] bytes() {
    StringBuilder text = new StringBuilder();
    text.append("Drawn again, these files are replaced; one that was changed since is kept.\n");
    text.append(FROM).append(origin).append('\n');
    entries.forEach(
        entry -> text.append(entry.sum()).append("  ").append(entry.name()).append('\n'));
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  /** Words on one line of a text file. */
  static String line(String words) {
    return Content.legible(words).replaceAll("\\R", " ");
  }

  private static String checksum(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException("every Java has SHA-256", impossible);
    }
  }
}
