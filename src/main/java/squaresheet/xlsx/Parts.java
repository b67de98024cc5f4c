package squaresheet.xlsx;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The parts of a workbook file and how they are related. Part names start with a slash; the file itself is called by none. */
final class Parts implements AutoCloseable {

  /** Lists of parts and relationships: real ones have some kilobytes. */
  private static final int LARGEST_INDEX = 4 << 20;

  private static final String TYPES = "/[Content_Types].xml";

  private final Archive archive;
  private final Map<String, Map<String, Relation>> relations = new HashMap<>();

  private Parts(Archive archive) {
    this.archive = archive;
  }

  static Parts open(Path file) throws IOException {
    FileKind.refuseUnlessZip(file);
    Archive archive = Archive.open(file);
    try {
      FileKind.refuseOtherZips(archive);
      return new Parts(archive);
    } catch (Refusal refusal) {
      archive.close();
      throw refusal;
    }
  }

  Archive archive() {
    return archive;
  }

  /** The part with the list of sheets. */
  String workbook() throws IOException {
    for (String part : related("", "officeDocument")) {
      FileKind.refuseOtherContents(contentType(part));
      return part;
    }
    throw new Refusal("must be an .xlsx workbook, but has no workbook part; open it in a"
        + " spreadsheet program and save it again");
  }

  /** Of what kind the file says a part is; empty where it does not. */
  private String contentType(String part) throws IOException {
    String key = Archive.key(part);
    String usual = "";
    try (Xml xml = index(TYPES)) {
      xml.root();
      int root = xml.depth();
      while (xml.child(root)) {
        if (Archive.key(xml.attribute("PartName")).equals(key)) {
          return xml.attribute("ContentType");
        }
        if (!xml.attribute("Extension").isEmpty()
            && key.endsWith("." + xml.attribute("Extension").toLowerCase(java.util.Locale.ROOT))) {
          usual = xml.attribute("ContentType");
        }
      }
      return usual;
    }
  }

  private Xml index(String part) throws IOException {
    try (InputStream in = archive.open(part)) {
      byte[] all = in.readNBytes(LARGEST_INDEX + 1);
      if (all.length > LARGEST_INDEX) {
        throw Refusal.ofAll("holds lists of parts too large for a workbook");
      }
      return Xml.open(new ByteArrayInputStream(all));
    }
  }

  /** The relationships of a part by their ids. */
  private Map<String, Relation> relations(String from) throws IOException {
    Map<String, Relation> known = relations.get(from);
    if (known == null) {
      known = archive.has(Relations.partOf(from)) ? read(Relations.partOf(from)) : Map.of();
      relations.put(from, known);
    }
    return known;
  }

  private Map<String, Relation> read(String part) throws IOException {
    try (Xml xml = index(part)) {
      return Relation.readAll(xml);
    } catch (Refusal damaged) {
      throw new Refusal(
          "has a damaged list of related parts: it " + damaged.unlessOfAll().says());
    }
  }

  /** The parts in this kind of relationship to another, those that are there. */
  List<String> related(String from, String kind) throws IOException {
    return relations(from).values().stream()
        .filter(it -> it.kind().equals(kind))
        .flatMap(it -> part(from, it).stream())
        .toList();
  }

  /** The relationship of that id, if there is one. */
  Optional<Relation> relation(String from, String id) throws IOException {
    return id.isEmpty() ? Optional.empty() : Optional.ofNullable(relations(from).get(id));
  }

  /** The part a relationship leads to, if it is there. */
  Optional<String> part(String from, Relation relation) {
    if (relation.isOutside()) {
      return Optional.empty();
    }
    String part = PartPath.resolve(from, relation.target());
    return archive.has(part) ? Optional.of(part) : Optional.empty();
  }

  /** Where the relationships of this kind point outside of the file. */
  List<String> targets(String from, String kind) throws IOException {
    return relations(from).values().stream()
        .filter(it -> it.isOutside() && it.kind().startsWith(kind))
        .map(Relation::target)
        .toList();
  }

  /** Opens a part as XML. */
  Xml xml(String part) throws IOException {
    return Xml.open(archive.open(part));
  }

  @Override
  public void close() throws IOException {
    archive.close();
  }
}
