package squaresheet.binding;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.takeoff.Rule;
import squaresheet.takeoff.SettingRange;

/**
 * A single length that formulas count in inches or feet and a metric job types in millimetres or metres: the typed cell, and
 * beside it the cell that formulas read.
 */
enum MetricLength {
  INCHES("mm", "25.4", "0.0##", "0.00## \"in\""),
  FEET("m", "0.3048", "0.000##", "0.00## \"ft\"");

  /** Far finer than any tape, and whole inches stay whole. */
  private static final int DECIMALS = 12;

  private final String symbol;
  private final BigDecimal each;
  private final String typedFormat;
  private final String format;

  MetricLength(String symbol, String each, String typedFormat, String format) {
    this.symbol = symbol;
    this.each = new BigDecimal(each);
    this.typedFormat = typedFormat;
    this.format = format;
  }

  /** How a setting's length is typed; nothing where it is no length. */
  static Optional<MetricLength> of(Rule setting) {
    return switch (setting.unit().toString()) {
      case "in" -> Optional.of(INCHES);
      case "ft" -> Optional.of(FEET);
      default -> Optional.empty();
    };
  }

  /** The unit it is typed in. */
  String symbol() {
    return symbol;
  }

  /** A range of numbers as they are typed. */
  SettingRange typed(SettingRange range) {
    return range.in(symbol, each.doubleValue());
  }

  /** The cell to type in. */
  Entry typed(double number) {
    return Entries.input(BigDecimal.valueOf(number).multiply(each).doubleValue(), typedFormat);
  }

  /** The cell that formulas read. */
  Entry beside(String typed) {
    return Entries.computed(
        "ROUND(" + typed + "/" + each.toPlainString() + "," + DECIMALS + ")", format);
  }

  /** What was typed, as formulas count it. */
  double read(double typed) {
    return BigDecimal.valueOf(typed / each.doubleValue())
        .setScale(DECIMALS, RoundingMode.HALF_UP)
        .doubleValue();
  }
}
