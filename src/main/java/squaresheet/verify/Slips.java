package squaresheet.verify;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import squaresheet.formula.Formula;
import squaresheet.formula.Node;
import squaresheet.formula.Respelling;
import squaresheet.formula.Scope;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.takeoff.Rule;
import squaresheet.takeoff.Takeoff;
import squaresheet.units.Unit;

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
    return inFormula
        .or(() -> otherRow(found.value()))
        .or(() -> otherName(found.value()))
        .or(() -> byRatio(found.value()));
  }

  /** One name of the formula read in the row of another item. */
  private Optional<String> otherRow(double found) {
    int rows = takeoff.values(cell.rule().name()).size();
    return cell.rule().per() == Rule.Per.JOB
        ? Optional.empty()
        : ruledNames()
            .filter(name -> isOfRows(name))
            .flatMap(name -> Stream.iterate(0, row -> row < rows, row -> row + 1)
                .filter(row -> row != cell.row() && isIt(swapped(name, row), found))
                .map(row -> label(name) + " read from " + name(row)))
            .findFirst();
  }

  private boolean isOfRows(String name) {
    return takeoff
        .rulebook()
        .rule(name)
        .filter(it -> it.per() == cell.rule().per())
        .isPresent();
  }

  /** One name of the formula replaced by another of the same unit. */
  private Optional<String> otherName(double found) {
    return ruledNames()
        .flatMap(name -> alikeIn(name)
            .filter(other -> isIt(renamed(name, other), found))
            .map(other -> label(other) + " taken for " + label(name)))
        .findFirst();
  }

  private Stream<String> alikeIn(String name) {
    Optional<Rule> known = takeoff.rulebook().rule(name);
    return takeoff.rulebook().rules().stream()
        .filter(rule -> known
            .filter(it -> it.per() == rule.per()
                && sort(it) == sort(rule)
                && it.holds() == rule.holds()
                && !it.unit().equals(Unit.RATIO)
                && !it.equals(rule))
            .isPresent())
        .map(Rule::name);
  }

  /** Plan area, sloped area and area are one sort: taking one for the other is the slip looked for. */
  private static Unit.Kind sort(Rule rule) {
    Unit.Kind kind = rule.unit().kind();
    return kind == Unit.Kind.PLAN_AREA || kind == Unit.Kind.SLOPED_AREA ? Unit.Kind.AREA : kind;
  }

  private Stream<String> ruledNames() {
    return cell.ruled().stream()
        .flatMap(formula -> formula.names().stream())
        .map(name -> name.name())
        .distinct();
  }

  private Formula renamed(String name, String other) {
    return with(name, new Node.Name("", other, Node.Span.NONE));
  }

  private Formula swapped(String name, int row) {
    Value value = takeoff.values(name).get(row);
    return value instanceof Value.Number number && number.value() >= 0
        ? with(name, new Node.Number(number.value(), Node.Span.NONE))
        : with(name, new Node.Fault("#N/A", Node.Span.NONE));
  }

  private Formula with(String name, Node other) {
    return cell.ruled().orElseThrow().respelled(new Respelling() {
      @Override
      public Node name(Node.Name it, boolean many) {
        return it.name().equalsIgnoreCase(name) ? other : it;
      }
    });
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
