package squaresheet.judge.made;

import java.util.List;
import squaresheet.judge.made.Maker.Known;
import squaresheet.judge.made.Maker.Tab;

/** The way from the sums of material and work to the price: overhead, profit or margin, tax, in one of the usual orders. */
final class Bid {

  /** How the price is built up. */
  enum Way {
    /** Overhead and profit on cost, tax on material. */
    MARKUP,
    /** The price is the cost over one less the margin, tax on material. */
    MARGIN,
    /** As markup, the rates typed as whole percents and divided in the formulas. */
    WHOLE_PERCENTS,
    /** As markup, with a least charge for small jobs. */
    LEAST_CHARGE
  }

  private final Maker maker;
  private final Tab tab;
  private int row;
  private final int column;

  Bid(Maker maker, Tab tab, int top, int column) {
    this.maker = maker;
    this.tab = tab;
    this.row = top;
    this.column = column;
  }

  private String rate(String thing, double rate, Meaning meaning, boolean whole) {
    tab.text(row, 0, maker.words.of(thing));
    tab.typed(
        row,
        column - 1,
        whole ? rate * 100 : rate,
        whole ? "" : "0.0##%",
        Known.of(meaning, thing, whole ? "%" : ""));
    return Tab.at(row, column - 1) + (whole ? "/100" : "");
  }

  private String step(String thing, String formula, Meaning meaning) {
    tab.formula(row, column, formula, "#,##0.00", Known.of(meaning, thing, "USD"));
    String at = Tab.at(row, column);
    row++;
    return at;
  }

  private String line(String label, String formula, Meaning meaning) {
    tab.text(row, 0, label);
    return step(label, formula, meaning);
  }

  /** Writes the build-up and, where asked, shares of payment under it. */
  void write(Order.Sums sums, Way way, boolean payments) {
    String material = sums.material().from(tab);
    String labor = sums.labor().from(tab);
    boolean whole = way == Way.WHOLE_PERCENTS;
    String cost = line("Cost", material + "+" + labor, Meaning.SUBTOTAL);
    String before = way == Way.MARGIN ? margin(cost) : markup(cost, whole);
    if (way == Way.LEAST_CHARGE) {
      before = line("Price, at least 1,500", "MAX(1500," + before + ")", Meaning.SUBTOTAL);
    }
    String tax = rate("tax", taxes().get(maker.random.nextInt(4)), Meaning.TAX_RATE, whole);
    tax = step("tax", material + "*" + tax, Meaning.TAX);
    tab.text(row, 0, maker.words.of("total"));
    tab.total(row, column);
    String total = step("total", before + "+" + tax, Meaning.TOTAL);
    if (payments) {
      payments(total);
    }
  }

  private static List<Double> taxes() {
    return List.of(0.06, 0.0625, 0.07, 0.0825);
  }

  private String markup(String cost, boolean whole) {
    String overhead = rate("overhead", 0.10, Meaning.MARKUP_RATE, whole);
    String first = step("overhead", cost + "*" + overhead, Meaning.MARKUP);
    String profit = rate("profit", 0.15, Meaning.MARKUP_RATE, whole);
    String second = step("profit", "(" + cost + "+" + first + ")*" + profit, Meaning.MARKUP);
    return line("Price before tax", cost + "+" + first + "+" + second, Meaning.SUBTOTAL);
  }

  private String margin(String cost) {
    tab.text(row, 0, "Margin (share of price)");
    tab.typed(row, column - 1, 0.25, "0%", Known.of(Meaning.MARKUP_RATE, "margin", ""));
    String rate = Tab.at(row, column - 1);
    row++;
    return line("Price before tax", cost + "/(1-" + rate + ")", Meaning.SUBTOTAL);
  }

  private void payments(String total) {
    row++;
    List<String> names = List.of("Deposit", "At start", "On completion");
    List<Double> shares = List.of(0.3, 0.4, 0.3);
    int first = row;
    for (int i = 0; i < names.size(); i++) {
      tab.text(row, 0, names.get(i));
      tab.typed(
          row,
          column - 1,
          shares.get(i),
          "0%",
          Known.of(Meaning.SHARE, names.get(i), "").in("shares"));
      step(names.get(i), total + "*" + Tab.at(row, column - 1), Meaning.PAYMENT);
    }
    tab.text(row, 0, "All payments");
    tab.formula(
        row,
        column - 1,
        "SUM(" + Tab.at(first, column - 1) + ":" + Tab.at(row - 1, column - 1) + ")",
        "0%",
        Known.of(Meaning.SHARE, "all", ""));
    step(
        "payments",
        "SUM(" + Tab.at(first, column) + ":" + Tab.at(row - 1, column) + ")",
        Meaning.CROSS_TOTAL);
  }
}
