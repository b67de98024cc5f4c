package squaresheet.judge.own;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** Field sheets of made-up houses, as text tables, with every ridge and hip taped once more. Lengths are worked out here from walls and pitch. */
final class TapeSheets {

  private static final double METRES = 0.3048;

  private final Random random;
  private final boolean metric;
  private final List<String> planes = new ArrayList<>();
  private final List<String> edges = new ArrayList<>();
  private final List<String> openings = new ArrayList<>();

  private TapeSheets(Random random) {
    this.random = random;
    this.metric = random.nextInt(5) == 0;
  }

  /** The field sheet that the seed draws: one to six buildings, imperial or metric. */
  static String of(long seed) {
    Random random = new Random(seed);
    TapeSheets sheet = new TapeSheets(random);
    int buildings = random.nextInt(4) == 0 ? 2 + random.nextInt(5) : 1;
    for (int at = 1; at <= buildings; at++) {
      sheet.building(buildings == 1 ? "" : "House " + at + " ");
    }
    return sheet.text(seed);
  }

  private String text(long seed) {
    return String.join(
        "\n",
        "Job",
        "Job name,House " + seed,
        "Measured by,Crew",
        "Date,2026-05-04",
        "Unit for bare numbers," + (metric ? "metres" : "feet"),
        "Layers to tear off," + random.nextInt(3),
        "",
        "Planes",
        "Plane,Shape,Eave,Up the slope,Top,Offset,Pitch,Measured,Left edge,Top edge,Right edge",
        String.join("\n", planes),
        "",
        "Openings",
        "Opening,In plane,What,Width,Up the slope",
        String.join("\n", openings),
        "",
        "Edges",
        "Edge,Plane,Meets,Length",
        String.join("\n", edges),
        "");
  }

  private void building(String name) {
    double rise = 4 + random.nextInt(7);
    switch (random.nextInt(4)) {
      case 0 -> hip(name, rise);
      case 1 -> gable(name, rise, 2 + random.nextInt(4));
      case 2 ->
        plane(
            name + "Shed",
            "rectangle",
            feet(10, 30),
            feet(8, 16),
            0,
            0,
            rise,
            "rake",
            "headwall",
            "rake");
      default -> gable(name, rise, 0);
    }
  }

  private double feet(int least, int most) {
    return least + random.nextInt(most - least + 1) + random.nextInt(4) / 4.0;
  }

  private void gable(String name, double rise, double deeper) {
    double eave = feet(24, 60);
    double run = feet(10, 18);
    double factor = Math.hypot(1, rise / 12);
    plane(
        name + "Front",
        "rectangle",
        eave,
        run * factor,
        0,
        0,
        rise,
        "rake",
        "ridge / " + name + "Back",
        "rake");
    plane(
        name + "Back",
        "rectangle",
        eave,
        (run + deeper) * factor,
        0,
        0,
        rise,
        "rake",
        "ridge / " + name + "Front",
        "rake");
    edge("ridge", name + "Front", name + "Back", eave);
    if (random.nextBoolean()) {
      openings.add("%sChimney,%sFront,chimney,%s,%s".formatted(name, name, length(2.5), length(2)));
    }
  }

  private void hip(String name, double rise) {
    double run = feet(10, 16);
    double eave = 2 * run + feet(8, 30);
    double up = run * Math.hypot(1, rise / 12);
    double hip = run * Math.sqrt(2 + rise * rise / 144);
    String front = name + "Front";
    String back = name + "Back";
    String left = name + "Left";
    String right = name + "Right";
    plane(
        front,
        "trapezoid",
        eave,
        up,
        eave - 2 * run,
        run,
        rise,
        "hip / " + left,
        "ridge / " + back,
        "hip / " + right);
    plane(
        back,
        "trapezoid",
        eave,
        up,
        eave - 2 * run,
        run,
        rise,
        "hip / " + right,
        "ridge / " + front,
        "hip / " + left);
    plane(left, "triangle", 2 * run, up, 0, run, rise, "hip / " + back, "", "hip / " + front);
    plane(right, "triangle", 2 * run, up, 0, run, rise, "hip / " + front, "", "hip / " + back);
    edge("ridge", front, back, eave - 2 * run);
    edge("hip", front, left, hip);
    edge("hip", front, right, hip);
    edge("hip", back, left, hip);
    edge("hip", back, right, hip);
  }

  private void plane(
      String name,
      String shape,
      double eave,
      double up,
      double top,
      double offset,
      double rise,
      String left,
      String upper,
      String right) {
    planes.add(String.join(
        ",",
        name,
        shape,
        length(eave),
        length(up),
        shape.equals("trapezoid") ? length(top) : "",
        shape.equals("rectangle") ? "" : length(offset),
        String.format(Locale.ROOT, "%.0f:12", rise),
        "slope",
        left,
        upper,
        right));
  }

  private void edge(String kind, String plane, String meets, double feet) {
    edges.add(String.join(",", kind, plane, meets, length(feet)));
  }

  /** To a sixteenth of an inch, or to a millimetre. */
  private String length(double feet) {
    if (metric) {
      return String.format(Locale.ROOT, "%.3f m", feet * METRES);
    }
    long sixteenths = Math.round(feet * 192);
    return String.format(
        Locale.ROOT, "%d ft %d %d/16 in", sixteenths / 192, sixteenths % 192 / 16, sixteenths % 16);
  }
}
