package squaresheet.sheet;

/**
 * A rectangle of cells on one sheet. Text form: {@code B7:D9}, or {@code B7} where it is one cell.
 *
 * @param first the upper left cell
 * @param last the lower right cell, not above or left of the first
 */
public record Block(Ref first, Ref last) {

  public Block {
    if (last.row() < first.row() || last.column() < first.column()) {
      throw new IllegalArgumentException(
          "a block must run down and right, but runs from " + first + " to " + last);
    }
  }

  /**
   * Reads the text form, strictly.
   *
   * @throws IllegalArgumentException with a sentence, if the text is not one
   */
  public static Block parse(String text) {
    int colon = text.indexOf(':');
    return colon < 0
        ? new Block(Ref.parse(text), Ref.parse(text))
        : new Block(Ref.parse(text.substring(0, colon)), Ref.parse(text.substring(colon + 1)));
  }

  /** Whether the cell lies in the block. */
  public boolean contains(Ref ref) {
    return ref.row() >= first.row()
        && ref.row() <= last.row()
        && ref.column() >= first.column()
        && ref.column() <= last.column();
  }

  /** How many rows the block covers. */
  public int rows() {
    return last.row() - first.row() + 1;
  }

  /** How many columns the block covers. */
  public int columns() {
    return last.column() - first.column() + 1;
  }

  @Override
  public String toString() {
    return first.equals(last) ? first.toString() : first + ":" + last;
  }
}
