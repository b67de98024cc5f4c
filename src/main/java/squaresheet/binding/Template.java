package squaresheet.binding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import squaresheet.binding.FoundTable.Row;
import squaresheet.formula.Formula;
import squaresheet.formula.Node;
import squaresheet.sheet.Address;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Ref;

/** The formulas and looks that a new row of a table takes over from the rows that are there. */
final class Template {

  /** Columns with the sizes that an area is worked out from. */
  private static final Set<String> SIZES = Set.of("eave", "up_slope", "run", "across", "top");

  private final FoundTable table;

  Template(FoundTable table) {
    this.table = table;
  }

  /** The row that a new one is made like: of the same kind where there is one, else the nearest before it. */
  Optional<Integer> like(int row, ModelRow item) {
    List<Integer> rows = new ArrayList<>(table.rows(Row.DATA));
    rows.addAll(table.rows(Row.PREPARED));
    return rows.stream()
        .filter(it -> it != row && hasFormulas(it))
        .min(Comparator.comparing((Integer it) -> !isOfKind(it, item))
            .thenComparing(it -> it > row)
            .thenComparing(it -> Math.abs(it - row)));
  }

  private boolean hasFormulas(int row) {
    return across().anyMatch(at -> table.grid().cell(row, at).isFormula());
  }

  private boolean isOfKind(int row, ModelRow item) {
    return item.values().get("shape") instanceof Known.Word shape
        && shape.same().test(table.text(row, "shape"));
  }

  /** The formulas to carry into a row, by their columns: where it has none of its own and nothing stands. */
  Map<Integer, String> formulas(int row, ModelRow item) {
    Map<Integer, String> formulas = new LinkedHashMap<>();
    Optional<Integer> from = like(row, item);
    from.ifPresent(like -> across().forEach(at -> {
      Cell there = table.grid().cell(like, at);
      if (there.isFormula() && table.grid().isBlank(row, at)) {
        filled(like, row, at, there.formula()).ifPresent(text -> formulas.put(at, text));
      }
    }));
    return item.values().get("outline") instanceof Known.Outline outline
        ? new ByCorners(table, row, outline).instead(own(row), formulas)
        : formulas;
  }

  /** The formulas that a prepared row has already. */
  private Map<Integer, String> own(int row) {
    Map<Integer, String> own = new LinkedHashMap<>();
    across()
        .filter(at -> table.grid().cell(row, at).isFormula())
        .forEach(at -> own.put(at, table.grid().cell(row, at).formula()));
    return own;
  }

  private Optional<String> filled(int from, int to, int at, String formula) {
    return Formula.parse(formula)
        .value()
        .map(it -> it.filled(ref(from, at), ref(to, at)).toString())
        .filter(text -> !text.contains("#REF!"));
  }

  /** The columns of a row whose cells show in another number format than the row it is made like. */
  List<Integer> looks(int row, int like) {
    return across()
        .filter(at -> !table
            .grid()
            .cell(row, at)
            .format()
            .equals(table.grid().cell(like, at).format()))
        .boxed()
        .toList();
  }

  /** Whether a formula of the row, or of the rows it may be made like, reads that column's cell. */
  boolean isAskedFor(int row, ModelRow item, FoundColumn column) {
    int own = hasFormulas(row) ? row : like(row, item).orElse(row);
    return across()
        .mapToObj(at -> table.grid().cell(own, at))
        .filter(Cell::isFormula)
        .anyMatch(cell -> reads(cell.formula(), Set.of(ref(own, column.at()))));
  }

  /** Whether a formula is worked out from a size of the row. */
  static boolean readsSizes(FoundTable table, int row, String formula) {
    Set<Ref> sizes = table.columns().stream()
        .filter(column -> SIZES.contains(column.property()))
        .map(column -> table.grid().address(row, column.at()).orElseThrow().ref())
        .collect(java.util.stream.Collectors.toSet());
    return reads(formula, sizes);
  }

  private static boolean reads(String formula, Set<Ref> cells) {
    return Formula.parse(formula).value().stream()
        .flatMap(it -> it.references().stream())
        .map(Node.Reference::block)
        .anyMatch(block -> cells.stream().anyMatch(block::contains));
  }

  private IntStream across() {
    return IntStream.rangeClosed(table.first(), table.last());
  }

  private Ref ref(int row, int at) {
    return table.grid().address(row, at).map(Address::ref).orElseThrow();
  }
}
