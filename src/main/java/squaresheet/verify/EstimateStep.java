package squaresheet.verify;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import squaresheet.estimate.Category;
import squaresheet.formula.Formula;
import squaresheet.formula.Node;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;

/**
 * A cell on the way from the lines of the estimate to its total, beside what the cells just before it make.
 *
 * @param book the workbook
 * @param at the cell
 * @param called what it is
 * @param should what the cells before it make, right or wrong as they are
 * @param how by what arithmetic
 */
record EstimateStep(Book book, Address at, String called, Value should, String how) {

  /** Columns that may have been inserted between a number and what stands beside it, and one. */
  private static final int FURTHEST = 4;

  private static final List<String> OVER_NAMES = List.of(
      "discount_before",
      "share_left",
      "tax_by_line",
      "tax_by_invoice",
      "estimate_tax",
      "estimate_total");

  /** What its owner put on the cost, each by a formula over names. */
  private static final Set<Category> PUT_ON = Set.of(
      Category.Known.OVERHEAD, Category.Known.PROFIT, Category.Known.DISCOUNT, Category.Known.TAX);

  /** Every such cell that the workbook has. */
  static List<EstimateStep> of(Model model, EstimateCells cells) {
    return model
        .written()
        .flatMap(EstimateCells::of)
        .map(written -> new Steps(cells, written).all())
        .orElse(List.of());
  }

  /** Whether the cell is wrong by itself: not what it makes of the cells before it. */
  boolean isOff() {
    Value there = book.value(at);
    boolean known = should.isChecked() && there.isChecked();
    boolean fault = should instanceof Value.Fault || there instanceof Value.Fault;
    return known && !fault && !Shown.near(should, there);
  }

  /** Collects them. */
  private static final class Steps {
    private final EstimateCells cells;
    private final EstimateCells written;
    private final List<EstimateStep> all = new ArrayList<>();

    Steps(EstimateCells cells, EstimateCells written) {
      this.cells = cells;
      this.written = written;
    }

    List<EstimateStep> all() {
      sum("estimate_cost", "the costs of the job", costs(), "the sum of the lines of cost");
      plus("estimate_base", "cost and overhead", "estimate_cost", Category.Known.OVERHEAD);
      plus("estimate_price", "the price", "estimate_base", Category.Known.PROFIT);
      OVER_NAMES.forEach(name -> overNames(cells.at(name, 0), written.at(name, 0)));
      cells.lines().forEach(this::line);
      block("category_total", this::ofCategory);
      block("code_total", label -> sumOf("line_cost_code", code(label)));
      payments();
      shares();
      return all;
    }

    private static String code(String label) {
      return label.equals("without a code") ? "" : label;
    }

    private void put(Optional<Address> at, String called, double should, String how) {
      at.ifPresent(
          it -> all.add(new EstimateStep(cells.book(), it, called, new Value.Number(should), how)));
    }

    private void sum(String name, String called, double should, String how) {
      put(cells.at(name, 0), called, should, how);
    }

    private double costs() {
      return sum(PricedLine::isCost);
    }

    private double sumOf(String column, String label) {
      return sum(line -> cells.text(column, line.row()).equalsIgnoreCase(label));
    }

    private double sum(Predicate<PricedLine> which) {
      return cells.lines().stream()
          .filter(which)
          .mapToDouble(line -> line.number("line_amount").doubleValue())
          .sum();
    }

    /** The lines of a category; under a label that is none, those of all categories that are none of ours. */
    private double ofCategory(String label) {
      Category category = Category.of(label);
      boolean one = category instanceof Category.Known
          || cells.lines().stream().anyMatch(line -> line.category().equals(category));
      return one
          ? sumOf("line_category", label)
          : sum(line -> line.category() instanceof Category.Own);
    }

    private void plus(String name, String called, String before, Category category) {
      double added = sumOf("line_category", category.toString());
      sum(name, called, cells.number(before, 0).doubleValue() + added, before + " and " + category);
    }

    /** A cell whose formula is spelled in names, wherever its sheet has gone. */
    private void overNames(Optional<Address> at, Optional<Address> model) {
      Optional<Formula> right = model
          .flatMap(written.book()::formula)
          .filter(it -> !Nodes.any(it.tree(), node -> node instanceof Node.Reference));
      if (at.isPresent() && right.isPresent()) {
        Value should = cells.book().reckoning().evaluate(right.get(), at.get());
        String called = cells.book().tab(at.get().sheet()).label(at.get().ref());
        all.add(new EstimateStep(cells.book(), at.get(), called, should, "=" + right.get()));
      }
    }

    private void line(PricedLine line) {
      if (PUT_ON.contains(line.category())) {
        written.lines().stream()
            .filter(it -> it.category().equals(line.category()))
            .findFirst()
            .ifPresent(it ->
                overNames(Optional.of(line.at("line_amount")), Optional.of(it.at("line_amount"))));
      }
      cells.at("line_taxed", line.row()).ifPresent(at -> taxed(line, line.category(), at));
    }

    private void taxed(PricedLine line, Category category, Address at) {
      boolean counts = isTaxed(category) && category.isBeforeDiscount();
      double share = cells.number("share_left", 0).doubleValue();
      put(
          Optional.of(at),
          "the taxed amount of '" + line.item() + "'",
          counts ? line.number("line_amount").doubleValue() * share : 0,
          counts
              ? category + " is taxed, so it is the amount times the share left after the discount"
              : category + " is not taxed by the terms");
    }

    private boolean isTaxed(Category category) {
      int rows = cells.book().named("tax_category").map(it -> it.block().rows()).orElse(0);
      for (int row = 0; row < rows; row++) {
        if (cells.text("tax_category", row).equalsIgnoreCase(category.toString())) {
          return cells.text("tax_applies", row).equalsIgnoreCase("yes");
        }
      }
      return false;
    }

    /** The rows above a total, and the total. */
    private void block(String total, ToDoubleFunction<String> should) {
      cells.at(total, 0).ifPresent(end -> {
        List<Address> rows = above(cells, end);
        rows.forEach(at -> {
          String label = label(at);
          put(
              Optional.of(at),
              "the sum of '" + label + "'",
              should.applyAsDouble(label),
              "the amounts of its lines");
        });
        total(end, rows);
      });
    }

    private void total(Address end, List<Address> rows) {
      double sum =
          rows.stream().mapToDouble(at -> cells.book().number(at).orElse(0)).sum();
      put(Optional.of(end), "the total", sum, "the sum of the rows above it");
    }

    private String label(Address at) {
      Value value = beside(cells, at, -1).map(cells.book()::value).orElse(new Value.Blank());
      return value instanceof Value.Text text ? text.value().strip() : Shown.of(value);
    }

    /** The nearest cell to the right or left that holds something; columns may have been inserted between. */
    private static Optional<Address> beside(EstimateCells cells, Address at, int step) {
      return IntStream.rangeClosed(1, FURTHEST)
          .map(steps -> steps * step)
          .filter(aside -> at.ref().column() + aside >= 0)
          .mapToObj(aside -> new Address(at.sheet(), at.ref().plus(0, aside)))
          .filter(there -> !cells.book().cell(there).isBlank())
          .findFirst();
    }

    private static List<Address> above(EstimateCells cells, Address end) {
      List<Address> rows = new ArrayList<>();
      for (int up = 1; up <= end.ref().row(); up++) {
        Address at = new Address(end.sheet(), end.ref().plus(-up, 0));
        if (cells.book().value(at) instanceof Value.Text
            || cells.book().cell(at).isBlank()) {
          break;
        }
        rows.add(0, at);
      }
      return rows;
    }

    /** Each payment but the last is its share; the last is what they leave. */
    private void payments() {
      Optional<Address> end = cells.at("payment_total", 0);
      List<Address> rows = end.map(it -> above(cells, it)).orElse(List.of());
      List<Address> model =
          written.at("payment_total", 0).map(it -> above(written, it)).orElse(List.of());
      for (int row = 0; row < Math.min(rows.size(), model.size()) - 1; row++) {
        overNames(Optional.of(rows.get(row)), Optional.of(model.get(row)));
        overNames(beside(cells, rows.get(row), 1), beside(written, model.get(row), 1));
      }
      if (!rows.isEmpty()) {
        last(rows);
        total(end.orElseThrow(), rows);
      }
    }

    /** The sum under the shares of the payments. */
    private void shares() {
      cells.book().named("payment_share").ifPresent(shares -> {
        Address below = new Address(shares.sheet(), shares.block().last().plus(1, 0));
        double sum =
            shares.each().mapToDouble(at -> cells.book().number(at).orElse(0)).sum();
        boolean summed = cells
            .book()
            .formula(below)
            .filter(it -> Nodes.isCall(it.tree(), "SUM"))
            .isPresent();
        put(
            summed ? Optional.of(below) : Optional.empty(),
            "the shares of the payments",
            sum,
            "the sum of the rows above it");
      });
    }

    private void last(List<Address> rows) {
      Address last = rows.get(rows.size() - 1);
      double before = rows.stream()
          .limit(rows.size() - 1L)
          .mapToDouble(at -> cells.book().number(at).orElse(0))
          .sum();
      double should = cells.number("estimate_total", 0).doubleValue() - before;
      put(Optional.of(last), label(last), should, "what the payments before it leave");
    }
  }
}
