package squaresheet.verify;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import squaresheet.binding.BoundBook;
import squaresheet.roof.Plane;
import squaresheet.roof.PlaneNotes;
import squaresheet.roof.Roof;
import squaresheet.roof.RoofNotes;
import squaresheet.verify.BoundValue.Kind;

/** What the worked-out cells of a foreign planes table should hold: from dimensions and pitch on to squares and bundles. */
final class PlaneValues {

  /** A factor rounded to two decimals in a table of its own moves an area by at most this share. */
  private static final double ROUNDED_FACTOR = 0.005;

  private static final double RUN = 12;
  private static final double SQUARE = 100;

  /** A whole pack missed by so little is that pack, however long the chain of formulas. */
  private static final double WHOLE_PACK = 1e-9;

  private final BookModel model;

  PlaneValues(BookModel model) {
    this.model = model;
  }

  void add(BoundBook.Table table) {
    if (table.name().equals("planes")) {
      table.rows().stream().filter(row -> !row.isSum()).forEach(row -> plane(row.subject()));
    }
  }

  private void plane(String subject) {
    Optional<Plane> plane =
        Optional.ofNullable(model.bound().planes().get(subject)).flatMap(PlaneValues::resolved);
    OptionalDouble pitch = pitch(subject, plane);
    factor(subject, pitch);
    areas(subject, plane, pitch);
    net(subject);
    squares(subject);
    packs(subject);
  }

  private static Optional<Plane> resolved(PlaneNotes notes) {
    return Roof.resolve(RoofNotes.of(notes)).value().map(roof -> roof.planes().get(0));
  }

  private OptionalDouble pitch(String subject, Optional<Plane> plane) {
    return plane
        .map(it ->
            OptionalDouble.of(RUN * Math.sqrt(it.pitch().factor() * it.pitch().factor() - 1)))
        .orElseGet(() -> model.plain(subject, "pitch").isPresent()
            ? model.plain(subject, "pitch")
            : common(subject));
  }

  /** The pitch beside a label holds for planes without a column of their own. */
  private OptionalDouble common(String subject) {
    return model.cell(subject, "pitch").isPresent()
        ? OptionalDouble.empty()
        : model.plain("job", "pitch");
  }

  private void factor(String subject, OptionalDouble pitch) {
    pitch.ifPresent(rise -> model.should(
        subject, "factor", Kind.PLANE, List.of(Math.hypot(1, rise / RUN)), 0, "the pitch"));
  }

  private void areas(String subject, Optional<Plane> plane, OptionalDouble pitch) {
    double tolerance = model.cell(subject, "factor").isPresent() ? 0 : ROUNDED_FACTOR;
    plane.ifPresent(it -> {
      model.should(
          subject,
          "plan_area",
          Kind.PLANE,
          List.of(it.grossPlanArea().squareFeet()),
          tolerance,
          "shape, dimensions and pitch");
      sloped(subject, it.grossArea().squareFeet(), tolerance, "shape, dimensions and pitch");
    });
    OptionalDouble plan = model.plain(subject, "plan_area");
    if (plane.isEmpty() && plan.isPresent() && pitch.isPresent()) {
      double area = plan.getAsDouble() * Math.hypot(1, pitch.getAsDouble() / RUN);
      sloped(subject, area, tolerance, "plan area and pitch");
    }
  }

  /** Openings may or may not be taken out already; both are fine. */
  private void sloped(String subject, double gross, double tolerance, String how) {
    double openings = model.plain(subject, "opening_area").orElse(0);
    List<Double> may = openings == 0 ? List.of(gross) : List.of(gross, gross - openings);
    model.should(subject, "sloped_area", Kind.PLANE, may, tolerance, how);
  }

  private void net(String subject) {
    OptionalDouble gross = model.plain(subject, "sloped_area");
    OptionalDouble openings = model.plain(subject, "opening_area");
    if (gross.isPresent() && openings.isPresent()) {
      model.should(
          subject,
          "net_area",
          Kind.PLANE,
          List.of(gross.getAsDouble() - openings.getAsDouble()),
          0,
          "sloped area less openings");
    }
  }

  private void squares(String subject) {
    OptionalDouble net = model.plain(subject, "net_area");
    OptionalDouble area = net.isPresent() ? net : model.plain(subject, "sloped_area");
    double openings = model.plain(subject, "opening_area").orElse(0);
    area.ifPresent(it -> model.should(
        subject,
        "squares",
        Kind.PLANE,
        openings == 0 ? List.of(it) : List.of(it, it - openings),
        0,
        "100 sq ft to the square of its area"));
  }

  private void packs(String subject) {
    OptionalDouble squares = model.plain(subject, "squares");
    OptionalDouble waste = waste(subject);
    if (squares.isPresent() && waste.isPresent()) {
      double gross = squares.getAsDouble() * (1 + waste.getAsDouble());
      model.should(
          subject,
          "gross_squares",
          Kind.PLANE,
          List.of(gross, squares.getAsDouble() / (1 - waste.getAsDouble())),
          0,
          "squares and waste rate");
    }
    OptionalDouble gross = model.plain(subject, "gross_squares");
    OptionalDouble each = model.plain("job", "bundles_per_square");
    if (gross.isPresent() && each.isPresent()) {
      double bundles = gross.getAsDouble() / SQUARE * each.getAsDouble();
      model.should(
          subject,
          "bundles",
          Kind.PLANE,
          List.of(whole(bundles), bundles),
          0,
          "squares with waste and bundles per square");
    }
  }

  static double whole(double packs) {
    return Math.ceil(packs * (1 - WHOLE_PACK));
  }

  /** The plane's own waste, or the job's; a number over 1 is no ratio. */
  private OptionalDouble waste(String subject) {
    OptionalDouble own = model.plain(subject, "waste_rate");
    OptionalDouble rate = own.isPresent() ? own : model.plain("job", "waste_rate");
    return rate.stream().filter(it -> it >= 0 && it < 1).findFirst();
  }
}
