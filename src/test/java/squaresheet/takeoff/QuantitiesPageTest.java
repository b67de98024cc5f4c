package squaresheet.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class QuantitiesPageTest {

  @Test
  void the_page_shows_every_rule_with_its_formula_and_source() throws IOException {
    List<String> lines = Files.readAllLines(Path.of("docs/quantities.md"));
    for (Rule rule : Rulebook.standard().rules()) {
      String formula = rule.formula().isEmpty() ? "given" : "`" + rule.formula() + "`";
      assertThat(lines)
          .as(rule.name())
          .anyMatch(line -> line.startsWith("| `" + rule.name() + "` | " + rule.per() + " | ")
              && line.contains(" | " + formula + " | ")
              && line.endsWith(" | " + rule.source() + " |"));
    }
  }

  @Test
  void the_page_shows_what_every_setting_can_be() throws IOException {
    List<String> lines = Files.readAllLines(Path.of("docs/quantities.md"));
    SettingRange.all().forEach((name, range) -> assertThat(lines)
        .as(name)
        .anyMatch(line -> line.startsWith(
                "| `" + name + "` | " + plain(range.least()) + " | " + plain(range.most()) + " | "
                    + (range.unit().isEmpty() ? "ratio" : range.unit()) + " |")
            && line.contains("whole") == range.isWhole()
            && line.contains("or 0") == range.isZeroToo()
            && line.contains("not over `" + range.notOver() + "`")
                != range.notOver().isEmpty()));
  }

  private static String plain(double limit) {
    return Shown.plain(squaresheet.formula.Value.of(limit));
  }
}
