package squaresheet.xlsx;

import com.fasterxml.aalto.UncheckedStreamException;
import com.fasterxml.aalto.stax.InputFactoryImpl;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.PushbackInputStream;
import java.nio.charset.Charset;
import java.util.Optional;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import org.codehaus.stax2.XMLStreamReader2;

/**
 * Steps through one XML part. A document type, entities of the document's own and endless nesting are refused: a workbook
 * has no use for them. Element and attribute names are told by their local part, so that both families of namespaces read.
 */
final class Xml implements AutoCloseable {

  /** Workbook parts nest some twenty deep; drawings and extensions a little more. */
  private static final int DEEPEST = 256;

  private static final InputFactoryImpl FACTORY = factory();

  private final XMLStreamReader2 reader;
  private final InputStream source;
  private int depth;
  private boolean atEnd;

  private Xml(XMLStreamReader2 reader, InputStream source) {
    this.reader = reader;
    this.source = source;
  }

  private static InputFactoryImpl factory() {
    InputFactoryImpl factory = new InputFactoryImpl();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setXMLResolver((publicId, systemId, base, namespace) -> {
      throw new XMLStreamException("refers to something outside of the file");
    });
    return factory;
  }

  static Xml open(InputStream in) throws IOException {
    PushbackInputStream peeked = new PushbackInputStream(in, 2);
    byte[] mark = peeked.readNBytes(2);
    peeked.unread(mark);
    Optional<Charset> wide = Wide.charset(mark);
    try {
      return new Xml(
          (XMLStreamReader2)
              (wide.isPresent()
                  ? FACTORY.createXMLStreamReader(new InputStreamReader(peeked, wide.get()))
                  : FACTORY.createXMLStreamReader(peeked)),
          in);
    } catch (XMLStreamException | UncheckedStreamException malformed) {
      throw refusal(malformed);
    }
  }

  /** Steps on; the depth counts the elements that are open, the one just started included. */
  int next() throws IOException {
    try {
      int event = reader.next();
      if (event == XMLStreamConstants.START_ELEMENT) {
        deeper();
      } else if (event == XMLStreamConstants.END_ELEMENT) {
        depth--;
      } else if (event == XMLStreamConstants.DTD || event == XMLStreamConstants.ENTITY_REFERENCE) {
        throw new Refusal(
            "holds XML with a document type or entities of its own, which a workbook never has");
      }
      atEnd = event == XMLStreamConstants.END_DOCUMENT;
      return event;
    } catch (XMLStreamException | UncheckedStreamException malformed) {
      throw refusal(malformed);
    }
  }

  private void deeper() {
    depth++;
    if (depth > DEEPEST) {
      throw new Refusal("holds XML nested deeper than " + DEEPEST + ", which a workbook never has");
    }
  }

  private static RuntimeException refusal(Exception malformed) throws IOException {
    for (Throwable cause = malformed; cause != null; cause = cause.getCause()) {
      if (cause instanceof IOException it) {
        throw it;
      }
      if (cause instanceof XMLStreamException it
          && it.getNestedException() instanceof IOException io) {
        throw io;
      }
    }
    return new Refusal("holds XML that is cut off or malformed");
  }

  int depth() {
    return depth;
  }

  /** Steps to the first element. */
  void root() throws IOException {
    while (!atEnd && next() != XMLStreamConstants.START_ELEMENT) {
      // Comments and blanks before it mean nothing.
    }
    if (atEnd) {
      throw new Refusal("holds XML that is cut off or malformed");
    }
  }

  /** Steps to the next child of the element open at that depth; false once that element has ended. */
  boolean child(int parent) throws IOException {
    while (depth >= parent && !atEnd) {
      if (next() == XMLStreamConstants.START_ELEMENT && depth == parent + 1) {
        return true;
      }
    }
    return false;
  }

  /** The local name of the element just started. */
  String name() {
    return reader.getLocalName();
  }

  /** The attribute by its local name, or empty. */
  String attribute(String name) {
    for (int i = 0; i < reader.getAttributeCount(); i++) {
      if (reader.getAttributeLocalName(i).equals(name)) {
        return reader.getAttributeValue(i);
      }
    }
    return "";
  }

  /** The attribute that names a relationship: {@code id} in a namespace of its own. */
  String relation() {
    for (int i = 0; i < reader.getAttributeCount(); i++) {
      String namespace = reader.getAttributeNamespace(i);
      if (reader.getAttributeLocalName(i).equals("id")
          && namespace != null
          && !namespace.isEmpty()) {
        return reader.getAttributeValue(i);
      }
    }
    return "";
  }

  boolean flag(String name, boolean usual) {
    String value = attribute(name);
    return value.isEmpty()
        ? usual
        : value.equals("1") || value.equals("true") || value.equals("on");
  }

  int number(String name, int usual) {
    try {
      String value = attribute(name);
      return value.isEmpty() ? usual : Integer.parseInt(value.strip());
    } catch (NumberFormatException wrong) {
      return usual;
    }
  }

  /** All text inside the element just started, its children's included; steps past its end. */
  String text() throws IOException {
    int inside = depth;
    String first = "";
    StringBuilder more = null;
    while (depth >= inside && !atEnd) {
      int event = next();
      if (event == XMLStreamConstants.CHARACTERS
          || event == XMLStreamConstants.CDATA
          || event == XMLStreamConstants.SPACE) {
        String piece = piece();
        if (first.isEmpty()) {
          first = piece;
        } else {
          more = more == null ? new StringBuilder(first) : more;
          more.append(piece);
        }
      }
    }
    return more == null ? first : more.toString();
  }

  private String piece() throws IOException {
    try {
      return reader.getText();
    } catch (UncheckedStreamException malformed) {
      throw refusal(malformed);
    }
  }

  /** The array that holds the characters just read. */
  char[] pieceFrom() throws IOException {
    try {
      return reader.getTextCharacters();
    } catch (UncheckedStreamException malformed) {
      throw refusal(malformed);
    }
  }

  int pieceStart() {
    return reader.getTextStart();
  }

  int pieceLength() throws IOException {
    try {
      return reader.getTextLength();
    } catch (UncheckedStreamException malformed) {
      throw refusal(malformed);
    }
  }

  /** The prefix of the element just started, or empty. */
  String prefix() {
    String prefix = reader.getPrefix();
    return prefix == null ? "" : prefix;
  }

  /** Where the tag just read starts, in bytes from the start of the part; meaningless for the root. */
  long startOffset() {
    return reader.getLocationInfo().getStartingByteOffset();
  }

  /** Where the tag just read ends, in bytes from the start of the part. */
  long endOffset() throws IOException {
    try {
      return reader.getLocationInfo().getEndingByteOffset();
    } catch (XMLStreamException | UncheckedStreamException malformed) {
      throw refusal(malformed);
    }
  }

  /** The reader itself, for the loop over cells. */
  XMLStreamReader2 reader() {
    return reader;
  }

  /** Reads what is left, because only the end of a part tells whether it fits its checksum. */
  @Override
  public void close() throws IOException {
    try {
      reader.close();
      source.transferTo(OutputStream.nullOutputStream());
    } catch (XMLStreamException malformed) {
      throw new IOException(malformed);
    }
  }
}
