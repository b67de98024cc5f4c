package squaresheet.paper;

import java.awt.Dimension;
import java.io.StringWriter;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Writes a drawing as SVG, without a reference to anything outside the file. */
final class Scalable {

  private static final String NAMESPACE = "http://www.w3.org/2000/svg";

  private Scalable() {}

  static String write(Drawing drawing) {
    Document document = document();
    SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
    context.setComment(null);
    context.setPrecision(3);
    SVGGraphics2D graphics = new SVGGraphics2D(context, false);
    graphics.setSVGCanvasSize(new Dimension(drawing.width(), drawing.height()));
    drawing.paint(graphics);
    Element root = document.getDocumentElement();
    graphics.getRoot(root);
    root.setAttribute("viewBox", "0 0 " + drawing.width() + " " + drawing.height());
    Element title = document.createElementNS(NAMESPACE, "title");
    title.setTextContent(drawing.title());
    root.insertBefore(title, root.getFirstChild());
    return text(document);
  }

  private static Document document() {
    try {
      return DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .getDOMImplementation()
          .createDocument(NAMESPACE, "svg", null);
    } catch (ParserConfigurationException impossible) {
      throw new IllegalStateException("this Java has no XML", impossible);
    }
  }

  private static String text(Document document) {
    StringWriter text = new StringWriter();
    try {
      Transformer writer = TransformerFactory.newInstance().newTransformer();
      writer.transform(new DOMSource(document), new StreamResult(text));
    } catch (TransformerException impossible) {
      throw new IllegalStateException("this Java cannot write XML", impossible);
    }
    return text.toString();
  }
}
