package squaresheet.verify;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.finding.Where;
import squaresheet.sheet.Address;

/** Keeps one finding for one cause: the most exact one at a cell, and none where a wrong cell before it explains it. */
final class Folding {

  /** What a wrong cell makes the cells behind it say. */
  static final Set<String> CONSEQUENCES = Set.of(
      "error-value",
      "guarded-value-fails",
      "negative-quantity",
      "odd-formula-in-run",
      "limit-not-kept",
      "limit-in-doubt");

  /** What is said of a cell that is not wrong, and so explains nothing behind it. */
  private static final Set<String> ADVICE = Set.of("waste-under-layout", "waste-far-over-layout");

  /** What is said of the end of a sum that is right in itself, where a cell before it is wrong. */
  private static final Set<String> ENDS =
      Set.of("surcharge-off-terms", "estimate-does-not-foot", "estimate-does-not-cross-foot");

  /** What is said of a formula whose row is wrong in another cell. */
  private static final Set<String> OF_THE_ROW = Set.of("result-in-other-unit");

  /** What is said of a stored value is never explained by the value of another cell. */
  private static final String STORED = "stale-value";

  private final Book book;
  private final Optional<Model> model;

  Folding(Book book, Optional<Model> model) {
    this.book = book;
    this.model = model;
  }

  List<Finding> fold(List<Finding> said) {
    Map<Object, Finding> first = new LinkedHashMap<>();
    List<Finding> byWeight = new ArrayList<>(said);
    byWeight.sort(
        Comparator.<Finding, Integer>comparing(finding -> weight(finding.info().severity()))
            .thenComparing(finding -> !PitchCell.BECAME.contains(finding.info().id())));
    byWeight.forEach(finding -> first.putIfAbsent(place(finding), finding));
    Set<Finding> kept = new HashSet<>(first.values());
    Set<Address> behind = behind(first.values());
    Set<Address> behindErrors = behind(first.values().stream()
        .filter(finding -> finding.isError() && !ENDS.contains(finding.info().id()))
        .toList());
    Set<Address> off = cells(said, finding -> finding.info().id().equals("estimate-cell-off"));
    Set<Address> wrong = cells(first.values(), Finding::isError);
    return said.stream()
        .filter(kept::contains)
        .filter(finding -> !isConsequence(finding, behind))
        .filter(finding -> !isEnd(finding, behindErrors, off))
        .filter(finding -> !isOfAWrongRow(finding, wrong))
        .distinct()
        .toList();
  }

  private static Set<Address> cells(Collection<Finding> said, Predicate<Finding> which) {
    return said.stream()
        .filter(which)
        .flatMap(finding -> cell(finding).stream())
        .collect(Collectors.toSet());
  }

  /** The end of a sum that is right in itself, behind a cell that is wrong. */
  private static boolean isEnd(Finding finding, Set<Address> behindErrors, Set<Address> off) {
    return ENDS.contains(finding.info().id())
        && cell(finding)
            .filter(at -> behindErrors.contains(at) && !off.contains(at))
            .isPresent();
  }

  private static boolean isOfAWrongRow(Finding finding, Set<Address> wrong) {
    return OF_THE_ROW.contains(finding.info().id())
        && cell(finding)
            .filter(at -> wrong.stream()
                .anyMatch(it ->
                    it.sheet().equals(at.sheet()) && it.ref().row() == at.ref().row()))
            .isPresent();
  }

  private static int weight(Severity severity) {
    return switch (severity) {
      case ERROR -> 0;
      case WARNING -> 1;
      case NOTE -> 2;
    };
  }

  /** The cell, or the check itself where a finding speaks of the whole file. */
  private static Object place(Finding finding) {
    return cell(finding).<Object>map(it -> it).orElse(finding.info().id() + finding.where());
  }

  static Optional<Address> cell(Finding finding) {
    return finding.where() instanceof Where.InCell in ? Optional.of(in.cell()) : Optional.empty();
  }

  private Set<Address> behind(Iterable<Finding> findings) {
    Set<Address> roots = new HashSet<>();
    findings.forEach(finding -> {
      if (finding.info().severity() != Severity.NOTE
          && !CONSEQUENCES.contains(finding.info().id())
          && !ADVICE.contains(finding.info().id())) {
        cell(finding).ifPresent(roots::add);
      }
    });
    return book.links().dependents(roots);
  }

  private boolean isConsequence(Finding finding, Set<Address> behind) {
    Optional<Address> cell = cell(finding);
    boolean consequence = CONSEQUENCES.contains(finding.info().id())
        || cell.flatMap(it -> model.map(known -> known.cells().get(it)))
            .filter(it -> it.isFormula()
                && !it.isWrongItself()
                && !STORED.equals(finding.info().id()))
            .isPresent();
    return consequence && cell.filter(behind::contains).isPresent();
  }
}
