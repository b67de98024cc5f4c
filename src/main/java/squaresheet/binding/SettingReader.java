package squaresheet.binding;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import squaresheet.finding.Neighbours;
import squaresheet.finding.Read;
import squaresheet.formula.Value;
import squaresheet.takeoff.Rule;
import squaresheet.takeoff.Settings;
import squaresheet.tape.Amount;
import squaresheet.tape.TapeReader;
import squaresheet.tape.TapeUnit;
import squaresheet.units.Unit;

/**
 * Reads what a person wrote beside the label of a setting: a length in tape notation, a pitch, a number with what it is of, a
 * word. What cannot be read is said, with what counts instead.
 */
final class SettingReader {

  private static final Unit INCH = Unit.parse("in");

  private final Rule rule;
  private final FieldNotes.Label label;

  SettingReader(Rule rule, FieldNotes.Label label) {
    this.rule = rule;
    this.label = label;
  }

  Read<Value> read() {
    Read<Value> read =
        switch (rule.holds()) {
          case NUMBER -> number();
          case TEXT -> word();
          case TRUTH -> truth();
        };
    Read<Value> judged = read.isClean() ? read.flatMap(this::judged) : read;
    return judged.isClean()
        ? judged
        : Read.nothing(judged.findings().stream()
            .map(finding -> finding.adding("; the usual " + rule.formula() + " counts instead"))
            .toList());
  }

  private Read<Value> judged(Value value) {
    return Settings.finding(rule, value, label.where())
        .map(off -> off.adding(inInches()))
        .<Read<Value>>map(Read::nothing)
        .orElseGet(() -> Read.of(value));
  }

  /** A bare number of feet that can only be meant as inches. */
  private String inInches() {
    TapeReader inches =
        new TapeReader(TapeUnit.INCHES, label.tape().marks(), label.tape().dates());
    boolean isLength = rule.unit().isLike(INCH) && label.tape().unit() != TapeUnit.INCHES;
    return isLength
            && label.tape().numbers().number(label.text()).isPresent()
            && length(inches).value().stream()
                .allMatch(value -> Settings.finding(rule, value, label.where()).isEmpty())
        ? "; read as " + label.text() + " " + label.tape().unit().word() + ": should it be "
            + label.text() + " inches?"
        : "";
  }

  private Read<Value> number() {
    if (rule.unit().isLike(INCH)) {
      return isNone() ? Read.of(Value.of(0)) : length(label.tape());
    }
    return rule.unit().kind() == Unit.Kind.PITCH
        ? label
            .tape()
            .pitch(label.written(), label.where())
            .map(pitch -> Value.of(pitch.rise().doubleValue()))
        : amount().flatMap(this::counted);
  }

  private Read<Amount> amount() {
    return label.tape().numbers().amount(label.written(), label.where(), rule.label());
  }

  private boolean isNone() {
    return amount()
        .value()
        .filter(amount -> amount.number().signum() == 0 && amount.of().isEmpty())
        .isPresent();
  }

  /** A length in tape notation, in the unit of the setting. */
  private Read<Value> length(TapeReader tape) {
    return tape.offset(label.written(), label.where())
        .map(length -> Value.of(length.toInches() * INCH.factorTo(rule.unit())));
  }

  private Read<Value> counted(Amount amount) {
    boolean isShare = rule.unit().equals(Unit.RATIO);
    if (amount.isPercent() && !isShare) {
      return refuse("must be a number (" + rule.unit() + "), but is the percentage");
    }
    Optional<Double> factor = amount.of().isEmpty() ? Optional.of(1.0) : factor(amount.of());
    return factor.isEmpty()
        ? refuse("must be a number" + (isShare ? "" : " (" + rule.unit() + ")") + ", but reads")
        : Read.of(Value.of(
            factor.get() == 1
                ? amount.value().doubleValue()
                : amount.value().multiply(BigDecimal.valueOf(factor.get())).doubleValue()));
  }

  /**
   * What a number with these words behind it is multiplied by: by one where they only say again what the label or the unit of
   * the setting says; empty where they say anything else.
   */
  private Optional<Double> factor(String words) {
    List<String> known = Tokens.of(rule.label() + " " + rule.unit());
    return known.containsAll(Tokens.of(words))
        ? Optional.of(1.0)
        : unit(words).filter(unit -> unit.isLike(rule.unit())).map(it -> it.factorTo(rule.unit()));
  }

  private static Optional<Unit> unit(String words) {
    try {
      return Optional.of(Unit.parse(words));
    } catch (IllegalArgumentException none) {
      return Optional.empty();
    }
  }

  private Read<Value> word() {
    String text = Tokens.plain(label.text());
    Optional<String> choice =
        rule.choices().stream().filter(text::equalsIgnoreCase).findFirst();
    return rule.choices().isEmpty()
        ? Read.of(new Value.Text(text))
        : choice
            .map(word -> Read.<Value>of(new Value.Text(word)))
            .orElseGet(() -> notChosen(String.join(", ", rule.choices())));
  }

  private Read<Value> truth() {
    return switch (Tokens.plain(label.text())) {
      case "true", "yes" -> Read.of(new Value.Truth(true));
      case "false", "no" -> Read.of(new Value.Truth(false));
      default -> notChosen("yes, no");
    };
  }

  private Read<Value> notChosen(String words) {
    return Read.nothing(Complaint.WORD_UNKNOWN.at(
        label.where(),
        label.text(),
        "",
        rule.label() + " must be one of " + words + ", but is '" + label.text() + "'"
            + Neighbours.sentence(label.text(), rule.choices())));
  }

  private Read<Value> refuse(String mustBe) {
    return Read.nothing(Complaint.WORD_UNKNOWN.at(
        label.where(), label.text(), "", rule.label() + " " + mustBe + " '" + label.text() + "'"));
  }
}
