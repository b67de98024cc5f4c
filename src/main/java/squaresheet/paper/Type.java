package squaresheet.paper;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.util.Optional;
import java.util.function.Supplier;

/** The type that drawings are lettered in: whatever plain face the machine has. */
final class Type {

  private static final String NO_FONTS =
      "drawings need a font, but this machine has none; install any font package, such as DejaVu, and draw again";

  private static final FontRenderContext MEASURE = new FontRenderContext(null, true, true);

  private Type() {}

  static Font plain(double size) {
    return new Font(Font.SANS_SERIF, Font.PLAIN, 1).deriveFont((float) size);
  }

  static Font bold(double size) {
    return new Font(Font.SANS_SERIF, Font.BOLD, 1).deriveFont((float) size);
  }

  /** The width of a text in points, the same whatever it is drawn on. */
  static double width(Font font, String text) {
    return font.getStringBounds(text, MEASURE).getWidth();
  }

  static Optional<String> obstacle() {
    return obstacle(() -> width(plain(12), "28 1/8\""));
  }

  /** A Java without fonts, or without the libraries that read them, fails in many ways; all of them mean the same here. */
  static Optional<String> obstacle(Supplier<Double> lettering) {
    try {
      return lettering.get() > 0 ? Optional.empty() : Optional.of(NO_FONTS);
    } catch (RuntimeException | LinkageError | InternalError noFonts) {
      return Optional.of(NO_FONTS);
    }
  }

  static void refuseWithoutFonts() {
    obstacle().ifPresent(why -> {
      throw new IllegalStateException(why);
    });
  }
}
