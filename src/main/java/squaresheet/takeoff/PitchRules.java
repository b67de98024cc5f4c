package squaresheet.takeoff;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import squaresheet.formula.Formula;
import squaresheet.formula.Node;
import squaresheet.formula.Scope;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.takeoff.Rule.Per;

/** How the rules of a takeoff turn from one value to another as the pitch of a plane passes a limit. */
public final class PitchRules {

  private static final String PITCH = "pitch_rise";

  /** Values that follow the pitch smoothly change by a fifth of this over a hundredth of an inch of rise. */
  private static final double SMOOTH = 0.001;

  private final Takeoff takeoff;
  /** The names that are worked out from the pitch and nothing else, the pitch itself included. */
  private final Set<String> follow = new HashSet<>(Set.of(PITCH));

  private final Map<Node, Rule> turns = new LinkedHashMap<>();

  /** The rules as they work out that takeoff, whatever their limits are: settings, products or numbers in formulas. */
  public PitchRules(Takeoff takeoff) {
    this.takeoff = takeoff;
    for (Rule rule : takeoff.rulebook().inOrder()) {
      Formula formula = formula(rule.name());
      if (rule.per() == Per.PLANE && formula.followsFrom(this::isFollowing)) {
        follow.add(rule.name());
      }
      formula.decisionsOn(this::isFollowing).forEach(part -> turns.put(part, rule));
    }
  }

  private Formula formula(String rule) {
    return takeoff.rulebook().formula(rule).orElseThrow();
  }

  private boolean isFollowing(Node leaf) {
    return leaf instanceof Node.Name name && follow.contains(lower(name.name()));
  }

  private static String lower(String name) {
    return name.toLowerCase(Locale.ROOT);
  }

  /** The row of a plane, 0 and up, if it is among those worked out. */
  public Optional<Integer> row(String plane) {
    int row = takeoff.values("plane_name").indexOf(new Value.Text(plane));
    return row < 0 ? Optional.empty() : Optional.of(row);
  }

  /** What every part that turns at some limit comes to for the plane in that row, if it rises so much per 12. */
  public List<Value> at(int row, double rise) {
    return turns.keySet().stream()
        .map(part -> Formula.of(part).evaluate(new AtPitch(row, rise, part instanceof Node.Call)))
        .toList();
  }

  /**
   * The rules that a limit between two pitches changes for a plane, by their labels: more than 0 where the steeper pitch
   * takes more or is not allowed, less than 0 where the lower one does, 0 where that cannot be told.
   */
  public Map<String, Integer> pulls(int row, double lower, double steeper) {
    Map<String, Integer> pulls = new LinkedHashMap<>();
    List<Value> before = at(row, lower);
    List<Value> behind = at(row, steeper);
    int at = 0;
    for (Rule rule : new ArrayList<>(turns.values())) {
      if (!before.get(at).equals(behind.get(at))) {
        pulls.putIfAbsent(rule.label(), 0);
      }
      at++;
    }
    for (Rule rule : takeoff.rulebook().inOrder()) {
      int pull = rule.per() == Per.PLANE && asks(rule) ? pull(rule, row, lower, steeper) : 0;
      if (pull != 0) {
        pulls.put(rule.label(), pull);
      }
    }
    return pulls;
  }

  private boolean asks(Rule rule) {
    return takeoff.rulebook().asks(rule.name()).stream().anyMatch(follow::contains);
  }

  private int pull(Rule rule, int row, double lower, double steeper) {
    Value before = formula(rule.name()).evaluate(new AtPitch(row, lower, false));
    Value behind = formula(rule.name()).evaluate(new AtPitch(row, steeper, false));
    if (before instanceof Value.Number one && behind instanceof Value.Number other) {
      double size = Math.max(Math.abs(one.value()), Math.abs(other.value()));
      double more = other.value() - one.value();
      return Math.abs(more) <= SMOOTH * size ? 0 : (int) Math.signum(more);
    }
    boolean limit = rule.kind() == Rule.Kind.LIMIT && !before.equals(behind);
    return !limit ? 0 : behind.equals(new Value.Truth(false)) ? 1 : -1;
  }

  /** What names stand for in the row of one plane, were its pitch another. */
  private final class AtPitch implements Scope {

    private final int row;
    private final double rise;
    /** Whether the pitch is asked for as a column of one. */
    private final boolean asRange;

    AtPitch(int row, double rise, boolean asRange) {
      this.row = row;
      this.rise = rise;
      this.asRange = asRange;
    }

    @Override
    public Value cell(Address cell) {
      return new Value.Fault("#REF!");
    }

    @Override
    public Value name(String name) {
      String rule = lower(name);
      if (follow.contains(rule)) {
        Value value = rule.equals(PITCH) ? Value.of(rise) : formula(rule).evaluate(this);
        return asRange ? Value.Matrix.column(List.of(value)) : value;
      }
      Optional<Rule> known = takeoff.rulebook().rule(rule);
      if (known.filter(it -> it.per() == Per.PLANE).isPresent()) {
        return takeoff.values(rule).get(row);
      }
      return known.filter(it -> it.per() == Per.EDGE).isPresent()
          ? Value.Matrix.column(takeoff.values(rule))
          : takeoff.value(rule);
    }
  }
}
