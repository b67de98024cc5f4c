package squaresheet.xlsx;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/** A small part held in memory, to be changed at elements and left alone between them. */
final class PartText {

  private final byte[] bytes;
  private final Element root;
  private final Splices splices = new Splices();
  private final Map<Element, String> tags = new LinkedHashMap<>();
  private final Map<Element, StringBuilder> appended = new LinkedHashMap<>();

  private PartText(byte[] bytes, Element root) {
    this.bytes = bytes;
    this.root = root;
  }

  /** Reads the part; one that is not in UTF-8 is turned into it first. */
  static PartText of(byte[] part) throws IOException {
    byte[] bytes = Wide.narrowed(part);
    try (Xml xml = Xml.open(new ByteArrayInputStream(bytes))) {
      xml.root();
      Element root = ElementReader.read(xml);
      ElementReader.fill(xml, root);
      return new PartText(bytes, root);
    }
  }

  static PartText of(String part) {
    try {
      return of(part.getBytes(StandardCharsets.UTF_8));
    } catch (IOException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  Element root() {
    return root;
  }

  /** The bytes of the element as they were read. */
  String raw(Element element) {
    return text(element.start, element.end);
  }

  /** The bytes between the element's tags as they were read. */
  String inside(Element element) {
    return element.isClosedInItself() ? "" : text(element.tagEnd, element.contentEnd);
  }

  /** The element's start tag as it was read. */
  String tag(Element element) {
    return text(element.start, element.tagEnd);
  }

  private String text(long start, long end) {
    return new String(bytes, (int) start, (int) (end - start), StandardCharsets.UTF_8);
  }

  /** A writer that uses the same prefix as the root. */
  Markup markup() {
    return new Markup(root.prefix);
  }

  void set(Element element, String attribute, String value) {
    retag(element, tag -> Tag.with(tag, attribute, value));
    element.attributes.put(attribute, value);
  }

  private void retag(Element element, UnaryOperator<String> change) {
    tags.put(element, change.apply(tags.getOrDefault(element, tag(element))));
  }

  /** Adds XML behind the last child of an element. */
  void append(Element parent, Object xml) {
    appended.computeIfAbsent(parent, none -> new StringBuilder()).append(xml);
  }

  void replace(Element element, Object xml) {
    splices.replace(element.start, element.end, xml.toString());
  }

  void remove(Element element) {
    splices.replace(element.start, element.end, "");
  }

  /** Adds XML where the order of names says that an element of this name belongs. */
  void place(Element parent, List<String> order, String name, Object xml) {
    if (parent.isClosedInItself()) {
      append(parent, xml);
      return;
    }
    splices.place(
        offset(parent.children, parent.tagEnd, order, name), order.indexOf(name), xml.toString());
  }

  /** Behind the last child that the order puts before, or at the very start. */
  static long offset(List<Element> children, long start, List<String> order, String name) {
    long at = start;
    for (Element child : children) {
      int known = order.indexOf(child.name);
      if (known >= 0 && known <= order.indexOf(name)) {
        at = child.end;
      }
    }
    return at;
  }

  /** The part with its changes. */
  byte[] bytes() {
    tags.forEach((element, tag) -> {
      if (!element.isClosedInItself() || !appended.containsKey(element)) {
        splices.replace(element.start, element.tagEnd, tag);
      }
    });
    appended.forEach((element, xml) -> {
      if (element.isClosedInItself()) {
        String tag = tags.getOrDefault(element, tag(element));
        splices.replace(element.start, element.end, Tag.opened(tag) + xml + Tag.closing(tag));
      } else {
        splices.insert(element.contentEnd, xml.toString());
      }
    });
    tags.clear();
    appended.clear();
    return splices.apply(bytes);
  }
}
