package squaresheet.verify;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;

/** Does a name stand for a cell whose label speaks of something else, while another label fits? */
final class NamePointsElsewhere implements Check<DefinedName> {

  private static final CheckInfo INFO = new CheckInfo(
      "name-points-elsewhere", Severity.WARNING, "A defined name stands over another label");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(DefinedName name) {
    Optional<Address> target = name.name()
        .cell()
        .filter(it -> name.name()
            .block()
            .filter(block -> block.rows() == 1 && block.columns() == 1)
            .isPresent())
        .filter(it -> name.book().workbook().sheet(it.sheet()).isPresent());
    if (target.isEmpty() || name.users().findAny().isEmpty()) {
      return Stream.empty();
    }
    Tab tab = name.book().tab(name.book().references().tab(target.get().sheet(), target.get()));
    String label = tab.label(target.get().ref());
    Set<String> wanted = words(name.name().name());
    if (label.isEmpty() || shares(wanted, label)) {
      return Stream.empty();
    }
    return tab.sheet()
        .cells()
        .filter(placed ->
            placed.cell().stored() instanceof Content.Text text && sharesAll(wanted, text.value()))
        .map(placed -> placed.ref().plus(0, 1))
        .filter(ref -> name.book().value(tab.at(ref)) instanceof Value.Number)
        .limit(1)
        .map(ref -> says(name, tab.at(target.get().ref()), label, tab.at(ref)));
  }

  private static Set<String> words(String text) {
    String parted =
        text.replaceAll("(?<=[a-z])(?=[A-Z])|(?<=\\D)(?=\\d)", " ").toLowerCase(Locale.ROOT);
    Set<String> words = new HashSet<>(List.of(parted.split("[^\\p{L}]+")));
    words.removeIf(
        word -> word.length() < 3 || Set.of("per", "the", "for", "and", "rate").contains(word));
    return words;
  }

  private static boolean shares(Set<String> wanted, String label) {
    return words(label).stream().anyMatch(word -> wanted.stream()
        .anyMatch(it -> it.startsWith(word) || word.startsWith(it)));
  }

  private static boolean sharesAll(Set<String> wanted, String label) {
    Set<String> words = words(label);
    return !wanted.isEmpty()
        && wanted.stream().allMatch(it -> words.stream()
            .anyMatch(word -> it.startsWith(word) || word.startsWith(it)));
  }

  private static Finding says(DefinedName name, Address target, String label, Address better) {
    String says = "is what the name " + name.name().name() + " stands for, but its label says '"
        + label + "'; '" + name.book().tab(better.sheet()).label(better.ref()) + "' stands at "
        + better;
    return Says.about(INFO, name.book(), target, says);
  }
}
