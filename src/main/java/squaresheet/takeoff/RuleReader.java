package squaresheet.takeoff;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import squaresheet.finding.Finding;
import squaresheet.finding.OwnWords;
import squaresheet.takeoff.Rule.Holds;
import squaresheet.takeoff.Rule.Kind;
import squaresheet.takeoff.Rule.Per;
import squaresheet.tape.NumberReader;
import squaresheet.units.Unit;

/** Reads one line of a rulebook; where a standard rule of that name exists, what the line leaves empty is taken from it. */
final class RuleReader {

  private final RuleLine line;
  private final Optional<Rule> standard;
  private final List<Finding> findings = new ArrayList<>();

  RuleReader(RuleLine line, Optional<Rule> standard) {
    this.line = line;
    this.standard = standard;
  }

  List<Finding> findings() {
    return findings;
  }

  Optional<Rule> read() {
    try {
      Rule rule = new Rule(
          line.text("name"),
          per(),
          kind(),
          formula(),
          unit(),
          holds(),
          choices(),
          or("orders", standard.map(Rule::orders)),
          or("label", standard.map(Rule::label)),
          or("source", standard.map(rule0 -> "company")),
          line.text("note"));
      if (findings.isEmpty() && rule.kind() == Kind.SETTING) {
        judge(rule);
      }
      return findings.isEmpty() ? Optional.of(rule) : Optional.empty();
    } catch (IllegalArgumentException refused) {
      says("", OwnWords.of(refused));
      return Optional.empty();
    }
  }

  /** A default must be what may be typed, and a standard setting stays in its unit, which other rules count on. */
  private void judge(Rule rule) {
    String unit = standard.map(RuleReader::written).orElse(written(rule));
    if (!unit.equals(written(rule))) {
      says(
          "unit",
          "the unit of the setting " + rule.name() + " must stay '" + unit + "', but is '"
              + written(rule) + "'");
    } else if (rule.holds() == Holds.NUMBER
        && NumberReader.POINT.share(rule.formula()).isEmpty()) {
      says("formula", "the default must be a number, but reads '" + rule.formula() + "'");
    } else {
      Settings.finding(rule, rule.usual(), line.at("formula")).ifPresent(findings::add);
    }
  }

  private void says(String column, String sentence) {
    findings.add(new Finding(Complaints.NOT_READ, line.at(column), sentence));
  }

  private String or(String column, Optional<String> otherwise) {
    String text = line.text(column);
    return text.isEmpty() ? otherwise.orElse("") : text;
  }

  private Per per() {
    String text = or("per", standard.map(rule -> rule.per().toString()));
    return Per.parse(text).orElseGet(() -> {
      says("per", "per must be job, plane or edge, but reads '" + text + "'");
      return Per.JOB;
    });
  }

  private Kind kind() {
    String text = or("kind", standard.map(rule -> rule.kind().toString()));
    return Kind.parse(text.isEmpty() ? "rule" : text).orElseGet(() -> {
      says("kind", "kind must be given, setting, rule or limit, but reads '" + text + "'");
      return Kind.RULE;
    });
  }

  private String formula() {
    String text = or("formula", standard.map(Rule::formula));
    return text.startsWith("=") ? text.substring(1).strip() : text;
  }

  private String unitText() {
    return or("unit", standard.map(RuleReader::written));
  }

  private Unit unit() {
    String text = unitText();
    if (text.equals("text") || text.equals("truth")) {
      return Unit.RATIO;
    }
    try {
      return Unit.parse(text);
    } catch (IllegalArgumentException unreadable) {
      says("unit", OwnWords.of(unreadable));
      return Unit.RATIO;
    }
  }

  private Holds holds() {
    return switch (unitText()) {
      case "text" -> Holds.TEXT;
      case "truth" -> Holds.TRUTH;
      default -> Holds.NUMBER;
    };
  }

  private List<String> choices() {
    String text = or("choices", standard.map(rule -> String.join("|", rule.choices())));
    return text.isEmpty()
        ? List.of()
        : Arrays.stream(text.split("\\|")).map(String::strip).toList();
  }

  /** The unit column of a rule. */
  static String written(Rule rule) {
    return switch (rule.holds()) {
      case TEXT -> "text";
      case TRUTH -> "truth";
      case NUMBER -> rule.unit().toString();
    };
  }
}
