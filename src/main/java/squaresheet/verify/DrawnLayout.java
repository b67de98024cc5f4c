package squaresheet.verify;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import squaresheet.courses.Lines;
import squaresheet.courses.RoofLayout;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.product.Role;
import squaresheet.sheet.Address;
import squaresheet.units.Length;

/** Whether the lines that are drawn for the crew are those that the workbook's own rules come to. */
final class DrawnLayout {

  private static final CheckInfo OTHER_LINES = new CheckInfo(
      "drawn-lines-differ", Severity.ERROR, "The drawings have other lines than the workbook");

  /** In inches: half the finest mark of a tape. */
  private static final double ON_THE_TAPE = 1.0 / 128;

  private final Model model;

  DrawnLayout(Model model) {
    this.model = model;
  }

  List<Finding> findings() {
    Optional<RoofLayout> layout = model.result().layout();
    Optional<Lines> lines =
        layout.stream().flatMap(it -> it.plans().stream()).findFirst().map(plan -> plan.lines());
    List<Finding> findings = new ArrayList<>();
    lines.ifPresent(it -> {
      compare("first_course_line", it.firstCourse(), findings);
      if (model.takeoff().selection().of(Role.STARTER).isPresent()) {
        compare("starter_line", it.starterLine(), findings);
      }
    });
    layout.ifPresent(it -> compare("line_interval", it.interval().laid(), findings));
    return findings;
  }

  private void compare(String rule, Length drawn, List<Finding> findings) {
    Optional<Address> cell = model.job().cells().cell("job", rule);
    cell.flatMap(at -> model.book().number(at).stream().boxed().findFirst())
        .filter(inches -> Math.abs(inches - drawn.toInches()) > ON_THE_TAPE)
        .ifPresent(inches -> findings.add(says(rule, cell.orElseThrow(), drawn)));
  }

  private Finding says(String rule, Address at, Length drawn) {
    String label = model.takeoff().rulebook().rule(rule).orElseThrow().label();
    String says = label + " is " + Shown.of(model.book().value(at))
        + " in by the rule here, but is drawn at " + Shown.number(drawn.toInches())
        + " in; the drawings follow the settings on the sheet Layout alone, so put the rule back and set it there";
    return Says.about(OTHER_LINES, model.book(), at, Shown.number(drawn.toInches()), says);
  }
}
