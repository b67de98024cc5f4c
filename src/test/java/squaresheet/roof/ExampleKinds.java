package squaresheet.roof;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import squaresheet.roof.PlaneNotes.Measured;
import squaresheet.units.DerivedLength;
import squaresheet.units.Length;
import squaresheet.units.Pitch;

/** The kinds of steps in worked problems that a roof can answer, by the words of the quantity; the first that fits answers. */
final class ExampleKinds {

  /** What each kind asks, answered in the unit of the row. */
  private static final Map<String, Function<Problem, OptionalDouble>> KINDS = new LinkedHashMap<>();

  static {
    KINDS.put("(total )?run of hip", problem -> hip(problem, problem.run(), false));
    KINDS.put("unit run of hip|hip unit run.*", problem -> unitHip(problem, false));
    KINDS.put("unit length,? (of )?hip.*|hip unit length.*", problem -> unitHip(problem, true));
    KINDS.put("hip run for the last 6 in", problem -> lastHalfFoot(problem));
    KINDS.put("(total )?run|half width", problem -> run(problem));
    KINDS.put("unit length.*", problem -> rake(problem, Optional.of(problem.unitRun())));
    KINDS.put("total rise|roof height.*", problem -> rise(problem));
    KINDS.put("inch rise", problem -> riseOfAFoot(problem));
    KINDS.put("slope factor", problem -> factor(problem));
    KINDS.put("hip length.*|hip rafter.*", problem -> hip(problem, problem.run(), true));
    KINDS.put(
        "((common )?rafter )?length.*|common rafter.*|rafter line.*",
        problem -> rake(problem, problem.run()));
    KINDS.put("(sloped|roof) area", problem -> slopedArea(problem));
    KINDS.put("plan area|footprint|main roof plan", problem -> planArea(problem));
  }

  private ExampleKinds() {}

  /** The answer of the model to the row; nothing where no kind fits or too little is given. */
  static OptionalDouble answer(Problem problem) {
    return KINDS.entrySet().stream()
        .filter(kind -> problem.quantity().matches(kind.getKey()))
        .findFirst()
        .map(kind -> kind.getValue().apply(problem))
        .orElse(OptionalDouble.empty());
  }

  private static OptionalDouble in(Problem problem, DerivedLength length) {
    return switch (problem.get("unit")) {
      case "ft" -> OptionalDouble.of(length.toFeet());
      case "in", "ft-in", "in per ft" -> OptionalDouble.of(length.inches());
      case "mm" -> OptionalDouble.of(length.toMetres() * 1000);
      default -> OptionalDouble.empty();
    };
  }

  private static Roof resolved(RoofNotes notes) {
    return Roof.resolve(notes).value().orElseThrow();
  }

  private static Optional<Plane> gableFront(Problem problem, Optional<Length> run) {
    return run.flatMap(level -> problem.pitch().map(pitch -> resolved(
            RoofForms.gable(Length.of(10, 0), level.times(2), pitch))
        .planes()
        .get(0)));
  }

  private static Side side(Plane plane, EdgeKind kind) {
    return plane.sides(kind).get(0);
  }

  private static OptionalDouble rake(Problem problem, Optional<Length> run) {
    return gableFront(problem, run)
        .map(plane -> in(problem, side(plane, EdgeKind.RAKE).length()))
        .orElse(OptionalDouble.empty());
  }

  /** The run of the plane, which is the plan of its rake; the pitch does not matter. */
  private static OptionalDouble run(Problem problem) {
    Pitch pitch = problem.pitch().orElse(Pitch.of(6));
    return problem
        .run()
        .map(run ->
            resolved(RoofForms.shed(Length.of(10, 0), run, pitch)).planes().get(0))
        .map(plane -> in(
            problem, side(plane, EdgeKind.RAKE).length().times(1 / plane.pitch().factor())))
        .orElse(OptionalDouble.empty());
  }

  private static OptionalDouble rise(Problem problem) {
    return gableFront(problem, problem.run())
        .map(plane -> in(
            problem,
            side(plane, EdgeKind.RAKE)
                .length()
                .times(plane.pitch().slope() / plane.pitch().factor())))
        .orElse(OptionalDouble.empty());
  }

  private static OptionalDouble riseOfAFoot(Problem problem) {
    return problem
        .pitch()
        .map(pitch -> in(problem, new DerivedLength(pitch.rise().doubleValue())))
        .orElse(OptionalDouble.empty());
  }

  private static OptionalDouble factor(Problem problem) {
    return gableFront(problem, Optional.of(Length.of(10, 0)))
        .map(plane ->
            OptionalDouble.of(plane.slopedArea().squareFeet() / plane.planArea().squareFeet()))
        .orElse(OptionalDouble.empty());
  }

  private static OptionalDouble unitHip(Problem problem, boolean sloped) {
    return hip(problem, Optional.of(problem.unitRun()), sloped);
  }

  private static OptionalDouble lastHalfFoot(Problem problem) {
    return hip(problem, Optional.of(Length.ofInches(6)), false);
  }

  /** A hip of a square roof; seen from above its length is the diagonal of the along and the run of its plane. */
  private static OptionalDouble hip(Problem problem, Optional<Length> run, boolean sloped) {
    Optional<Pitch> pitch = problem.pitch();
    if (run.isEmpty() || pitch.isEmpty()) {
      return OptionalDouble.empty();
    }
    Length width = run.get().times(2);
    Plane plane = resolved(RoofForms.hip(width, width, pitch.get())).planes().get(0);
    Side hip = side(plane, EdgeKind.HIP);
    double level =
        Math.hypot(hip.along().toInches(), hip.up().toInches() / plane.pitch().factor());
    return in(problem, sloped ? hip.length() : new DerivedLength(level));
  }

  private static OptionalDouble planArea(Problem problem) {
    List<Shape.Rectangle> rectangles = Problem.rectangles(problem.get("inputs"));
    return rectangles.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(
            roof(rectangles, problem.pitch().orElse(Pitch.of(6))).planArea().squareFeet());
  }

  /** Planes over the plan area named in the inputs, or found in the step before. */
  private static OptionalDouble slopedArea(Problem problem) {
    String number = problem.get("inputs").replace(",", "").replaceAll("^([\\d.]+) .*", "$1");
    String plan = number.matches("[\\d.]+") ? number : problem.get("before");
    if (problem.pitch().isEmpty() || plan.isEmpty()) {
      return OptionalDouble.empty();
    }
    Length wide = Length.nearestInches(Double.parseDouble(plan) / 10 * 12);
    return OptionalDouble.of(roof(
            List.of(new Shape.Rectangle(wide, Length.of(10, 0))),
            problem.pitch().get())
        .slopedArea()
        .squareFeet());
  }

  private static Roof roof(List<Shape.Rectangle> inPlan, Pitch pitch) {
    List<PlaneNotes> planes = new ArrayList<>();
    for (Shape.Rectangle shape : inPlan) {
      planes.add(new PlaneNotes("plane " + planes.size(), shape, Measured.IN_PLAN, pitch));
    }
    return resolved(new RoofNotes(planes));
  }
}
