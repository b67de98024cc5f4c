package squaresheet.paper;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import squaresheet.courses.LayoutSettings;
import squaresheet.courses.RoofLayout;
import squaresheet.geometry.Point;
import squaresheet.product.Packing;
import squaresheet.product.Product;
import squaresheet.product.Role;
import squaresheet.product.Selection;
import squaresheet.product.Shingle;
import squaresheet.product.Starter;
import squaresheet.roof.EdgeKind;
import squaresheet.roof.Opening;
import squaresheet.roof.PlaneNotes;
import squaresheet.roof.Roof;
import squaresheet.roof.RoofNotes;
import squaresheet.roof.Shape;
import squaresheet.units.Graduation;
import squaresheet.units.Length;
import squaresheet.units.Pitch;

/** A roof with something of everything, to draw in tests. */
final class Sample {

  private Sample() {}

  static RoofLayout layout() {
    return layout(LayoutSettings.standard()
        .with(LayoutSettings.Spacing.standard().every(5, Graduation.INCH)));
  }

  static RoofLayout layout(LayoutSettings settings) {
    return layout(settings, front(), porch(), end(), wing(), crooked());
  }

  /** More planes than a crew sheet lists by name, one of them crooked and one too flat. */
  static RoofLayout many() {
    return layout(
        LayoutSettings.standard(),
        front(),
        porch(),
        end(),
        wing(),
        crooked(),
        deck(),
        shelf("shelf 1"),
        shelf("shelf 2"),
        shelf("shelf 3"));
  }

  /** The front again, but too flat to shingle, and a shelf of a single course. */
  static RoofLayout flatAndShelf() {
    return layout(LayoutSettings.standard(), deck(), shelf("shelf"));
  }

  static RoofLayout layout(LayoutSettings settings, PlaneNotes... planes) {
    Roof roof = Roof.resolve(RoofNotes.of(planes)).value().orElseThrow();
    return RoofLayout.of(roof, products(), settings).value().orElseThrow();
  }

  private static PlaneNotes front() {
    return plane("front", new Shape.Rectangle(in("36' 4\""), in("17' 3\"")))
        .with(PlaneNotes.OpeningNotes.of("C1", Opening.Kind.CHIMNEY, in("40\""), in("32\""))
            .at(in("22'"), in("11'")))
        .with(PlaneNotes.OpeningNotes.of("S1", Opening.Kind.SKYLIGHT, in("22\""), in("46\""))
            .at(in("8'"), in("6'")));
  }

  private static PlaneNotes deck() {
    Shape shape = new Shape.Rectangle(in("36' 4\""), in("17' 3\""));
    return new PlaneNotes("deck", shape, PlaneNotes.Measured.ON_SLOPE, Pitch.of(1));
  }

  private static PlaneNotes shelf(String id) {
    return plane(id, new Shape.Rectangle(in("2'"), in("4\"")));
  }

  private static PlaneNotes porch() {
    return plane("porch", new Shape.Rectangle(in("12'"), in("5' 2\"")))
        .with(PlaneNotes.SideNotes.of("top", EdgeKind.HEADWALL))
        .with(PlaneNotes.SideNotes.of("left", EdgeKind.SIDEWALL));
  }

  private static PlaneNotes end() {
    return plane("end", new Shape.Triangle(in("28'"), in("15' 8\"")));
  }

  private static PlaneNotes wing() {
    return plane(
            "wing", new Shape.Trapezoid(in("18'"), in("22'"), in("13' 6\""), Optional.of(in("4'"))))
        .with(PlaneNotes.SideNotes.of("right", EdgeKind.VALLEY))
        .with(PlaneNotes.SideNotes.of("left", EdgeKind.HIP));
  }

  private static PlaneNotes crooked() {
    Shape shape = new Shape.Polygon(List.of(
        Point.ORIGIN,
        new Point(in("24'"), Length.ZERO),
        new Point(in("24'"), in("13' 9\"")),
        new Point(Length.ZERO, in("14' 1\""))));
    return plane("back", shape)
        .with(PlaneNotes.SideNotes.of("side 2", EdgeKind.RAKE))
        .with(PlaneNotes.SideNotes.of("side 3", EdgeKind.RIDGE))
        .with(PlaneNotes.SideNotes.of("side 4", EdgeKind.RAKE));
  }

  private static PlaneNotes plane(String id, Shape shape) {
    return new PlaneNotes(id, shape, PlaneNotes.Measured.ON_SLOPE, Pitch.of(6));
  }

  private static Selection products() {
    Shingle shingle = new Shingle(
        label("laminated", Product.Kind.SHINGLE),
        in("39 3/8\""),
        in("13 1/4\""),
        in("5 5/8\""),
        new Shingle.Nailing(4, 6),
        Pitch.of(2),
        in("6\""));
    Map<Role, Product> chosen = new EnumMap<>(Role.class);
    chosen.put(Role.SHINGLE, shingle);
    chosen.put(
        Role.STARTER,
        new Starter(label("starter", Product.Kind.STARTER), in("36\""), in("7 3/4\""), 1));
    return new Selection(chosen);
  }

  private static Product.Label label(String id, Product.Kind kind) {
    return new Product.Label(
        id, kind, "a " + id, Packing.of("bundle", 21), "made up for the test", "");
  }

  private static Length in(String text) {
    return Length.parse(text);
  }
}
