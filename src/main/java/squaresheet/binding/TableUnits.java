package squaresheet.binding;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import squaresheet.sheet.Address;
import squaresheet.units.Unit;

/** The units of a found table's columns: from their headings, and row by row from the columns that name units. */
final class TableUnits {

  private static final Map<String, Unit.Kind> SIDES = Map.of(
      "plan_area", Unit.Kind.PLAN_AREA,
      "sloped_area", Unit.Kind.SLOPED_AREA);

  private static final Pattern SAYS_MONEY =
      Pattern.compile("price|cost|amount|exten|total", Pattern.CASE_INSENSITIVE);

  private static final Pattern SUMS =
      Pattern.compile("^(SUM|SUBTOTAL)\\(", Pattern.CASE_INSENSITIVE);

  private final FoundTable table;
  private final Map<String, Optional<Unit>> known = new HashMap<>();

  TableUnits(FoundTable table) {
    this.table = table;
  }

  void into(Map<Address, Unit> written) {
    for (int at = table.first(); at <= table.last(); at++) {
      int column = at;
      Optional<FoundColumn> found =
          table.columns().stream().filter(it -> it.at() == column).findFirst();
      table.rows().forEach((row, kind) -> {
        if (isOfTheColumn(row, column, kind)
            && Cells.isLikeANumber(table.grid().cell(row, column))) {
          Optional<Unit> unit = found.isPresent() ? unit(found.get(), row, kind) : headed(column);
          table
              .grid()
              .address(row, column)
              .ifPresent(cell -> unit.ifPresent(it -> written.putIfAbsent(cell, it)));
        }
      });
    }
  }

  /** Under its rows a column's heading holds for sums only: what else is written there bears a label of its own. */
  private boolean isOfTheColumn(int row, int column, FoundTable.Row kind) {
    return kind == FoundTable.Row.DATA
        || (kind == FoundTable.Row.TOTAL
            && SUMS.matcher(table.grid().cell(row, column).formula()).find());
  }

  private Optional<Unit> headed(int column) {
    return written(table.grid().text(table.heading(), column));
  }

  /** The unit a heading writes; each heading is read once, however many cells stand under it. */
  private Optional<Unit> written(String heading) {
    return known.computeIfAbsent(heading, WrittenUnit::of);
  }

  private Optional<Unit> unit(FoundColumn column, int row, FoundTable.Row kind) {
    Optional<Unit> headed = written(column.heading().text());
    if (column.meaning().holds() == Holds.MONEY) {
      return kind == FoundTable.Row.TOTAL ? money(column, headed) : price(column, row, headed);
    }
    if (column.meaning().holds() == Holds.SQUARES && column.isSure()) {
      return headed.or(() -> WrittenUnit.alone("squares"));
    }
    if (column.meaning().holds() == Holds.RATIO && column.isSure()) {
      return headed.filter(unit -> unit.isLike(Unit.RATIO)).or(() -> Optional.of(Unit.RATIO));
    }
    return headed
        .map(unit ->
            column.isSure() ? unit.as(SIDES.getOrDefault(column.property(), Unit.Kind.AREA)) : unit)
        .or(() -> kind == FoundTable.Row.DATA ? beside(column, row) : Optional.empty());
  }

  /** What the unit columns of the row say of a quantity. */
  private Optional<Unit> beside(FoundColumn column, int row) {
    return switch (column.property()) {
      case "basis" -> word(row, "unit");
      case "quantity" -> word(row, "unit");
      case "packs" -> sold(row);
      default -> Optional.empty();
    };
  }

  /** The pack that the row is ordered in; the one unit of the row, where it is not that of the need. */
  private Optional<Unit> sold(int row) {
    return word(row, "pack_unit")
        .or(() -> table.column("basis").isEmpty() ? word(row, "unit") : Optional.empty());
  }

  private Optional<Unit> price(FoundColumn column, int row, Optional<Unit> headed) {
    if (!column.property().equals("price")) {
      return money(column, headed);
    }
    if (headed.filter(unit -> unit.kind() == Unit.Kind.RATE).isPresent()) {
      return headed;
    }
    boolean materials = table.table().equals("materials");
    Optional<Unit> per = materials ? sold(row) : word(row, "unit");
    return per.flatMap(pack -> money(column, headed).map(coin -> coin.over(pack)));
  }

  /** A column of prices and amounts is of money, in dollars where it names no currency. */
  private Optional<Unit> money(FoundColumn column, Optional<Unit> headed) {
    boolean says = SAYS_MONEY.matcher(column.heading().text()).find();
    return headed
        .filter(unit -> unit.kind() == Unit.Kind.MONEY)
        .or(() -> says && column.isSure() ? WrittenUnit.alone("$") : Optional.empty());
  }

  private Optional<Unit> word(int row, String property) {
    return List.of(table.text(row, property)).stream()
        .filter(text -> !text.isEmpty())
        .findFirst()
        .flatMap(WrittenUnit::alone);
  }
}
