package squaresheet.cli;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/** A field sheet and terms as anybody might write them: a few roofs of every form beside each other, in any unit and notation. */
final class RandomJob {

  private static final List<String> UNITS = List.of("feet", "inches", "metres", "millimetres");

  private final Random random;
  private final long seed;
  private final List<String> planes = new ArrayList<>();
  private final List<String> openings = new ArrayList<>();
  private final List<String> edges = new ArrayList<>();
  /** What roofs are called: some signs mean more to a spreadsheet than to whoever writes them. */
  private final List<String> labels =
      new ArrayList<>(List.of("", "1", "?", "*", "~2", "12", "<3", "(rear)"));

  private int roofs;

  RandomJob(long seed) {
    this.seed = seed;
    random = new Random(seed);
    List<Runnable> forms = List.of(
        this::shed,
        this::gable,
        this::hip,
        this::dormer,
        this::notched,
        this::stepped,
        this::broken,
        this::bumped);
    Collections.shuffle(labels, random);
    int count = 1 + random.nextInt(3);
    for (int roof = 0; roof < count; roof++) {
      roofs++;
      forms.get(random.nextInt(forms.size())).run();
    }
  }

  String sheet() {
    return """
        Job
        Job name,Random job
        Unit for bare numbers,%s
        Eave overhang past the wall,"%s"
        Layers to tear off,%d
        Code edition,%d
        Waste rate,%s

        Planes
        Plane,Shape,Eave,Up the slope,Top,Offset,Pitch,Measured,Left edge,Top edge,Right edge,Corners,Edges in order
        %s

        Openings
        Opening,In plane,What,Width,Up the slope,From left,Up from eave
        %s

        Edges
        Edge,Plane,Meets,Length
        %s
        """.formatted(
            one(UNITS),
            length(random.nextDouble() * 2.5),
            random.nextInt(3),
            2009 + 3 * random.nextInt(6),
            decimal(random.nextInt(26), 0) + "%",
            String.join("\n", planes),
            String.join("\n", openings),
            String.join("\n", edges));
  }

  String terms() {
    return """
        name,value,cost_code,note
        currency,USD,,
        overhead,%s%%,OVH,
        profit,%s %s%%,PFT,
        discount_share,%s%%,DSC,
        discount_amount,%s,,
        discount_when,%s,,
        tax_rate,%s%%,STX,
        tax_on,%s,,
        tax_rounding,%s,,
        payment: on signing,%d%%,,
        """.formatted(
            decimal(random.nextDouble() * 20, 1),
            one(List.of("margin", "markup")),
            decimal(random.nextDouble() * 30, 1),
            decimal(random.nextInt(4) * 1.5, 1),
            decimal(random.nextInt(3) * 49.5, 2),
            one(List.of("before tax", "after tax")),
            decimal(random.nextDouble() * 10, 3),
            one(List.of("material", "material|labour", "material|labour|permit|overhead|profit")),
            one(List.of("line", "invoice")),
            100);
  }

  /** Settings that somebody types into the workbook afterwards, by name; the course layout asks for none of them. */
  Map<String, Object> settings() {
    Random typed = new Random(seed);
    Map<String, Object> settings = new TreeMap<>();
    settings.put("waste_choice", pick(typed, "typed", "shape", "simulated"));
    settings.put("starter_rakes", pick(typed, "yes", "no"));
    settings.put("underlayment_extent", pick(typed, "whole roof", "less ice barrier"));
    settings.put("ice_choice", pick(typed, "yes", "no"));
    settings.put("ice_in_valleys", pick(typed, "yes", "no"));
    settings.put("skylight_choice", pick(typed, "kit", "site"));
    settings.put("nail_pattern", pick(typed, "usual", "high wind"));
    settings.put("vent_choice", pick(typed, "ridge vent", "box vents", "none"));
    settings.put("deck_repair_share", typed.nextInt(4) * 0.1);
    settings.put("pipe_count", typed.nextInt(6));
    settings.put("eave_overhang", typed.nextInt(40));
    settings.put("building_stories", 1 + typed.nextInt(3));
    settings.keySet().removeIf(name -> typed.nextInt(3) == 0);
    return settings;
  }

  private static String pick(Random typed, String... of) {
    return of[typed.nextInt(of.length)];
  }

  private <T> T one(List<T> of) {
    return of.get(random.nextInt(of.size()));
  }

  private boolean odds(double of) {
    return random.nextDouble() < of;
  }

  private double between(double low, double high) {
    return low + random.nextDouble() * (high - low);
  }

  private static String decimal(double number, int places) {
    return String.format(Locale.ROOT, "%." + places + "f", number);
  }

  /** A length as one of many people would write it, its unit said. */
  private String length(double feet) {
    long sixteenths = Math.round(Math.abs(feet) * 192);
    String sign = feet < 0 ? "-" : "";
    return sign
        + switch (random.nextInt(5)) {
          case 0 ->
            sixteenths / 192 + "' " + sixteenths % 192 / 16 + " " + sixteenths % 16 + "/16\"\"";
          case 1 -> decimal(Math.abs(feet), 3) + " ft";
          case 2 -> decimal(Math.abs(feet) * 0.3048, 4) + " m";
          case 3 -> decimal(Math.abs(feet) * 304.8, 1) + " mm";
          default -> sixteenths / 16 + " " + sixteenths % 16 + "/16 in";
        };
  }

  /** A slope, and what people write for it. */
  private record Slope(String written, double factor) {}

  private Slope slope() {
    double rise = 3 + random.nextInt(24) / 2.0;
    double degrees = Math.round(between(15, 50) * 10) / 10.0;
    double percent = Math.round(between(26, 110) * 10) / 10.0;
    return switch (random.nextInt(5)) {
      case 0 -> new Slope(degrees + "°", 1 / Math.cos(Math.toRadians(degrees)));
      case 1 -> new Slope(percent + "%", Math.hypot(1, percent / 100));
      case 2 -> new Slope(rise + " in 12", Math.hypot(1, rise / 12));
      default -> new Slope(rise + ":12", Math.hypot(1, rise / 12));
    };
  }

  private String name(String part) {
    return "Roof " + labels.get(roofs) + " " + part;
  }

  /** A plane of a named shape; a length of 0 is not written. */
  private void plane(
      String name,
      String shape,
      double eave,
      double up,
      double top,
      double offset,
      Slope slope,
      boolean plan,
      String... sides) {
    planes.add(String.join(
        ",",
        name,
        shape,
        quoted(eave),
        quoted(plan ? up / slope.factor : up),
        quoted(top),
        quoted(offset),
        slope.written,
        plan ? "plan" : "slope",
        String.join(",", sides)));
  }

  private String quoted(double feet) {
    return feet == 0 ? "" : "\"" + length(feet) + "\"";
  }

  /** An opening near the middle of a plane that is so wide at the top. */
  private void opening(
      String plane, double eave, double top, double up, boolean plan, Slope slope) {
    if (odds(0.5)) {
      double width = between(1, Math.min(5, top / 3));
      double high = between(1, Math.min(4, up / 3)) / (plan ? slope.factor : 1);
      String place = odds(0.5)
          ? quoted((eave - width) / 2) + "," + quoted(up / 2 / (plan ? slope.factor : 1))
          : ",";
      openings.add(String.join(
          ",",
          "Opening " + openings.size(),
          plane,
          one(List.of("chimney", "skylight", "dormer", "other")),
          quoted(width),
          quoted(high),
          place));
    }
  }

  private void tape(String kind, String plane, String meets, double feet) {
    if (odds(0.4)) {
      edges.add(String.join(",", kind, plane, meets, quoted(feet + between(-0.5, 0.5) / 12)));
    }
  }

  private void shed() {
    double eave = between(8, 50);
    double up = between(6, 25);
    boolean plan = odds(0.6);
    Slope slope = slope();
    String top = one(List.of("ridge / none", "headwall", "ridge / -"));
    String left = one(List.of("rake", "sidewall"));
    plane(name("shed"), "rectangle", eave, up, 0, 0, slope, plan, left, top, "rake");
    opening(name("shed"), eave, eave, up, plan, slope);
  }

  private void gable() {
    double eave = between(12, 60);
    Slope slope = slope();
    for (String part : List.of("front", "back")) {
      String meets = name(part.equals("front") ? "back" : "front");
      double up = between(8, 22);
      boolean plan = odds(0.6);
      plane(
          name(part), "rectangle", eave, up, 0, 0, slope, plan, "rake", "ridge / " + meets, "rake");
      opening(name(part), eave, eave, up, plan, slope);
    }
    tape("ridge", name("front"), name("back"), eave);
  }

  private void hip() {
    double width = between(12, 34);
    double length = width + between(4, 30);
    Slope slope = slope();
    double up = width / 2 * slope.factor;
    List<String> parts = List.of("front", "right", "back", "left");
    for (int at = 0; at < 4; at++) {
      String name = name(parts.get(at));
      String left = "hip / " + name(parts.get((at + 3) % 4));
      String right = "hip / " + name(parts.get((at + 1) % 4));
      boolean plan = odds(0.7);
      if (at % 2 == 0) {
        String ridge = "ridge / " + name(parts.get(2 - at));
        plane(name, "trapezoid", length, up, length - width, 0, slope, plan, left, ridge, right);
        opening(name, length, length - width, up, plan, slope);
      } else {
        plane(name, "triangle", width, up, 0, 0, slope, plan, left, "", right);
      }
    }
    tape("ridge", name("front"), name("back"), length - width);
    tape("hip", name("front"), name("right"), Math.hypot(width / 2, up));
  }

  /** Two parallelograms over an opening of another roof: their valleys meet none. */
  private void dormer() {
    double out = between(3, 8);
    double eave = between(4, 9);
    Slope slope = slope();
    boolean plan = odds(0.6);
    String one = name("dormer left");
    String other = name("dormer right");
    plane(
        one,
        "parallelogram",
        eave,
        out,
        0,
        -out,
        slope,
        plan,
        "valley / none",
        "ridge / " + other,
        "open");
    plane(
        other,
        "parallelogram",
        eave,
        out,
        0,
        out,
        slope,
        plan,
        "open",
        "ridge / " + one,
        "valley / none");
  }

  private void polygon(Slope slope, boolean plan, String kinds, double... corners) {
    List<String> written = new ArrayList<>();
    for (int at = 0; at < corners.length; at += 2) {
      double up = plan ? corners[at + 1] / slope.factor : corners[at + 1];
      written.add(length(corners[at]) + ", " + length(up));
    }
    String measured = plan ? "plan" : "slope";
    planes.add(String.join(
        ",",
        name("polygon"),
        "polygon,,,,",
        slope.written,
        measured,
        ",,",
        "\"" + String.join("; ", written) + "\"",
        "\"" + kinds + "\""));
  }

  /** An eave with a notch where another roof runs in. */
  private void notched() {
    double eave = between(24, 60);
    double high = between(14, 26);
    double from = between(4, eave / 3);
    double deep = between(3, Math.min(high - 2, eave / 4));
    polygon(
        slope(),
        odds(0.6),
        "eave, valley / none, valley / none, eave, rake, ridge / none, rake",
        0,
        0,
        from,
        0,
        from + deep,
        deep,
        from + 2 * deep,
        0,
        eave,
        0,
        eave,
        high,
        0,
        high);
  }

  /** A part of the eave further down, as over an entry. */
  private void bumped() {
    double eave = between(24, 50);
    double out = between(2, 7);
    double from = between(8, 12);
    double high = out + between(8, 14);
    polygon(
        slope(),
        odds(0.6),
        "eave, rake, eave, rake, ridge / none, rake",
        0,
        0,
        from,
        0,
        from,
        out,
        eave,
        out,
        eave,
        high,
        0,
        high);
  }

  /** A plane whose upper part is narrower. */
  private void stepped() {
    double eave = between(20, 50);
    double step = between(6, 12);
    double high = step + between(4, 12);
    double narrow = between(8, eave - 6);
    polygon(
        slope(),
        odds(0.6),
        "eave, rake, headwall, sidewall, ridge / none, rake",
        0,
        0,
        eave,
        0,
        eave,
        step,
        narrow,
        step,
        narrow,
        high,
        0,
        high);
  }

  /** Two pitches, one above the other. */
  private void broken() {
    double eave = between(14, 44);
    Slope low = slope();
    Slope high = slope();
    double up = between(5, 12);
    boolean plan = odds(0.6);
    plane(
        name("lower"),
        "rectangle",
        eave,
        up,
        0,
        0,
        low,
        plan,
        "rake",
        "pitch break / " + name("upper"),
        "rake");
    planes.add(String.join(
        ",",
        name("upper"),
        "polygon,,,,",
        high.written,
        "slope,,,",
        "\"0, 0; " + length(eave) + ", 0; " + length(eave) + ", " + length(up) + "; 0, "
            + length(up) + "\"",
        "\"pitch break / " + name("lower") + ", rake, ridge / none, rake\""));
  }
}
