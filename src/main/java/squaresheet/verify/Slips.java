package squaresheet.verify;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import squaresheet.formula.Formula;
import squaresheet.formula.Node;
import squaresheet.formula.Scope;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.takeoff.Rule;
import squaresheet.takeoff.Takeoff;

/** Tries the known slips on a rule and says which one makes exactly the value that is there. */
final class Slips {

  private static final List<String> FACTORS = List.of("pitch_factor");

  private final Modelled cell;
  private final Takeoff takeoff;

  Slips(Modelled cell) {
    this.cell = cell;
    takeoff = cell.model().takeoff();
  }

  /** The slip in words. */
  Optional<String> named() {
    if (!(cell.own() instanceof Value.Number found) || cell.row() < 0) {
      return rows();
    }
    Optional<String> inFormula = cell.ruled().stream()
        .flatMap(formula -> SlipForms.of(formula.tree(), this::label))
        .filter(slip -> isIt(slip.formula(), found.value()))
        .map(SlipForms.Slip::words)
        .findFirst();
    return inFormula.or(() -> byRatio(found.value()));
  }

  private boolean isIt(Formula formula, double found) {
    return formula.evaluate(new NameScope()) instanceof Value.Number number
        && alike(number.value(), found);
  }

  /** Whether two numbers are one, as far as lengths kept to 1/320 mm go. */
  private static boolean alike(double one, double other) {
    return Math.abs(one - other)
        <= Modelled.KEPT * Math.max(1, Math.max(Math.abs(one), Math.abs(other)));
  }

  private String label(String name) {
    return takeoff
        .rulebook()
        .rule(name)
        .map(Rule::label)
        .filter(label -> !label.isEmpty())
        .map(label -> "'" + label + "'")
        .orElse(name);
  }

  /** Slips that no single formula shows: the ratio to the right value gives them away. */
  private Optional<String> byRatio(double found) {
    double should = ((Value.Number) cell.should()).value();
    return should == 0
        ? Optional.empty()
        : ratios().entrySet().stream()
            .filter(entry -> entry.getKey() != 1 && alike(found, should * entry.getKey()))
            .map(Map.Entry::getValue)
            .findFirst();
  }

  private Map<Double, String> ratios() {
    Map<Double, String> all = new LinkedHashMap<>();
    FACTORS.stream().flatMap(name -> ofRow(name).stream()).forEach(factor -> {
      double slope = Math.sqrt(Math.max(0, factor * factor - 1));
      all.put(1 / factor, "the pitch factor left out: plan measure taken for sloped measure");
      all.put(factor, "the pitch factor taken once more");
      all.put((1 + slope) / factor, "1 + rise/12 taken for the pitch factor");
      all.put(Math.sqrt(2 + slope * slope) / factor, "the hip factor taken for the pitch factor");
    });
    all.put(2.0, "twice as much: half of it left out, or counted from both sides");
    all.put(0.5, "half as much");
    all.put(12.0, "inches taken for feet");
    all.put(1 / 12.0, "a factor of 12 between inches and feet left out");
    all.put(100.0, "square feet taken for squares, or a percentage for a ratio");
    all.put(0.01, "divided by 100 once more");
    all.put(10.0, "the decimal point one place to the right");
    all.put(0.1, "the decimal point one place to the left");
    all.put(0.3048, "metres taken for feet");
    all.put(1 / 0.3048, "feet taken for metres");
    all.put(144.0, "square inches taken for square feet");
    all.put(1 / 144.0, "a factor of 144 between square inches and square feet left out");
    return all;
  }

  private Optional<Double> ofRow(String name) {
    List<Value> all = takeoff.values(name);
    boolean plane = cell.rule().per() == Rule.Per.PLANE && cell.row() < all.size();
    return plane && all.get(Math.max(0, cell.row())) instanceof Value.Number number
        ? Optional.of(number.value())
        : Optional.empty();
  }

  /** For a sum of rows: one of them left out or counted twice. */
  private Optional<String> rows() {
    if (!(cell.own() instanceof Value.Number found)
        || !(cell.should() instanceof Value.Number should)
        || cell.row() >= 0) {
      return Optional.empty();
    }
    List<Value> all = takeoff.values(cell.rule().name());
    return Stream.iterate(0, i -> i < all.size(), i -> i + 1)
        .filter(i -> all.get(i) instanceof Value.Number)
        .flatMap(i -> row(((Value.Number) all.get(i)).value(), name(i), found, should).stream())
        .findFirst();
  }

  private String name(int row) {
    List<Value> names = takeoff.values(cell.rule().per() + "_name");
    return row < names.size() && names.get(row) instanceof Value.Text text
        ? cell.rule().per() + " '" + text.value() + "'"
        : "row " + (row + 1);
  }

  private static Optional<String> row(
      double one, String name, Value.Number found, Value.Number should) {
    if (one == 0) {
      return Optional.empty();
    }
    return alike(found.value(), should.value() - one)
        ? Optional.of(name + " left out")
        : alike(found.value(), should.value() + one)
            ? Optional.of(name + " counted twice")
            : Optional.empty();
  }

  /** What the names of rules stand for in the row of the cell. */
  private final class NameScope implements Scope {

    @Override
    public Value cell(Address address) {
      return new Value.Fault("#REF!");
    }

    @Override
    public Value name(String name) {
      Optional<Rule> rule = takeoff.rulebook().rule(name);
      if (rule.isEmpty()) {
        return new Value.Fault("#NAME?");
      }
      List<Value> all = takeoff.values(name);
      boolean own = rule.get().per() == cell.rule().per() && cell.row() < all.size();
      if (rule.get().per() == Rule.Per.JOB || own) {
        return all.get(own ? cell.row() : 0);
      }
      return Value.Matrix.column(all.isEmpty() ? List.of(new Value.Blank()) : all);
    }
  }

  /** The first part in which an edited formula differs from the rulebook's, in words; empty where that is unknown. */
  static String difference(Modelled cell) {
    Optional<Node> ruled = cell.ruled().map(Formula::tree);
    Optional<Node> found = cell.bound().flatMap(it -> it.formula()).map(Formula::tree);
    if (ruled.isEmpty() || found.isEmpty()) {
      return "";
    }
    return Nodes.differences(ruled.get(), found.get()).stream()
        .findFirst()
        .map(it -> "; it has " + Formula.of(it.found()) + " where the rulebook has "
            + Formula.of(it.wanted()))
        .orElse("");
  }
}
