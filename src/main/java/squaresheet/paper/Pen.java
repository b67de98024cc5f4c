package squaresheet.paper;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import squaresheet.sheet.Content;

/** Draws lines and letters in points, y downward, black unless said. */
final class Pen {

  /** Where a text stands to the point it is written at. */
  enum Stand {
    /** Begins there. */
    RIGHT_OF,
    /** Ends there. */
    LEFT_OF,
    /** Has it in the middle. */
    ABOUT
  }

  private static final double LEADING = 1.3;
  /** The items of a list stand two spaces apart, and none is broken: the number of a course stays with its piece. */
  private static final String BETWEEN_ITEMS = "  ";
  /** A length is never broken before its inches or its fraction: 24 at the end of a line would be read as 24. */
  private static final String BETWEEN_WORDS = "(?<!\\d') (?!\\d+/\\d)";
  /** From the middle of a line of lettering to its base, in font sizes. */
  private static final double DROP = 0.36;

  private final Graphics2D graphics;

  Pen(Graphics2D graphics) {
    this.graphics = graphics;
    graphics.setColor(Color.BLACK);
  }

  /** Draws something smaller, its upper left corner moved to a point. */
  void smaller(double scale, double x, double y, Drawing drawing) {
    AffineTransform before = graphics.getTransform();
    graphics.translate(x, y);
    graphics.scale(scale, scale);
    drawing.paint(this);
    graphics.setTransform(before);
  }

  void line(double x1, double y1, double x2, double y2, BasicStroke stroke) {
    draw(new Line2D.Double(x1, y1, x2, y2), stroke);
  }

  void line(double x1, double y1, double x2, double y2, double width) {
    line(x1, y1, x2, y2, new BasicStroke((float) width));
  }

  void draw(Shape shape, BasicStroke stroke) {
    graphics.setStroke(stroke);
    graphics.draw(shape);
  }

  void box(double x, double y, double width, double height, double stroke) {
    draw(new Rectangle2D.Double(x, y, width, height), new BasicStroke((float) stroke));
  }

  void fill(Shape shape, Color colour) {
    graphics.setColor(colour);
    graphics.fill(shape);
    graphics.setColor(Color.BLACK);
  }

  void blank(double x, double y, double width, double height) {
    fill(new Rectangle2D.Double(x, y, width, height), Color.WHITE);
  }

  void dot(double x, double y, double radius) {
    fill(new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius), Color.BLACK);
  }

  void circle(double x, double y, double radius, double stroke) {
    draw(
        new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius),
        new BasicStroke((float) stroke));
  }

  /** A short arrow head at a point, pointing along (dx, dy), which is of length 1. */
  void head(double x, double y, double dx, double dy) {
    Path2D head = new Path2D.Double();
    head.moveTo(x, y);
    head.lineTo(x - 6 * dx - 2.2 * dy, y - 6 * dy + 2.2 * dx);
    head.lineTo(x - 6 * dx + 2.2 * dy, y - 6 * dy - 2.2 * dx);
    head.closePath();
    fill(head, Color.BLACK);
  }

  /** Lettering whose middle height is at y. */
  void text(String words, double x, double y, Font font, Stand stand) {
    String text = Content.legible(words);
    double width = Type.width(font, text);
    double left =
        switch (stand) {
          case RIGHT_OF -> x;
          case LEFT_OF -> x - width;
          case ABOUT -> x - width / 2;
        };
    graphics.setFont(font);
    graphics.drawString(text, (float) left, (float) (y + DROP * font.getSize2D()));
  }

  /** Lettering of another colour about a point. */
  void textIn(Color colour, String text, double x, double y, Font font) {
    graphics.setColor(colour);
    text(text, x, y, font, Stand.ABOUT);
    graphics.setColor(Color.BLACK);
  }

  /** Lettering of another colour, begun at a point. */
  void textAt(Color colour, String text, double x, double y, Font font) {
    graphics.setColor(colour);
    text(text, x, y, font, Stand.RIGHT_OF);
    graphics.setColor(Color.BLACK);
  }

  /** The same on a white ground that keeps lines off it. */
  void textOnWhite(String text, double x, double y, Font font, Stand stand) {
    double width = Type.width(font, text);
    double high = font.getSize2D() * 1.15;
    double left =
        switch (stand) {
          case RIGHT_OF -> x;
          case LEFT_OF -> x - width;
          case ABOUT -> x - width / 2;
        };
    blank(left - 2, y - high / 2, width + 4, high);
    text(text, x, y, font, stand);
  }

  /** Lettering along a line, about a point, never upside down. */
  void textAlong(String text, double x, double y, double dx, double dy, Font font) {
    AffineTransform before = graphics.getTransform();
    double angle = Math.atan2(dy, dx);
    boolean upsideDown = angle > Math.PI / 2 - 1e-9 || angle < -Math.PI / 2 - 1e-9;
    graphics.translate(x, y);
    graphics.rotate(upsideDown ? angle + Math.PI : angle);
    textOnWhite(text, 0, 0, font, Stand.ABOUT);
    graphics.setTransform(before);
  }

  /** Lettering broken into lines no wider than {@code width}, from the top; gives the height it takes. */
  double paragraph(String text, double x, double top, double width, Font font) {
    double step = font.getSize2D() * LEADING;
    List<String> lines = broken(text, width, font);
    for (int line = 0; line < lines.size(); line++) {
      text(lines.get(line), x, top + step * (line + 0.5), font, Stand.RIGHT_OF);
    }
    return step * lines.size();
  }

  /** The height that {@link #paragraph} would take. */
  static double height(String text, double width, Font font) {
    return font.getSize2D() * LEADING * broken(text, width, font).size();
  }

  private static List<String> broken(String text, double width, Font font) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    boolean listed = text.contains(BETWEEN_ITEMS)
        && Stream.of(text.split(BETWEEN_ITEMS)).allMatch(item -> Type.width(font, item) <= width);
    for (String word : text.split(listed ? BETWEEN_ITEMS : BETWEEN_WORDS)) {
      String longer = line.isEmpty() ? word : line + (listed ? BETWEEN_ITEMS : " ") + word;
      if (!line.isEmpty() && Type.width(font, longer) > width) {
        lines.add(line.toString());
        line.setLength(0);
        line.append(word);
      } else {
        line.setLength(0);
        line.append(longer);
      }
    }
    lines.add(line.toString());
    return lines;
  }

  static BasicStroke dashed(double width, double... dashes) {
    float[] pattern = new float[dashes.length];
    for (int index = 0; index < dashes.length; index++) {
      pattern[index] = (float) dashes[index];
    }
    return new BasicStroke(
        (float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, pattern, 0);
  }
}
