package squaresheet.verify;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import squaresheet.binding.BoundBook;
import squaresheet.sheet.Address;
import squaresheet.verify.BoundValue.Kind;

/** What the sums under foreign tables, and the totals beside their labels, should be. */
final class TotalValues {

  private static final Set<String> ADDED_UP = Set.of(
      "plan_area",
      "sloped_area",
      "net_area",
      "opening_area",
      "squares",
      "gross_squares",
      "bundles",
      "total_length",
      "amount");

  private static final double SQUARE = 100;

  private final BookModel model;

  TotalValues(BookModel model) {
    this.model = model;
  }

  /** The sums of a table: of the rows since the last sum, or of all rows before. */
  void add(BoundBook.Table table) {
    ADDED_UP.forEach(property -> add(table, property));
  }

  private void add(BoundBook.Table table, String property) {
    Parts all = new Parts(model, property);
    Parts since = new Parts(model, property);
    for (BoundBook.Row row : table.rows()) {
      if (row.isSum()) {
        sum(row.subject(), property, since, all);
        since = new Parts(model, property);
      } else {
        since.add(row.subject());
        all.add(row.subject());
      }
    }
  }

  private void sum(String subject, String property, Parts since, Parts all) {
    Optional<Address> at = model.cell(subject, property);
    List<Double> may = new ArrayList<>();
    since.sums().forEach(may::add);
    all.sums().forEach(may::add);
    if (!all.isEmpty()
        && at.filter(it -> Operands.areAll(model.book(), it, all.withSums())).isPresent()) {
      model.should(subject, property, Kind.TOTAL, may, 0, "the rows above");
    }
  }

  /** The totals beside their labels. */
  void addLabels() {
    overPlanes("total_plan_area", "plan_area");
    overPlanes("total_sloped_area", "net_area", "sloped_area");
    overPlanes("total_squares", "squares", "gross_squares");
    overPlanes("total_gross_squares", "gross_squares");
    waste();
    bundles();
    overLines("material_total", "materials", "estimate");
    money();
  }

  private void overPlanes(String label, String... properties) {
    over(label, Set.of("planes"), properties);
  }

  private void overLines(String label, String... tables) {
    for (String table : tables) {
      if (model.bound().tables().stream().anyMatch(it -> it.name().equals(table))) {
        over(label, Set.of(table), "amount");
        return;
      }
    }
  }

  private void over(String label, Set<String> tables, String... properties) {
    List<Double> may = new ArrayList<>();
    Set<Address> parts = new HashSet<>();
    for (String property : properties) {
      Parts all = new Parts(model, property);
      model.bound().tables().stream()
          .filter(table -> tables.contains(table.name()))
          .flatMap(table -> table.rows().stream())
          .forEach(row -> {
            if (row.isSum()) {
              model.cell(row.subject(), property).ifPresent(parts::add);
            } else {
              all.add(row.subject());
            }
          });
      may.addAll(all.sums());
      parts.addAll(all.cells());
    }
    label(label, may, parts, "the rows of the " + String.join(", ", tables));
  }

  private void waste() {
    OptionalDouble net = model.plain("job", "total_squares");
    double squares = net.orElseGet(() -> planes("squares"));
    model.plain("job", "waste_rate").stream()
        .filter(rate -> rate >= 0 && rate < 1 && squares > 0)
        .forEach(rate -> label(
            "total_gross_squares",
            List.of(squares * (1 + rate), squares / (1 - rate)),
            of("total_squares", "waste_rate", "squares"),
            "squares and waste rate"));
  }

  private double planes(String property) {
    Parts all = new Parts(model, property);
    model.bound().tables().stream()
        .filter(table -> table.name().equals("planes"))
        .flatMap(table -> table.rows().stream())
        .filter(row -> !row.isSum())
        .forEach(row -> all.add(row.subject()));
    return all.sums().stream().findFirst().orElse(0.0);
  }

  private void bundles() {
    OptionalDouble gross = model.plain("job", "total_gross_squares");
    OptionalDouble each = model.plain("job", "bundles_per_square");
    if (gross.isPresent() && each.isPresent()) {
      double bundles = gross.getAsDouble() / SQUARE * each.getAsDouble();
      label(
          "total_bundles",
          List.of(PlaneValues.whole(bundles), bundles),
          of("total_gross_squares", "bundles_per_square"),
          "squares with waste and bundles per square");
    }
  }

  private void money() {
    OptionalDouble rate = model.plain("job", "tax_rate");
    List<Double> bases = new ArrayList<>();
    for (String base : List.of("subtotal", "material_total", "labour_total")) {
      model.plain("job", base).ifPresent(bases::add);
    }
    bases.addAll(amounts().sums());
    if (rate.isPresent()) {
      List<Double> may = bases.stream().map(it -> it * rate.getAsDouble()).toList();
      label(
          "tax_total",
          may,
          of("tax_rate", "subtotal", "material_total", "labour_total", "amount"),
          "tax rate and what is taxed");
    }
    OptionalDouble tax = model.plain("job", "tax_total");
    OptionalDouble net = model.plain("job", "subtotal");
    boolean beforeTax = model.cell("job", "tax_total").isPresent()
        && model.cell("job", "price_total").isPresent()
        && Operands.isBehind(
            model.book(),
            model.cell("job", "tax_total").orElseThrow(),
            model.cell("job", "price_total").orElseThrow());
    if (tax.isPresent() && net.isPresent() && !beforeTax) {
      label(
          "price_total",
          List.of(net.getAsDouble() + tax.getAsDouble()),
          of("subtotal", "tax_total"),
          "subtotal and tax");
    }
  }

  private Parts amounts() {
    Parts all = new Parts(model, "amount");
    model.bound().tables().stream()
        .filter(table -> table.name().equals("estimate"))
        .flatMap(table -> table.rows().stream())
        .filter(row -> !row.isSum())
        .forEach(row -> all.add(row.subject()));
    return all;
  }

  /** The cells of single values, and of the whole column of that name. */
  private Set<Address> of(String... properties) {
    Set<Address> cells = new LinkedHashSet<>();
    for (String property : properties) {
      model.bound().cells().items().forEach((item, cell) -> {
        if (item.property().equals(property)) {
          cells.add(cell);
        }
      });
    }
    return cells;
  }

  private void label(String label, List<Double> may, Collection<Address> parts, String how) {
    boolean readsOnlyThose = model
        .cell("job", label)
        .filter(at -> Operands.areAll(model.book(), at, parts))
        .isPresent();
    if (readsOnlyThose) {
      model.should("job", label, Kind.TOTAL, may, 0, how);
    }
  }
}
