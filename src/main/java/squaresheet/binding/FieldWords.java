package squaresheet.binding;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import squaresheet.takeoff.Rule;
import squaresheet.takeoff.Rulebook;

/**
 * The labels of a field sheet, each with what stands beside it: what is said about a job, and every setting by the label or the
 * name that the job workbook shows for it.
 */
final class FieldWords {

  /** What is said about a job and is no setting. */
  private static final List<String> CARD = List.of(
      "job",
      "number",
      "customer",
      "site",
      "phone",
      "date",
      "measured_by",
      "unit",
      "decimal_mark",
      SettingsSheet.TOLERANCE.name());

  /** What a sheet says of how it is to be read. Where that cannot be read, rows may be read wrongly. */
  private static final Set<String> OF_THE_SHEET =
      Set.of("unit", "decimal_mark", SettingsSheet.TOLERANCE.name());

  /** Shorter words tell nothing. */
  private static final int TELLING = 3;

  private final Map<String, Rule> settings = new LinkedHashMap<>();
  /** The ways to write each label, in words made alike; our own first. */
  private final Map<String, Set<List<String>>> words = new LinkedHashMap<>();

  private final Map<String, String> labels = new LinkedHashMap<>();

  FieldWords(Rulebook rulebook) {
    CARD.forEach(property -> words.put(property, new LinkedHashSet<>()));
    SettingsSheet.LABELS.forEach((name, label) -> add(ofName(name), label));
    add(SettingsSheet.TOLERANCE.name(), SettingsSheet.TOLERANCE.label());
    for (Rule rule : rulebook.settings()) {
      settings.put(rule.name(), rule);
      add(rule.name(), rule.label());
      add(rule.name(), rule.name().replace('_', ' '));
    }
    List.of("field", "job").forEach(table -> Words.of(table).forEach(this::add));
  }

  /** What the cell of a defined name on the sheet Job says. */
  private static String ofName(String name) {
    return switch (name) {
      case "job_name" -> "job";
      case "job_address" -> "site";
      default -> name.substring("job_".length());
    };
  }

  private void add(Meaning meaning) {
    String property = FieldJob.setting(meaning.property());
    if (meaning.role() == Meaning.Role.VALUE && words.containsKey(property)) {
      meaning.words().forEach(word -> words.get(property).add(word.tokens()));
      labels.putIfAbsent(property, String.join(" ", meaning.words().get(0).tokens()));
    }
  }

  private void add(String property, String label) {
    labels.putIfAbsent(property, label);
    Heading.of(label).readings().forEach(reading -> words
        .computeIfAbsent(property, it -> new LinkedHashSet<>())
        .add(reading));
    words.get(property).add(Tokens.of(label));
  }

  /** What a label says: all of it, in our words or one letter off; empty where it is no label of ours. */
  Optional<String> property(Heading label) {
    List<String> exact = fitting(label, FieldWords::isAlike);
    List<String> close = exact.isEmpty() ? fitting(label, FieldWords::isClose) : exact;
    return close.size() == 1 || !exact.isEmpty() ? Optional.of(close.get(0)) : Optional.empty();
  }

  private interface Likeness {
    boolean test(List<String> one, List<String> other);
  }

  private List<String> fitting(Heading label, Likeness alike) {
    List<String> fitting = new ArrayList<>();
    words.forEach((property, ways) -> {
      boolean fits = label.readings().stream()
          .filter(reading -> !reading.isEmpty())
          .anyMatch(reading -> ways.stream().anyMatch(way -> alike.test(reading, way)));
      if (fits) {
        fitting.add(property);
      }
    });
    return fitting;
  }

  private static boolean isAlike(List<String> one, List<String> other) {
    return one.size() == other.size() && new HashSet<>(one).equals(new HashSet<>(other));
  }

  private static boolean isClose(List<String> one, List<String> other) {
    if (one.size() != other.size()) {
      return false;
    }
    for (int at = 0; at < one.size(); at++) {
      if (!Spelling.isClose(one.get(at), other.get(at))) {
        return false;
      }
    }
    return true;
  }

  /** The setting of that name; empty where it is none. */
  Optional<Rule> setting(String property) {
    return Optional.ofNullable(settings.get(property));
  }

  /** Whether the job is worked out by it, so that it must not be lost. */
  boolean counts(String property) {
    return settings.containsKey(property) || OF_THE_SHEET.contains(property);
  }

  /** Our own label for it. */
  String label(String property) {
    return labels.getOrDefault(property, property.replace('_', ' '));
  }

  /** Our own labels for what a label may have been meant for: one that shares its words, or is a few letters off. */
  List<String> near(String label) {
    Set<String> said = telling(Tokens.of(label));
    return words.entrySet().stream()
        .filter(entry -> entry.getValue().stream().anyMatch(way -> isNear(said, way)))
        .map(entry -> label(entry.getKey()))
        .toList();
  }

  private static boolean isNear(Set<String> said, List<String> way) {
    Set<String> ours = telling(way);
    boolean close = said.size() == ours.size()
        && said.stream()
            .allMatch(word -> ours.stream().anyMatch(other -> Spelling.isClose(word, other)));
    return !said.isEmpty()
        && !ours.isEmpty()
        && (close || said.containsAll(ours) || ours.containsAll(said));
  }

  /** The words that tell one label from another. */
  private static Set<String> telling(List<String> words) {
    Set<String> telling = new HashSet<>(words);
    telling.removeIf(word -> word.length() < TELLING);
    return telling;
  }
}
