package squaresheet.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import squaresheet.finding.Read;
import squaresheet.formula.Value;
import squaresheet.product.Selection;
import squaresheet.roof.RoofNotes;

/**
 * Everything one job is worked out from. On a metric job lines are rounded down to whole 5 mm unless something else is
 * typed, since an inch is on no metric tape (<em>common practice, no source</em>).
 *
 * @param card the job
 * @param roof the roof as written down
 * @param company what the company brings
 * @param selection the products chosen
 * @param settings what the estimator typed, by the name of the setting; the others are as usual
 * @param unread what the tape sheet has beside that and could not be read, with what was answered to it
 */
public record JobInput(
    JobCard card,
    RoofNotes roof,
    Company company,
    Selection selection,
    Map<String, Value> settings,
    List<Unread> unread) {

  private static final String TAPE_STEP = "tape_step";

  private static final double FIVE_MILLIMETRES = 5 / 25.4;

  public JobInput {
    Map<String, Value> all = new LinkedHashMap<>(settings);
    if (card.isMetric() && company.rulebook().rule(TAPE_STEP).isPresent()) {
      all.putIfAbsent(TAPE_STEP, Value.of(FIVE_MILLIMETRES));
    }
    settings = java.util.Collections.unmodifiableMap(all);
    unread = List.copyOf(unread);
  }

  /** A job of which everything could be read. */
  public JobInput(
      JobCard card,
      RoofNotes roof,
      Company company,
      Selection selection,
      Map<String, Value> settings) {
    this(card, roof, company, selection, settings, List.of());
  }

  /** A job on this roof with the first product of the catalogue for each part and every setting as usual. */
  public JobInput(JobCard card, RoofNotes roof, Company company) {
    this(card, roof, company, Selection.firstOfEach(company.catalogue()), Map.of());
  }

  /**
   * The same job with every pitch that is in doubt put on the safe side of the limits of the rules and rates that it may lie
   * on either side of; each is said.
   */
  public Read<JobInput> onTheSafeSide() {
    return new SafeSide(this).settled();
  }

  /** The same job on another roof. */
  JobInput on(RoofNotes other) {
    return new JobInput(card, other, company, selection, settings, unread);
  }

  /** The same job with more that could not be read. */
  public JobInput and(List<Unread> more) {
    List<Unread> all = new ArrayList<>(unread);
    all.addAll(more);
    return new JobInput(card, roof, company, selection, settings, all);
  }

  /**
   * The same job with what a person answers to a row that could not be read.
   *
   * @param name what the row is called on the tape sheet
   */
  public JobInput answered(String name, Unread.Answer answer, String reason) {
    List<Unread> all = unread.stream()
        .map(one -> one.name().equals(name) ? one.answered(answer, reason) : one)
        .toList();
    return new JobInput(card, roof, company, selection, settings, all);
  }

  /** The same job with these settings typed and no others. */
  JobInput withOnly(Map<String, Value> typed) {
    return new JobInput(card, roof, company, selection, typed, unread);
  }

  /** The same job with a number typed for a setting, in the setting's unit. */
  public JobInput with(String setting, double number) {
    return with(setting, Value.of(number));
  }

  /** The same job with a word typed for a setting. */
  public JobInput with(String setting, String word) {
    return with(setting, new Value.Text(word));
  }

  /** The same job with a value typed for a setting. */
  public JobInput with(String setting, Value value) {
    Map<String, Value> more = new LinkedHashMap<>(settings);
    more.put(setting, value);
    return new JobInput(card, roof, company, selection, more, unread);
  }
}
