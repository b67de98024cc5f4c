package squaresheet.judge.made;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import squaresheet.judge.made.Maker.Known;
import squaresheet.judge.made.Maker.Tab;

/** The ways in which people write the planes of a roof. Each gives the cell with the roof's area on the slope, in square feet or square metres. */
final class Planes {

  private static final String LENGTH = "0.00";
  private static final double METRES = 0.3048;

  private final Maker maker;
  private final Tab tab;
  private final int left;
  private final List<Roof.Plane> planes;

  Planes(Maker maker, Tab tab, int left) {
    this.maker = maker;
    this.tab = tab;
    this.left = left;
    this.planes = maker.roof.planes();
  }

  private static Known known(Meaning meaning, String item, String unit, String run) {
    return Known.of(meaning, item, unit).in(run);
  }

  private String word(String thing) {
    return maker.words.of(thing);
  }

  private String at(int row, int column) {
    return Tab.at(row, left + column);
  }

  private void name(int row, Roof.Plane plane) {
    tab.word(row, left, plane.name(), Known.of(Meaning.PLANE_NAME, plane.name(), ""));
  }

  private void typed(
      int row, int column, double value, Meaning meaning, Roof.Plane plane, String unit) {
    double rounded = Math.round(value * 100) / 100.0;
    tab.typed(
        row, left + column, rounded, LENGTH, known(meaning, plane.name(), unit, meaning.name()));
  }

  private void pitch(int row, int column, Roof.Plane plane) {
    tab.typed(
        row, left + column, plane.rise(), "", known(Meaning.PITCH, plane.name(), "in/12", "PITCH"));
  }

  private void formula(
      int row,
      int column,
      String text,
      String format,
      Meaning meaning,
      Roof.Plane plane,
      String unit) {
    tab.formula(
        row, left + column, text, format, known(meaning, plane.name(), unit, meaning.name()));
  }

  private Place sum(int row, int column, int first, Meaning meaning, String unit) {
    tab.text(row, left, "Total");
    tab.formula(
        row,
        left + column,
        "SUM(" + at(first, column) + ":" + at(row - 1, column) + ")",
        "0.0",
        Known.of(meaning, "job", unit));
    return new Place(tab, row, left + column);
  }

  /** Eave times the length up the slope, no pitch anywhere. */
  Place upTheSlope(int top) {
    tab.headings(
        top,
        left,
        List.of(
            word("plane"),
            word("eave") + " (ft)",
            word("up") + " (ft)",
            word("area") + " (sq ft)"));
    int row = top + 1;
    for (Roof.Plane plane : planes) {
      name(row, plane);
      typed(row, 1, plane.width(), Meaning.EAVE, plane, "ft");
      typed(row, 2, plane.up(), Meaning.LENGTH_UP_SLOPE, plane, "ft");
      formula(row, 3, at(row, 1) + "*" + at(row, 2), "0.0", Meaning.SLOPED_AREA, plane, "sq ft");
      row++;
    }
    return sum(row, 3, top + 1, Meaning.SLOPED_AREA, "sq ft");
  }

  /** Eave, ridge and length up the slope of trapezoids. */
  Place trapezoids(int top) {
    tab.headings(
        top,
        left,
        List.of(
            word("plane"),
            word("eave") + ", ft",
            word("ridge") + ", ft",
            word("up") + ", ft",
            word("area") + ", sq ft",
            word("squares")));
    int row = top + 1;
    for (Roof.Plane plane : planes) {
      name(row, plane);
      typed(row, 1, plane.eave(), Meaning.EAVE, plane, "ft");
      typed(row, 2, plane.ridge(), Meaning.RIDGE, plane, "ft");
      typed(row, 3, plane.up(), Meaning.LENGTH_UP_SLOPE, plane, "ft");
      formula(
          row,
          4,
          "(" + at(row, 1) + "+" + at(row, 2) + ")/2*" + at(row, 3),
          "0.0",
          Meaning.SLOPED_AREA,
          plane,
          "sq ft");
      formula(row, 5, at(row, 4) + "/100", "0.00", Meaning.SQUARES, plane, "sq");
      row++;
    }
    sum(row, 5, top + 1, Meaning.SQUARES, "sq");
    return sum(row, 4, top + 1, Meaning.SLOPED_AREA, "sq ft");
  }

  /** Plan area by pitch factor, the factor worked out in each row; the column of factors may be hidden. */
  Place planByFactor(int top, boolean hidden) {
    tab.headings(
        top,
        left,
        List.of(
            word("plane"),
            word("eave") + " ft",
            word("run") + " ft",
            word("pitch"),
            word("factor"),
            word("planArea") + " sf",
            word("area") + " sf",
            word("squares")));
    int row = top + 1;
    for (Roof.Plane plane : planes) {
      name(row, plane);
      typed(row, 1, plane.width(), Meaning.EAVE, plane, "ft");
      typed(row, 2, plane.run(), Meaning.LENGTH_IN_PLAN, plane, "ft");
      pitch(row, 3, plane);
      formula(
          row, 4, "SQRT(1+(" + at(row, 3) + "/12)^2)", "0.000", Meaning.PITCH_FACTOR, plane, "");
      formula(row, 5, at(row, 1) + "*" + at(row, 2), "0.0", Meaning.PLAN_AREA, plane, "sq ft");
      formula(row, 6, at(row, 5) + "*" + at(row, 4), "0.0", Meaning.SLOPED_AREA, plane, "sq ft");
      formula(row, 7, at(row, 6) + "/100", "0.00", Meaning.SQUARES, plane, "sq");
      row++;
    }
    tab.sheet.setColumnHidden(left + 4, hidden);
    sum(row, 5, top + 1, Meaning.PLAN_AREA, "sq ft");
    sum(row, 7, top + 1, Meaning.SQUARES, "sq");
    return sum(row, 6, top + 1, Meaning.SLOPED_AREA, "sq ft");
  }

  /** Feet and inches in two columns each, under two rows of headings. */
  Place feetAndInches(int top) {
    tab.headings(top, left, List.of("", word("eave"), "", word("up"), "", word("area")));
    tab.headings(top + 1, left, List.of(word("plane"), "ft", "in", "ft", "in", "sq ft"));
    int row = top + 2;
    for (Roof.Plane plane : planes) {
      name(row, plane);
      parts(row, 1, plane.width(), Meaning.EAVE, plane);
      parts(row, 3, plane.up(), Meaning.LENGTH_UP_SLOPE, plane);
      String text =
          "(%s+%s/12)*(%s+%s/12)".formatted(at(row, 1), at(row, 2), at(row, 3), at(row, 4));
      formula(row, 5, text, "0.0", Meaning.SLOPED_AREA, plane, "sq ft");
      row++;
    }
    return sum(row, 5, top + 2, Meaning.SLOPED_AREA, "sq ft");
  }

  private void parts(int row, int column, double feet, Meaning meaning, Roof.Plane plane) {
    double inches = Math.round(feet * 24) / 2.0;
    tab.typed(
        row,
        left + column,
        Math.floor(inches / 12),
        "0",
        known(meaning, plane.name(), "ft", meaning + " ft"));
    tab.typed(
        row,
        left + column + 1,
        inches % 12,
        "",
        known(meaning, plane.name(), "in", meaning + " in"));
  }

  /** Level run and an angle in degrees; metres where asked. */
  Place degrees(int top, boolean metric) {
    String unit = metric ? "m" : "ft";
    String square = metric ? "m²" : "sq ft";
    tab.headings(
        top,
        left,
        List.of(
            word("plane"),
            word("eave") + " (" + unit + ")",
            word("run") + " (" + unit + ")",
            "Pitch (degrees)",
            word("factor"),
            word("area") + " (" + square + ")"));
    int row = top + 1;
    for (Roof.Plane plane : planes) {
      name(row, plane);
      typed(row, 1, plane.width() * (metric ? METRES : 1), Meaning.EAVE, plane, unit);
      typed(row, 2, plane.run() * (metric ? METRES : 1), Meaning.LENGTH_IN_PLAN, plane, unit);
      double angle = Math.round(Math.toDegrees(Math.atan(plane.rise() / 12)) * 10) / 10.0;
      tab.typed(row, left + 3, angle, "0.0\"°\"", known(Meaning.PITCH, plane.name(), "°", "PITCH"));
      formula(
          row, 4, "1/COS(RADIANS(" + at(row, 3) + "))", "0.000", Meaning.PITCH_FACTOR, plane, "");
      formula(
          row,
          5,
          at(row, 1) + "*" + at(row, 2) + "*" + at(row, 4),
          "0.0",
          Meaning.SLOPED_AREA,
          plane,
          square);
      row++;
    }
    return sum(row, 5, top + 1, Meaning.SLOPED_AREA, square);
  }

  /** Planes side by side, one column each. */
  Place across(int top) {
    List<String> labels = List.of(
        word("plane"),
        word("eave") + " (ft)",
        word("run") + " (ft)",
        word("pitch"),
        word("factor"),
        word("planArea") + " (sf)",
        word("area") + " (sf)");
    for (int i = 0; i < labels.size(); i++) {
      tab.text(top + i, left, labels.get(i));
    }
    int column = 1;
    for (Roof.Plane plane : planes) {
      tab.word(top, left + column, plane.name(), Known.of(Meaning.PLANE_NAME, plane.name(), ""));
      typed(top + 1, column, plane.width(), Meaning.EAVE, plane, "ft");
      typed(top + 2, column, plane.run(), Meaning.LENGTH_IN_PLAN, plane, "ft");
      pitch(top + 3, column, plane);
      formula(
          top + 4,
          column,
          "SQRT(1+(" + at(top + 3, column) + "/12)^2)",
          "0.000",
          Meaning.PITCH_FACTOR,
          plane,
          "");
      formula(
          top + 5,
          column,
          at(top + 1, column) + "*" + at(top + 2, column),
          "0.0",
          Meaning.PLAN_AREA,
          plane,
          "sq ft");
      formula(
          top + 6,
          column,
          at(top + 5, column) + "*" + at(top + 4, column),
          "0.0",
          Meaning.SLOPED_AREA,
          plane,
          "sq ft");
      column++;
    }
    tab.text(top, left + column, "All");
    for (int i = 5; i <= 6; i++) {
      Meaning meaning = i == 5 ? Meaning.PLAN_AREA : Meaning.SLOPED_AREA;
      tab.formula(
          top + i,
          left + column,
          "SUM(" + at(top + i, 1) + ":" + at(top + i, column - 1) + ")",
          "0.0",
          Known.of(meaning, "job", "sq ft"));
    }
    return new Place(tab, top + 6, left + column);
  }

  /** The area of each plane typed as measured from a drawing, with its pitch beside. */
  Place areasTyped(int top) {
    tab.headings(
        top,
        left,
        List.of(word("plane"), word("pitch"), word("area") + " (sq ft)", word("squares")));
    int row = top + 1;
    for (Roof.Plane plane : planes) {
      name(row, plane);
      pitch(row, 1, plane);
      typed(
          row,
          2,
          (double) Math.round(plane.width() * plane.up()),
          Meaning.SLOPED_AREA,
          plane,
          "sq ft");
      formula(row, 3, at(row, 2) + "/100", "0.00", Meaning.SQUARES, plane, "sq");
      row++;
    }
    sum(row, 3, top + 1, Meaning.SQUARES, "sq");
    return sum(row, 2, top + 1, Meaning.SLOPED_AREA, "sq ft");
  }

  /** Plan area of each pitch, its factor looked up in a small table of factors that stands to the right. */
  Place byPitch(int top) {
    Map<Double, Double> plan = new LinkedHashMap<>();
    planes.stream()
        .sorted(java.util.Comparator.comparingDouble(Roof.Plane::rise))
        .forEach(plane -> plan.merge(plane.rise(), plane.width() * plane.run(), Double::sum));
    List<Double> rises = new ArrayList<>(plan.keySet());
    int table = left + 6;
    tab.headings(top, table, List.of(word("pitch"), word("factor")));
    List<Double> all = List.of(4.0, 5.0, 6.0, 7.0, 8.0, 9.0, 10.0, 18.0);
    for (int i = 0; i < all.size(); i++) {
      tab.typed(
          top + 1 + i,
          table,
          all.get(i),
          "",
          known(Meaning.PITCH, "table", "in/12", "table pitch"));
      double factor = Math.round(Math.sqrt(1 + all.get(i) * all.get(i) / 144) * 1000) / 1000.0;
      tab.typed(
          top + 1 + i,
          table + 1,
          factor,
          "0.000",
          known(Meaning.PITCH_FACTOR, "table", "", "table factor"));
    }
    String range = "$" + Tab.at(top + 1, table).replaceAll("(\\d+)$", "\\$$1") + ":$"
        + Tab.at(top + all.size(), table + 1).replaceAll("(\\d+)$", "\\$$1");
    tab.headings(
        top,
        left,
        List.of(
            word("pitch"),
            word("planArea") + " (sf)",
            word("factor"),
            word("area") + " (sf)",
            word("squares")));
    int row = top + 1;
    for (double rise : rises) {
      Roof.Plane plane =
          new Roof.Plane("pitch " + rise, "", "rectangle", 1, 1, plan.get(rise), rise);
      pitch(row, 0, plane);
      typed(row, 1, (double) Math.round(plan.get(rise)), Meaning.PLAN_AREA, plane, "sq ft");
      formula(
          row,
          2,
          "VLOOKUP(" + at(row, 0) + "," + range + ",2,FALSE)",
          "0.000",
          Meaning.PITCH_FACTOR,
          plane,
          "");
      formula(row, 3, at(row, 1) + "*" + at(row, 2), "0.0", Meaning.SLOPED_AREA, plane, "sq ft");
      formula(row, 4, at(row, 3) + "/100", "0.00", Meaning.SQUARES, plane, "sq");
      row++;
    }
    sum(row, 4, top + 1, Meaning.SQUARES, "sq");
    return sum(row, 3, top + 1, Meaning.SLOPED_AREA, "sq ft");
  }

  /** One pitch for the whole job in a cell at the top, one factor from it. */
  Place oneFactor(int top) {
    double rise = planes.get(0).rise();
    tab.text(top, left, word("pitch"));
    Roof.Plane job = new Roof.Plane("job", "", "rectangle", 1, 1, 1, rise);
    pitch(top, 1, job);
    tab.text(top + 1, left, word("factor"));
    formula(
        top + 1, 1, "SQRT(1+(" + at(top, 1) + "/12)^2)", "0.000", Meaning.PITCH_FACTOR, job, "");
    String factor = "$" + Tab.at(top + 1, left + 1).replaceAll("(\\d+)$", "\\$$1");
    int head = top + 3;
    tab.headings(
        head,
        left,
        List.of(
            word("plane"), word("eave") + " (ft)", word("run") + " (ft)", word("area") + " (sf)"));
    int row = head + 1;
    for (Roof.Plane plane : planes) {
      name(row, plane);
      typed(row, 1, plane.width(), Meaning.EAVE, plane, "ft");
      typed(row, 2, plane.run(), Meaning.LENGTH_IN_PLAN, plane, "ft");
      formula(
          row,
          3,
          at(row, 1) + "*" + at(row, 2) + "*" + factor,
          "0.0",
          Meaning.SLOPED_AREA,
          plane,
          "sq ft");
      row++;
    }
    return sum(row, 3, head + 1, Meaning.SLOPED_AREA, "sq ft");
  }

  /** Each building's footprint with its overhang, by the factor of its pitch. */
  Place footprints(int top) {
    tab.headings(
        top,
        left,
        List.of(
            "Building",
            "Length (ft)",
            "Width (ft)",
            "Overhang (ft)",
            word("pitch"),
            "Footprint (sf)",
            word("factor"),
            word("area") + " (sf)"));
    int row = top + 1;
    for (Roof.Plane plane : planes) {
      name(row, plane);
      typed(row, 1, plane.width() - 2, Meaning.EAVE, plane, "ft");
      typed(row, 2, plane.run() * 2 - 2, Meaning.LENGTH_IN_PLAN, plane, "ft");
      typed(row, 3, 1, Meaning.OVERHANG, plane, "ft");
      pitch(row, 4, plane);
      formula(
          row,
          5,
          "(%s+2*%s)*(%s+2*%s)".formatted(at(row, 1), at(row, 3), at(row, 2), at(row, 3)),
          "0.0",
          Meaning.PLAN_AREA,
          plane,
          "sq ft");
      formula(
          row, 6, "SQRT(144+" + at(row, 4) + "^2)/12", "0.000", Meaning.PITCH_FACTOR, plane, "");
      formula(row, 7, at(row, 5) + "*" + at(row, 6), "0.0", Meaning.SLOPED_AREA, plane, "sq ft");
      row++;
    }
    return sum(row, 7, top + 1, Meaning.SLOPED_AREA, "sq ft");
  }
}
