package squaresheet.courses;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import squaresheet.product.Cap;
import squaresheet.product.Packing;
import squaresheet.product.Product;
import squaresheet.product.Role;
import squaresheet.product.Selection;
import squaresheet.product.Shingle;
import squaresheet.product.Starter;
import squaresheet.roof.PlaneNotes;
import squaresheet.roof.Roof;
import squaresheet.roof.RoofNotes;
import squaresheet.roof.Shape;
import squaresheet.units.Length;
import squaresheet.units.Pitch;

/** Roofs and products to lay out in tests. */
final class Laid {

  /** Metric-size laminated: common practice, no source. */
  static final Shingle METRIC = shingle("39 3/8\"", "13 1/4\"", "5 5/8\"");

  /** The strip of NAVEDTRA-14044: 12 by 36 in, 5 in to the weather. */
  static final Shingle STRIP = shingle("36\"", "12\"", "5\"");

  /** No overhang anywhere. */
  static final LayoutSettings FLUSH = LayoutSettings.standard()
      .with(LayoutSettings.Overhang.standard().withEave(Length.ZERO).withRake(Length.ZERO));

  private Laid() {}

  static Length in(String text) {
    return Length.parse(text);
  }

  static Shingle shingle(String length, String height, String exposure) {
    return shingle(length, height, exposure, "6\"");
  }

  static Shingle shingle(String length, String height, String exposure, String offset) {
    return new Shingle(
        label("shingle", Product.Kind.SHINGLE),
        in(length),
        in(height),
        in(exposure),
        new Shingle.Nailing(4, 6),
        Pitch.of(2),
        in(offset));
  }

  static Selection products(Shingle shingle) {
    return products(shingle, shingle.length().toString());
  }

  static Selection products(Shingle shingle, String starter) {
    Map<Role, Product> products = new EnumMap<>(Role.class);
    products.put(Role.SHINGLE, shingle);
    products.put(
        Role.STARTER,
        new Starter(label("starter", Product.Kind.STARTER), in(starter), in("7 3/4\""), 1));
    products.put(Role.CAP, new Cap(label("cap", Product.Kind.CAP), in("5 5/8\""), 1));
    return new Selection(products);
  }

  private static Product.Label label(String id, Product.Kind kind) {
    return new Product.Label(
        id, kind, "a " + id, Packing.of("bundle", 21), "made up for the test", "");
  }

  static PlaneNotes plane(String id, Shape shape) {
    return new PlaneNotes(
        id, shape, PlaneNotes.Measured.ON_SLOPE, new Pitch(BigDecimal.valueOf(6)));
  }

  static RoofLayout roof(Shingle shingle, LayoutSettings settings, PlaneNotes... planes) {
    Roof roof = Roof.resolve(new RoofNotes(List.of(planes))).value().orElseThrow();
    return RoofLayout.of(roof, products(shingle), settings).value().orElseThrow();
  }

  static CoursePlan plan(Shingle shingle, LayoutSettings settings, Shape shape) {
    return roof(shingle, settings, plane("A", shape)).plans().get(0);
  }

  /** Courses that begin with these pieces. */
  static LayoutSettings begun(LayoutSettings settings, String... firstPieces) {
    return settings.with(LayoutSettings.Joints.standard()
        .withFirstPieces(java.util.Arrays.stream(firstPieces).map(Laid::in).toList()));
  }
}
