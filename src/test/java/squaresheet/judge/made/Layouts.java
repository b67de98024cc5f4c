package squaresheet.judge.made;

import java.util.List;
import java.util.Map;
import java.util.Random;
import org.apache.poi.ss.util.CellRangeAddress;
import squaresheet.judge.made.Bid.Way;
import squaresheet.judge.made.Maker.Known;
import squaresheet.judge.made.Maker.Tab;
import squaresheet.judge.made.Order.Prices;
import squaresheet.judge.made.Order.Whole;

/** Ways of laying out a job in a workbook, as small contractors have them: which forms of planes, edges, list and price go together. */
public final class Layouts {

  /** How the planes are written. */
  private enum Form {
    UP_THE_SLOPE,
    TRAPEZOIDS,
    PLAN_BY_FACTOR,
    HIDDEN_FACTOR,
    FEET_AND_INCHES,
    DEGREES,
    METRIC,
    ACROSS,
    AREAS_TYPED,
    BY_PITCH,
    ONE_FACTOR,
    FOOTPRINTS
  }

  /**
   * A layout.
   *
   * @param name what it is called in the table of results
   * @param form how planes are written
   * @param oneTab whether everything stands on one tab
   * @param listed whether edges are listed, else typed as totals
   * @param prices where prices stand
   * @param way how the price is built up
   * @param dressed whether it has a merged title, bands, notes beside numbers
   * @param unseen whether it is only ever reported on
   */
  private record Layout(
      String name,
      Form form,
      boolean oneTab,
      boolean listed,
      Prices prices,
      Way way,
      boolean dressed,
      boolean unseen) {}

  private static Layout layout(
      String name,
      Form form,
      String tabs,
      String edges,
      Prices prices,
      Way way,
      String dress,
      String half) {
    return new Layout(
        name,
        form,
        tabs.equals("one tab"),
        edges.equals("listed"),
        prices,
        way,
        dress.equals("dressed"),
        half.equals("unseen"));
  }

  private static final List<Layout> ALL = List.of(
      layout(
          "one flat sheet",
          Form.UP_THE_SLOPE,
          "one tab",
          "totals",
          Prices.IN_THE_ROW,
          Way.MARKUP,
          "plain",
          "seen"),
      layout(
          "flat sheet, margin",
          Form.PLAN_BY_FACTOR,
          "one tab",
          "totals",
          Prices.IN_THE_ROW,
          Way.MARGIN,
          "plain",
          "unseen"),
      layout(
          "trapezoids, three tabs",
          Form.TRAPEZOIDS,
          "tabs",
          "listed",
          Prices.IN_THE_ROW,
          Way.MARKUP,
          "plain",
          "seen"),
      layout(
          "trapezoids, prices apart",
          Form.TRAPEZOIDS,
          "tabs",
          "listed",
          Prices.LOOKED_UP,
          Way.WHOLE_PERCENTS,
          "dressed",
          "unseen"),
      layout(
          "plan by factor, prices apart",
          Form.PLAN_BY_FACTOR,
          "tabs",
          "listed",
          Prices.LOOKED_UP,
          Way.MARGIN,
          "plain",
          "seen"),
      layout(
          "plan by factor, matched prices",
          Form.PLAN_BY_FACTOR,
          "tabs",
          "totals",
          Prices.MATCHED,
          Way.MARKUP,
          "dressed",
          "unseen"),
      layout(
          "hidden column of factors",
          Form.HIDDEN_FACTOR,
          "tabs",
          "listed",
          Prices.IN_THE_ROW,
          Way.WHOLE_PERCENTS,
          "plain",
          "seen"),
      layout(
          "hidden factors, one sheet",
          Form.HIDDEN_FACTOR,
          "one tab",
          "totals",
          Prices.TABLE,
          Way.MARKUP,
          "plain",
          "unseen"),
      layout(
          "feet and inches in two columns",
          Form.FEET_AND_INCHES,
          "tabs",
          "totals",
          Prices.IN_THE_ROW,
          Way.MARKUP,
          "plain",
          "seen"),
      layout(
          "feet and inches, edges listed",
          Form.FEET_AND_INCHES,
          "tabs",
          "listed",
          Prices.MATCHED,
          Way.LEAST_CHARGE,
          "dressed",
          "unseen"),
      layout(
          "degrees",
          Form.DEGREES,
          "tabs",
          "totals",
          Prices.IN_THE_ROW,
          Way.MARGIN,
          "dressed",
          "seen"),
      layout(
          "degrees, one sheet",
          Form.DEGREES,
          "one tab",
          "listed",
          Prices.IN_THE_ROW,
          Way.MARKUP,
          "plain",
          "unseen"),
      layout(
          "metric", Form.METRIC, "tabs", "totals", Prices.LOOKED_UP, Way.MARKUP, "plain", "seen"),
      layout(
          "metric, margin",
          Form.METRIC,
          "one tab",
          "totals",
          Prices.IN_THE_ROW,
          Way.MARGIN,
          "dressed",
          "unseen"),
      layout(
          "planes across",
          Form.ACROSS,
          "tabs",
          "totals",
          Prices.IN_THE_ROW,
          Way.MARKUP,
          "plain",
          "seen"),
      layout(
          "planes across, prices apart",
          Form.ACROSS,
          "tabs",
          "listed",
          Prices.LOOKED_UP,
          Way.LEAST_CHARGE,
          "plain",
          "unseen"),
      layout(
          "areas typed",
          Form.AREAS_TYPED,
          "one tab",
          "totals",
          Prices.IN_THE_ROW,
          Way.WHOLE_PERCENTS,
          "plain",
          "seen"),
      layout(
          "areas typed, structured table",
          Form.AREAS_TYPED,
          "tabs",
          "totals",
          Prices.TABLE,
          Way.MARKUP,
          "dressed",
          "unseen"),
      layout(
          "squares by pitch",
          Form.BY_PITCH,
          "tabs",
          "totals",
          Prices.IN_THE_ROW,
          Way.MARKUP,
          "dressed",
          "seen"),
      layout(
          "squares by pitch, matched prices",
          Form.BY_PITCH,
          "tabs",
          "listed",
          Prices.MATCHED,
          Way.MARGIN,
          "plain",
          "unseen"),
      layout(
          "one factor for the job",
          Form.ONE_FACTOR,
          "one tab",
          "totals",
          Prices.TABLE,
          Way.LEAST_CHARGE,
          "plain",
          "seen"),
      layout(
          "one factor, edges listed",
          Form.ONE_FACTOR,
          "tabs",
          "listed",
          Prices.IN_THE_ROW,
          Way.MARKUP,
          "dressed",
          "unseen"),
      layout(
          "footprint by factor",
          Form.FOOTPRINTS,
          "tabs",
          "totals",
          Prices.MATCHED,
          Way.MARKUP,
          "plain",
          "seen"),
      layout(
          "footprint, whole percents",
          Form.FOOTPRINTS,
          "one tab",
          "totals",
          Prices.IN_THE_ROW,
          Way.WHOLE_PERCENTS,
          "dressed",
          "unseen"));

  private Layouts() {}

  /** The names of the layouts of one half. */
  public static List<String> names(boolean unseen) {
    return ALL.stream()
        .filter(each -> each.unseen() == unseen)
        .map(Layout::name)
        .toList();
  }

  /** The workbook of that layout that the seed draws: its roof, words, prices and rates. */
  public static MadeBook book(String name, long seed) {
    Layout layout =
        ALL.stream().filter(each -> each.name().equals(name)).findFirst().orElseThrow();
    Random random = new Random(seed * 31 + name.hashCode());
    Roof roof = Roof.of(Roof.FORMS.get(random.nextInt(Roof.FORMS.size())), random);
    Maker maker = new Maker(roof, new Words(random, layout.unseen()), random);
    write(maker, layout);
    return maker.made(name + ", " + roof.form() + ", " + seed, name, layout.unseen());
  }

  private static void write(Maker maker, Layout layout) {
    Tab roof = maker.tab(layout.oneTab() ? "Bid" : maker.random.nextBoolean() ? "Roof" : "Takeoff");
    int top = 0;
    if (layout.dressed()) {
      top = dress(roof);
    }
    Place area = planes(new Planes(maker, roof, 0), layout.form(), top);
    int next = roof.next + 2;
    Edges edges = new Edges(maker, roof, 0);
    Map<Edges.Kind, Place> lengths = layout.listed() ? edges.listed(next) : edges.totals(next);
    Tab list = layout.oneTab() ? roof : maker.tab("Order");
    int at = layout.oneTab() ? list.next + 2 : 0;
    String waste = waste(maker, list, at);
    boolean metric = layout.form() == Form.METRIC;
    Whole whole = maker.random.nextBoolean() ? Whole.ROUNDUP : Whole.CEILING;
    Order.Sums sums = new Order(maker, list, area, lengths, metric)
        .write(at + 2, waste, layout.prices(), whole, maker.random.nextBoolean());
    Tab bid = layout.oneTab() || maker.random.nextBoolean() ? list : maker.tab("Price");
    new Bid(maker, bid, bid == list ? list.next + 1 : 0, bid == list ? 4 : 2)
        .write(sums, layout.way(), maker.random.nextBoolean());
    if (layout.dressed()) {
      notes(list);
    }
  }

  private static int dress(Tab tab) {
    tab.text(0, 0, "Roof bid");
    tab.sheet.addMergedRegion(new CellRangeAddress(0, 0, 0, 4));
    tab.text(1, 0, "Customer: house on the corner");
    tab.text(2, 0, "all lengths by tape");
    return 4;
  }

  private static void notes(Tab tab) {
    tab.text(tab.next + 1, 0, "Prices good for 30 days. Measured twice.");
  }

  private static String waste(Maker maker, Tab tab, int row) {
    tab.text(row, 0, maker.words.of("waste"));
    double rate = 0.08 + maker.random.nextInt(5) / 50.0;
    boolean whole = maker.random.nextInt(3) == 0;
    tab.typed(
        row,
        1,
        Math.round((whole ? rate * 100 : rate) * 1000) / 1000.0,
        whole ? "0\" %\"" : "0%",
        Known.of(Meaning.WASTE_RATE, "job", whole ? "%" : ""));
    return Tab.at(row, 1).replaceAll("^([A-Z]+)", "\\$$1\\$") + (whole ? "/100" : "");
  }

  private static Place planes(Planes planes, Form form, int top) {
    return switch (form) {
      case UP_THE_SLOPE -> planes.upTheSlope(top);
      case TRAPEZOIDS -> planes.trapezoids(top);
      case PLAN_BY_FACTOR -> planes.planByFactor(top, false);
      case HIDDEN_FACTOR -> planes.planByFactor(top, true);
      case FEET_AND_INCHES -> planes.feetAndInches(top);
      case DEGREES -> planes.degrees(top, false);
      case METRIC -> planes.degrees(top, true);
      case ACROSS -> planes.across(top);
      case AREAS_TYPED -> planes.areasTyped(top);
      case BY_PITCH -> planes.byPitch(top);
      case ONE_FACTOR -> planes.oneFactor(top);
      case FOOTPRINTS -> planes.footprints(top);
    };
  }
}
