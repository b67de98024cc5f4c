package squaresheet.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.formula.Value;
import squaresheet.takeoff.Rule;
import squaresheet.takeoff.Settings;

/**
 * A job with the settings that count: those that can be meant, each by itself and with the product chosen. Takeoff, layout,
 * workbook and papers read these and no others.
 */
final class JudgedSettings {

  private static final String STEP = "tape_step";

  private final JobInput input;

  JudgedSettings(JobInput input) {
    this.input = input;
  }

  Read<JobInput> read() {
    Read<Map<String, Value>> judged = Settings.judged(input.company().rulebook(), input.settings());
    List<Finding> findings = new ArrayList<>(judged.findings());
    JobInput job = input.withOnly(judged.value().orElseThrow());
    Optional<Finding> coarse = coarse(job);
    coarse.ifPresent(findings::add);
    return Read.of(coarse.isPresent() ? without(job, STEP) : job, findings);
  }

  private static JobInput without(JobInput job, String setting) {
    Map<String, Value> fewer = new LinkedHashMap<>(job.settings());
    fewer.remove(setting);
    return job.withOnly(fewer);
  }

  /** A step wider than the courses between two lines would round them down to nothing. */
  private static Optional<Finding> coarse(JobInput job) {
    double step = number(job, STEP);
    double wanted = number(job, "wanted_exposure");
    return job.selection()
        .shingle()
        .map(shingle -> number(job, "courses_per_line")
            * (wanted > 0 ? wanted : shingle.exposure().toInches()))
        .filter(spacing -> step > spacing)
        .flatMap(
            spacing -> job.company().rulebook().rule(STEP).map(rule -> off(rule, step, spacing)));
  }

  private static Finding off(Rule rule, double step, double spacing) {
    return Settings.off(
        rule,
        "no more than the courses between two lines, " + spacing + " in",
        Value.of(step),
        new Where.OfItem("job", STEP));
  }

  private static double number(JobInput job, String setting) {
    return Optional.ofNullable(job.settings().get(setting))
        .or(() -> job.company().rulebook().rule(setting).map(Rule::usual))
        .flatMap(value ->
            value instanceof Value.Number number ? Optional.of(number.value()) : Optional.empty())
        .orElse(0.0);
  }
}
