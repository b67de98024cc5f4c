package squaresheet.verify;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.sheet.Address;

/** Is a term that is chosen from a few words another word, which the formulas take for one of them unseen? */
final class TermNotKnown implements Check<EstimateCells> {

  private static final CheckInfo INFO =
      new CheckInfo("term-not-known", Severity.ERROR, "A term is none of the words to choose from");

  private static final Map<String, List<String>> CHOICES = new LinkedHashMap<>(Map.of(
      "profit_kind", List.of("markup", "margin"),
      "discount_when", List.of("before tax", "after tax"),
      "tax_rounding", List.of("line", "invoice"),
      "tax_applies", List.of("yes", "no")));

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(EstimateCells cells) {
    return CHOICES.keySet().stream().flatMap(name -> rows(cells, name)
        .filter(row -> !CHOICES.get(name).contains(word(cells, name, row)))
        .mapToObj(row -> says(cells, name, row)));
  }

  private static IntStream rows(EstimateCells cells, String name) {
    int rows = cells.book().named(name).map(it -> it.block().rows()).orElse(0);
    return IntStream.range(0, rows)
        .filter(row ->
            !name.equals("tax_applies") || !cells.text("tax_category", row).isEmpty());
  }

  private static String word(EstimateCells cells, String name, int row) {
    return cells.text(name, row).toLowerCase(Locale.ROOT);
  }

  private static Finding says(EstimateCells cells, String name, int row) {
    Address at = cells.at(name, row).orElseThrow();
    String says = "must be one of " + String.join(", ", CHOICES.get(name)) + ", but reads "
        + Shown.of(cells.book().value(at))
        + ", which the formulas take for one of them without a word";
    return Says.about(INFO, cells.book(), at, says);
  }
}
