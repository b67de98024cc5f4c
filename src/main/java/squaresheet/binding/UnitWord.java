package squaresheet.binding;

/**
 * A unit as headings name it.
 *
 * @param symbol our spelling, such as {@code sq ft}
 * @param kind what a column in this unit holds
 * @param base how many feet, square feet or plain numbers one of it is
 * @param per what a price is for, such as {@code bundle}; empty where it is not a price
 */
record UnitWord(String symbol, Holds kind, double base, String per) {

  /** This unit, for one of something. */
  UnitWord per(String pack) {
    return new UnitWord(symbol, kind, base, pack);
  }

  @Override
  public String toString() {
    return per.isEmpty() ? symbol : symbol + "/" + per;
  }
}
