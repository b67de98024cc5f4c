package squaresheet.judge.made;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import squaresheet.judge.made.Maker.Known;
import squaresheet.judge.made.Maker.Tab;

/** The ways in which people write the edges of a roof. Each gives the cells with the length of each kind, in feet. */
final class Edges {

  /** The kinds of edges. */
  enum Kind {
    EAVE,
    RAKE,
    RIDGE,
    HIP,
    VALLEY;

    String word() {
      return name().charAt(0) + name().substring(1).toLowerCase(Locale.ROOT);
    }
  }

  private final Maker maker;
  private final Tab tab;
  private final int left;

  Edges(Maker maker, Tab tab, int left) {
    this.maker = maker;
    this.tab = tab;
    this.left = left;
  }

  /** A list of edges, and under it the sum of each kind by its word. */
  Map<Kind, Place> listed(int top) {
    tab.headings(top, left, List.of("Edge", "Kind", "Length (ft)"));
    int row = top + 1;
    for (Roof.Edge edge : maker.roof.edges()) {
      tab.text(row, left, edge.plane());
      Kind kind = Kind.valueOf(edge.kind().toUpperCase(Locale.ROOT));
      tab.word(
          row,
          left + 1,
          kind.word(),
          Known.of(Meaning.EDGE_KIND, edge.plane(), "").in("kinds"));
      tab.typed(
          row,
          left + 2,
          Math.round(edge.length() * 4) / 4.0,
          "0.00",
          Known.of(Meaning.EDGE_LENGTH, edge.plane(), "ft").in("edges"));
      row++;
    }
    String kinds = range(top + 1, row - 1, left + 1);
    String lengths = range(top + 1, row - 1, left + 2);
    Map<Kind, Place> sums = new EnumMap<>(Kind.class);
    row++;
    for (Kind kind : Kind.values()) {
      tab.text(row, left, kind.word());
      tab.formula(
          row,
          left + 2,
          "SUMIF(" + kinds + ",\"" + kind.word() + "\"," + lengths + ")",
          "0.00",
          Known.of(Meaning.EDGE_TOTAL, kind.word(), "ft").in("edge totals"));
      sums.put(kind, new Place(tab, row, left + 2));
      row++;
    }
    return sums;
  }

  private static String range(int first, int last, int column) {
    return Tab.at(first, column).replaceAll("^([A-Z]+)", "\\$$1\\$")
        + ":"
        + Tab.at(last, column).replaceAll("^([A-Z]+)", "\\$$1\\$");
  }

  /** The length of each kind, added up on paper and typed. */
  Map<Kind, Place> totals(int top) {
    Map<Kind, Place> sums = new EnumMap<>(Kind.class);
    int row = top;
    for (Kind kind : Kind.values()) {
      double length = maker.roof.edges().stream()
          .filter(edge -> edge.kind().equalsIgnoreCase(kind.name()))
          .mapToDouble(Roof.Edge::length)
          .sum();
      tab.text(row, left, kind.word() + " (ft)");
      tab.typed(
          row,
          left + 1,
          (double) Math.round(length),
          "",
          Known.of(Meaning.EDGE_TOTAL, kind.word(), "ft"));
      sums.put(kind, new Place(tab, row, left + 1));
      row++;
    }
    return sums;
  }
}
