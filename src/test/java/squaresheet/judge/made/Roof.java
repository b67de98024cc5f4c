package squaresheet.judge.made;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * A roof as a person would measure it, drawn at random: planes with their lengths in feet, and the lengths of its edges. Worked out
 * here from walls and pitch alone.
 *
 * @param form what it is, such as {@code hip}
 * @param planes its planes, 1 to 40
 * @param edges its edges
 */
public record Roof(String form, List<Plane> planes, List<Edge> edges) {

  /** Inches of run that a rise is given for. */
  private static final double RUN = 12;

  /**
   * A plane.
   *
   * @param name its name
   * @param building the building it belongs to
   * @param shape rectangle, triangle or trapezoid
   * @param eave length of the eave, feet
   * @param ridge length of the upper side, feet; 0 for a triangle, the eave's for a rectangle
   * @param run level depth, feet
   * @param rise inches of rise for 12 of run
   */
  public record Plane(
      String name,
      String building,
      String shape,
      double eave,
      double ridge,
      double run,
      double rise) {

    /** Slope length over run. */
    public double factor() {
      return Math.sqrt(1 + rise / RUN * (rise / RUN));
    }

    /** The depth up the slope, feet. */
    public double up() {
      return run * factor();
    }

    /** The mean of eave and ridge, feet. */
    public double width() {
      return (eave + ridge) / 2;
    }
  }

  /**
   * An edge.
   *
   * @param kind eave, rake, ridge, hip or valley
   * @param plane the plane it was measured on
   * @param length feet, on the slope
   */
  public record Edge(String kind, String plane, double length) {}

  static final List<String> FORMS = List.of(
      "gable", "hip", "L", "T", "U", "shed", "gambrel", "saltbox", "dormered", "several buildings");

  /** A roof of that form. */
  static Roof of(String form, Random random) {
    Walls walls = new Walls(random);
    switch (form) {
      case "gable" -> walls.gable("House", "Front", "Back", 0);
      case "hip" -> walls.hip("House");
      case "L" -> walls.wings(1);
      case "T" -> walls.wings(2);
      case "U" -> walls.wings(3);
      case "shed" -> walls.shed("Porch");
      case "gambrel" -> walls.gambrel();
      case "saltbox" -> walls.gable("House", "Front", "Back", 6);
      case "dormered" -> walls.dormered(2 + random.nextInt(4));
      default -> walls.buildings(3 + random.nextInt(7));
    }
    return new Roof(form, List.copyOf(walls.planes), List.copyOf(walls.edges));
  }

  /** Puts planes together. */
  private static final class Walls {
    private final Random random;
    private final List<Plane> planes = new ArrayList<>();
    private final List<Edge> edges = new ArrayList<>();

    Walls(Random random) {
      this.random = random;
    }

    private double feet(int least, int most) {
      return least + random.nextInt(most - least + 1) + random.nextInt(4) / 4.0;
    }

    private double pitch() {
      return List.of(4.0, 5.0, 6.0, 7.0, 8.0, 9.0, 10.0).get(random.nextInt(7));
    }

    private Plane add(
        String building, String name, double eave, double ridge, double run, double rise) {
      String shape = ridge == 0 ? "triangle" : ridge == eave ? "rectangle" : "trapezoid";
      Plane plane = new Plane(name, building, shape, eave, ridge, run, rise);
      planes.add(plane);
      edges.add(new Edge("eave", name, eave));
      return plane;
    }

    private void edge(String kind, String plane, double length) {
      edges.add(new Edge(kind, plane, Math.round(length * 4) / 4.0));
    }

    void gable(String building, String front, String back, double deeper) {
      double eave = feet(24, 60);
      double run = feet(10, 18);
      double rise = pitch();
      Plane first = add(building, front, eave, eave, run, rise);
      Plane second = add(building, back, eave, eave, run + deeper, rise);
      edge("ridge", front, eave);
      for (Plane plane : List.of(first, first, second, second)) {
        edge("rake", plane.name(), plane.up());
      }
    }

    void hip(String building) {
      double run = feet(10, 16);
      double eave = 2 * run + feet(8, 30);
      double rise = pitch();
      String name = building.equals("House") ? "" : building + " ";
      add(building, name + "Front", eave, eave - 2 * run, run, rise);
      add(building, name + "Back", eave, eave - 2 * run, run, rise);
      add(building, name + "Left", 2 * run, 0, run, rise);
      add(building, name + "Right", 2 * run, 0, run, rise);
      edge("ridge", name + "Front", eave - 2 * run);
      for (int corner = 0; corner < 4; corner++) {
        edge("hip", name + (corner < 2 ? "Left" : "Right"), hipLength(run, rise));
      }
    }

    private static double hipLength(double run, double rise) {
      return run * Math.sqrt(2 + rise / RUN * (rise / RUN));
    }

    void wings(int count) {
      gable("House", "Front", "Back", 0);
      double rise = planes.get(0).rise();
      double most = planes.get(0).run();
      for (int wing = 1; wing <= count; wing++) {
        double run = Math.max(4, Math.floor(most) - 2 - random.nextInt(3));
        double eave = feet(8, 20);
        String name = "Wing " + wing;
        for (String side : List.of(" left", " right")) {
          add("House", name + side, eave, eave + run, run, rise);
          edge("valley", name + side, hipLength(run, rise));
          edge("rake", name + side, planes.get(planes.size() - 1).up());
        }
        edge("ridge", name + " left", eave + run);
      }
    }

    void shed(String name) {
      Plane plane = add("House", name, feet(10, 30), 0, feet(8, 14), pitch());
      planes.set(
          planes.size() - 1,
          new Plane(
              name, "House", "rectangle", plane.eave(), plane.eave(), plane.run(), plane.rise()));
      edge("rake", name, plane.up());
      edge("rake", name, plane.up());
      edge("ridge", name, plane.eave());
    }

    void gambrel() {
      double eave = feet(24, 44);
      for (String side : List.of("Left", "Right")) {
        Plane lower = add("Barn", side + " lower", eave, eave, feet(4, 6), 18);
        Plane upper = add("Barn", side + " upper", eave, eave, feet(7, 10), 7);
        edges.remove(edges.size() - 1);
        for (Plane plane : List.of(lower, lower, upper, upper)) {
          edge("rake", plane.name(), plane.up());
        }
      }
      edge("ridge", "Left upper", eave);
    }

    void dormered(int count) {
      gable("House", "Front", "Back", 0);
      double rise = planes.get(0).rise();
      for (int dormer = 1; dormer <= count; dormer++) {
        double run = 2 + random.nextInt(3);
        for (String side : List.of(" left", " right")) {
          add("House", "Dormer " + dormer + side, 5, 5 + run, run, rise);
          edge("valley", "Dormer " + dormer + side, hipLength(run, rise));
        }
        edge("ridge", "Dormer " + dormer + " left", 5 + run);
      }
    }

    void buildings(int count) {
      for (int at = 1; at <= count; at++) {
        String building = "Building " + at;
        if (random.nextBoolean()) {
          hip(building);
        } else {
          gable(building, building + " Front", building + " Back", 0);
        }
      }
    }
  }
}
