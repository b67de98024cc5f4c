package squaresheet.xlsx;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import org.apache.poi.poifs.filesystem.DirectoryNode;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;

/** Tells from its first bytes what a file is, and refuses all but a zip that may be a workbook. */
final class FileKind {

  private static final String SAVE_AS =
      "; open it in a spreadsheet program and save it as Excel workbook (.xlsx)";
  private static final int OLE2 = 0xD0CF11E0;
  private static final int ZIP = 0x504B0304;
  private static final int EMPTY_ZIP = 0x504B0506;

  /** Parts that tell a zip of another kind. */
  private static final Map<String, String> OTHERS = Map.of(
      "/xl/workbook.bin", "an Excel binary workbook (.xlsb)",
      "/word/document.xml", "a text document (.docx)",
      "/ppt/presentation.xml", "a presentation (.pptx)",
      "/Index/Document.iwa", "a Numbers document");

  private FileKind() {}

  static void refuseUnlessZip(Path file) throws IOException {
    if (Files.isDirectory(file)) {
      throw new Refusal("must be a workbook file, but is a folder");
    }
    if (!Files.exists(file)) {
      throw new Refusal("must be a workbook file, but is not there");
    }
    if (!Files.isRegularFile(file)) {
      throw new Refusal("must be a workbook file, but is a device or a pipe");
    }
    byte[] start;
    try (InputStream in = Files.newInputStream(file)) {
      start = in.readNBytes(512);
    }
    if (start.length == 0) {
      throw new Refusal("must be an .xlsx workbook, but is empty");
    }
    int first = start.length < 4 ? 0 : java.nio.ByteBuffer.wrap(start).getInt();
    if (first == OLE2) {
      throw new Refusal(ole2(file));
    }
    if (first != ZIP && first != EMPTY_ZIP) {
      throw new Refusal(text(file, start));
    }
  }

  private static String ole2(Path file) {
    try (POIFSFileSystem parts = new POIFSFileSystem(file.toFile(), true)) {
      DirectoryNode root = parts.getRoot();
      if (root.hasEntry("EncryptedPackage")) {
        return "must be readable without a password, but is protected by one; open it in a"
            + " spreadsheet program and save it without a password";
      }
    } catch (IOException | RuntimeException unreadable) {
      return "must be an .xlsx workbook, but is a damaged file of an old format" + SAVE_AS;
    }
    return "must be an .xlsx workbook, but is an old Excel workbook (.xls)" + SAVE_AS;
  }

  private static String text(Path file, byte[] start) {
    String name = Complaint.name(file).toLowerCase(Locale.ROOT);
    String head = new String(start, StandardCharsets.ISO_8859_1).stripLeading();
    if (name.endsWith(".csv") || name.endsWith(".tsv") || name.endsWith(".txt")) {
      return "must be an .xlsx workbook, but is a text table (.csv)" + SAVE_AS;
    }
    if (head.startsWith("<")) {
      return "must be an .xlsx workbook, but is a web page or an XML file" + SAVE_AS;
    }
    return "must be an .xlsx workbook, but is not one; it may be damaged or of another kind"
        + SAVE_AS;
  }

  static void refuseOtherZips(Archive zip) {
    boolean typed = zip.has("/[Content_Types].xml");
    if (zip.has("/mimetype") && !typed) {
      throw new Refusal("must be an .xlsx workbook, but is an OpenDocument file (.ods)" + SAVE_AS);
    }
    OTHERS.forEach((part, kind) -> {
      if (zip.has(part)) {
        throw new Refusal("must be an .xlsx workbook, but is " + kind + SAVE_AS);
      }
    });
    if (!typed) {
      throw new Refusal("must be an .xlsx workbook, but is a zip of other files" + SAVE_AS);
    }
  }

  /** Refuses by what the file calls its main part. */
  static void refuseOtherContents(String contentType) {
    if (contentType.contains("sheet.binary")) {
      throw new Refusal(
          "must be an .xlsx workbook, but is an Excel binary workbook (.xlsb)" + SAVE_AS);
    }
    if (!contentType.contains("spreadsheetml") && !contentType.contains("ms-excel")) {
      throw new Refusal(
          "must be an .xlsx workbook, but calls its contents '" + Excerpt.of(contentType) + "'");
    }
  }

  /** The ending of the name in small letters with its point, by which people tell what is in a file; empty where there is none. */
  static String ending(Path file) {
    String name = Complaint.name(file);
    int dot = name.lastIndexOf('.');
    return dot <= 0 ? "" : name.substring(dot).toLowerCase(Locale.ROOT);
  }

  /** Refuses a name that says something else than what would be written there. */
  static void refuseUnlessEnding(Path file, String ending) {
    if (!ending(file).equals(ending)) {
      throw new Refusal("'" + Complaint.name(file) + "' must end in "
          + (ending.isEmpty()
              ? "nothing, as the file it is made from"
              : ending + ", because that is what is written")
          + "; nothing was");
    }
  }
}
