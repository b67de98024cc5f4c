package squaresheet.sheet;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A sheet as its file has it. Cells are kept in few bytes each; a {@link Cell} is made when asked for. */
public final class Sheet {

  private final String name;
  private final CellStore store;
  private final SheetText texts;
  private final SheetParts parts;

  Sheet(String name, CellStore store, SheetText texts, SheetParts parts) {
    this.name = name;
    this.store = store;
    this.texts = texts;
    this.parts = parts;
  }

  /** Starts an empty sheet whose texts may be taken, by number, from a list shared with other sheets. */
  public static SheetBuilder builder(String name, List<String> sharedTexts) {
    return new SheetBuilder(name, sharedTexts);
  }

  /** Starts an empty sheet. */
  public static SheetBuilder builder(String name) {
    return new SheetBuilder(name, List.of());
  }

  /** Whether a person sees the sheet. */
  public enum Visibility {
    /** Among the tabs. */
    VISIBLE,
    /** Can be brought back from the menu. */
    HIDDEN,
    /** Can be brought back by a program only. */
    VERY_HIDDEN
  }

  /**
   * A cell and its place.
   *
   * @param ref the place
   * @param cell what is there
   */
  public record Placed(Ref ref, Cell cell) {}

  /**
   * A structured table.
   *
   * @param name as formulas spell it
   * @param block all of it, with heading and totals rows
   * @param columns the headings, from the left
   * @param headingRows 0 or 1
   * @param totalsRows 0 or 1
   */
  public record Table(
      String name, Block block, List<String> columns, int headingRows, int totalsRows) {
    public Table {
      columns = List.copyOf(columns);
    }
  }

  /**
   * A note pinned to a cell.
   *
   * @param ref the cell
   * @param author who wrote it, may be empty
   * @param text the note
   */
  public record Comment(Ref ref, String author, String text) {}

  /**
   * A link on a block of cells.
   *
   * @param block the cells
   * @param target an address, or {@code #Sheet!A1} within the workbook; never followed
   * @param tip what shows beside the pointer, may be empty
   */
  public record Link(Block block, String target, String tip) {}

  /**
   * What may be typed into cells.
   *
   * @param blocks the cells
   * @param kind what sort of value
   * @param comparison how it is held against the limits; {@code BETWEEN} for lists
   * @param first the first limit, or the list: a block, a name, or quoted items with commas between
   * @param second the second limit, or empty
   * @param message what a person is told, may be empty
   */
  public record Validation(
      List<Block> blocks,
      Kind kind,
      Comparison comparison,
      String first,
      String second,
      String message) {

    public Validation {
      blocks = List.copyOf(blocks);
    }

    /** What sort of value. */
    public enum Kind {
      /** Any value; only the message counts. */
      ANY,
      /** A whole number. */
      WHOLE,
      /** Any number. */
      DECIMAL,
      /** One of a list. */
      LIST,
      /** A day. */
      DATE,
      /** A time of day. */
      TIME,
      /** A text of some length. */
      TEXT_LENGTH,
      /** What a formula says. */
      CUSTOM
    }

    /** How the value is held against the limits. */
    public enum Comparison {
      /** From the first limit to the second, both included. */
      BETWEEN,
      /** Outside of the two limits. */
      NOT_BETWEEN,
      /** The first limit itself. */
      EQUAL,
      /** Anything but the first limit. */
      NOT_EQUAL,
      /** More than the first limit. */
      GREATER_THAN,
      /** Less than the first limit. */
      LESS_THAN,
      /** The first limit or more. */
      GREATER_THAN_OR_EQUAL,
      /** The first limit or less. */
      LESS_THAN_OR_EQUAL
    }

    /** One of these words; none may hold a comma, and together they take at most 255 characters. */
    public static Validation choice(Block block, List<String> words, String message) {
      String list = String.join(",", words);
      if (list.length() > 255 || words.stream().anyMatch(word -> word.contains(","))) {
        throw new IllegalArgumentException(
            "a typed list must be words without commas, at most 255 characters together, but is '"
                + list + "'");
      }
      String quoted = "\"" + list.replace("\"", "\"\"") + "\"";
      return new Validation(List.of(block), Kind.LIST, Comparison.BETWEEN, quoted, "", message);
    }

    /** One of the texts in a block of cells, or in what a defined name stands for. */
    public static Validation choiceFrom(Block block, String cells, String message) {
      return new Validation(List.of(block), Kind.LIST, Comparison.BETWEEN, cells, "", message);
    }

    /** A number in a range, ends included. */
    public static Validation number(Block block, double least, double most, String message) {
      return new Validation(
          List.of(block), Kind.DECIMAL, Comparison.BETWEEN, plain(least), plain(most), message);
    }

    /** A whole number in a range, ends included. */
    public static Validation whole(Block block, double least, double most, String message) {
      return new Validation(
          List.of(block), Kind.WHOLE, Comparison.BETWEEN, plain(least), plain(most), message);
    }

    /** What a formula, spelled for the first cell, finds true. */
    public static Validation custom(Block block, String formula, String message) {
      return new Validation(List.of(block), Kind.CUSTOM, Comparison.BETWEEN, formula, "", message);
    }

    private static String plain(double value) {
      return java.math.BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
  }

  /** The name on the tab. */
  public String name() {
    return name;
  }

  /** Whether a person sees the sheet. */
  public Visibility visibility() {
    return parts.visibility();
  }

  /** What is at the place; {@link Cell#EMPTY} where nothing is. */
  public Cell cell(Ref ref) {
    int cell = store.find(ref);
    return cell < 0 ? Cell.EMPTY : texts.cell(store, cell, ref);
  }

  /** What is at the place written like {@code B7}. */
  public Cell cell(String ref) {
    return cell(Ref.parse(ref));
  }

  /** How many cells the file spends on this sheet; blank ones count where they carry a number format. */
  public int size() {
    return store.size();
  }

  /** All cells that the file has, by row, then by column. */
  public Stream<Placed> cells() {
    return store.runs().boxed().flatMap(this::ofRun);
  }

  /** The cells of one row, from the left; row 0 is written 1. */
  public Stream<Placed> row(int row) {
    int run = store.run(row);
    return run < 0 ? Stream.empty() : ofRun(run);
  }

  /** The rows that have cells, downwards. */
  public IntStream rows() {
    return store.runs().map(store::row);
  }

  private Stream<Placed> ofRun(int run) {
    int row = store.row(run);
    return IntStream.range(store.start(run), store.end(run)).mapToObj(cell -> {
      Ref ref = new Ref(row, store.column(cell));
      return new Placed(ref, texts.cell(store, cell, ref));
    });
  }

  /** The smallest block around every cell that is not blank; nothing for an empty sheet. */
  public Optional<Block> used() {
    return parts.used();
  }

  /** The merged blocks; only the upper left cell of each counts. */
  public List<Block> merged() {
    return parts.merged();
  }

  /** The merged block that covers the cell, if any. */
  public Optional<Block> mergedAt(Ref ref) {
    return parts.mergedAt(ref);
  }

  /** Whether the row does not show. */
  public boolean isRowHidden(int row) {
    return parts.hiddenRows().get(row);
  }

  /** Whether the column does not show. */
  public boolean isColumnHidden(int column) {
    return parts.hiddenColumns().get(column);
  }

  /** The structured tables. */
  public List<Table> tables() {
    return parts.tables();
  }

  /** The notes pinned to cells, by place. */
  public Map<Ref, Comment> comments() {
    return parts.comments();
  }

  /** What may be typed where. */
  public List<Validation> validations() {
    return parts.validations();
  }

  /** The links. */
  public List<Link> links() {
    return parts.links();
  }

  /** The block with filter buttons, if any. */
  public Optional<Block> filter() {
    return parts.filter();
  }

  /** The blocks that one array formula fills; the formula text is on each block's first cell. */
  public List<Block> arrays() {
    return parts.arrays();
  }

  /** The block of the array formula that fills the cell, if one does. */
  public Optional<Block> arrayAt(Ref ref) {
    return parts.arrayAt(ref);
  }

  /** The first formula that the protection of the sheet hides from people; nothing where all formulas show. */
  public Optional<Ref> hiddenFormula() {
    return parts.isProtected() ? parts.hiddenFormula() : Optional.empty();
  }

  /** How many rows stay in sight at the top. */
  public int frozenRows() {
    return parts.frozenRows();
  }

  /** How many columns stay in sight at the left. */
  public int frozenColumns() {
    return parts.frozenColumns();
  }

  /** Starts a sheet that has all that this one has beside its cells. */
  SheetBuilder withoutCells() {
    return new SheetBuilder(name, List.of(), parts.copy());
  }

  @Override
  public String toString() {
    return name + " (" + size() + " cells)";
  }
}
