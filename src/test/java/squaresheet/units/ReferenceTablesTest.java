package squaresheet.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Published tables, row by row under their own ids. Our value must be the exact one; it must round to the printed one where
 * the print is right, and must not be the printed one where the print is known to be cut, off or wrong.
 */
class ReferenceTablesTest {

  /** The tables keep nine decimals. */
  private static final double EXACT = 1e-9;

  private static final String NO_WEIGHT = "units has no type for weights";
  private static final String NO_HALF_EVEN =
      "units rounds ties away from zero and offers no rounding half to even";
  private static final String NO_DIGITS =
      "units rounds to marks of a tape, never to significant digits";
  private static final String NO_SURVEY_FOOT = "units knows the international foot only";

  /** Rows about things that units cannot express, and why. */
  private static final Map<String, String> NOT_EXPRESSED = Map.ofEntries(
      Map.entry("UC-004", NO_WEIGHT),
      Map.entry("UC-018", NO_WEIGHT),
      Map.entry("UC-019", NO_WEIGHT),
      Map.entry("UC-020", NO_WEIGHT),
      Map.entry("UC-014", "units has no type for volumes"),
      Map.entry("UC-006", NO_SURVEY_FOOT),
      Map.entry("UC-007", NO_SURVEY_FOOT),
      Map.entry("UC-023", NO_DIGITS),
      Map.entry("RR-ARMY-01", NO_DIGITS),
      Map.entry("RR-EVEN-02", NO_HALF_EVEN),
      Map.entry("RR-EVEN-03", NO_HALF_EVEN),
      Map.entry("RR-EVEN-05", NO_HALF_EVEN),
      Map.entry("RR-EVEN-07", NO_HALF_EVEN),
      Map.entry("RR-EVEN-08", NO_HALF_EVEN),
      Map.entry("RR-SST-05", "a count of states is no arithmetic"));

  private static final Map<String, Function<ReferenceRow, OptionalDouble>> TABLES = Map.of(
      "pitch-factors", ReferenceSlopes::value,
      "hip-valley-factors", ReferenceSlopes::value,
      "unit-conversions", ReferenceUnits::value);

  @TestFactory
  Stream<DynamicTest> each_row_comes_out_as_published() {
    return TABLES.entrySet().stream().flatMap(table -> ReferenceRow.of(table.getKey()).stream()
        .filter(row -> table.getValue().apply(row).isPresent())
        .map(row -> DynamicTest.dynamicTest(
            row.id(), () -> compare(row, table.getValue().apply(row).getAsDouble()))));
  }

  @Test
  void every_row_is_run_or_listed_with_the_reason_why_not() {
    TreeSet<String> idle = TABLES.entrySet().stream()
        .flatMap(table -> ReferenceRow.of(table.getKey()).stream()
            .filter(row -> table.getValue().apply(row).isEmpty()))
        .map(ReferenceRow::id)
        .collect(Collectors.toCollection(TreeSet::new));
    assertThat(idle).isEqualTo(new TreeSet<>(NOT_EXPRESSED.keySet()));
  }

  @Test
  void an_id_stands_for_one_row() {
    List<String> ids = TABLES.keySet().stream()
        .flatMap(table -> ReferenceRow.of(table).stream().map(ReferenceRow::id))
        .toList();
    assertThat(ids).doesNotHaveDuplicates();
  }

  private static void compare(ReferenceRow row, double ours) {
    double exact = Double.parseDouble(row.exact());
    assertThat(ours)
        .as(row.source())
        .isCloseTo(exact, within(EXACT * Math.max(1, Math.abs(exact))));
    double off = Math.abs(ours - row.publishedValue());
    switch (row.check()) {
      case "match" ->
        assertThat(off).as(row.source()).isLessThanOrEqualTo(row.halfLastPlace() + EXACT);
      case "truncated", "last-digit-off", "misprint" ->
        assertThat(off)
            .as("not to be reproduced: " + row.source())
            .isGreaterThan(row.halfLastPlace());
      case "rounded-practical", "differs" ->
        assertThat(off).as("not to be reproduced: " + row.source()).isGreaterThan(EXACT);
      default -> throw new AssertionError("no rule for a row marked " + row.check());
    }
  }
}
