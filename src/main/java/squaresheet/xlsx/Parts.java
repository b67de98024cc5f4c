package squaresheet.xlsx;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Enumeration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JRuntimeException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.openxml4j.opc.PackageRelationship;
import org.apache.poi.openxml4j.opc.PackagingURIHelper;
import org.apache.poi.openxml4j.opc.TargetMode;
import org.apache.poi.openxml4j.util.ZipSecureFile;

/** The parts of a workbook file and how they are related; what may be unpacked is limited. */
final class Parts implements AutoCloseable {

  /** The parts that the package library reads whole: real ones have some kilobytes. */
  private static final long LARGEST_INDEX = 4L << 20;
  /** A workbook of 20 MB unpacks to some 150 MB; this much reads within seconds. */
  private static final long MOST_UNPACKED = 384L << 20;

  private static final int MOST_PARTS = 20_000;

  private final OPCPackage packaged;
  private long left = MOST_UNPACKED;

  private Parts(OPCPackage packaged) {
    this.packaged = packaged;
  }

  static Parts open(Path file) throws IOException {
    FileKind.refuseUnlessZip(file);
    refuseLargeIndexes(file);
    if (ZipSecureFile.getMaxFileCount() < MOST_PARTS) {
      ZipSecureFile.setMaxFileCount(MOST_PARTS);
    }
    try {
      return new Parts(OPCPackage.open(file.toFile(), PackageAccess.READ));
    } catch (OpenXML4JException | OpenXML4JRuntimeException wrong) {
      throw new Refusal("must be an .xlsx workbook, but its list of parts is damaged; open it in a"
          + " spreadsheet program and save it again");
    }
  }

  /** Relationships, content types and properties, unpacked for real: what a zip says of its sizes may be a lie. */
  private static void refuseLargeIndexes(Path file) throws IOException {
    try (ZipFile zip = new ZipFile(file.toFile())) {
      long unpacked = 0;
      for (Enumeration<? extends ZipEntry> all = zip.entries(); all.hasMoreElements(); ) {
        ZipEntry entry = all.nextElement();
        if (isIndex(entry.getName().toLowerCase(Locale.ROOT))) {
          try (InputStream in = zip.getInputStream(entry)) {
            unpacked += skipUpTo(in, LARGEST_INDEX - unpacked);
          }
        }
      }
    } catch (java.util.zip.ZipException damaged) {
      throw new Refusal("must be an .xlsx workbook, but is cut off or damaged; fetch it again, or"
          + " open an older copy");
    }
  }

  private static boolean isIndex(String name) {
    return name.endsWith(".rels")
        || name.equals("[content_types].xml")
        || name.startsWith("docprops/");
  }

  private static long skipUpTo(InputStream in, long most) throws IOException {
    byte[] buffer = new byte[1 << 13];
    long count = 0;
    for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
      count += n;
      if (count > most) {
        throw new Refusal("holds lists of parts too large for a workbook");
      }
    }
    return count;
  }

  /** The part with the list of sheets. */
  PackagePart workbook() {
    for (PackageRelationship relation : packaged.getRelationships()) {
      if (kind(relation).equals("officeDocument")) {
        PackagePart part = packaged.getPart(relation);
        if (part != null) {
          refuseOther(part.getContentType());
          return part;
        }
      }
    }
    throw new Refusal("must be an .xlsx workbook, but has no workbook part; open it in a"
        + " spreadsheet program and save it again");
  }

  private static void refuseOther(String contentType) {
    if (contentType.contains("sheet.binary")) {
      throw new Refusal(
          "must be an .xlsx workbook, but is an Excel binary workbook (.xlsb); open it"
              + " in a spreadsheet program and save it as Excel workbook (.xlsx)");
    }
    if (!contentType.contains("spreadsheetml") && !contentType.contains("ms-excel")) {
      throw new Refusal("must be an .xlsx workbook, but calls its contents '" + contentType + "'");
    }
  }

  boolean hasMacros() {
    return !packaged
        .getPartsByContentType("application/vnd.ms-office.vbaProject")
        .isEmpty();
  }

  /** The last word of the relationship's type, the same in both families of namespaces. */
  private static String kind(PackageRelationship relation) {
    String type = relation.getRelationshipType();
    return type.substring(type.lastIndexOf('/') + 1);
  }

  /** The parts in this kind of relationship to another; the package's own where {@code from} is empty. */
  List<PackagePart> related(Optional<PackagePart> from, String kind) throws IOException {
    List<PackagePart> found = new ArrayList<>();
    try {
      for (PackageRelationship relation :
          from.isPresent() ? from.get().getRelationships() : packaged.getRelationships()) {
        if (kind(relation).equals(kind) && relation.getTargetMode() == TargetMode.INTERNAL) {
          part(from, relation).ifPresent(found::add);
        }
      }
    } catch (InvalidFormatException damaged) {
      throw new Refusal("has a damaged list of related parts");
    }
    return found;
  }

  List<PackagePart> related(PackagePart from, String kind) throws IOException {
    return related(Optional.of(from), kind);
  }

  /** The relationship of that id, if there is one. */
  Optional<PackageRelationship> relation(PackagePart from, String id) {
    return id.isEmpty() ? Optional.empty() : Optional.ofNullable(from.getRelationship(id));
  }

  Optional<PackagePart> part(Optional<PackagePart> from, PackageRelationship relation) {
    try {
      return Optional.ofNullable(
          from.isPresent() ? from.get().getRelatedPart(relation) : packaged.getPart(relation));
    } catch (InvalidFormatException | RuntimeException missing) {
      return Optional.empty();
    }
  }

  /** The kind of thing the relationship of that id points to, or empty. */
  String kind(PackagePart from, String id) {
    return relation(from, id).map(Parts::kind).orElse("");
  }

  /** Where the relationships of this kind point outside of the file. */
  static List<String> targets(PackagePart from, String kind) {
    List<String> targets = new ArrayList<>();
    try {
      for (PackageRelationship relation : from.getRelationships()) {
        if (kind(relation).startsWith(kind) && relation.getTargetMode() == TargetMode.EXTERNAL) {
          targets.add(relation.getTargetURI().toString());
        }
      }
    } catch (InvalidFormatException damaged) {
      return targets;
    }
    return targets;
  }

  /** The part of that name, if the file has it. */
  Optional<PackagePart> find(String name) {
    try {
      return Optional.ofNullable(packaged.getPart(PackagingURIHelper.createPartName(name)));
    } catch (InvalidFormatException wrong) {
      return Optional.empty();
    }
  }

  /** Opens a part as XML; what all parts together unpack to is limited. */
  Xml xml(PackagePart part) throws IOException {
    return Xml.open(new Limited(part.getInputStream()));
  }

  @Override
  public void close() {
    packaged.revert();
  }

  private final class Limited extends FilterInputStream {
    Limited(InputStream in) {
      super(in);
    }

    @Override
    public int read() throws IOException {
      int read = in.read();
      count(read < 0 ? 0 : 1);
      return read;
    }

    @Override
    public int read(byte[] to, int from, int most) throws IOException {
      int read = in.read(to, from, most);
      count(Math.max(0, read));
      return read;
    }

    private void count(int bytes) {
      left -= bytes;
      if (left < 0) {
        throw Refusal.ofAll(
            "unpacks to more than " + (MOST_UNPACKED >> 20) + " MB, which is too large to be read");
      }
    }
  }
}
