package squaresheet.job;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.finding.Severity;
import squaresheet.roof.PlaneNotes;
import squaresheet.roof.Roof;
import squaresheet.roof.RoofNotes;
import squaresheet.takeoff.Names;
import squaresheet.takeoff.Takeoff;
import squaresheet.units.Pitch;

/**
 * Puts pitches that are in doubt on the safe side: where a limit of the rules or rates lies within what was meant, the plane
 * is worked out on the side that takes more, costs more, or is not allowed.
 */
final class SafeSide {

  private static final CheckInfo NEAR_LIMIT = new CheckInfo(
      "pitch-near-limit", Severity.WARNING, "A pitch may lie on either side of a limit");

  /** The step between the last pitch on one side of a limit and the first on the other, in rise per 12. */
  private static final BigDecimal HAIR = new BigDecimal("0.01");

  private final JobInput input;
  private final List<Finding> findings = new ArrayList<>();

  SafeSide(JobInput input) {
    this.input = input;
  }

  Read<JobInput> settled() {
    boolean doubted =
        input.roof().planes().stream().anyMatch(plane -> plane.doubt().isPresent());
    Optional<Roof> roof = doubted ? Roof.resolve(input.roof()).value() : Optional.empty();
    return Read.of(roof.flatMap(this::takeoff).map(this::settled).orElse(input), findings);
  }

  private Optional<Takeoff> takeoff(Roof roof) {
    Names names = Names.of(roof).with(input.settings());
    return Takeoff.of(input.company().rulebook(), names, input.selection()).value();
  }

  private JobInput settled(Takeoff takeoff) {
    PitchLimits limits = new PitchLimits(takeoff, input.company().rates());
    return input.on(roof(plane -> plane
        .doubt()
        .flatMap(span -> limits.ofPlane(plane.id()).map(it -> settled(plane, span, it)))
        .orElse(plane)));
  }

  private RoofNotes roof(UnaryOperator<PlaneNotes> each) {
    return input.roof().with(input.roof().planes().stream().map(each).toList());
  }

  private PlaneNotes settled(PlaneNotes plane, Pitch.Span span, PitchLimits.OfPlane limits) {
    BigDecimal least = span.least().rise();
    BigDecimal most = span.most().rise();
    List<String> turning = new ArrayList<>();
    for (double at : limits.between(least.doubleValue(), most.doubleValue())) {
      BigDecimal above = BigDecimal.valueOf(at).setScale(2, RoundingMode.CEILING);
      BigDecimal below = above.subtract(HAIR);
      Map<String, Integer> pulls = limits.pulls(below.doubleValue(), above.doubleValue());
      int side = side(plane, below, above, pulls);
      if (side > 0) {
        least = least.max(above);
      } else if (side < 0) {
        most = most.min(below);
      }
      if (side != 0) {
        turning.add(new Pitch(BigDecimal.valueOf(at)).show() + " is a limit of '"
            + String.join("' and '", pulls.keySet()) + "'");
      }
    }
    Pitch safe = new Pitch(span.written().rise().max(least).min(most));
    if (!turning.isEmpty()) {
      findings.add(says(plane, span, turning, safe));
    }
    return plane.with(safe);
  }

  /**
   * The safe side of a limit: where all that can be told pulls one way, that; else the one with the higher price, which is
   * neither where the price is the same.
   */
  private int side(
      PlaneNotes plane, BigDecimal below, BigDecimal above, Map<String, Integer> pulls) {
    List<Integer> told =
        pulls.values().stream().filter(pull -> pull != 0).distinct().toList();
    return told.size() == 1 ? told.get(0) : price(plane, above).compareTo(price(plane, below));
  }

  private BigDecimal price(PlaneNotes plane, BigDecimal rise) {
    RoofNotes other = roof(one -> one.equals(plane) ? plane.with(new Pitch(rise)) : one);
    return JobResult.of(input.on(other))
        .value()
        .map(result -> result.estimate().total().amount())
        .orElse(BigDecimal.ZERO);
  }

  private static Finding says(PlaneNotes plane, Pitch.Span span, List<String> turning, Pitch safe) {
    String says = "pitch of plane '" + plane.id() + "' may be anything from " + span.show()
        + " as it is written, and " + String.join("; ", turning) + "; it is priced as "
        + safe.show() + ", the safe side; write the rise in 12, or one digit more";
    return new Finding(NEAR_LIMIT, plane.at("pitch"), span.written().show(), "", says, "");
  }
}
