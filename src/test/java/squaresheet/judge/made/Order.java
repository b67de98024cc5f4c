package squaresheet.judge.made;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import squaresheet.judge.made.Maker.Known;
import squaresheet.judge.made.Maker.Tab;

/** A list of what is bought and done, with quantities from the roof and prices in one of the usual places. */
final class Order {

  /** Where the price of a line comes from. */
  enum Prices {
    IN_THE_ROW,
    LOOKED_UP,
    MATCHED,
    TABLE
  }

  /** How a quantity is made whole. */
  enum Whole {
    ROUNDUP,
    CEILING
  }

  /**
   * The sums of a list.
   *
   * @param material the cell with the sum of what is bought
   * @param labor the cell with the sum of what is done
   */
  record Sums(Place material, Place labor) {}

  /** A line: word, quantity as a formula on the list's tab, unit word, price, whether it is work, whether it is in whole packs. */
  private record Line(
      String thing, String quantity, String unit, double price, boolean work, boolean packs) {}

  private final Maker maker;
  private final Tab tab;
  private final Place area;
  private final Map<Edges.Kind, Place> edges;
  private final boolean metric;
  private final List<Line> lines = new ArrayList<>();

  Order(Maker maker, Tab tab, Place area, Map<Edges.Kind, Place> edges, boolean metric) {
    this.maker = maker;
    this.tab = tab;
    this.area = area;
    this.edges = edges;
    this.metric = metric;
  }

  private double price(double about) {
    return Math.round(about * (0.8 + 0.4 * maker.random.nextDouble()) * 20) / 20.0;
  }

  /** The lines of a usual job; the waste is one cell, as a ratio. */
  private void fill(String waste, Whole whole) {
    String squares = area.from(tab) + "/" + (metric ? "9.290304" : "100");
    Function<Edges.Kind, String> edge = kind -> edges.get(kind).from(tab);
    pack("shingles", squares + "*(1+" + waste + ")*3", "bundle", 38.5, whole);
    pack(
        "starter",
        "(" + edge.apply(Edges.Kind.EAVE) + "+" + edge.apply(Edges.Kind.RAKE) + ")/100",
        "bundle",
        44,
        whole);
    pack(
        "cap",
        "(" + edge.apply(Edges.Kind.RIDGE) + "+" + edge.apply(Edges.Kind.HIP) + ")/25",
        "bundle",
        62,
        whole);
    pack("felt", squares + "*(1+" + waste + ")/10", "roll", 78, whole);
    pack(
        "ice",
        "(" + edge.apply(Edges.Kind.EAVE) + "*2+" + edge.apply(Edges.Kind.VALLEY) + ")/65",
        "roll",
        112,
        whole);
    pack(
        "metal",
        "(" + edge.apply(Edges.Kind.EAVE) + "+" + edge.apply(Edges.Kind.RAKE) + ")/10",
        "piece",
        9.5,
        whole);
    pack("nails", squares + "/16", "box", 46, whole);
    lines.add(new Line("install", squares, "square", price(95), true, false));
    lines.add(new Line("tear", squares, "square", price(45), true, false));
    lines.add(new Line("dump", "1", "each", price(420), true, false));
    lines.add(new Line("permit", "1", "each", price(250), true, false));
  }

  private void pack(String thing, String quantity, String unit, double price, Whole whole) {
    String text =
        whole == Whole.ROUNDUP ? "ROUNDUP(" + quantity + ",0)" : "CEILING(" + quantity + ",1)";
    lines.add(new Line(thing, text, unit, price(price), false, true));
  }

  /** Writes the list with its two subtotals, the words of each line drawn once. */
  Sums write(int top, String waste, Prices prices, Whole whole, boolean cents) {
    fill(waste, whole);
    List<String> names =
        lines.stream().map(line -> maker.words.of(line.thing())).toList();
    Tab list =
        prices == Prices.IN_THE_ROW || prices == Prices.TABLE ? null : priceList(names, prices);
    tab.headings(
        top,
        0,
        List.of(
            maker.words.of("item"),
            maker.words.of("qty"),
            maker.words.of("unit"),
            maker.words.of("price"),
            maker.words.of("amount")));
    int row = top + 1;
    int first = row;
    Place material = null;
    for (int i = 0; i < lines.size(); i++) {
      Line line = lines.get(i);
      if (line.work() && material == null) {
        material = subtotal(row, first, "material");
        row++;
        first = row;
      }
      line(row++, line, names.get(i), list, prices, cents);
    }
    Place labor = subtotal(row, first, "labor");
    if (prices == Prices.TABLE) {
      table(top, first - 2);
    }
    return new Sums(material, labor);
  }

  private void line(int row, Line line, String name, Tab list, Prices prices, boolean cents) {
    tab.word(row, 0, name, Known.of(Meaning.PRODUCT_NAME, line.thing(), ""));
    Known quantity =
        Known.of(line.packs() ? Meaning.PACKS : Meaning.QUANTITY, line.thing(), line.unit());
    if (line.quantity().equals("1")) {
      tab.typed(row, 1, 1, "", quantity);
    } else {
      tab.formula(row, 1, line.quantity(), line.packs() ? "0" : "0.00", quantity);
    }
    if (line.packs()) {
      tab.order(row, 1);
    }
    tab.word(row, 2, line.unit(), Known.of(Meaning.UNIT_WORD, line.thing(), ""));
    Known price = Known.of(Meaning.PRICE, line.thing(), "USD/" + line.unit());
    String name0 = Tab.at(row, 0);
    switch (prices) {
      case IN_THE_ROW, TABLE -> tab.typed(row, 3, line.price(), "$#,##0.00", price.in("prices"));
      case LOOKED_UP ->
        tab.formula(
            row,
            3,
            "VLOOKUP(" + name0 + ",'" + list.name() + "'!$A$2:$C$" + (lines.size() + 1)
                + ",3,FALSE)",
            "0.00",
            price.in("price lookups"));
      case MATCHED ->
        tab.formula(
            row,
            3,
            "INDEX('%s'!$C$2:$C$%d,MATCH(%s,'%s'!$A$2:$A$%d,0))"
                .formatted(list.name(), lines.size() + 1, name0, list.name(), lines.size() + 1),
            "0.00",
            price.in("price lookups"));
    }
    String amount = Tab.at(row, 1) + "*" + Tab.at(row, 3);
    tab.formula(
        row,
        4,
        cents ? "ROUND(" + amount + ",2)" : amount,
        "#,##0.00",
        Known.of(Meaning.AMOUNT, line.thing(), "USD").in("amounts"));
  }

  private Place subtotal(int row, int first, String thing) {
    tab.text(row, 0, maker.words.of(thing));
    tab.formula(
        row,
        4,
        "SUM(" + Tab.at(first, 4) + ":" + Tab.at(row - 1, 4) + ")",
        "#,##0.00",
        Known.of(Meaning.SUBTOTAL, thing, "USD"));
    return new Place(tab, row, 4);
  }

  private Tab priceList(List<String> names, Prices prices) {
    Tab list = maker.tab(prices == Prices.LOOKED_UP ? "Prices" : "Price list");
    list.headings(
        0, 0, List.of(maker.words.of("item"), maker.words.of("unit"), maker.words.of("price")));
    for (int i = 0; i < lines.size(); i++) {
      list.word(
          i + 1, 0, names.get(i), Known.of(Meaning.PRODUCT_NAME, lines.get(i).thing(), ""));
      list.text(i + 1, 1, lines.get(i).unit());
      list.typed(
          i + 1,
          2,
          lines.get(i).price(),
          "0.00",
          Known.of(Meaning.PRICE, lines.get(i).thing(), "USD/" + lines.get(i).unit())
              .in("prices"));
    }
    return list;
  }

  /** Makes a structured table of the bought lines. */
  private void table(int top, int last) {
    XSSFSheet sheet = (XSSFSheet) tab.sheet;
    sheet
        .createTable(new AreaReference(
            new CellReference(top, 0), new CellReference(last, 4), SpreadsheetVersion.EXCEL2007))
        .setName("OrderList");
  }
}
