package squaresheet.paper;

import java.awt.Font;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Rectangle2D;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** The texts of an SVG file with the room each takes, read from the file by the XML parser of the Java library. */
final class Lettering {

  record Placed(String text, Area room) {}

  private static final Pattern STEP =
      Pattern.compile("(translate|rotate|scale|matrix)\\(([^)]*)\\)");

  private final List<Placed> texts = new ArrayList<>();

  private Lettering() {}

  static List<Placed> of(String svg) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    Element root = factory
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(svg)))
        .getDocumentElement();
    Lettering lettering = new Lettering();
    lettering.read(root, new AffineTransform(), 12, "normal");
    return lettering.texts;
  }

  private void read(Element element, AffineTransform outer, double outerSize, String outerWeight) {
    AffineTransform here = new AffineTransform(outer);
    here.concatenate(transform(element.getAttribute("transform")));
    String size = element.getAttribute("font-size");
    double points = size.isEmpty() ? outerSize : Double.parseDouble(size.replace("px", ""));
    String weight = element.getAttribute("font-weight");
    String bold = weight.isEmpty() ? outerWeight : weight;
    if (element.getTagName().equals("text")) {
      texts.add(new Placed(element.getTextContent(), room(element, here, points, bold)));
    }
    NodeList children = element.getChildNodes();
    for (int index = 0; index < children.getLength(); index++) {
      if (children.item(index) instanceof Element child) {
        read(child, here, points, bold);
      }
    }
  }

  private static Area room(Element text, AffineTransform here, double points, String weight) {
    Font font = weight.equals("bold") ? Type.bold(points) : Type.plain(points);
    double x = Double.parseDouble(text.getAttribute("x"));
    double y = Double.parseDouble(text.getAttribute("y"));
    double width = Type.width(font, text.getTextContent());
    Area room = new Area(new Rectangle2D.Double(x, y - points * 0.75, width, points * 0.9));
    room.transform(here);
    return room;
  }

  private static AffineTransform transform(String text) {
    AffineTransform all = new AffineTransform();
    Matcher steps = STEP.matcher(text);
    while (steps.find()) {
      String[] parts = steps.group(2).trim().split("[ ,]+");
      double[] numbers = new double[parts.length];
      for (int index = 0; index < parts.length; index++) {
        numbers[index] = Double.parseDouble(parts[index]);
      }
      switch (steps.group(1)) {
        case "translate" -> all.translate(numbers[0], numbers.length > 1 ? numbers[1] : 0);
        case "rotate" -> all.rotate(Math.toRadians(numbers[0]));
        case "scale" -> all.scale(numbers[0], numbers.length > 1 ? numbers[1] : numbers[0]);
        default -> all.concatenate(new AffineTransform(numbers));
      }
    }
    return all;
  }
}
