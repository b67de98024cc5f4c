package squaresheet.product;

import java.math.BigDecimal;
import squaresheet.product.Product.Kind;
import squaresheet.product.Product.Label;
import squaresheet.units.Length;
import squaresheet.units.Pack;
import squaresheet.units.Pitch;

/** Products by their numbers alone. */
final class Products {

  private Products() {}

  static Label label(Kind kind, String pack, long pieces) {
    return new Label("a", kind, "", Packing.of(pack, pieces), "test", "");
  }

  static Length inches(double inches) {
    return Length.fromInches(BigDecimal.valueOf(inches));
  }

  static Shingle shingle(double length, double exposure, long pieces) {
    return new Shingle(
        label(Kind.SHINGLE, "bundle", pieces),
        inches(length),
        inches(exposure * 2 + 2),
        inches(exposure),
        new Shingle.Nailing(4, 6),
        Pitch.of(2),
        Length.ofInches(1));
  }

  static Shingle weighing(double length, double exposure, long pieces, double pounds) {
    Shingle one = shingle(length, exposure, pieces);
    Packing packing = new Packing(new Pack("bundle"), pieces, Weight.ofPounds(pounds));
    Label label = new Label("a", Kind.SHINGLE, "", packing, "test", "");
    return new Shingle(
        label,
        one.length(),
        one.height(),
        one.exposure(),
        one.nails(),
        one.minimumSlope(),
        one.jointOffset());
  }

  static Cap cap(double exposure, long pieces, long cut) {
    return new Cap(label(Kind.CAP, "bundle", pieces), inches(exposure), cut);
  }

  static Starter starter(double length, long pieces, long strips) {
    return new Starter(label(Kind.STARTER, "bundle", pieces), inches(length), inches(14), strips);
  }

  static Roll felt(double feet, double width, double sideLap) {
    return new Roll(
        label(Kind.UNDERLAYMENT, "roll", 1),
        inches(width),
        inches(feet * 12),
        inches(sideLap),
        Length.ZERO);
  }

  static EdgeMetal metal(double feet, double lap) {
    return new EdgeMetal(label(Kind.EDGE_METAL, "piece", 1), inches(feet * 12), inches(lap));
  }
}
