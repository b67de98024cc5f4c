package squaresheet.paper;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.geom.Path2D;

/** A small picture of a plane's shape that says which lengths to measure, by the names the field sheet asks for. */
final class ShapePicture {

  private static final int WIDTH = 240;
  private static final int HEIGHT = 170;
  private static final double BASE = 128;
  private static final double TOP = 34;
  private static final Font LABEL = Type.bold(12);
  private static final Font NAME = Type.plain(11);

  private final Pen pen;

  private ShapePicture(Pen pen) {
    this.pen = pen;
  }

  /** The shapes there are pictures of, by the words of {@code roof}'s shapes. */
  private enum Kind {
    RECTANGLE {
      @Override
      void paint(ShapePicture picture) {
        picture.figure(50, BASE, 200, BASE, 200, TOP, 50, TOP);
        picture.along("eave", 50, 200, BASE + 18);
        picture.up("rake", 30, BASE, TOP);
      }
    },
    TRIANGLE {
      @Override
      void paint(ShapePicture picture) {
        picture.figure(30, BASE, 210, BASE, 110, TOP);
        picture.dashed(30, BASE, 30, TOP - 20);
        picture.dashed(110, TOP, 110, TOP - 20);
        picture.up("height", 110, BASE, TOP);
        picture.along("offset", 30, 110, TOP - 14);
        picture.along("eave", 30, 210, BASE + 18);
      }
    },
    TRAPEZOID {
      @Override
      void paint(ShapePicture picture) {
        picture.figure(20, BASE, 222, BASE, 182, TOP, 92, TOP);
        picture.dashed(20, BASE, 20, TOP - 20);
        picture.dashed(92, TOP, 92, TOP - 20);
        picture.dashed(182, TOP, 182, TOP - 20);
        picture.along("offset", 20, 92, TOP - 14);
        picture.along("ridge", 92, 182, TOP - 14);
        picture.up("height", 92, BASE, TOP);
        picture.along("eave", 20, 222, BASE + 18);
      }
    },
    PARALLELOGRAM {
      @Override
      void paint(ShapePicture picture) {
        picture.figure(20, BASE, 160, BASE, 230, TOP, 90, TOP);
        picture.dashed(20, BASE, 20, TOP - 20);
        picture.dashed(90, TOP, 90, TOP - 20);
        picture.up("height", 90, BASE, TOP);
        picture.along("offset", 20, 90, TOP - 14);
        picture.along("eave", 20, 160, BASE + 18);
      }
    },
    POLYGON {
      @Override
      void paint(ShapePicture picture) {
        picture.figure(30, BASE, 215, BASE, 215, 78, 150, 78, 95, TOP, 30, TOP);
        picture.corner(1, 30, BASE, -10, 4);
        picture.corner(2, 215, BASE, 10, 4);
        picture.corner(3, 215, 78, 10, -6);
        picture.corner(4, 150, 78, 8, -10);
        picture.corner(5, 95, TOP, 8, -8);
        picture.corner(6, 30, TOP, -10, -6);
        picture.along("along", 30, 150, BASE + 18);
        picture.up("up", 150, BASE, 78);
      }
    };

    abstract void paint(ShapePicture picture);
  }

  /**
   * The picture of a shape.
   *
   * @throws IllegalArgumentException if there is no shape of that name
   */
  static Drawing of(String word) {
    Kind kind = kind(word);
    return new Drawing("Measure a " + word, WIDTH, HEIGHT, pen -> {
      ShapePicture picture = new ShapePicture(pen);
      kind.paint(picture);
      pen.text(word, 10, HEIGHT - 9, NAME, Pen.Stand.RIGHT_OF);
    });
  }

  private static Kind kind(String word) {
    try {
      return Kind.valueOf(word.toUpperCase(java.util.Locale.ROOT));
    } catch (IllegalArgumentException unknown) {
      throw new IllegalArgumentException(
          "a shape must be a rectangle, triangle, trapezoid, parallelogram or polygon, but is '"
              + word + "'",
          unknown);
    }
  }

  private void figure(double... corners) {
    Path2D path = new Path2D.Double();
    path.moveTo(corners[0], corners[1]);
    for (int index = 2; index < corners.length; index += 2) {
      path.lineTo(corners[index], corners[index + 1]);
    }
    path.closePath();
    pen.draw(path, new BasicStroke(1.6f));
    pen.line(corners[0], corners[1], corners[2], corners[3], 3.6);
  }

  private void dashed(double x1, double y1, double x2, double y2) {
    pen.line(x1, y1, x2, y2, Pen.dashed(0.8, 3, 3));
  }

  private void along(String name, double from, double to, double y) {
    pen.line(from, y, to, y, 0.8);
    pen.head(from, y, -1, 0);
    pen.head(to, y, 1, 0);
    pen.textOnWhite(name, (from + to) / 2, y, LABEL, Pen.Stand.ABOUT);
  }

  private void up(String name, double x, double low, double high) {
    pen.line(x, low, x, high, 0.8);
    pen.head(x, low, 0, 1);
    pen.head(x, high, 0, -1);
    pen.textAlong(name, x, (low + high) / 2, 0, -1, LABEL);
  }

  private void corner(int number, double x, double y, double right, double down) {
    pen.dot(x, y, 3);
    pen.text(Integer.toString(number), x + right, y + down, NAME, Pen.Stand.ABOUT);
  }
}
