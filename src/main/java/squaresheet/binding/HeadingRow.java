package squaresheet.binding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import squaresheet.binding.Meaning.Role;

/** Headings side by side, tried against the words of a table. */
final class HeadingRow {

  /** What a table cannot be without: one of each group, groups parted by spaces, members by {@code |}. */
  private static final Map<String, String> ESSENTIAL = Map.of(
      "planes", "eave|run|across|up_slope|plan_area|sloped_area|squares",
      "edges", "length|run",
      "openings", "width|area plane|up_slope",
      "corners", "x y",
      "prices", "price",
      "materials", "packs|amount|basis",
      "estimate", "amount",
      "payments", "share|amount");

  /** Each heading that means nothing in the table speaks this much against it. */
  private static final double STRANGER = 0.2;

  private final Map<Integer, Heading> headings = new TreeMap<>();

  /** The headings of a row, from one column to another, under those of {@code above} rows over it. */
  HeadingRow(Grid grid, int row, int above, int first, int last) {
    for (int column = first; column <= last; column++) {
      Heading heading = Heading.of(grid.text(row, column));
      for (int up = 1; up <= above && row - up >= 0; up++) {
        String over = grid.spreadText(row - up, column);
        heading = heading.isEmpty() ? Heading.of(over) : heading.under(over);
      }
      if (!heading.isEmpty()) {
        headings.put(column, heading);
      }
    }
  }

  int size() {
    return headings.size();
  }

  /**
   * The headings read as those of a table.
   *
   * @param table the table
   * @param columns what each column then means
   * @param quality the sum of how well the columns fit, less what speaks against it
   */
  record Reading(String table, List<FoundColumn> columns, double quality) {}

  /** The headings as those of the table, if they can be. */
  Optional<Reading> as(String table) {
    List<FoundColumn> columns = assign(table);
    boolean whole = isWhole(table, columns);
    double fit = columns.stream().mapToDouble(FoundColumn::sure).sum();
    double quality = fit - STRANGER * (headings.size() - columns.size());
    return whole && columns.size() > 1 && quality > 1.2
        ? Optional.of(new Reading(table, columns, quality))
        : Optional.empty();
  }

  private static boolean isWhole(String table, List<FoundColumn> columns) {
    Set<String> there =
        new HashSet<>(columns.stream().map(FoundColumn::property).toList());
    for (String group : ESSENTIAL.getOrDefault(table, "").split(" ")) {
      if (List.of(group.split("\\|")).stream().noneMatch(there::contains)) {
        return false;
      }
    }
    return true;
  }

  private List<FoundColumn> assign(String table) {
    List<FoundColumn> all = new ArrayList<>();
    headings.forEach((at, heading) -> Words.fits(heading, table).stream()
        .filter(fit -> isOfAColumn(fit.meaning().role()))
        .filter(fit -> fit.score() >= FoundColumn.WORTH_ASKING)
        .forEach(fit -> all.add(column(at, heading, fit))));
    all.sort(Comparator.comparingDouble(FoundColumn::sure).reversed());
    Map<Integer, FoundColumn> chosen = new TreeMap<>();
    Map<String, FoundColumn> taken = new TreeMap<>();
    for (FoundColumn column : all) {
      FoundColumn rival = taken.get(column.property());
      if (rival == null && !chosen.containsKey(column.at())) {
        chosen.put(column.at(), column);
        taken.put(column.property(), column);
      } else if (rival != null && isTie(rival, column) && !chosen.containsKey(column.at())) {
        FoundColumn doubted = chosen.get(rival.at());
        chosen.put(
            rival.at(),
            doubted.with(
                Math.min(doubted.sure(), 0.7),
                "'" + column.heading().text() + "' could mean the same"));
      }
    }
    return List.copyOf(chosen.values());
  }

  private static boolean isTie(FoundColumn one, FoundColumn other) {
    return one.at() != other.at() && Math.abs(one.sure() - other.sure()) < 0.02;
  }

  private static boolean isOfAColumn(Role role) {
    return role != Role.TITLE;
  }

  private static FoundColumn column(int at, Heading heading, Words.Fit fit) {
    String why = "heading '" + heading.text() + "' says " + fit.word();
    return new FoundColumn(at, heading, fit.meaning(), heading.unit(), fit.score(), why);
  }
}
