package squaresheet.binding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import squaresheet.formula.Formula;
import squaresheet.formula.Node;
import squaresheet.sheet.Address;
import squaresheet.sheet.Ref;

/**
 * What the formulas of a table say about its columns where the headings leave it open: whether a width lies on the slope or
 * in plan, which area an area is, and in which unit lengths are that make square feet.
 */
final class FormulaEvidence {

  private static final double PROVEN = 0.9;
  private static final double UNSURE = 0.6;
  /** Square inches in a square foot, square feet in a square metre and back, square mm and cm in a square metre. */
  private static final Pattern CONVERSION = Pattern.compile(
      "(?<![\\w.])(144|10\\.76\\d*|0?\\.0929\\d*|1000000|10000|1000|1E6|1E4)(?![\\w.])");

  private final FoundTable table;

  private FormulaEvidence(FoundTable table) {
    this.table = table;
  }

  static FoundTable weigh(FoundTable table) {
    FormulaEvidence evidence = new FormulaEvidence(table);
    if (!table.table().equals("planes")) {
      return table.with(table.columns().stream().map(evidence::withUnit).toList());
    }
    List<FoundColumn> columns = new ArrayList<>();
    for (FoundColumn column : table.columns()) {
      columns.add(evidence.withUnit(evidence.settled(column)));
    }
    return table.with(columns);
  }

  private FoundColumn settled(FoundColumn column) {
    return switch (column.property()) {
      case "across" -> across(column);
      case "sloped_area" -> column.isSure() ? column : area(column);
      default -> parted(column);
    };
  }

  /** A heading that spans two columns: a length in feet and inches, of which one column alone says nothing. */
  private FoundColumn parted(FoundColumn column) {
    boolean length = column.meaning().holds() == Holds.LENGTH;
    int beside = column.at() + 1;
    String over = table.grid().spreadText(table.heading(), beside);
    boolean spans = table.grid().text(table.heading(), beside).isEmpty()
        && !over.isEmpty()
        && over.equals(table.grid().text(table.heading(), column.at()));
    return length && spans
        ? column.with(Math.min(column.sure(), UNSURE), "its heading stands over two columns")
        : column;
  }

  /** A width is in plan where the plan area is worked out from it, on the slope where the sloped area is, without factor. */
  private FoundColumn across(FoundColumn column) {
    if (uses("plan_area", column.at())) {
      return as(column, "run", "the plan area is worked out from it");
    }
    if (uses("sloped_area", column.at())) {
      boolean factor = usesAny("sloped_area", List.of("factor", "pitch"));
      return factor
          ? as(column, "run", "the sloped area is worked out from it and the pitch")
          : as(column, "up_slope", "the sloped area is worked out from it without the pitch");
    }
    return column.with(Math.min(column.sure(), UNSURE), "on the slope or in plan is not said");
  }

  private FoundColumn area(FoundColumn column) {
    boolean up = usesAny("sloped_area", List.of("factor", "plan_area", "pitch", "up_slope"));
    return up
        ? column.with(PROVEN, "it is worked out with the pitch or from a length on the slope")
        : column;
  }

  private FoundColumn as(FoundColumn column, String property, String reason) {
    boolean taken = table.column(property).isPresent();
    Meaning meaning = Words.find("planes", property).orElseThrow();
    return taken
        ? column
        : column.as(meaning, Math.min(PROVEN, column.sure()), column.why() + "; " + reason);
  }

  private boolean usesAny(String property, List<String> others) {
    return others.stream()
        .flatMap(other -> table.column(other).stream())
        .anyMatch(other -> uses(property, other.at()));
  }

  /** Whether the first formula of a column refers to another column of the same row. */
  private boolean uses(String property, int other) {
    Optional<Integer> first = Stream.of(FoundTable.Row.DATA, FoundTable.Row.PREPARED)
        .flatMap(kind -> table.rows(kind).stream())
        .filter(row -> table.cell(row, property).isFormula())
        .findFirst();
    if (first.isEmpty()) {
      return false;
    }
    Set<Ref> asked = Formula.parse(table.cell(first.get(), property).formula())
        .value()
        .map(formula -> formula.references().stream()
            .filter(Node.Reference::isCell)
            .map(reference -> reference.block().first())
            .collect(Collectors.toSet()))
        .orElse(Set.of());
    return table
        .grid()
        .address(first.get(), other)
        .map(Address::ref)
        .filter(asked::contains)
        .isPresent();
  }

  /** The unit of a column that its heading does not name: from number formats, else from what the areas are in. */
  private FoundColumn withUnit(FoundColumn column) {
    if (column.meaning().holds() == Holds.SQUARES && column.unit().isEmpty()) {
      return UnitWords.ofSymbol("squares").map(column::in).orElse(column);
    }
    boolean measured =
        column.meaning().holds() == Holds.LENGTH || column.meaning().holds() == Holds.AREA;
    if (!measured || column.unit().isPresent()) {
      return column;
    }
    Optional<UnitWord> shown = FormatUnits.of(table, column);
    if (shown.isPresent()) {
      return column.in(shown.get());
    }
    if (saysItself(column)) {
      return column;
    }
    return implied(column)
        .map(unit -> column.in(unit).with(column.sure(), "in " + unit + ", as the areas show"))
        .orElseGet(() -> column.with(Math.min(column.sure(), UNSURE), "its unit is not said"));
  }

  /** Whether every filled cell writes its own unit: 12' 6", 3.2 m. */
  private boolean saysItself(FoundColumn column) {
    List<String> texts = table.rows(FoundTable.Row.DATA).stream()
        .map(row -> table.grid().cell(row, column.at()))
        .filter(cell -> !cell.isBlank())
        .map(Cells::text)
        .toList();
    return !texts.isEmpty()
        && texts.stream().allMatch(text -> text.matches(".*\\d.*(['\"′″’”]|[a-zA-Z]).*"));
  }

  /** Whether an area is worked out with a number that turns one unit into another. */
  private boolean isConverted() {
    return List.of("plan_area", "sloped_area").stream()
        .flatMap(area -> table.rows(FoundTable.Row.DATA).stream()
            .map(row -> table.cell(row, area).formula()))
        .anyMatch(formula -> CONVERSION.matcher(formula).find());
  }

  private Optional<UnitWord> implied(FoundColumn column) {
    boolean area = column.meaning().holds() == Holds.AREA;
    boolean metric = table.columns().stream()
        .flatMap(other -> other.unit().stream())
        .anyMatch(unit -> List.of("m²", "m").contains(unit.symbol()));
    boolean feet = table.columns().stream()
        .flatMap(other -> other.unit().stream())
        .anyMatch(unit -> List.of("sq ft", "squares", "ft").contains(unit.symbol()));
    boolean hundredth = table.columns().stream()
        .filter(other -> other.property().endsWith("squares"))
        .anyMatch(other -> table.rows(FoundTable.Row.DATA).stream()
            .anyMatch(
                row -> table.grid().cell(row, other.at()).formula().matches(".*/ ?100\\b.*")));
    if (metric == (feet || hundredth) || isConverted()) {
      return Optional.empty();
    }
    return UnitWords.ofSymbol(metric ? (area ? "m²" : "m") : area ? "sq ft" : "ft");
  }
}
