package squaresheet.xlsx;

import java.io.IOException;
import org.codehaus.stax2.XMLStreamReader2;

/** Makes an {@link Element} of the tag an {@link Xml} stands at. */
final class ElementReader {

  private ElementReader() {}

  /** The element just started; its end is not known yet. */
  static Element read(Xml xml) throws IOException {
    XMLStreamReader2 reader = xml.reader();
    Element element =
        new Element(xml.prefix(), reader.getLocalName(), xml.startOffset(), xml.endOffset());
    for (int i = 0; i < reader.getAttributeCount(); i++) {
      String own = reader.getAttributePrefix(i);
      String local = reader.getAttributeLocalName(i);
      boolean relation = local.equals("id") && own != null && !own.isEmpty();
      element.attributes.put(relation ? "r:id" : local, reader.getAttributeValue(i));
    }
    return element;
  }

  /** Notes where the element ends, which is where the reader stands. */
  static void end(Xml xml, Element element) throws IOException {
    element.end = xml.endOffset();
    element.contentEnd = element.isClosedInItself() ? element.tagEnd : xml.startOffset();
  }

  /** Steps past the end of the element just started, keeping its children. */
  static void fill(Xml xml, Element element) throws IOException {
    int open = xml.depth();
    while (xml.child(open)) {
      Element child = read(xml);
      fill(xml, child);
      element.children.add(child);
    }
    end(xml, element);
  }
}
