package squaresheet.verify;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Sheet;

/** Is a quantity typed from what a rounded cell shows, and computed on with? */
final class TypedFromDisplay implements Check<Book> {

  private static final CheckInfo INFO = new CheckInfo(
      "typed-from-display", Severity.WARNING, "A quantity is typed from a rounded display");

  /** A format of digits that shows no or a few decimals. */
  private static final Pattern FIXED = Pattern.compile("#?,?#*0(?:\\.(0+))?");

  private static final Set<String> NO_WORDS =
      Set.of("total", "all", "the", "of", "in", "to", "for", "sum", "and", "ordered", "order");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Book book) {
    Map<Double, List<Address>> shown = new HashMap<>();
    book.formulas().keySet().forEach(at -> shown(book, at)
        .ifPresent(
            number -> shown.computeIfAbsent(number, key -> new ArrayList<>()).add(at)));
    return shown.isEmpty()
        ? Stream.empty()
        : book.tabs().stream()
            .flatMap(tab -> tab.sheet().cells().flatMap(placed -> source(tab, placed, shown)));
  }

  /** What a cell shows, where that is not what it holds. */
  private static Optional<Double> shown(Book book, Address at) {
    Matcher fixed = FIXED.matcher(book.cell(at).format());
    OptionalDouble holds = fixed.matches() ? book.number(at) : OptionalDouble.empty();
    if (holds.isEmpty()) {
      return Optional.empty();
    }
    int decimals = fixed.group(1) == null ? 0 : fixed.group(1).length();
    double shown = BigDecimal.valueOf(holds.getAsDouble())
        .setScale(decimals, RoundingMode.HALF_UP)
        .doubleValue();
    return Math.abs(holds.getAsDouble() - shown) > 0.01 ? Optional.of(shown) : Optional.empty();
  }

  private static Stream<Finding> source(
      Tab tab, Sheet.Placed placed, Map<Double, List<Address>> shown) {
    return placed.cell().stored() instanceof Content.Numeric number
            && tab.isTypedNumber(placed.ref())
            && number.value() >= 2
            && shown.containsKey(number.value())
            && isQuantity(tab, placed.ref())
        ? shown.get(number.value()).stream()
            .filter(at -> isAlike(words(tab.label(placed.ref())), tab.book().tab(at.sheet()), at))
            .filter(at ->
                !tab.book().links().dependents(Set.of(tab.at(placed.ref()))).contains(at))
            .limit(1)
            .map(at -> says(tab.book(), tab.at(placed.ref()), at))
        : Stream.empty();
  }

  /** Whether it has a name, is computed on with, and is not there on purpose. */
  private static boolean isQuantity(Tab tab, Ref ref) {
    return tab.tableAt(ref).isEmpty()
        && !words(tab.label(ref)).isEmpty()
        && !Words.saysMeasured(tab.wordsAbout(ref))
        && tab.book().links().isRead(tab.at(ref));
  }

  private static boolean isAlike(Set<String> words, Tab tab, Address at) {
    Set<String> there = words(tab.label(at.ref()) + " " + tab.headings(at.ref()));
    there.retainAll(words);
    return !there.isEmpty();
  }

  private static Set<String> words(String label) {
    return Arrays.stream(label.toLowerCase(Locale.ROOT).split("[^\\p{L}]+"))
        .map(Words::stem)
        .filter(word -> word.length() > 2 && !NO_WORDS.contains(word))
        .collect(Collectors.toCollection(HashSet::new));
  }

  private static Finding says(Book book, Address at, Address source) {
    String says = "is typed, and is what " + source + " shows; that cell holds "
        + Shown.of(book.value(source)) + ", rounded on the screen only; put =" + source;
    return Says.about(INFO, book, at, book.value(source), says);
  }
}
