package squaresheet.formula;

import java.util.List;
import squaresheet.sheet.Content;

/** What a formula comes to. */
public sealed interface Value {

  /**
   * A number; dates are numbers.
   *
   * @param value finite
   */
  record Number(double value) implements Value {}

  /**
   * A text.
   *
   * @param value which may be empty
   */
  record Text(String value) implements Value {}

  /**
   * TRUE or FALSE.
   *
   * @param value which
   */
  record Truth(boolean value) implements Value {}

  /**
   * A spreadsheet error.
   *
   * @param code such as {@code #DIV/0!}
   */
  record Fault(String code) implements Value {}

  /** What an empty cell holds. */
  record Blank() implements Value {}

  /**
   * Values in rows and columns.
   *
   * @param rows how many, 1 or more
   * @param columns how many, 1 or more
   * @param cells row by row
   */
  record Matrix(int rows, int columns, List<Value> cells) implements Value {
    public Matrix {
      cells = cells instanceof BlockValues ? cells : List.copyOf(cells);
      if (rows < 1 || columns < 1 || cells.size() != rows * columns) {
        throw new IllegalArgumentException("a matrix of " + rows + " rows and " + columns
            + " columns must hold as many values, but holds " + cells.size());
      }
    }

    /** One column of values, from top to bottom. */
    public static Matrix column(List<Value> values) {
      return new Matrix(values.size(), 1, values);
    }

    /** The value in a row and a column, 0 and up. */
    public Value at(int row, int column) {
      return cells.get(row * columns + column);
    }
  }

  /**
   * This library does not know: something unsupported, volatile or circular went in. Never a wrong value instead.
   *
   * @param reason what went in, such as {@code function CUBEVALUE is not followed}
   */
  record NotChecked(String reason) implements Value {}

  /** The value in words, for people to read. */
  default String show() {
    return Explainer.plain(this);
  }

  /** A number as a value, without the minus of a zero; what is not finite is {@code #NUM!}. */
  static Value of(double number) {
    return Double.isFinite(number) ? new Number(number + 0.0) : new Fault("#NUM!");
  }

  /** What a cell holds, as a value. */
  static Value of(Content content) {
    if (content instanceof Content.Numeric number) {
      return of(number.value());
    }
    if (content instanceof Content.Text text) {
      return new Text(text.value());
    }
    if (content instanceof Content.Truth truth) {
      return new Truth(truth.value());
    }
    if (content instanceof Content.Fault fault) {
      return new Fault(fault.code());
    }
    return new Blank();
  }

  /** This value as a cell holds it; blank where no cell holds such a thing. */
  default Content content() {
    if (this instanceof Number number) {
      return new Content.Numeric(number.value());
    }
    if (this instanceof Text text) {
      return new Content.Text(text.value());
    }
    if (this instanceof Truth truth) {
      return new Content.Truth(truth.value());
    }
    return this instanceof Fault fault ? new Content.Fault(fault.code()) : new Content.Blank();
  }

  /** Whether the library stands by this value (it may be a spreadsheet error). */
  default boolean isChecked() {
    return !(this instanceof NotChecked);
  }
}
