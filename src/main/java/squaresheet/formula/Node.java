package squaresheet.formula;

import java.util.List;
import java.util.stream.Stream;
import squaresheet.sheet.Block;
import squaresheet.sheet.Ref;

/**
 * A part of a formula as it is written: the syntax tree. Two parts are equal when they are spelled alike; where they stand
 * in the text takes no part in it.
 */
public sealed interface Node {

  /** Where this part stands in the text of its formula. */
  Span at();

  /** The parts this one is made of, in the order of writing. */
  default List<Node> parts() {
    return List.of();
  }

  /**
   * A number as typed; a minus before it is a part of its own.
   *
   * @param value 0 or more, finite
   */
  record Number(double value, Span at) implements Node {}

  /**
   * A text between quotes.
   *
   * @param value the text without its quotes
   */
  record Text(String value, Span at) implements Node {}

  /**
   * TRUE or FALSE.
   *
   * @param value which
   */
  record Truth(boolean value, Span at) implements Node {}

  /**
   * A spreadsheet error typed or left behind in a formula.
   *
   * @param code such as {@code #REF!}
   */
  record Fault(String code, Span at) implements Node {}

  /** An argument left out between two commas. */
  record Omitted(Span at) implements Node {}

  /**
   * A cell, a block of cells, whole columns or whole rows.
   *
   * @param sheet the sheet's name, or empty where the formula's own sheet is meant
   * @param first the upper left corner
   * @param last the lower right corner, the same as the first for one cell
   * @param extent what is spelled
   */
  record Reference(String sheet, Corner first, Corner last, Extent extent, Span at)
      implements Node {

    /** The rectangle that is meant, corners put in order. */
    public Block block() {
      return new Block(
          new Ref(Math.min(first.row, last.row), Math.min(first.column, last.column)),
          new Ref(Math.max(first.row, last.row), Math.max(first.column, last.column)));
    }

    /** Whether one single cell is spelled. */
    public boolean isCell() {
      return extent == Extent.CELL;
    }
  }

  /**
   * A defined name.
   *
   * @param sheet the sheet's name it is asked for on, or empty
   * @param name as written
   */
  record Name(String sheet, String name, Span at) implements Node {}

  /**
   * A structured reference into a table, {@code Lines[Length]} or {@code Lines[@Length]}.
   *
   * @param table the table's name, or empty where the formula stands in the table
   * @param items the special items without brackets, such as {@code #Totals} or {@code #This Row}
   * @param firstColumn the column, or empty where all are meant
   * @param lastColumn the last column of a run, the same as the first for one
   */
  record Table(String table, List<String> items, String firstColumn, String lastColumn, Span at)
      implements Node {
    public Table {
      items = List.copyOf(items);
    }
  }

  /**
   * A sign before or a percent sign behind an operand.
   *
   * @param sign which
   * @param operand what it applies to
   */
  record Unary(Sign sign, Node operand, Span at) implements Node {
    @Override
    public List<Node> parts() {
      return List.of(operand);
    }
  }

  /**
   * Two operands with an operator between them.
   *
   * @param operator which
   * @param left the operand before it
   * @param right the operand after it
   */
  record Binary(Operator operator, Node left, Node right, Span at) implements Node {
    @Override
    public List<Node> parts() {
      return List.of(left, right);
    }

    /** Goes along a chain such as {@code A1+A2+A3} without going deep, as long as it hangs to the left. */
    @Override
    public boolean equals(Object other) {
      Node mine = this;
      Object yours = other;
      while (mine instanceof Binary a && yours instanceof Binary b) {
        if (a.operator != b.operator || !a.right.equals(b.right) || !a.at.equals(b.at)) {
          return false;
        }
        mine = a.left;
        yours = b.left;
      }
      return !(mine instanceof Binary) && mine.equals(yours);
    }

    @Override
    public int hashCode() {
      int hash = 0;
      Node part = this;
      while (part instanceof Binary binary) {
        hash = 31 * (31 * hash + binary.operator.hashCode()) + binary.right.hashCode();
        part = binary.left;
      }
      return 31 * hash + part.hashCode();
    }
  }

  /**
   * A function with its arguments.
   *
   * @param function its name in capitals, without the {@code _xlfn.} that files put before newer ones
   * @param arguments in order
   */
  record Call(String function, List<Node> arguments, Span at) implements Node {
    public Call {
      arguments = List.copyOf(arguments);
    }

    @Override
    public List<Node> parts() {
      return arguments;
    }
  }

  /**
   * A function that is itself worked out, with its arguments: {@code LAMBDA(x,x+1)(5)}, or one of another workbook.
   *
   * @param function what gives the function
   * @param arguments in order
   */
  record Applied(Node function, List<Node> arguments, Span at) implements Node {
    public Applied {
      arguments = List.copyOf(arguments);
    }

    @Override
    public List<Node> parts() {
      return Stream.concat(Stream.of(function), arguments.stream()).toList();
    }
  }

  /**
   * A constant array, {@code {1,2;3,4}}.
   *
   * @param rows of equal length, each of constants
   */
  record Array(List<List<Node>> rows, Span at) implements Node {
    public Array {
      rows = rows.stream().map(List::copyOf).toList();
    }

    @Override
    public List<Node> parts() {
      return rows.stream().flatMap(List::stream).toList();
    }
  }

  /**
   * Something that spreadsheets allow and this library does not follow; what depends on it is not checked.
   *
   * @param text as written
   * @param reason what it is, such as {@code a reference to another workbook}
   */
  record Unsupported(String text, String reason, Span at) implements Node {}

  /**
   * A corner of a reference.
   *
   * @param row 0 and up
   * @param rowFixed whether a dollar sign holds the row
   * @param column 0 and up
   * @param columnFixed whether a dollar sign holds the column
   */
  record Corner(int row, boolean rowFixed, int column, boolean columnFixed) {

    /** A corner that moves with its formula. */
    public static Corner of(Ref ref) {
      return new Corner(ref.row(), false, ref.column(), false);
    }

    /** A corner held by dollar signs. */
    public static Corner fixed(Ref ref) {
      return new Corner(ref.row(), true, ref.column(), true);
    }
  }

  /** What a reference spells. */
  enum Extent {
    /** One cell, {@code B7}. */
    CELL,
    /** A block, {@code B7:D9}. */
    BLOCK,
    /** Whole columns, {@code B:D}. */
    COLUMNS,
    /** Whole rows, {@code 7:9}. */
    ROWS
  }

  /** A sign with one operand. */
  enum Sign {
    /** Plus before. */
    PLUS("+"),
    /** Minus before. */
    MINUS("-"),
    /** At before: the one value of the same row or column. */
    AT("@"),
    /** Percent behind. */
    PERCENT("%");

    private final String spelling;

    Sign(String spelling) {
      this.spelling = spelling;
    }

    /** As it is written. */
    public String spelling() {
      return spelling;
    }
  }

  /** An operator between two operands. */
  enum Operator {
    /** Everything between two references. */
    RANGE(":", 9),
    /** What two references share. */
    INTERSECTION(" ", 8),
    /** Two references together. */
    UNION(",", 7),
    /** To the power of. */
    POWER("^", 5),
    /** Times. */
    TIMES("*", 4),
    /** Divided by. */
    OVER("/", 4),
    /** Plus. */
    PLUS("+", 3),
    /** Less. */
    MINUS("-", 3),
    /** Texts joined. */
    JOIN("&", 2),
    /** Equal. */
    EQUAL("=", 1),
    /** Not equal. */
    UNEQUAL("<>", 1),
    /** Less than. */
    LESS("<", 1),
    /** Less than or equal. */
    AT_MOST("<=", 1),
    /** More than. */
    MORE(">", 1),
    /** More than or equal. */
    AT_LEAST(">=", 1);

    private final String spelling;
    private final int strength;

    Operator(String spelling, int strength) {
      this.spelling = spelling;
      this.strength = strength;
    }

    /** As it is written. */
    public String spelling() {
      return spelling;
    }

    /** How strongly it binds: more binds first; equal strengths run from left to right. */
    int strength() {
      return strength;
    }
  }

  /**
   * A stretch of a formula's text. All stretches are equal, so that equal parts are equal wherever they stand.
   *
   * @param start where it begins, 0 for the first character after the equals sign
   * @param end where it has ended
   */
  record Span(int start, int end) {

    /** Of what was not read from a text. */
    public static final Span NONE = new Span(0, 0);

    @Override
    public boolean equals(Object other) {
      return other instanceof Span;
    }

    @Override
    public int hashCode() {
      return 0;
    }
  }
}
