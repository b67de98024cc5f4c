package squaresheet.binding;

/** What the cells of a column must hold. */
enum Holds {
  TEXT,
  LENGTH,
  AREA,
  SQUARES,
  PITCH,
  RATIO,
  FACTOR,
  NUMBER,
  MONEY,
  DATE;

  /** Whether a heading in a unit of the other kind can stand over this. */
  boolean takes(Holds unit) {
    return switch (this) {
      case AREA, SQUARES -> unit == AREA || unit == SQUARES;
      case NUMBER -> unit != MONEY && unit != RATIO && unit != PITCH;
      case FACTOR -> unit == NUMBER;
      default -> unit == this;
    };
  }

  /** Whether the cells hold numbers, or text that reads as one. */
  boolean isNumeric() {
    return this != TEXT && this != DATE;
  }
}
