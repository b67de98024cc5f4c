package squaresheet.tape;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.finding.Where;

/**
 * Whole sentences, side by side with what was written. Each case is two lines: {@code kind, locale, unit, what was written};
 * and then value, id, severity, expected and sentence.
 */
class SaysTest {

  private static final Where HERE = new Where.InLine("tape.csv", 7, "B");

  @TestFactory
  Stream<DynamicTest> each_slip_gets_its_sentence() throws Exception {
    List<String> lines = Files.readAllLines(Path.of("src/test/cases/tape/says.txt")).stream()
        .filter(line -> !line.isBlank() && !line.startsWith("#"))
        .toList();
    return Stream.iterate(0, i -> i + 1 < lines.size(), i -> i + 2)
        .map(i -> DynamicTest.dynamicTest(lines.get(i), () -> assertThat(answer(lines.get(i)))
            .isEqualTo(lines.get(i + 1).strip())));
  }

  private static String answer(String question) {
    String[] parts = question.split(" ", 4);
    TapeReader reader = TapeReader.of(TapeUnit.valueOf(parts[2]), Locale.forLanguageTag(parts[1]));
    String rest = parts.length > 3 ? parts[3] : "";
    return switch (parts[0]) {
      case "length" -> show(reader.length(written(rest), HERE));
      case "offset" -> show(reader.offset(written(rest), HERE));
      case "pitch" -> show(reader.pitch(written(rest), HERE));
      case "pitch1904" -> show(reader.withDates(DateSystem.SINCE_1904).pitch(written(rest), HERE));
      case "number" ->
        show(reader.numbers().amount(written(rest), HERE, "layers").map(SaysTest::plain));
      case "column" ->
        show(reader.lengthColumn(
            Stream.of(rest.split(" ; ")).map(SaysTest::written).toList(), HERE));
      default -> throw new AssertionError(question);
    };
  }

  private static String plain(Amount amount) {
    return amount.number().toPlainString()
        + (amount.isPercent() ? "%" : "")
        + (amount.of().isEmpty() ? "" : " of " + amount.of());
  }

  /** {@code =46185 as d-mmm} is a number with its format; all else is text. */
  private static Written written(String text) {
    if (!text.startsWith("=")) {
      return Written.of(text);
    }
    String[] parts = text.substring(1).split(" as ", 2);
    double value = Double.parseDouble(parts[0]);
    return parts.length == 1 ? Written.of(value) : Written.of(value, parts[1]);
  }

  private static String show(Read<?> read) {
    String value = read.value().map(Object::toString).orElse("nothing");
    return read.findings().isEmpty() ? value : value + " | " + show(read.findings());
  }

  private static String show(List<Finding> findings) {
    return findings.isEmpty()
        ? "silent"
        : findings.stream()
            .peek(finding -> assertThat(finding.where()).isEqualTo(HERE))
            .map(finding -> finding.info().id() + " " + finding.info().severity() + " | "
                + finding.expected() + " | " + finding.says())
            .collect(Collectors.joining(" || "));
  }
}
