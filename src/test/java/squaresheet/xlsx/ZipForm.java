package squaresheet.xlsx;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import org.apache.commons.compress.archivers.zip.Zip64Mode;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;

/** The ways in which programs pack one and the same parts. */
enum ZipForm {
  /** Sizes follow the part, as where a file was written in one go. */
  SIZES_AFTER_EACH_PART {
    @Override
    byte[] pack(Map<String, byte[]> parts) {
      return ZipParts.zip(parts);
    }
  },
  /** Sizes stand before the part. */
  SIZES_FIRST,
  /** Nothing is packed. */
  STORED {
    @Override
    void put(ZipArchiveOutputStream out, String name, byte[] part) throws IOException {
      ZipArchiveEntry entry = new ZipArchiveEntry(name);
      entry.setMethod(ZipEntry.STORED);
      entry.setSize(part.length);
      CRC32 sum = new CRC32();
      sum.update(part);
      entry.setCrc(sum.getValue());
      out.putArchiveEntry(entry);
      out.write(part);
      out.closeArchiveEntry();
    }
  },
  /** With the fields for files over 4 GB. */
  ZIP64 {
    @Override
    Zip64Mode large() {
      return Zip64Mode.Always;
    }
  },
  /** Folders have entries of their own. */
  WITH_FOLDERS {
    @Override
    void start(ZipArchiveOutputStream out, Map<String, byte[]> parts) throws IOException {
      TreeSet<String> folders = new TreeSet<>();
      for (String name : parts.keySet()) {
        for (int i = name.indexOf('/'); i >= 0; i = name.indexOf('/', i + 1)) {
          folders.add(name.substring(0, i + 1));
        }
      }
      for (String folder : folders) {
        out.putArchiveEntry(new ZipArchiveEntry(folder));
        out.closeArchiveEntry();
      }
    }
  },
  /** Folders are told by backslashes. */
  BACKSLASHES {
    @Override
    String spelled(String name) {
      return name.replace('/', '\\');
    }
  },
  /** Small and capital letters other than in the lists of parts. */
  ODD_LETTERS {
    @Override
    String spelled(String name) {
      return name.startsWith("xl/") && name.endsWith(".xml") ? name.toUpperCase(Locale.ROOT) : name;
    }
  };

  byte[] pack(Map<String, byte[]> parts) {
    try (SeekableInMemoryByteChannel channel = new SeekableInMemoryByteChannel()) {
      try (ZipArchiveOutputStream out = new ZipArchiveOutputStream(channel)) {
        out.setUseZip64(large());
        start(out, parts);
        for (Map.Entry<String, byte[]> part : parts.entrySet()) {
          put(out, spelled(part.getKey()), part.getValue());
        }
      }
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      bytes.write(channel.array(), 0, (int) channel.size());
      return bytes.toByteArray();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  void put(ZipArchiveOutputStream out, String name, byte[] part) throws IOException {
    out.putArchiveEntry(new ZipArchiveEntry(name));
    out.write(part);
    out.closeArchiveEntry();
  }

  void start(ZipArchiveOutputStream out, Map<String, byte[]> parts) throws IOException {}

  Zip64Mode large() {
    return Zip64Mode.AsNeeded;
  }

  String spelled(String name) {
    return name;
  }
}
