package squaresheet.verify;

import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import squaresheet.formula.Node;
import squaresheet.units.Unit;

/** Tables whose rows are typed each in a unit of its own, named in the row, and turned into feet or inches by a formula. */
final class MetricRows {

  /** Metres, centimetres and millimetres in an inch or a foot, exact, and feet in a metre as people round them. */
  private static final Set<Double> FACTORS =
      Set.of(25.4, 2.54, 0.0254, 304.8, 30.48, 0.3048, 3.28084, 3.2808, 3.281, 3.28);

  private MetricRows() {}

  /** Whether the run turns metric lengths and this row names a unit that none of its rows is typed in. */
  static boolean isOfOtherUnit(Fill fill, int along) {
    return Nodes.all(fill.sample().tree(), Node.Number.class)
            .anyMatch(number -> FACTORS.contains(number.value()))
        && IntStream.rangeClosed(0, fill.form().across() + 2)
            .anyMatch(across -> isAlone(fill, along, across));
  }

  private static boolean isAlone(Fill fill, int along, int across) {
    Optional<Unit> own = unit(fill, along, across);
    return own.isPresent()
        && fill.table()
            .items()
            .filter(fill::hasForm)
            .mapToObj(item -> unit(fill, item, across))
            .allMatch(unit -> unit.isPresent() && !unit.equals(own));
  }

  private static Optional<Unit> unit(Fill fill, int along, int across) {
    return HeadingUnit.any(fill.tab().text(fill.table().ref(along, across)));
  }
}
