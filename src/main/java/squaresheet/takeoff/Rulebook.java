package squaresheet.takeoff;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import squaresheet.finding.Neighbours;
import squaresheet.finding.Read;
import squaresheet.finding.TextTable;
import squaresheet.finding.Where;
import squaresheet.formula.Formula;

/**
 * The rules of a takeoff, each under a name of its own. Text form: a table, one rule a line, lines starting with # skipped.
 */
public final class Rulebook {

  private static final String STANDARD = "standard-rulebook.csv";

  private final Map<String, Rule> rules;
  private final Map<String, Formula> formulas;
  private final List<Rule> inOrder;

  Rulebook(Map<String, Rule> rules, Map<String, Formula> formulas, List<Rule> inOrder) {
    this.rules = new LinkedHashMap<>(rules);
    this.formulas = Map.copyOf(formulas);
    this.inOrder = List.copyOf(inOrder);
  }

  private static final class Standard {
    static final Rulebook BOOK = load();

    private static Rulebook load() {
      Read<Rulebook> read = Rulebook.read(text(), STANDARD);
      return read.value()
          .filter(book -> read.isClean())
          .orElseThrow(() -> new IllegalStateException(
              "the standard rulebook must be sound, but is not: " + read.findings()));
    }

    private static String text() {
      try (InputStream in = Rulebook.class.getResourceAsStream(STANDARD)) {
        return new String(in.readAllBytes(), StandardCharsets.UTF_8);
      } catch (IOException unreadable) {
        throw new UncheckedIOException(unreadable);
      }
    }
  }

  /** The rulebook that the library ships. */
  public static Rulebook standard() {
    return Standard.BOOK;
  }

  /** Reads a whole rulebook. Rules that cannot be read are left out and said. */
  public static Read<Rulebook> read(String text, String file) {
    return read(text, file, Map.of());
  }

  /**
   * This rulebook, with the rules of a company's own in place of those of the same name, and its new ones added. Each rule
   * that gives way is said; one that cannot be read leaves the old one in place.
   */
  public Read<Rulebook> overriddenBy(String text, String file) {
    return read(text, file, rules);
  }

  /** The same with rules that stand elsewhere than in a text table, such as on a sheet. */
  public Read<Rulebook> overriddenBy(List<RuleLine> lines) {
    return new RulebookReader(rules, new Where.OfItem("rulebook", "rules")).read(lines);
  }

  private static Read<Rulebook> read(String text, String file, Map<String, Rule> standard) {
    return TextTable.read(text, file, "the rulebook", Complaints.NOT_READ)
        .flatMap(table -> new RulebookReader(standard, new Where.InFile(file))
            .read(table.lines().stream()
                .map(line -> new RuleLine(
                    table.cells(line), column -> new Where.InLine(file, line.number(), column)))
                .toList()));
  }

  /** This rulebook with one rule put in place of the one of its name, or added; for a rule edited in a workbook. */
  public Read<Rulebook> with(Rule rule, Where where) {
    Map<String, Rule> all = new LinkedHashMap<>(rules);
    all.put(rule.name(), rule);
    return new RulebookReader(all, where).assemble(all, Map.of(rule.name(), where));
  }

  /** All rules, in the order of the table. */
  public Collection<Rule> rules() {
    return List.copyOf(rules.values());
  }

  /** The rules that are worked out, each after those it asks for. */
  public List<Rule> inOrder() {
    return inOrder;
  }

  /** The rule of that name, if there is one. */
  public Optional<Rule> rule(String name) {
    return Optional.ofNullable(rules.get(name));
  }

  /** The formula of a rule that is worked out, read. */
  public Optional<Formula> formula(String name) {
    return Optional.ofNullable(formulas.get(name));
  }

  /** The settings, in the order of the table. */
  public List<Rule> settings() {
    return rules.values().stream()
        .filter(rule -> rule.kind() == Rule.Kind.SETTING)
        .toList();
  }

  /** The names that a rule asks for, in the order of its formula. */
  public List<String> asks(String name) {
    return formula(name).map(RulebookReader::names).orElse(List.of());
  }

  /** The names nearest to one that is not known, as {@code ; nearest: 'a', 'b'}. */
  public String nearest(String name) {
    return Neighbours.sentence(name, new ArrayList<>(rules.keySet()));
  }
}
