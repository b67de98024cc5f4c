package squaresheet.binding;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The heading words this room knows, from {@code words.csv}, and how well a heading fits them. */
final class Words {

  private static final List<Meaning> ALL =
      Resource.lines("words.csv").stream().map(Words::meaning).toList();

  /** A heading that only contains the word, or is contained in it, is believed this much. */
  private static final double PART = 0.6;
  /** A hint alone stays below what is bound without asking. */
  private static final double HINT = 0.6;
  /** A heading whose unit cannot stand over such cells is hardly believed. */
  private static final double WRONG_UNIT = 0.3;

  /** Every single word of every heading. */
  private static final Set<String> VOCABULARY = vocabulary(ALL);

  private static final Set<String> LABELS = vocabulary(of("job"));

  /** The same headings come again on every sheet, and texts again in every row. */
  private static final Map<String, List<Fit>> REMEMBERED = new ConcurrentHashMap<>();

  private static final int MOST_REMEMBERED = 20_000;
  /** A text longer than this is a sentence, not a heading. */
  private static final int LONGEST = 80;

  private Words() {}

  private static Meaning meaning(NamedCsvRecord line) {
    List<Meaning.Word> words = Resource.parts(line.getField("words")).stream()
        .map(word -> new Meaning.Word(Tokens.of(word), !word.endsWith("?")))
        .filter(word -> !word.tokens().isEmpty())
        .toList();
    return new Meaning(
        line.getField("table"),
        line.getField("property"),
        Meaning.Role.valueOf(line.getField("role").toUpperCase(Locale.ROOT)),
        Holds.valueOf(line.getField("kind").toUpperCase(Locale.ROOT)),
        words);
  }

  /** Whether a text holds any word of any heading, or is a unit; a quick look before a careful one. */
  static boolean isFamiliar(String text) {
    return text.length() <= LONGEST
        && (Tokens.of(text).stream().anyMatch(VOCABULARY::contains)
            || UnitWords.find(text).isPresent());
  }

  /** Whether a text holds any word of a label of the job. */
  static boolean isFamiliarLabel(String text) {
    return Tokens.of(text).stream().anyMatch(LABELS::contains);
  }

  private static Set<String> vocabulary(List<Meaning> meanings) {
    return meanings.stream()
        .flatMap(meaning -> meaning.words().stream())
        .flatMap(word -> word.tokens().stream())
        .collect(Collectors.toUnmodifiableSet());
  }

  /** What the columns of a table can mean. */
  static List<Meaning> of(String table) {
    return ALL.stream().filter(meaning -> meaning.table().equals(table)).toList();
  }

  /** The tables that have columns, in the order they are looked for. */
  static List<String> tables() {
    return ALL.stream()
        .filter(meaning -> meaning.role() == Meaning.Role.KEY)
        .map(Meaning::table)
        .distinct()
        .toList();
  }

  static Optional<Meaning> find(String table, String property) {
    return of(table).stream().filter(m -> m.property().equals(property)).findFirst();
  }

  /**
   * How well a heading says a meaning.
   *
   * @param meaning the meaning
   * @param score 0 (not at all) to 1 (our own heading)
   * @param word the word it was taken for
   */
  record Fit(Meaning meaning, double score, String word) {}

  /** The meanings of a table that the heading may have, the best first. */
  static List<Fit> fits(Heading heading, String table) {
    if (REMEMBERED.size() > MOST_REMEMBERED) {
      REMEMBERED.clear();
    }
    return REMEMBERED.computeIfAbsent(
        table + "|" + heading.text(), unknown -> compare(heading, table));
  }

  private static List<Fit> compare(Heading heading, String table) {
    return of(table).stream()
        .map(meaning -> fit(heading, meaning))
        .filter(fit -> fit.score() > 0)
        .sorted(Comparator.comparingDouble(Fit::score).reversed())
        .toList();
  }

  static Fit fit(Heading heading, Meaning meaning) {
    if (isPriceOfOne(heading, meaning)) {
      return new Fit(meaning, 0, "");
    }
    Fit best = heading.readings().stream()
        .flatMap(reading -> meaning.words().stream()
            .map(word ->
                new Fit(meaning, closeness(reading, word), String.join(" ", word.tokens()))))
        .max(Comparator.comparingDouble(Fit::score))
        .orElse(new Fit(meaning, 0, ""));
    boolean wrongUnit =
        heading.unit().map(unit -> !meaning.holds().takes(unit.kind())).orElse(false);
    return wrongUnit ? new Fit(meaning, best.score() * WRONG_UNIT, best.word()) : best;
  }

  /** Whether the label is of what one of something costs, which is no amount of the job. */
  private static boolean isPriceOfOne(Heading heading, Meaning meaning) {
    return meaning.table().equals("job")
        && meaning.holds() == Holds.MONEY
        && heading.unit().stream().anyMatch(unit -> !unit.per().isEmpty());
  }

  private static double closeness(List<String> heading, Meaning.Word word) {
    double score = closeness(heading, word.tokens());
    return word.certain() ? score : score * HINT;
  }

  private static double closeness(List<String> heading, List<String> word) {
    if (heading.equals(word)) {
      return 1;
    }
    if (heading.size() == word.size()) {
      return heading.containsAll(word) ? 0.95 : misspelt(heading, word);
    }
    if (contains(heading, word)) {
      return PART + 0.3 * word.size() / heading.size();
    }
    return contains(word, heading) ? PART * heading.size() / word.size() : 0;
  }

  private static boolean contains(List<String> whole, List<String> part) {
    return !part.isEmpty()
        && Stream.iterate(0, at -> at + part.size() <= whole.size(), at -> at + 1)
            .anyMatch(at -> whole.subList(at, at + part.size()).equals(part));
  }

  private static double misspelt(List<String> heading, List<String> word) {
    for (int at = 0; at < word.size(); at++) {
      if (!Spelling.isClose(heading.get(at), word.get(at))) {
        return 0;
      }
    }
    return 0.85;
  }
}
