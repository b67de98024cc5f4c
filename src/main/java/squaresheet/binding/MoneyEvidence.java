package squaresheet.binding;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import squaresheet.formula.Formula;
import squaresheet.formula.Node;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.Workbook;

/**
 * Whether the number in a cell is money: by its number format, by what stands beside and over it, and by what it is worked out
 * from.
 */
final class MoneyEvidence {

  /** Functions that give what they are given: a sum, a rounding, a choice of the larger. */
  private static final Set<String> KEEPING = Set.of(
      "SUM", "MAX", "MIN", "ABS", "INT", "AVERAGE", "IFERROR", "IFNA", "N", "MEDIAN", "LARGE",
      "SMALL");

  /** The same of their first argument. */
  private static final Set<String> OF_THE_FIRST = Set.of(
      "ROUND", "ROUNDUP", "ROUNDDOWN", "CEILING", "FLOOR", "MROUND", "TRUNC", "SUMIFS", "INDEX");

  /** Of a block of cells so many are asked. */
  private static final int ASKED = 60;

  /** Through so many formulas behind each other it is followed. */
  private static final int DEEPEST = 40;

  private static final int LABEL_AWAY = 3;

  /** A price stands so few rows under its subtotal and its tax. */
  private static final int CLOSE = 4;

  private static final Pattern SUBTOTAL =
      Pattern.compile("(?i)\\s*(sub-? ?total|net|net total)\\b.*");
  private static final Pattern TAX = Pattern.compile("(?i).*\\b(tax|vat)\\b.*");

  private final Workbook book;
  private final SheetTables sheets;
  private final Map<Address, MoneyWords> known = new HashMap<>();
  private int depth;

  MoneyEvidence(Workbook book, SheetTables sheets) {
    this.book = book;
    this.sheets = sheets;
  }

  MoneyWords of(Address cell) {
    MoneyWords before = known.get(cell);
    if (before != null) {
      return before;
    }
    known.put(cell, MoneyWords.NOTHING);
    depth++;
    MoneyWords says = depth > DEEPEST ? MoneyWords.NOTHING : says(cell);
    depth--;
    known.put(cell, says);
    return says;
  }

  private MoneyWords says(Address at) {
    Cell cell = book.cell(at);
    MoneyWords format = MoneyWords.ofFormat(cell.format());
    if (format != MoneyWords.NOTHING || cell.format().contains("%")) {
      return format;
    }
    MoneyWords made = formula(cell).map(tree -> of(tree, at.sheet())).orElse(MoneyWords.NOTHING);
    return made == MoneyWords.OTHER ? made : written(at).or(made);
  }

  private static Optional<Node> formula(Cell cell) {
    return cell.isFormula()
        ? Formula.parse(cell.formula()).value().map(Formula::tree)
        : Optional.empty();
  }

  private MoneyWords of(Node node, String sheet) {
    if (node instanceof Node.Binary binary) {
      return of(binary, sheet);
    }
    if (node instanceof Node.Unary unary) {
      return unary.sign() == Node.Sign.PERCENT ? MoneyWords.NOTHING : of(unary.operand(), sheet);
    }
    if (node instanceof Node.Call call) {
      return of(call, sheet);
    }
    return cells(node, sheet).map(this::of).reduce(MoneyWords.NOTHING, MoneyWords::plus);
  }

  private MoneyWords of(Node.Binary binary, String sheet) {
    MoneyWords left = of(binary.left(), sheet);
    MoneyWords right = of(binary.right(), sheet);
    return switch (binary.operator()) {
      case PLUS, MINUS -> left.plus(right);
      case TIMES -> left.times(right);
      case OVER ->
        left != MoneyWords.MONEY
            ? MoneyWords.NOTHING
            : right == MoneyWords.MONEY ? MoneyWords.OTHER : left;
      default -> MoneyWords.NOTHING;
    };
  }

  private MoneyWords of(Node.Call call, String sheet) {
    BiFunction<MoneyWords, MoneyWords, MoneyWords> joined =
        call.function().equals("SUMPRODUCT") ? MoneyWords::times : MoneyWords::plus;
    return kept(call).stream()
        .map(argument -> of(argument, sheet))
        .reduce(joined::apply)
        .orElse(MoneyWords.NOTHING);
  }

  /** The arguments of which a function gives a sum, a product or one. */
  private static List<Node> kept(Node.Call call) {
    List<Node> all = call.arguments();
    if (KEEPING.contains(call.function()) || call.function().equals("SUMPRODUCT")) {
      return all;
    }
    if (OF_THE_FIRST.contains(call.function())) {
      return all.subList(0, Math.min(1, all.size()));
    }
    return switch (call.function()) {
      case "IF", "SUBTOTAL" -> all.subList(Math.min(1, all.size()), all.size());
      case "SUMIF" -> all.size() > 2 ? all.subList(2, 3) : all.subList(0, Math.min(1, all.size()));
      case "XLOOKUP" -> all.size() > 2 ? all.subList(2, 3) : List.of();
      default -> List.of();
    };
  }

  /** The first cells that a reference, a name or a column of a table stands for and in which anything stands. */
  private Stream<Address> cells(Node node, String sheet) {
    if (node instanceof Node.Reference reference) {
      return cells(reference.sheet().isEmpty() ? sheet : reference.sheet(), reference.block());
    }
    if (node instanceof Node.Name name) {
      return book.name(name.name()).stream().flatMap(it -> it.cell().stream()
          .flatMap(cell -> it.block().stream().flatMap(block -> cells(cell.sheet(), block))));
    }
    return node instanceof Node.Table table ? column(table) : Stream.of();
  }

  private Stream<Address> column(Node.Table asked) {
    return book.sheets().stream().flatMap(sheet -> sheet.tables().stream()
        .filter(table -> table.name().equalsIgnoreCase(asked.table()))
        .flatMap(table -> cells(sheet.name(), column(table, asked.firstColumn()))));
  }

  private static Block column(Sheet.Table table, String name) {
    int across = Math.max(
        0,
        table.columns().stream()
            .map(it -> it.toLowerCase(Locale.ROOT))
            .toList()
            .indexOf(name.toLowerCase(Locale.ROOT)));
    Ref first = table.block().first().plus(table.headingRows(), across);
    return new Block(
        first, new Ref(Math.max(first.row(), table.block().last().row()), first.column()));
  }

  private Stream<Address> cells(String name, Block block) {
    return book.sheet(name).stream().flatMap(sheet -> IntStream.rangeClosed(
            block.first().row(),
            Math.min(block.last().row(), sheet.used().map(it -> it.last().row()).orElse(-1)))
        .boxed()
        .flatMap(
            row -> IntStream.rangeClosed(block.first().column(), block.last().column())
                .mapToObj(column -> new Ref(row, column)))
        .filter(ref -> Cells.isLikeANumber(sheet.cell(ref)))
        .limit(ASKED)
        .map(ref -> new Address(sheet.name(), ref)));
  }

  /** What stands about a cell: in a table over it; elsewhere beside it, behind it, or over it without a gap. */
  private MoneyWords written(Address at) {
    Sheet sheet = book.sheet(at.sheet()).orElseThrow();
    Optional<String> heading = sheets.of(sheet).stream()
        .flatMap(table -> heading(table, at.ref()).stream())
        .findFirst();
    if (heading.isPresent()) {
      return MoneyWords.of(heading.get());
    }
    Grid grid = sheets.grid(sheet);
    int row = at.ref().row();
    int column = at.ref().column();
    return MoneyWords.of(beside(grid, row, column))
        .or(MoneyWords.ofUnit(grid.text(row, column + 1)))
        .or(over(grid, row, column))
        .or(underTax(grid, row, column));
  }

  /** What stands close under a subtotal and a tax, each of money, closes them. */
  private MoneyWords underTax(Grid grid, int row, int column) {
    boolean[] seen = new boolean[2];
    for (int up = row - 1; up >= Math.max(0, row - CLOSE) && !grid.isBlank(up, column); up--) {
      String label = beside(grid, up, column);
      boolean money = grid.address(up, column).map(this::of).equals(Optional.of(MoneyWords.MONEY));
      seen[0] |= money && SUBTOTAL.matcher(label).matches();
      seen[1] |= money && TAX.matcher(label).matches();
    }
    return seen[0] && seen[1] ? MoneyWords.MONEY : MoneyWords.NOTHING;
  }

  /** The heading over an item's cell of a found table; beside an item in a table on its side. */
  private static Optional<String> heading(FoundTable table, Ref ref) {
    int along = table.isOnItsSide() ? ref.column() : ref.row();
    int across = table.isOnItsSide() ? ref.row() : ref.column();
    boolean inside =
        table.rows().containsKey(along) && across >= table.first() && across <= table.last();
    return inside
        ? table.columns().stream()
            .filter(column -> column.at() == across)
            .map(column -> column.heading().text())
            .findFirst()
            .or(() -> Optional.of(table.grid().text(table.heading(), across)))
        : Optional.empty();
  }

  /** The label left of a cell; empty where a number stands between. */
  private static String beside(Grid grid, int row, int column) {
    for (int left = column - 1; left >= Math.max(0, column - LABEL_AWAY); left--) {
      if (!grid.isBlank(row, left)) {
        return grid.text(row, left);
      }
    }
    return "";
  }

  private static MoneyWords over(Grid grid, int row, int column) {
    for (int up = row - 1; up >= 0 && !grid.isBlank(up, 0, grid.columns() - 1); up--) {
      if (!grid.text(up, column).isEmpty()) {
        return MoneyWords.of(grid.text(up, column));
      }
    }
    return MoneyWords.NOTHING;
  }

  /** The cells that a cell of money adds up, over whatever steps, itself included. */
  Set<Address> addedUp(Address total) {
    Set<Address> all = new HashSet<>();
    add(List.of(total), all);
    return all;
  }

  private void add(Collection<Address> cells, Set<Address> all) {
    for (Address cell : cells) {
      if (all.add(cell)) {
        formula(book.cell(cell)).ifPresent(tree -> add(terms(tree, cell.sheet()).toList(), all));
      }
    }
  }

  private Stream<Address> terms(Node node, String sheet) {
    if (node instanceof Node.Binary binary) {
      return Stream.of(binary.left(), binary.right())
          .filter(side -> isAdded(binary, side, sheet))
          .flatMap(side -> terms(side, sheet));
    }
    if (node instanceof Node.Unary unary) {
      return terms(unary.operand(), sheet);
    }
    return node instanceof Node.Call call
        ? kept(call).stream()
            .filter(it -> !call.function().equals("SUMPRODUCT"))
            .flatMap(it -> terms(it, sheet))
        : cells(node, sheet);
  }

  private boolean isAdded(Node.Binary binary, Node side, String sheet) {
    return switch (binary.operator()) {
      case PLUS, MINUS -> true;
      case TIMES, OVER -> of(side, sheet) == MoneyWords.MONEY;
      default -> false;
    };
  }
}
