package squaresheet.binding;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.formula.Value;
import squaresheet.job.Company;
import squaresheet.job.JobCard;
import squaresheet.job.JobInput;
import squaresheet.job.Unread;
import squaresheet.product.Selection;
import squaresheet.takeoff.Rule;
import squaresheet.takeoff.Rulebook;

/** Makes a job of a field sheet: its labels are the card and the settings, the rest is as the company has it. */
final class FieldJob {

  /** Labels that go by another name among the settings. */
  private static final Map<String, String> SETTINGS = Map.of("waste_rate", "typed_waste");

  private final FieldNotes notes;
  private final List<Finding> findings = new ArrayList<>();
  private final List<Unread> unread = new ArrayList<>();

  FieldJob(FieldNotes notes) {
    this.notes = notes;
    unread.addAll(notes.unread());
  }

  Read<JobInput> of(Company company) {
    JobCard card = new JobCard(
        said("job", "Unnamed job"),
        said("measured_by", ""),
        said("date", ""),
        notes.unit(),
        said("number", ""),
        new JobCard.Customer(said("customer", ""), said("site", ""), said("phone", "")));
    Map<String, Value> settings = new LinkedHashMap<>();
    notes.labels().forEach((property, label) -> setting(company.rulebook(), property)
        .filter(rule -> !label.text().isBlank())
        .flatMap(rule -> value(rule, label))
        .ifPresent(value -> settings.put(setting(property), value)));
    Selection selection = Selection.firstOfEach(company.catalogue());
    return Read.of(new JobInput(card, notes.roof(), company, selection, settings, unread), findings)
        .flatMap(JobInput::onTheSafeSide);
  }

  /** The setting that a label of that property gives. */
  static String setting(String property) {
    return SETTINGS.getOrDefault(property, property);
  }

  private String said(String property, String otherwise) {
    return notes
        .text(property)
        .map(String::strip)
        .filter(text -> !text.isEmpty())
        .orElse(otherwise);
  }

  private static Optional<Rule> setting(Rulebook rulebook, String property) {
    return rulebook.rule(setting(property)).filter(rule -> rule.kind() == Rule.Kind.SETTING);
  }

  private Optional<Value> value(Rule rule, FieldNotes.Label label) {
    Read<Value> read = new SettingReader(rule, label).read();
    findings.addAll(read.findings());
    if (read.value().isEmpty()) {
      unread.add(Unread.of(
          label.where(),
          Unread.Kind.SETTING,
          rule.label(),
          List.of(rule.label(), label.text()),
          rule.label(),
          read.findings().get(0).says()));
    }
    return read.value();
  }
}
