package squaresheet.verify;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Value;

/** Is a factor beside a pitch the one that belongs to it? */
final class PitchFactorOff implements Check<PitchFactor> {

  private static final CheckInfo INFO =
      new CheckInfo("pitch-factor-off", Severity.ERROR, "A pitch factor does not fit its pitch");

  /** Printed tables round factors to three decimals. */
  private static final double ROUNDED = 0.0006;

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(PitchFactor row) {
    double wanted = row.wanted();
    return Math.abs(row.factor() - wanted) <= ROUNDED || row.isHeld()
        ? Stream.empty()
        : Stream.of(says(row, wanted));
  }

  private static Finding says(PitchFactor row, double wanted) {
    String slip = slip(row);
    String says = "is a factor of " + Shown.number(row.factor()) + " for a pitch of "
        + Shown.number(row.rise())
        + ":12, but the pitch factor is the root of 1 + (rise/12)², " + Shown.number(wanted)
        + (slip.isEmpty() ? "" : "; " + Shown.number(row.factor()) + " is exactly " + slip);
    return Says.about(INFO, row.book(), row.at(), new Value.Number(wanted), says);
  }

  private static String slip(PitchFactor row) {
    double slope = row.rise() / 12;
    double factor = Math.hypot(1, slope);
    Map<String, Double> slips = new LinkedHashMap<>();
    slips.put("1 + rise/12, which is no slope length", 1 + slope);
    slips.put("the factor of hips and valleys", Math.sqrt(2 + slope * slope));
    slips.put("the factor taken twice", factor * factor);
    slips.put("1, as for a flat roof", 1.0);
    slips.put("the cosine, the factor turned over", 1 / factor);
    slips.put("what 1/COS makes of the rise taken as radians", 1 / Math.cos(row.rise()));
    return slips.entrySet().stream()
        .filter(entry -> Math.abs(entry.getValue() - row.factor()) <= ROUNDED)
        .map(Map.Entry::getKey)
        .findFirst()
        .orElse("");
  }
}
