package squaresheet.binding;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.formula.Value;
import squaresheet.job.Company;
import squaresheet.job.JobCard;
import squaresheet.job.JobInput;
import squaresheet.product.Selection;
import squaresheet.takeoff.Rule;
import squaresheet.takeoff.Rulebook;
import squaresheet.tape.TapeReader;
import squaresheet.units.Length;
import squaresheet.units.Unit;

/** Makes a job of a field sheet: its labels are the card and the settings, the rest is as the company has it. */
final class FieldJob {

  private static final Unit INCH = Unit.parse("in");

  /** Labels that go by another name among the settings. */
  private static final Map<String, String> SETTINGS = Map.of("waste_rate", "typed_waste");

  private final FieldNotes notes;
  private final Locale locale;
  private final List<Finding> findings = new ArrayList<>();

  FieldJob(FieldNotes notes, Locale locale) {
    this.notes = notes;
    this.locale = locale;
  }

  Read<JobInput> of(Company company) {
    JobCard card = new JobCard(
        said("job", "Unnamed job"), said("measured_by", ""), said("date", ""), notes.unit());
    Map<String, Value> settings = new LinkedHashMap<>();
    notes.labels().forEach((property, label) -> setting(company.rulebook(), property)
        .filter(rule -> !label.text().isBlank())
        .flatMap(rule -> value(rule, label))
        .ifPresent(value -> settings.put(SETTINGS.getOrDefault(property, property), value)));
    Selection selection = Selection.firstOfEach(company.catalogue());
    return Read.of(new JobInput(card, notes.roof(), company, selection, settings), findings);
  }

  private String said(String property, String otherwise) {
    return notes
        .text(property)
        .map(String::strip)
        .filter(text -> !text.isEmpty())
        .orElse(otherwise);
  }

  private static Optional<Rule> setting(Rulebook rulebook, String property) {
    return rulebook
        .rule(SETTINGS.getOrDefault(property, property))
        .filter(rule -> rule.kind() == Rule.Kind.SETTING);
  }

  private Optional<Value> value(Rule rule, FieldNotes.Label label) {
    if (rule.holds() == Rule.Holds.TEXT) {
      return Optional.of(new Value.Text(label.text().strip().toLowerCase(Locale.ROOT)));
    }
    return rule.unit().isLike(INCH) ? length(rule, label) : number(rule, label);
  }

  /** A length in tape notation, in the unit of the setting. */
  private Optional<Value> length(Rule rule, FieldNotes.Label label) {
    Read<Length> read = TapeReader.of(notes.unit(), locale).offset(label.text(), label.where());
    findings.addAll(read.findings());
    return read.isClean()
        ? read.value().map(length -> Value.of(length.toInches() * INCH.factorTo(rule.unit())))
        : Optional.empty();
  }

  private Optional<Value> number(Rule rule, FieldNotes.Label label) {
    String text = label.text().strip();
    boolean percent = text.endsWith("%");
    String digits = percent ? text.substring(0, text.length() - 1).strip() : text;
    try {
      double number = Double.parseDouble(digits.replace(',', '.'));
      return Optional.of(Value.of(percent ? number / 100 : number));
    } catch (NumberFormatException words) {
      findings.add(Complaint.WORD_UNKNOWN.at(
          label.where(),
          text,
          rule.formula(),
          rule.label() + " must be a number, but is '" + text + "'; taken as " + rule.formula()));
      return Optional.empty();
    }
  }
}
