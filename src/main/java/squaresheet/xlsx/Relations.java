package squaresheet.xlsx;

import java.io.IOException;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;

/** Changes how parts are related, and what kinds of part the bundle says it has. */
final class Relations {

  private static final String RELATIONSHIPS =
      "http://schemas.openxmlformats.org/package/2006/relationships";
  private static final String HEAD =
      "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n";

  private final Bundle bundle;

  Relations(Bundle bundle) {
    this.bundle = bundle;
  }

  /** The part that lists the relationships of another; the package's own for an empty name. */
  static String partOf(String part) {
    int slash = part.lastIndexOf('/');
    return part.isEmpty()
        ? "/_rels/.rels"
        : part.substring(0, slash) + "/_rels" + part.substring(slash) + ".rels";
  }

  /** Relates a part to another part of the bundle, and tells the relationship's id. */
  String add(String from, String type, String target) throws IOException {
    return add(from, type, target, false);
  }

  /** Relates a part to something outside of the file, and tells the relationship's id. */
  String addOutside(String from, String type, String target) throws IOException {
    return add(from, type, target, true);
  }

  private String add(String from, String type, String target, boolean outside) throws IOException {
    PartText list = list(from);
    String id = freeId(list);
    Markup relation = list.markup()
        .open("Relationship")
        .attribute("Id", id)
        .attribute("Type", type)
        .attribute("Target", target);
    if (outside) {
      relation.attribute("TargetMode", "External");
    }
    list.append(list.root(), relation.close());
    return id;
  }

  private PartText list(String from) throws IOException {
    String part = partOf(from);
    if (!bundle.has(part)) {
      typeOfEnding(part, "rels", "application/vnd.openxmlformats-package.relationships+xml");
      bundle.put(
          part,
          PartText.of(HEAD + "<Relationships xmlns=\"" + RELATIONSHIPS + "\"></Relationships>"));
    }
    return bundle.text(part);
  }

  /** The first id after all numbered ones; ids given before count too. */
  private static String freeId(PartText list) {
    int most = list.root().number("next", 0);
    for (Element each : list.root().children) {
      String id = each.attribute("Id");
      if (id.matches("rId\\d{1,8}")) {
        most = Math.max(most, Integer.parseInt(id.substring(3)));
      }
    }
    list.root().attributes.put("next", Integer.toString(most + 1));
    return "rId" + (most + 1);
  }

  /** Where the relationship of that id points to, as written; empty where there is none. */
  String target(String from, String id) throws IOException {
    return bundle.has(partOf(from))
        ? list(from).root().children.stream()
            .filter(each -> each.attribute("Id").equals(id))
            .map(each -> each.attribute("Target"))
            .findFirst()
            .orElse("")
        : "";
  }

  /** Takes away the relationships that the question is true of. */
  void remove(String from, Predicate<Element> which) throws IOException {
    if (bundle.has(partOf(from))) {
      PartText list = list(from);
      list.root().children.stream().filter(which).forEach(list::remove);
    }
  }

  /** Says of what kind a part is. */
  void type(String part, String contentType) throws IOException {
    PartText types = bundle.text("/[Content_Types].xml");
    types.append(
        types.root(),
        types
            .markup()
            .open("Override")
            .attribute("PartName", part)
            .attribute("ContentType", contentType)
            .close());
  }

  /** Says of what kind a part and all others with its ending are; where that is said otherwise already, of this part alone. */
  void typeOfEnding(String part, String ending, String contentType) throws IOException {
    PartText types = bundle.text("/[Content_Types].xml");
    Optional<String> said = types.root().all("Default").stream()
        .filter(each -> each.attribute("Extension").equalsIgnoreCase(ending))
        .map(each -> each.attribute("ContentType"))
        .findFirst()
        .or(() ->
            Optional.of(types.root().attribute("said " + ending)).filter(it -> !it.isEmpty()));
    if (said.isEmpty()) {
      types.root().attributes.put("said " + ending, contentType);
      types.append(
          types.root(),
          types
              .markup()
              .open("Default")
              .attribute("Extension", ending)
              .attribute("ContentType", contentType)
              .close());
    } else if (!said.get().equalsIgnoreCase(contentType)) {
      type(part, contentType);
    }
  }

  /** No longer says of what kind a part is. */
  void untype(String part) throws IOException {
    PartText types = bundle.text("/[Content_Types].xml");
    types.root().all("Override").stream()
        .filter(each -> each.attribute("PartName")
            .toLowerCase(Locale.ROOT)
            .equals(part.toLowerCase(Locale.ROOT)))
        .forEach(types::remove);
  }
}
