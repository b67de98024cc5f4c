package squaresheet.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import squaresheet.reference.Reference;
import squaresheet.reference.Reference.Row;

/**
 * Steps of published problems that the standard rules answer, by the words of the step. A step goes on from the number of
 * the step before it, as the problem does. Whole packs are held against the published need rounded up.
 */
class TakeoffExamplesTest {

  /** Words of a step to what the rules make of it, from the row and the row before. */
  private static final Map<String, ToDoubleBiFunction<Row, Row>> KINDS = new LinkedHashMap<>();

  /** Steps that a rule answers in whole packs. */
  private static final String WHOLE =
      "rolls.*|field bundles|starter bundles|ridge bundles|No. \\d+ rolls";

  static {
    KINDS.put(
        "with \\d+ percent( waste)? \\| x [\\d.]+",
        (row, before) -> Jobs.given(
            "gross_area", Map.of("net_area", before.number(), "typed_waste", share(row))));
    KINDS.put(
        "with \\d+ percent \\| x [\\d.]+, rounded",
        (row, before) -> Jobs.given(
            "shingle_bundles",
            Map.of("net_area", before.number(), "bundle_cover", 1.0, "typed_waste", share(row))));
    KINDS.put(
        "squares \\| (/100|[\\d.,]+/100)",
        (row, before) -> Jobs.given("net_squares", Map.of("net_area", before.number())));
    KINDS.put(
        "(ordered squares|whole squares|squares, at least) \\| rounded up",
        (row, before) -> Jobs.given(
            "order_squares", Map.of("net_area", squareFeet(before), "typed_waste", 0.0)));
    KINDS.put(
        "hip, ridge and valley allowance \\| 1 sq ft per ft",
        (row, before) -> Jobs.given(
                "lap_over_area",
                Map.of("ridge_length", before.number(), "hip_length", 0.0, "valley_length", 0.0))
            / 100);
    KINDS.put(
        "rolls of No. \\d+ \\(\\d squares each\\) \\| .*",
        (row, before) -> rolls(before.number() * 100, numbers(row.quantity(), 1) * 100));
    KINDS.put(
        "No. \\d+ rolls \\| \\d+ sq ft per roll",
        (row, before) -> rolls(first(row), numbers(row.inputs(), 0)));
    KINDS.put(
        "field bundles \\| [\\d.]+ / [\\d.]+",
        (row, before) -> Jobs.given(
            "shingle_bundles",
            Map.of(
                "net_area",
                numbers(row.inputs(), 0),
                "bundle_cover",
                numbers(row.inputs(), 1),
                "typed_waste",
                0.0)));
    KINDS.put(
        "starter bundles \\| \\d+ / \\d+",
        (row, before) -> Jobs.given(
            "starter_bundles",
            Map.of(
                "starter_run",
                numbers(row.inputs(), 0),
                "starter_waste",
                0.0,
                "starter_piece_length",
                36.0,
                "starter_pieces_per_pack",
                numbers(row.inputs(), 1) / 3,
                "starter_strips_each",
                1.0)));
    KINDS.put(
        "ridge strips \\| 24 caps per 10 ft, \\d caps per strip",
        (row, before) ->
            Jobs.given("cap_pieces", Map.of("cap_run", 10.0, "cap_exposure", 5.0, "cap_waste", 0.0))
                / numbers(row.inputs(), 2));
    KINDS.put(
        "ridge bundles \\| \\d+ / \\d+",
        (row, before) -> Jobs.given(
            "cap_bundles",
            Map.of(
                "cap_pieces",
                3 * numbers(row.inputs(), 0),
                "cap_pieces_per_pack",
                numbers(row.inputs(), 1),
                "cap_cut_each",
                3.0)));
    KINDS.put("1/\\d+ rule \\| [\\d,]+/\\d+", (row, before) -> vent(row, 1) / 144);
    KINDS.put("in square inches \\| x 144", (row, before) -> vent(before, 1));
    KINDS.put("1/\\d+ rule in square inches \\| \\d+ x 144", (row, before) -> vent(before, 1));
  }

  private static double numbers(String text, int at) {
    return Row.numbers(text)[at];
  }

  private static double share(Row row) {
    return numbers(row.quantity(), 0) / 100;
  }

  private static double squareFeet(Row before) {
    return before.unit().equals("squares") ? before.number() * 100 : before.number();
  }

  private static double rolls(double area, double covers) {
    return Jobs.given(
        "underlayment_rolls",
        Map.of(
            "sheet_length",
            area,
            "underlayment_roll_length",
            covers,
            "underlayment_end_lap",
            0.0,
            "underlayment_pieces_per_pack",
            1.0));
  }

  /** The area of the job, which the first step of its problem divides. */
  private static double first(Row row) {
    String problem = row.id().replaceFirst("-\\d+$", "");
    return Reference.rows("worked-examples.csv").stream()
        .filter(other -> other.id().startsWith(problem) && other.inputs().matches("\\d+ / [\\d.]+"))
        .findFirst()
        .map(other -> numbers(other.inputs(), 0))
        .orElseThrow();
  }

  /** The attic stands first in the inputs of the row. */
  private static double vent(Row row, int divisor) {
    return Jobs.given(
        "vent_area",
        Map.of(
            "attic_typed",
            numbers(row.inputs(), 0),
            "vent_divisor",
            numbers(row.inputs(), divisor)));
  }

  private static Optional<ToDoubleBiFunction<Row, Row>> kind(Row row) {
    String text = row.quantity() + " | " + row.inputs();
    return KINDS.entrySet().stream()
        .filter(kind -> text.matches(kind.getKey()))
        .map(Map.Entry::getValue)
        .findFirst();
  }

  @TestFactory
  Stream<DynamicTest> a_rule_answers_a_step_of_a_published_problem() {
    List<DynamicTest> tests = new ArrayList<>();
    List<Row> rows = Reference.rows("worked-examples.csv");
    for (int i = 0; i < rows.size(); i++) {
      Row row = rows.get(i);
      Row before = rows.get(Math.max(0, i - 1));
      tests.add(dynamicTest(row.toString(), () -> answers(row, before)));
    }
    return tests.stream();
  }

  private static void answers(Row row, Row before) {
    Optional<ToDoubleBiFunction<Row, Row>> kind = kind(row);
    Assumptions.assumeTrue(
        kind.isPresent(),
        "no quantity of material: the roof answers it, or it is a sum of its own");
    double published = row.quantity().matches(WHOLE) ? Math.ceil(row.number()) : row.number();
    assertThat(kind.get().applyAsDouble(row, before))
        .as(row.source())
        .isCloseTo(published, within(1e-9 * published));
  }

  @Test
  void at_least_eighteen_steps_are_answered() {
    assertThat(Reference.rows("worked-examples.csv").stream()
            .filter(row -> kind(row).isPresent()))
        .hasSizeGreaterThanOrEqualTo(18);
  }
}
