package squaresheet.job;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import squaresheet.estimate.Rate;
import squaresheet.estimate.Rates;
import squaresheet.formula.Value;
import squaresheet.takeoff.PitchRules;
import squaresheet.takeoff.Rule;
import squaresheet.takeoff.Takeoff;

/**
 * The pitches at which a rule of the rulebook or a rate of the company turns from one thing to another.
 *
 * @param takeoff the quantities of the job
 * @param rules its rules
 * @param rates the company's rates
 */
record PitchLimits(Takeoff takeoff, PitchRules rules, Rates rates) {

  /** Limits are found to a ten-millionth of an inch of rise, and taken for a millionth where that is on the same side. */
  private static final double NEAR = 1e-7;

  private static final double NAMED = 1e6;
  /** So many parts of a span are looked at, so that two limits in it cannot undo each other unseen. */
  private static final int PARTS = 16;

  PitchLimits(Takeoff takeoff, Rates rates) {
    this(takeoff, new PitchRules(takeoff), rates);
  }

  Optional<OfPlane> ofPlane(String plane) {
    return rules.row(plane).map(OfPlane::new);
  }

  /** The limits of one plane. */
  final class OfPlane {

    private final int row;

    private OfPlane(int row) {
      this.row = row;
    }

    /** The limits between two pitches: each is the first pitch on its steeper side. */
    List<Double> between(double least, double most) {
      List<Double> found = new ArrayList<>();
      double part = (most - least) / PARTS;
      for (int at = 0; at < PARTS; at++) {
        gather(least + at * part, least + (at + 1) * part, found);
      }
      return found;
    }

    private void gather(double low, double high, List<Double> found) {
      if (outcome(low).equals(outcome(high))) {
        return;
      }
      if (high - low < NEAR) {
        double named = Math.rint(high * NAMED) / NAMED;
        found.add(outcome(named).equals(outcome(high)) ? named : high);
        return;
      }
      double middle = (low + high) / 2;
      gather(low, middle, found);
      gather(middle, high, found);
    }

    private Map.Entry<List<Value>, Map<String, BigDecimal>> outcome(double rise) {
      return Map.entry(rules.at(row, rise), costs(rise));
    }

    /** What each item of work on the plane costs at this pitch, by what it is called. */
    private Map<String, BigDecimal> costs(double rise) {
      double stories = takeoff.number("building_stories").orElse(1.0);
      return rates.at(rise, stories).entrySet().stream()
          .filter(entry -> isOnPlane(entry.getKey()))
          .collect(Collectors.toMap(
              entry -> "rate of " + entry.getKey().item(),
              Map.Entry::getValue,
              (one, other) -> one,
              LinkedHashMap::new));
    }

    private boolean isOnPlane(Rate rate) {
      return takeoff
          .rulebook()
          .rule(rate.quantity())
          .filter(rule -> rule.per() == Rule.Per.PLANE)
          .flatMap(rule -> takeoff.number(rule.name(), row))
          .filter(quantity -> quantity > 0)
          .isPresent();
    }

    /** What a limit between two pitches changes, and to which side each change makes the plane dearer; 0 where that is not told. */
    Map<String, Integer> pulls(double lower, double steeper) {
      Map<String, Integer> pulls = rules.pulls(row, lower, steeper);
      Map<String, BigDecimal> behind = costs(steeper);
      costs(lower).forEach((item, cost) -> {
        BigDecimal other = behind.getOrDefault(item, cost);
        if (cost.compareTo(other) != 0) {
          pulls.put(item, other.compareTo(cost));
        }
      });
      return pulls;
    }
  }
}
