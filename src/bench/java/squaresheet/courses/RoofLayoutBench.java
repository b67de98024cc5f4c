package squaresheet.courses;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import squaresheet.product.Packing;
import squaresheet.product.Product;
import squaresheet.product.Role;
import squaresheet.product.Selection;
import squaresheet.product.Shingle;
import squaresheet.product.Starter;
import squaresheet.roof.Opening;
import squaresheet.roof.Plane;
import squaresheet.roof.PlaneNotes;
import squaresheet.roof.Roof;
import squaresheet.roof.RoofNotes;
import squaresheet.roof.Shape;
import squaresheet.units.Length;
import squaresheet.units.Pitch;

/** Lays out roofs of many planes; each plane takes about a thousand pieces. The planes are of every shape, one in eight has a chimney. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
public class RoofLayoutBench {

  @Param({"10", "100", "1000", "10000"})
  private int planes;

  private Roof roof;
  private Selection products;

  static RoofLayoutBench of(int planes) {
    RoofLayoutBench bench = new RoofLayoutBench();
    bench.planes = planes;
    bench.resolve();
    return bench;
  }

  /** Resolves the roof once; only laying it out is measured. */
  @Setup
  public void resolve() {
    List<Plane> resolved = new ArrayList<>();
    for (int index = 0; index < planes; index++) {
      PlaneNotes notes = notes(index);
      resolved.add(
          Roof.resolve(RoofNotes.of(notes)).value().orElseThrow().planes().get(0));
    }
    roof = new Roof(resolved, List.of(), RoofNotes.usualTolerance());
    products = products();
  }

  private static PlaneNotes notes(int index) {
    Length eave = new Length(Length.of(84, 0).units() + 977L * (index % 613));
    Length height = new Length(Length.of(18, 0).units() + 1013L * (index % 211));
    Shape shape = List.of(
            new Shape.Rectangle(eave, height),
            new Shape.Triangle(eave.times(2), height),
            new Shape.Trapezoid(eave.times(3).minus(eave), eave.minus(height), height),
            new Shape.Parallelogram(eave, height, Length.of(9, 5)))
        .get(index % 4);
    PlaneNotes plane =
        new PlaneNotes("P" + index, shape, PlaneNotes.Measured.ON_SLOPE, new Pitch(BigDecimal.TEN));
    return index % 8 == 4
        ? plane.with(PlaneNotes.OpeningNotes.of(
                "C" + index, Opening.Kind.CHIMNEY, Length.of(4, 0), Length.of(3, 0))
            .at(Length.of(20, 0), Length.of(6, 0)))
        : plane;
  }

  private static Selection products() {
    Shingle shingle = new Shingle(
        label(Product.Kind.SHINGLE),
        Length.parse("39 3/8\""),
        Length.parse("13 1/4\""),
        Length.parse("5 5/8\""),
        new Shingle.Nailing(4, 6),
        Pitch.of(2),
        Length.parse("6\""));
    Starter starter = new Starter(
        label(Product.Kind.STARTER), Length.parse("39 3/8\""), Length.parse("7 3/4\""), 1);
    Map<Role, Product> chosen = new EnumMap<>(Role.class);
    chosen.put(Role.SHINGLE, shingle);
    chosen.put(Role.STARTER, starter);
    return new Selection(chosen);
  }

  private static Product.Label label(Product.Kind kind) {
    return new Product.Label(
        "bench", kind, "made up for the bench", Packing.of("bundle", 21), "made up", "");
  }

  /** Lays out the roof and counts its pieces, ends of cut shingles used again on one plane. */
  @Benchmark
  public Pieces count() {
    return layout().pieces();
  }

  /** The same, ends used anywhere on the roof. */
  @Benchmark
  public Pieces countOverTheRoof() {
    return layout().pieces(LayoutSettings.Reuse.ROOF);
  }

  private RoofLayout layout() {
    return Optional.of(RoofLayout.of(roof, products, LayoutSettings.standard()))
        .flatMap(read -> read.value())
        .orElseThrow();
  }
}
