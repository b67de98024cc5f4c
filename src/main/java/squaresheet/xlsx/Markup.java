package squaresheet.xlsx;

import com.fasterxml.aalto.stax.OutputFactoryImpl;
import java.io.StringWriter;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import squaresheet.sheet.Content;

/** Writes a piece of XML that goes into a part, with the prefix that the part uses. */
final class Markup {

  private static final OutputFactoryImpl FACTORY = new OutputFactoryImpl();

  private final StringWriter written = new StringWriter();
  private final String prefix;
  private final XMLStreamWriter writer;

  /** A step of writing, which cannot fail in memory. */
  private interface Step {
    void run() throws XMLStreamException;
  }

  Markup(String prefix) {
    this.prefix = prefix;
    try {
      writer = FACTORY.createXMLStreamWriter(written);
      // A piece may have several roots, so it gets one around it, which is cut off in the end.
      writer.writeStartElement("piece");
    } catch (XMLStreamException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  private Markup sure(Step step) {
    try {
      step.run();
      return this;
    } catch (XMLStreamException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  /** Starts an element in the part's own namespace. */
  Markup open(String name) {
    return open(prefix, name);
  }

  /** Starts an element with a prefix of its own, or none. */
  Markup open(String own, String name) {
    return sure(() -> {
      if (own.isEmpty()) {
        writer.writeStartElement(name);
      } else {
        writer.writeStartElement(own, name, "urn:" + own);
      }
    });
  }

  /** Declares a namespace on the element just started. */
  Markup namespace(String own, String uri) {
    return sure(() -> {
      if (own.isEmpty()) {
        writer.writeDefaultNamespace(uri);
      } else {
        writer.writeNamespace(own, uri);
      }
    });
  }

  Markup attribute(String name, String value) {
    return sure(() -> writer.writeAttribute(name, Content.spelled(value)));
  }

  Markup attribute(String name, long value) {
    return attribute(name, Long.toString(value));
  }

  /** An attribute with a prefix. */
  Markup attribute(String own, String name, String value) {
    return sure(() -> writer.writeAttribute(own, "urn:" + own, name, Content.spelled(value)));
  }

  Markup text(String text) {
    return sure(() -> writer.writeCharacters(Content.spelled(text)));
  }

  Markup close() {
    return sure(writer::writeEndElement);
  }

  /** An element with nothing but text in it. */
  Markup leaf(String name, String text) {
    return open(name).text(text).close();
  }

  /** An element with nothing but its {@code val}. */
  Markup val(String name, String value) {
    return open(name).attribute("val", value).close();
  }

  /** An element with nothing in it. */
  Markup empty(String name) {
    return open(name).close();
  }

  @Override
  public String toString() {
    sure(writer::flush);
    String all = written.toString();
    int start = all.indexOf('>') + 1;
    return start == 0 ? "" : all.substring(start);
  }
}
