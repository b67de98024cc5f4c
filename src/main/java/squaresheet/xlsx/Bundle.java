package squaresheet.xlsx;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.zip.ZipEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;

/**
 * A workbook file as a bundle of parts with changes pending. Parts that no change speaks of are copied as they lie in the
 * zip, without unpacking. Part names start with a slash.
 */
final class Bundle {

  private final Archive archive;
  private final Map<String, PartText> texts = new LinkedHashMap<>();
  private final Map<String, byte[]> whole = new LinkedHashMap<>();
  private final Map<String, Splices> streamed = new HashMap<>();
  private final Set<String> removed = new HashSet<>();

  Bundle(Archive archive) {
    this.archive = archive;
  }

  private static String key(String part) {
    return Archive.key(part);
  }

  boolean has(String part) {
    String key = key(part);
    return !removed.contains(key)
        && (archive.has(part) || texts.containsKey(key) || whole.containsKey(key));
  }

  /** The part as it will be, for a part that is fresh or was put whole; else as it is in the file. */
  InputStream open(String part) throws IOException {
    byte[] own = whole.get(key(part));
    if (own != null) {
      return new java.io.ByteArrayInputStream(own);
    }
    return archive.open(part);
  }

  byte[] bytes(String part) throws IOException {
    try (InputStream in = open(part)) {
      return in.readAllBytes();
    }
  }

  /** Turns a part that is not in UTF-8 into one that is, so that it can be changed at byte positions. */
  void narrow(String part) throws IOException {
    byte[] start;
    try (InputStream in = open(part)) {
      start = in.readNBytes(Wide.TELLING);
    }
    if (Wide.other(start).isPresent()) {
      put(part, Wide.narrowed(bytes(part)));
    }
  }

  /** The part to be changed at elements. */
  PartText text(String part) throws IOException {
    PartText known = texts.get(key(part));
    if (known == null) {
      known = PartText.of(bytes(part));
      texts.put(key(part), known);
    }
    return known;
  }

  /** Puts a part whole, in place of the one that is there, if any. */
  void put(String part, byte[] bytes) {
    whole.put(key(part), bytes);
    names.put(key(part), part);
  }

  /** Puts a fresh part that is to be changed at elements. */
  void put(String part, PartText text) {
    texts.put(key(part), text);
    names.put(key(part), part);
  }

  private final Map<String, String> names = new LinkedHashMap<>();

  /** Changes a part at byte positions. */
  void splice(String part, Splices splices) throws IOException {
    if (splices.isEmpty()) {
      return;
    }
    if (whole.containsKey(key(part))) {
      put(part, splices.apply(whole.get(key(part))));
    } else {
      streamed.put(key(part), splices);
    }
  }

  void remove(String part) {
    removed.add(key(part));
  }

  /** The first name of this pattern that no part has: {@code /xl/drawings/drawing%d.xml}. */
  String freeName(String pattern) {
    int n = 1;
    while (has(String.format(Locale.ROOT, pattern, n))) {
      n++;
    }
    return String.format(Locale.ROOT, pattern, n);
  }

  /** Writes the file with its changes; parts keep their order, fresh ones come last. */
  void writeTo(OutputStream to) throws IOException {
    ZipArchiveOutputStream out = new ZipArchiveOutputStream(to);
    out.setUseZip64(org.apache.commons.compress.archivers.zip.Zip64Mode.AsNeeded);
    Set<String> written = new HashSet<>();
    for (ZipArchiveEntry entry : archive.inOrder()) {
      if (written.add(Archive.key(entry)) && !removed.contains(Archive.key(entry))) {
        copy(entry, out);
      }
    }
    for (Map.Entry<String, String> fresh : names.entrySet()) {
      if (written.add(fresh.getKey())) {
        ZipArchiveEntry entry = new ZipArchiveEntry(fresh.getValue().substring(1));
        entry.setTimeLocal(SteadyZip.FIXED);
        changed(entry, fresh.getKey(), out);
      }
    }
    out.finish();
  }

  private void copy(ZipArchiveEntry entry, ZipArchiveOutputStream out) throws IOException {
    String key = Archive.key(entry);
    if (texts.containsKey(key) || whole.containsKey(key) || streamed.containsKey(key)) {
      ZipArchiveEntry anew = new ZipArchiveEntry(entry.getName());
      anew.setTimeLocal(entry.getTimeLocal());
      changed(anew, key, out);
    } else {
      try (InputStream raw = archive.packed(entry)) {
        out.addRawArchiveEntry(entry, raw);
      }
    }
  }

  private void changed(ZipArchiveEntry entry, String key, ZipArchiveOutputStream out)
      throws IOException {
    entry.setMethod(ZipEntry.DEFLATED);
    out.putArchiveEntry(entry);
    if (streamed.containsKey(key)) {
      try (InputStream in = archive.open(key)) {
        streamed.get(key).apply(in, out);
      }
    } else {
      out.write(texts.containsKey(key) ? texts.get(key).bytes() : whole.get(key));
    }
    out.closeArchiveEntry();
  }

  /** Whether some part's name starts so, as the parts are in the file. */
  boolean hasStartingWith(String start) {
    for (String name : archive.keys()) {
      if (name.startsWith(key(start))) {
        return true;
      }
    }
    return false;
  }
}
