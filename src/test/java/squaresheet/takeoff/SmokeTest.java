package squaresheet.takeoff;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import squaresheet.finding.Read;
import squaresheet.product.Catalogue;
import squaresheet.product.Selection;
import squaresheet.roof.PlaneNotes;
import squaresheet.roof.Roof;
import squaresheet.roof.RoofNotes;
import squaresheet.roof.Shape;
import squaresheet.units.Length;
import squaresheet.units.Pitch;

class SmokeTest {
  @Test
  void x() {
    Rulebook book = Rulebook.standard();
    Read<Catalogue> catalogue = Catalogue.read(Path.of("demo-data/products.csv"));
    System.out.println(catalogue.findings());
    Selection s = Selection.firstOfEach(catalogue.value().orElseThrow());
    Roof roof = Roof.resolve(RoofNotes.of(
        new PlaneNotes("A", new Shape.Rectangle(Length.of(40, 0), Length.of(15, 0)), PlaneNotes.Measured.IN_PLAN, Pitch.of(6)),
        new PlaneNotes("B", new Shape.Rectangle(Length.of(40, 0), Length.of(15, 0)), PlaneNotes.Measured.IN_PLAN, Pitch.of(6))))
        .value().orElseThrow();
    Read<Takeoff> t = Takeoff.of(book, Names.of(roof), s);
    t.findings().forEach(System.out::println);
    for (Rule r : book.rules()) {
      if (r.isWorkedOut()) System.out.println(r.name() + " = " + t.value().get().values(r.name()).stream().map(v -> Shown.of(r, v)).toList());
    }
    t.value().get().orders().forEach(o -> System.out.println(o.packs() + " " + o.product().id()));
    System.out.println(t.value().get().worked("shingle_bundles").show());
    System.out.println(t.value().get().worked("ice_reach", 1).show());
  }
}
