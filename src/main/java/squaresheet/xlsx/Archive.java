package squaresheet.xlsx;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.file.Path;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.zip.Inflater;
import java.util.zip.ZipEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;

/**
 * The zip that a workbook file is: its parts by name, whichever way a name is spelled, and limits to what they unpack to.
 * Part names start with a slash.
 */
final class Archive implements AutoCloseable {

  /** A workbook of 20 MB unpacks to some 150 MB; this much reads within seconds. */
  private static final long MOST_UNPACKED = 384L << 20;
  /** Large workbooks have some thousand parts; each costs memory before anything is read. */
  private static final int MOST_PARTS = 20_000;

  private final ZipFile zip;
  private final Map<String, Entry> entries = new HashMap<>();
  private long left = MOST_UNPACKED;

  /** A part as it lies in the zip, and how much of it has been unpacked so far. */
  private static final class Entry {
    private final ZipArchiveEntry zipped;
    private long given;

    Entry(ZipArchiveEntry zipped) {
      this.zipped = zipped;
    }
  }

  private Archive(ZipFile zip) {
    this.zip = zip;
  }

  static Archive open(Path file) throws IOException {
    Archive archive = new Archive(
        ZipFile.builder().setPath(file).setIgnoreLocalFileHeader(true).get());
    try {
      archive.list();
      return archive;
    } catch (Refusal refusal) {
      archive.close();
      throw refusal;
    }
  }

  private void list() {
    List<ZipArchiveEntry> all = Collections.list(zip.getEntries());
    if (all.size() > MOST_PARTS) {
      throw new Refusal(
          "holds " + all.size() + " parts, but a workbook must have at most " + MOST_PARTS);
    }
    for (ZipArchiveEntry each : all) {
      Entry before = each.isDirectory() ? null : entries.put(key(each), new Entry(each));
      if (before != null) {
        throw new Refusal("must be an .xlsx workbook, but holds its part '"
            + Excerpt.of(each.getName())
            + "' twice; open it in a spreadsheet program and save it again");
      }
    }
  }

  /** What all spellings of a part's name have in common. */
  static String key(String part) {
    return PartPath.resolve("", part).toLowerCase(Locale.ROOT);
  }

  static String key(ZipArchiveEntry entry) {
    return key("/" + entry.getName());
  }

  boolean has(String part) {
    return entries.containsKey(key(part));
  }

  /** The part's name as the zip spells it, if it has the part. */
  Optional<String> spelled(String part) {
    return Optional.ofNullable(entries.get(key(part))).map(entry -> entry.zipped.getName());
  }

  /** The names of all parts, in small letters. */
  Iterable<String> keys() {
    return entries.keySet();
  }

  /** The parts and folders in the order they lie in. */
  List<ZipArchiveEntry> inOrder() {
    return Collections.list(zip.getEntriesInPhysicalOrder());
  }

  /** The bytes of a part as they are packed. */
  InputStream packed(ZipArchiveEntry entry) throws IOException {
    return zip.getRawInputStream(entry);
  }

  /** Opens a part; what it and all parts together unpack to is limited. */
  InputStream open(String part) throws IOException {
    Entry entry = entries.get(key(part));
    if (entry == null) {
      throw new Refusal("lacks its part " + part);
    }
    return new Unpacked(
        unpack(entry.zipped),
        entry.zipped.getCompressedSize(),
        entry.zipped.getCrc(),
        count -> spend(entry, count));
  }

  private InputStream unpack(ZipArchiveEntry entry) throws IOException {
    refuseUnlessUsual(entry);
    if (entry.getMethod() != ZipEntry.DEFLATED || entry.getGeneralPurposeBit().usesEncryption()) {
      return zip.getInputStream(entry);
    }
    // One byte more than is there, which the unpacker may ask for.
    InputStream packed = new SequenceInputStream(
        zip.getRawInputStream(entry), new ByteArrayInputStream(new byte[1]));
    return new Inflated(packed, new Inflater(true));
  }

  /** ECMA-376 Part 2, annex B, knows these two; others would need libraries that are not here. */
  private static void refuseUnlessUsual(ZipArchiveEntry entry) {
    if (entry.getMethod() != ZipEntry.DEFLATED && entry.getMethod() != ZipEntry.STORED) {
      throw Refusal.ofAll("must be an .xlsx workbook, but packs its part '"
          + Excerpt.of(entry.getName())
          + "' in a way that no workbook does; open it in a spreadsheet program and save it again");
    }
  }

  private void spend(Entry entry, long count) {
    if (count > entry.given) {
      left -= count - entry.given;
      entry.given = count;
    }
    if (left < 0) {
      throw Refusal.ofAll(
          "unpacks to more than " + (MOST_UNPACKED >> 20) + " MB, which is too large to be read");
    }
  }

  @Override
  public void close() throws IOException {
    zip.close();
  }
}
