package squaresheet.judge.score;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Every finding but notes, a line each, to be compared with those of another build; a workbook of which nothing is said has a line, too. */
final class Transcript {

  private static final String HEAD = "workbook|fault|check|cell|severity|should be";
  /** Workbook, fault, check and cell say which finding it is. */
  private static final int KEY = 4;

  private final List<String> lines = new ArrayList<>();

  void add(String workbook, String fault, List<Heard> heard) {
    List<String> loud = heard.stream()
        .filter(Heard::isLoud)
        .map(each -> String.join(
            "|",
            workbook,
            fault,
            each.id(),
            each.cell(),
            each.severity().name(),
            each.should().replace('|', '/').replace('\n', ' ')))
        .distinct()
        .sorted()
        .toList();
    lines.addAll(loud.isEmpty() ? List.of(workbook + "|" + fault + "||||") : loud);
  }

  /** The record as text, with what it was made of above it. */
  String text(String madeOf) {
    return "# " + madeOf + "\n" + HEAD + "\n" + String.join("\n", lines) + "\n";
  }

  /** How another record of the same workbooks differs from one that was kept. */
  static String difference(String kept, String now) {
    Map<String, String> before = byKey(kept);
    Map<String, String> after = byKey(now);
    StringBuilder text = new StringBuilder();
    int lost = 0;
    int fresh = 0;
    int changed = 0;
    for (Map.Entry<String, String> line : before.entrySet()) {
      String other = after.get(line.getKey());
      if (other == null && isFinding(line.getKey())) {
        lost++;
        text.append("lost     ").append(line.getValue()).append('\n');
      } else if (other != null && !other.equals(line.getValue())) {
        changed++;
        text.append("changed  ")
            .append(line.getValue())
            .append("\n     to  ")
            .append(other)
            .append('\n');
      }
    }
    for (Map.Entry<String, String> line : after.entrySet()) {
      if (!before.containsKey(line.getKey()) && isFinding(line.getKey())) {
        fresh++;
        text.append("new      ").append(line.getValue()).append('\n');
      }
    }
    return text
        + String.format(
            "%d lost, %d new, %d changed, of %d findings on %d workbooks%n",
            lost,
            fresh,
            changed,
            before.keySet().stream().filter(Transcript::isFinding).count(),
            books(before));
  }

  private static boolean isFinding(String key) {
    return !key.endsWith("||");
  }

  private static long books(Map<String, String> lines) {
    return lines.keySet().stream()
        .map(key -> key.split("\\|", -1)[0] + "|" + key.split("\\|", -1)[1])
        .distinct()
        .count();
  }

  private static Map<String, String> byKey(String record) {
    return record
        .lines()
        .filter(line -> !line.startsWith("#") && !line.equals(HEAD))
        .collect(Collectors.toMap(
            line -> String.join("|", List.of(line.split("\\|", -1)).subList(0, KEY)),
            Function.identity(),
            (one, other) -> one + " and " + other,
            TreeMap::new));
  }
}
