package squaresheet.xlsx;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * How one part is related to another, or to something outside of the file.
 *
 * @param type what the other is to it, as an address
 * @param target where the other is, as written
 * @param isOutside whether that is not a part of the file
 */
record Relation(String type, String target, boolean isOutside) {

  /** The last word of the type, the same in both families of namespaces. */
  String kind() {
    return type.substring(type.lastIndexOf('/') + 1);
  }

  /** Reads a part with relationships, by their ids. */
  static Map<String, Relation> readAll(Xml xml) throws IOException {
    Map<String, Relation> all = new LinkedHashMap<>();
    xml.root();
    int root = xml.depth();
    while (xml.child(root)) {
      all.put(
          xml.attribute("Id"),
          new Relation(
              xml.attribute("Type"),
              xml.attribute("Target"),
              xml.attribute("TargetMode").equals("External")));
    }
    return all;
  }
}
