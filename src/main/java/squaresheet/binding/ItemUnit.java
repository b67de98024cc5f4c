package squaresheet.binding;

import java.util.OptionalDouble;
import squaresheet.sheet.Cell;

/** The unit in which a cell holds its number, and the way to feet, square feet, rise per 12 and plain ratios and back. */
final class ItemUnit {

  private static final double RUN = 12;

  private final UnitWord unit;
  private final boolean percentShown;

  ItemUnit(String symbol, Cell cell) {
    unit = UnitWords.ofSymbol(symbol)
        .filter(it -> it.kind() != Holds.MONEY)
        .orElse(new UnitWord("", Holds.NUMBER, 1, ""));
    percentShown = cell.format().contains("%");
  }

  OptionalDouble plain(double number) {
    if (unit.symbol().equals("°")) {
      return number >= 0 && number < 90
          ? OptionalDouble.of(RUN * Math.tan(Math.toRadians(number)))
          : OptionalDouble.empty();
    }
    return OptionalDouble.of(isAsItStands() ? number : number * unit.base());
  }

  double of(double plain) {
    if (unit.symbol().equals("°")) {
      return Math.toDegrees(Math.atan(plain / RUN));
    }
    return isAsItStands() ? plain : plain / unit.base();
  }

  /** A percent format shows 0.1 as 10%, so the cell holds the ratio; rise per 12 is what pitches are counted in. */
  private boolean isAsItStands() {
    return (unit.kind() == Holds.RATIO && percentShown) || unit.kind() == Holds.PITCH;
  }
}
