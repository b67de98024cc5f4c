package squaresheet.product;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import squaresheet.reference.Reference;
import squaresheet.reference.Reference.Row;
import squaresheet.units.Length;

/**
 * Published counts and coverages, row by row, by what they are of: a pattern of quantity and inputs leads to the product
 * that the row speaks of, built from the row's own numbers.
 */
class MaterialFactsTest {

  private static final Map<String, ToDoubleFunction<Row>> KINDS = new LinkedHashMap<>();

  static {
    KINDS.put(
        "square feet covered by 1,000 shingles \\| exposure .* in, width .* in",
        row -> 1000 * wood(row).coveragePerPiece().squareFeet());
    KINDS.put("shingles per 100 sq ft \\| exposure .* in, width .* in", row -> wood(row)
        .piecesPerSquare());
    KINDS.put("old wood shingle bundle count check \\| .*", row -> {
      double[] n = Row.numbers(row.inputs());
      return Products.shingle(n[0], n[1], 1).piecesPerSquare();
    });
    KINDS.put("coverage of a \\d+-strip bundle at .* in exposure \\| .* x .* in x .*", row -> {
      double[] n = Row.numbers(row.inputs());
      return Products.shingle(n[0], n[1], (long) n[2]).coveragePerPack().squareFeet();
    });
    KINDS.put("coverage of one 12 x 36 in strip at .* in exposure \\| \\d+ x \\d+", row -> {
      double[] n = Row.numbers(row.inputs());
      return 144 * Products.shingle(n[0], n[1], 1).coveragePerPiece().squareFeet();
    });
    KINDS.put(
        "coverage of one 12 x 36 in strip at .* in exposure \\| \\d+/144",
        row -> Products.shingle(36, Row.numbers(row.quantity())[2], 1)
            .coveragePerPiece()
            .squareFeet());
    KINDS.put(
        "coverage of one metric strip \\| .*",
        row -> Products.shingle(38.75, 5.625, 1).coveragePerPiece().squareFeet());
    KINDS.put("bundle coverage, \\d+ strips \\| 1.25 x \\d+", row -> Products.shingle(
            36, 5, (long) Row.numbers(row.quantity())[0])
        .coveragePerPack()
        .squareFeet());
    KINDS.put("strips of 1.25 sq ft per 100 sq ft \\| .*", row -> Products.shingle(36, 5, 27)
        .piecesPerSquare());
    KINDS.put(
        "nails per square, \\d per strip, 80 strips \\| .*",
        row -> Row.numbers(row.quantity())[0] * Products.shingle(36, 5, 27).piecesPerSquare());
    KINDS.put("ridge caps from one \\d+-strip bundle \\| \\d+ x \\d+", row -> {
      double[] n = Row.numbers(row.inputs());
      return Products.cap(5, (long) n[0], (long) n[1]).capsPerPack();
    });
    KINDS.put(
        "ridge covered by one \\d+-strip bundle at . in exposure \\| \\d+ x \\d+ / 12", row -> {
          double[] n = Row.numbers(row.inputs());
          return Products.cap(n[1], (long) n[0], 1).reachPerPack().toFeet();
        });
    KINDS.put(
        "ridge or hip covered per bundle of three-tab, rule of thumb \\| .*",
        row -> Products.cap(5, 27, 3).reachPerPack().toFeet());
    KINDS.put(
        "ridge caps per 10 ft of ridge at . in exposure \\| .*",
        row -> Length.ofInches(120).units()
            / (double)
                Products.cap(Row.numbers(row.inputs())[1], 1, 1).reachPerPack().units());
    KINDS.put("starter lineal feet per \\d+-strip bundle \\| \\d+ x \\d+", row -> {
      double[] n = Row.numbers(row.inputs());
      return Products.starter(n[1] * 12, (long) n[0], 1).reachPerPack().toFeet();
    });
    KINDS.put("No. 30 felt roll area \\| 36 in x 72 ft", row -> {
      double[] n = Row.numbers(row.inputs());
      return Products.felt(n[1], n[0], 2).sheet().squareFeet();
    });
    KINDS.put(
        "No. 15 felt coverage, standard lap \\| one roll",
        row -> Math.floor(Products.felt(144, 36, 2).coveragePerRoll().toSquares()));
    KINDS.put(
        "No. 30 felt coverage, standard lap \\| one roll",
        row -> Math.floor(Products.felt(72, 36, 2).coveragePerRoll().toSquares()));
  }

  private static Shingle wood(Row row) {
    double[] n = Row.numbers(row.inputs());
    return Products.shingle(n[1], n[0], 1);
  }

  private static Optional<ToDoubleFunction<Row>> kind(Row row) {
    String text = row.quantity() + " | " + row.inputs();
    return KINDS.entrySet().stream()
        .filter(kind -> text.matches(kind.getKey()))
        .map(Map.Entry::getValue)
        .findFirst();
  }

  @TestFactory
  Stream<DynamicTest> a_published_fact_about_a_product_follows_from_its_size_and_packing() {
    return Reference.rows("material-facts.csv").stream()
        .map(row -> dynamicTest(row.toString(), () -> {
          Optional<ToDoubleFunction<Row>> kind = kind(row);
          Assumptions.assumeTrue(
              kind.isPresent(), "a rule, a range or a use, not a product's size and packing");
          assertThat(kind.get().applyAsDouble(row))
              .as(row.source())
              .isCloseTo(row.number(), within(1e-9 * row.number() + 1e-9));
        }));
  }

  @Test
  void at_least_thirty_published_facts_are_held_against_products() {
    List<Row> rows = Reference.rows("material-facts.csv");
    assertThat(rows.stream().filter(row -> kind(row).isPresent())).hasSizeGreaterThanOrEqualTo(30);
  }
}
