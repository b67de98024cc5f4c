package squaresheet.binding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import squaresheet.formula.Formula;
import squaresheet.formula.Node;
import squaresheet.sheet.Address;
import squaresheet.sheet.Workbook;

/**
 * Values that stand beside their labels, of which a workbook has one each. Where two cells could be the same value, neither
 * is sure.
 */
final class SingleValues {

  /** Guesses this near to each other cannot be told apart. */
  private static final double TIE = 0.05;

  private static final double UNSURE = 0.7;

  private final Workbook book;
  private final Map<String, List<Guess>> byProperty = new LinkedHashMap<>();

  SingleValues(Workbook book) {
    this.book = book;
  }

  void add(Guess guess) {
    byProperty.computeIfAbsent(guess.property(), key -> new ArrayList<>()).add(guess);
  }

  /**
   * The surest guess of each value, and those that cannot be told from it.
   *
   * @param buildings sheets of which each has planes of its own, so that a total on it may be that building's
   */
  List<Guess> settled(Set<String> buildings) {
    List<Guess> settled = new ArrayList<>();
    byProperty.values().forEach(all -> settled.addAll(settle(all, buildings)));
    return settled;
  }

  private List<Guess> settle(List<Guess> all, Set<String> buildings) {
    double best = all.stream().mapToDouble(Guess::sure).max().orElse(0);
    List<Guess> near = all.stream()
        .filter(guess -> guess.sure() > best - TIE)
        .sorted(Comparator.comparingDouble(Guess::sure).reversed())
        .toList();
    List<Guess> apart = near.stream()
        .filter(guess ->
            near.stream().noneMatch(other -> isBefore(other, guess, near) || isCopy(guess, other)))
        .toList();
    List<Guess> kept = apart.isEmpty() ? near.subList(0, 1) : apart;
    return kept.stream().map(guess -> doubted(guess, kept, buildings)).toList();
  }

  /** Whether two guesses are of one cell; the surer one stands first. */
  private static boolean isBefore(Guess one, Guess other, List<Guess> order) {
    return one.at().equals(other.at()) && order.indexOf(one) < order.indexOf(other);
  }

  /** Whether a cell only repeats another. */
  private boolean isCopy(Guess guess, Guess other) {
    return Formula.parse(book.cell(guess.at()).formula()).value().stream()
        .map(Formula::tree)
        .anyMatch(tree -> tree instanceof Node.Reference reference
            && reference.isCell()
            && !guess.at().equals(other.at())
            && other
                .at()
                .equals(new Address(
                    reference.sheet().isEmpty() ? guess.at().sheet() : reference.sheet(),
                    reference.block().first())));
  }

  private static Guess doubted(Guess guess, List<Guess> near, Set<String> buildings) {
    if (near.size() > 1) {
      Guess other = near.get(0).equals(guess) ? near.get(1) : near.get(0);
      return guess.doubted(UNSURE, other.at() + " could be the same");
    }
    return buildings.contains(guess.at().sheet())
        ? guess.doubted(UNSURE, "it may hold for this sheet only")
        : guess;
  }
}
