package squaresheet.takeoff;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import squaresheet.formula.Formula;

/** Sorts rules so that each stands after those it asks for, and names the circles in which that cannot be. */
final class DependencyOrder {

  private final Map<String, List<String>> asks = new LinkedHashMap<>();
  private final Map<String, Rule> rules;
  private final Set<String> done = new LinkedHashSet<>();
  private final Set<String> inCircles = new HashSet<>();
  private final List<List<String>> circles = new ArrayList<>();
  private final List<String> path = new ArrayList<>();

  DependencyOrder(Map<String, Rule> rules, Map<String, Formula> formulas) {
    this.rules = rules;
    formulas.forEach((name, formula) -> asks.put(name, RulebookReader.names(formula)));
    asks.keySet().forEach(this::visit);
  }

  private void visit(String name) {
    if (done.contains(name) || !asks.containsKey(name)) {
      return;
    }
    int seen = path.indexOf(name);
    if (seen >= 0) {
      List<String> circle = List.copyOf(path.subList(seen, path.size()));
      if (inCircles.addAll(circle)) {
        circles.add(circle);
      }
      return;
    }
    path.add(name);
    asks.get(name).forEach(this::visit);
    path.remove(path.size() - 1);
    done.add(name);
  }

  List<List<String>> circles() {
    return circles;
  }

  /** Every rule that is worked out; those in a circle too, wherever they fell. */
  List<Rule> inOrder() {
    return done.stream().map(rules::get).toList();
  }
}
