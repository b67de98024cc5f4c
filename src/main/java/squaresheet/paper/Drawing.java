package squaresheet.paper;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import javax.imageio.ImageIO;
import squaresheet.sheet.Content;

/** A drawing on one page, black on white, that can be written as SVG or PNG. The same drawing gives the same bytes every time. */
public final class Drawing {

  private final String title;
  private final int width;
  private final int height;
  private final Painter painter;

  Drawing(String title, int width, int height, Painter painter) {
    this.title = Content.legible(title);
    this.width = width;
    this.height = height;
    this.painter = painter;
  }

  /** Puts the drawing on paper. */
  interface Painter {
    void paint(Pen pen);
  }

  /**
   * Why nothing can be drawn on this machine, as a sentence; empty where it can. To be asked before {@link #svg} or {@link
   * #png}.
   */
  public static Optional<String> obstacle() {
    return Type.obstacle();
  }

  /** What it shows, in a few words. */
  public String title() {
    return title;
  }

  /** The width in points of 1/72 in. */
  public int width() {
    return width;
  }

  /** The height in points of 1/72 in. */
  public int height() {
    return height;
  }

  /** The same under a band that says it is not to be worked from; all of it a little smaller, so that nothing is covered. */
  public Drawing stamped() {
    return new Drawing(title, width, height, pen -> Stamp.paint(pen, this));
  }

  /**
   * As a scalable drawing: the text of an SVG file.
   *
   * @throws IllegalStateException with the {@link #obstacle}, if there is one
   */
  public String svg() {
    Type.refuseWithoutFonts();
    return Scalable.write(this);
  }

  /**
   * As a picture of so many pixels across: the bytes of a PNG file.
   *
   * @throws IllegalStateException with the {@link #obstacle}, if there is one
   */
  public byte[] png(int pixelsWide) {
    Type.refuseWithoutFonts();
    double scale = pixelsWide / (double) width;
    int high = (int) Math.round(height * scale);
    BufferedImage image = new BufferedImage(pixelsWide, high, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D graphics = image.createGraphics();
    try {
      graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      graphics.setRenderingHint(
          RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
      graphics.setRenderingHint(
          RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
      graphics.setRenderingHint(
          RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
      graphics.scale(scale, scale);
      paint(graphics);
    } finally {
      graphics.dispose();
    }
    return encoded(image);
  }

  /** Puts the drawing itself on a page that is white already. */
  void paint(Pen pen) {
    painter.paint(pen);
  }

  void paint(Graphics2D graphics) {
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, width, height);
    painter.paint(new Pen(graphics));
  }

  private static byte[] encoded(BufferedImage image) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      ImageIO.write(image, "png", bytes);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return bytes.toByteArray();
  }
}
