package squaresheet.verify;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Ref;

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
    return name
        .name()
        .cell()
        .filter(target -> name.name()
            .block()
            .filter(block -> block.rows() * block.columns() == 1)
            .isPresent())
        .filter(target -> name.book().workbook().sheet(target.sheet()).isPresent())
        .stream()
        .flatMap(target -> examine(name, target));
  }

  private static Stream<Finding> examine(DefinedName name, Address named) {
    Tab tab = name.book().tab(name.book().references().tab(named.sheet(), named));
    Address target = tab.at(named.ref());
    String label = tab.label(target.ref());
    Set<String> wanted = words(name.name().name());
    boolean strange = tab.isTypedNumber(target.ref()) && !label.isEmpty() && !shares(wanted, label);
    return strange && name.users().findAny().isPresent()
        ? better(tab, wanted).limit(1).map(ref -> says(name, target, label, tab.at(ref)))
        : Stream.empty();
  }

  /** The typed numbers whose label has every word of the name. */
  private static Stream<Ref> better(Tab tab, Set<String> wanted) {
    return tab.sheet()
        .cells()
        .filter(placed ->
            placed.cell().stored() instanceof Content.Text text && sharesAll(wanted, text.value()))
        .map(placed -> placed.ref().plus(0, 1))
        .filter(tab::isTypedNumber);
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
