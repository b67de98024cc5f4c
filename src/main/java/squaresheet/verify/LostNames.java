package squaresheet.verify;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;

/** A plane that was called otherwise, told once at its name and not at every edge that still calls it by the old one. */
final class LostNames {

  static final CheckInfo INFO = new CheckInfo(
      "plane-called-otherwise", Severity.ERROR, "A plane is called otherwise by its edges");

  private static final Pattern UNKNOWN =
      Pattern.compile("'([^']+)'(?:, '[^']*')? is none that was read|no plane '([^']+)'");

  static final List<String> CALLERS =
      List.of("edge_plane", "edge_meets", "corner_plane", "opening_plane");

  private final Book book;

  /** How many findings each cause stands for. */
  private final Map<Finding, Integer> folded = new LinkedHashMap<>();

  LostNames(Book book) {
    this.book = book;
  }

  Map<Finding, Integer> folded() {
    return folded;
  }

  static boolean isCause(Finding finding) {
    return finding.info().equals(INFO);
  }

  /** Puts what speaks of one unknown plane together: at the plane that nobody calls, or else at its first caller. */
  List<Finding> fold(List<Finding> said) {
    Map<String, List<Finding>> byName = new LinkedHashMap<>();
    said.forEach(finding -> unknown(finding)
        .ifPresent(
            name -> byName.computeIfAbsent(name, key -> new ArrayList<>()).add(finding)));
    List<Finding> left = new ArrayList<>(said);
    byName.forEach((name, all) -> put(name, all, left));
    return left;
  }

  private void put(String name, List<Finding> all, List<Finding> left) {
    List<Address> uncalled = planes().filter(at -> !isCalled(at)).toList();
    long rows = all.stream()
        .flatMap(finding -> Folding.cell(finding).stream())
        .map(at -> at.sheet() + at.ref().row())
        .distinct()
        .count();
    if (isAPlane(name) || all.size() < 2) {
      return;
    }
    if (rows > 1 && uncalled.size() == 1 && isSilent(uncalled.get(0), left)) {
      Finding cause = says(uncalled.get(0), name, rows);
      folded.put(cause, all.size());
      left.add(0, cause);
      left.removeAll(all);
    } else {
      left.removeAll(all.subList(1, all.size()));
    }
  }

  private boolean isSilent(Address at, List<Finding> said) {
    return said.stream().filter(Finding::isError).noneMatch(finding -> Folding.cell(finding)
        .equals(Optional.of(at)));
  }

  /** The plane that a finding says is none. */
  static Optional<String> unknown(Finding finding) {
    Matcher unknown = UNKNOWN.matcher(finding.says());
    return unknown.find()
        ? Optional.of(unknown.group(1) == null ? unknown.group(2) : unknown.group(1))
        : Optional.empty();
  }

  private Stream<Address> planes() {
    return cells("plane_name").filter(at -> book.value(at) instanceof Value.Text);
  }

  private Stream<Address> cells(String name) {
    return book.named(name).stream().flatMap(Cells::each);
  }

  private boolean isAPlane(String name) {
    return planes().anyMatch(at -> text(at).equals(name));
  }

  private boolean isCalled(Address plane) {
    return CALLERS.stream().flatMap(this::cells).anyMatch(at -> text(at).equals(text(plane)));
  }

  private String text(Address at) {
    return book.value(at) instanceof Value.Text text ? text.value().strip() : "";
  }

  private Finding says(Address at, String name, long rows) {
    String says = "is the name of a plane that no edge, corner or opening calls, while "
        + Says.count(rows, "row") + " call '" + name
        + "', which is no plane; write one name in all of them";
    return new Finding(INFO, book.where(at), Shown.of(book.value(at)), "'" + name + "'", says, "");
  }
}
