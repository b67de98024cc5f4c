package squaresheet.sheet;

/**
 * A cell as the file has it.
 *
 * @param stored the typed content, or the value that the formula had when the file was saved
 * @param formula the formula without its equals sign, or empty where there is none
 * @param format the number format code, {@code General} unless set
 */
public record Cell(Content stored, String formula, String format) {

  /** An empty, unformatted cell. */
  public static final Cell EMPTY = new Cell(new Content.Blank(), "", "General");

  /** A cell with typed content. */
  public static Cell of(Content content) {
    return new Cell(content, "", "General");
  }

  /** Whether the cell holds a formula. */
  public boolean isFormula() {
    return !formula.isEmpty();
  }

  /** Whether the cell holds neither formula nor content. */
  public boolean isBlank() {
    return formula.isEmpty() && stored.isBlank();
  }

  /** Whether the number format shows a date or a time. */
  public boolean isDate() {
    return NumberFormat.isDate(format);
  }

  /** Whether the number format shows hundredths. */
  public boolean isPercent() {
    return NumberFormat.isPercent(format);
  }
}
