package squaresheet.verify;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import squaresheet.estimate.OrderList;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.finding.Where;
import squaresheet.formula.Node;
import squaresheet.product.Product;
import squaresheet.sheet.Address;
import squaresheet.takeoff.Order;
import squaresheet.takeoff.Rule;
import squaresheet.units.Count;

/**
 * How many packs a job workbook itself says to order. A count stands on the takeoff, is repeated on the summary and is priced
 * in the estimate; where one of the two was changed on purpose, that is the order.
 */
final class OrderedPacks {

  private static final CheckInfo TWO_ORDERS = new CheckInfo(
      "two-orders-told", Severity.ERROR, "The workbook says two different numbers to order");
  private static final CheckInfo NOT_WHOLE = new CheckInfo(
      "order-not-whole-packs", Severity.ERROR, "What is to be ordered is no number of whole packs");
  private static final CheckInfo AS_CHANGED = new CheckInfo(
      "order-as-changed", Severity.NOTE, "The order follows a number changed on purpose");

  /** So near a whole number the sum of another program is that number. */
  private static final double WHOLE = 1e-9;

  /** Nobody orders more packs of anything. */
  private static final double MOST = 1e9;

  private final Model model;
  private final Map<String, List<Address>> repeated = new LinkedHashMap<>();
  private final List<Order> orders = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();

  OrderedPacks(Model model) {
    this.model = model;
    SummaryCell.of(model).forEach(cell -> repeats(cell.right().tree(), cell.at()));
    EstimateCells.of(model.book()).stream()
        .flatMap(cells -> ModelledLine.of(model, cells))
        .forEach(line -> line.model()
            .book()
            .formula(line.model().at("line_quantity"))
            .ifPresent(right -> repeats(right.tree(), line.at("line_quantity"))));
    model.takeoff().rulebook().rules().forEach(rule -> rule.role()
        .flatMap(model.takeoff().selection()::of)
        .ifPresent(product -> order(rule, product)));
  }

  private void repeats(Node right, Address at) {
    if (right instanceof Node.Name name && !model.book().cell(at).isBlank()) {
      repeated.computeIfAbsent(name.name(), first -> new ArrayList<>()).add(at);
    }
  }

  /** What to order, packs of one product that several rules ask for together. */
  OrderList list() {
    return OrderList.of(orders);
  }

  /** What keeps it from being ordered, and what it follows that is not the takeoff. */
  List<Finding> findings() {
    return findings;
  }

  private void order(Rule rule, Product product) {
    List<Address> places = Stream.concat(
            model.job().cells().cell("job", rule.name()).stream(),
            repeated.getOrDefault(rule.name(), List.of()).stream())
        .toList();
    List<Address> changed =
        places.stream().filter(at -> !isSame(at, places.get(0))).toList();
    Optional<Address> other =
        changed.stream().filter(at -> !isSame(at, changed.get(0))).findFirst();
    if (other.isPresent()) {
      says(
          TWO_ORDERS,
          rule,
          other.get(),
          "makes %s, but " + changed.get(0) + " makes " + shown(changed.get(0))
              + "; make them one");
      return;
    }
    Stream.concat(changed.stream(), places.stream())
        .findFirst()
        .ifPresent(at -> ordered(rule, product, at));
    changed.stream()
        .findFirst()
        .ifPresent(at -> says(
            AS_CHANGED,
            rule,
            at,
            "is %s here, which is what is ordered; " + places.get(0) + " makes "
                + shown(places.get(0))));
  }

  private void ordered(Rule rule, Product product, Address at) {
    OptionalDouble packs = model.book().number(at);
    if (packs.isPresent() && isWhole(packs.getAsDouble())) {
      long number = Math.round(packs.getAsDouble());
      if (number > 0) {
        orders.add(new Order(rule, product, new Count(number, product.packing().pack())));
      }
    } else {
      says(NOT_WHOLE, rule, at, "must be a number of whole packs to be ordered, but is %s");
    }
  }

  private static boolean isWhole(double packs) {
    return packs >= 0
        && packs <= MOST
        && Math.abs(packs - Math.rint(packs)) <= WHOLE * Math.max(1, packs);
  }

  private boolean isSame(Address one, Address other) {
    return Shown.near(model.book().value(one), model.book().value(other));
  }

  private String shown(Address at) {
    return Shown.of(model.book().value(at));
  }

  private void says(CheckInfo info, Rule rule, Address at, String says) {
    String told = rule.label() + " " + String.format(Locale.ROOT, says, shown(at));
    findings.add(new Finding(info, new Where.InCell(model.book().file(), at), told));
  }
}
