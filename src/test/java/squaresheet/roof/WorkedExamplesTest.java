package squaresheet.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Worked problems from published sources, row by row under their own ids, answered by roofs built for each. */
class WorkedExamplesTest {

  private static final Path TABLE = Path.of("src/test/cases/reference/worked-examples.csv");

  /**
   * Sources multiply a unit length that they rounded to 0.01 in, which on 12 in of run is off by up to 0.005 / 12 = 0.042 %,
   * and plan areas by a factor rounded to 0.001. The roof does not round, so it may differ by that much.
   */
  private static final double ROUNDED_CHAIN = 0.0005;

  /** The words of a quantity that is no measure of a roof, with the reason why it is not asked here. */
  private static final Map<String, String> NOT_A_ROOF = Map.ofEntries(
      Map.entry(".*(bundles?|rolls?|strips)\\b.*", "packs belong to the takeoff"),
      Map.entry(".*squares.*", "squares are an area over 100, held by the unit tests"),
      Map.entry("with \\d+ percent.*|gross before waste|.*allowance.*", "waste: the takeoff"),
      Map.entry("sum", "a sum of packs: the takeoff"),
      Map.entry("starter feet.*", "packs belong to the takeoff"),
      Map.entry("1/\\d+ rule.*|in square inches|doubled.*", "vents belong to the takeoff"),
      Map.entry("full steps|units of run|fractional .*|remainder .*", "stepping with a square"),
      Map.entry("gable (height|wall).*", "walls are not roof planes"),
      Map.entry("hip overhang", "a second roof's run, not given in the title"));

  /** Rows answered by roofs of their own in {@link WholeRoofExamplesTest}. */
  private static final Set<String> ELSEWHERE = Set.of(
      "WE-LHIP-30LB-05",
      "WE-LHIP-30LB-06",
      "WE-HC-SHED-02",
      "WE-WOOD-36x15-01",
      "WE-MFR-ELL-02",
      "WE-MFR-ELL-03",
      "WE-MFR-ELL-04",
      "WE-MFR-ELL-05");

  /** Rows that no kind fits, each with its reason. */
  private static final Map<String, String> CANNOT = Map.of(
      "WE-LHIP-30LB-04",
      "the plan is not in the text, and a hip roof of 30 by 60 has a ridge of 30 ft, not 40",
      "WE-LHIP-30LB-07",
      "contains the ridge of 40 ft",
      "WE-GABLE-WALL-01",
      "the span is not in the title, and the row is half of a number");

  @TestFactory
  Stream<DynamicTest> a_roof_gives_the_published_answer() throws IOException {
    return problems().stream()
        .filter(problem -> ExampleKinds.answer(problem).isPresent())
        .map(problem -> DynamicTest.dynamicTest(problem.get("id"), () -> check(problem)));
  }

  private static void check(Problem problem) {
    double exact = Double.parseDouble(problem.get("computed_exact"));
    double answer = ExampleKinds.answer(problem).orElseThrow();
    assertThat(answer)
        .as(problem.quantity() + ", " + problem.get("source"))
        .isCloseTo(exact, within(Math.abs(exact) * ROUNDED_CHAIN));
  }

  @Test
  void every_row_is_answered_or_has_its_reason() throws IOException {
    List<String> forgotten = problems().stream()
        .filter(problem -> ExampleKinds.answer(problem).isEmpty())
        .filter(problem -> !ELSEWHERE.contains(problem.get("id")))
        .filter(problem -> !CANNOT.containsKey(problem.get("id")))
        .filter(problem -> NOT_A_ROOF.keySet().stream().noneMatch(problem.quantity()::matches))
        .map(problem -> problem.get("id") + " " + problem.quantity())
        .toList();
    assertThat(forgotten).isEmpty();
  }

  @Test
  void rows_that_have_a_reason_are_not_answered_as_well() throws IOException {
    Set<String> answered = problems().stream()
        .filter(problem -> ExampleKinds.answer(problem).isPresent())
        .map(problem -> problem.get("id"))
        .collect(Collectors.toCollection(TreeSet::new));
    assertThat(answered).hasSizeGreaterThanOrEqualTo(38);
    assertThat(answered).doesNotContainAnyElementsOf(ELSEWHERE);
    assertThat(answered).doesNotContainAnyElementsOf(CANNOT.keySet());
  }

  static List<Problem> problems() throws IOException {
    List<Problem> problems = new ArrayList<>();
    Map<String, String> titles = new HashMap<>();
    Map<String, String> before = new HashMap<>();
    try (CsvReader<NamedCsvRecord> rows =
        CsvReader.builder().commentStrategy(CommentStrategy.SKIP).ofNamedCsvRecord(TABLE)) {
      for (NamedCsvRecord record : rows) {
        Map<String, String> row = new HashMap<>(record.getFieldsAsMap());
        String example = row.get("example_id");
        titles.computeIfAbsent(example, id -> row.get("notes").replaceAll("].*", "]"));
        row.put("before", before.getOrDefault(example, ""));
        problems.add(new Problem(titles.get(example), Map.copyOf(row)));
        before.put(example, row.get("computed_exact"));
      }
    }
    return problems;
  }

  /** The exact value of a row, for tests that build its roof themselves. */
  static double exact(String id) throws IOException {
    return problems().stream()
        .filter(problem -> problem.get("id").equals(id))
        .map(problem -> OptionalDouble.of(Double.parseDouble(problem.get("computed_exact"))))
        .findFirst()
        .orElseThrow()
        .getAsDouble();
  }
}
