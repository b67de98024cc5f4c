package squaresheet.binding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import squaresheet.sheet.Address;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Workbook;

/** The tables that agreed headings stand over, with their rows told apart anew. */
final class BoundTables {

  private final Workbook book;
  private final String file;
  private final BookValues values;

  BoundTables(Workbook book, String file) {
    this.book = book;
    this.file = file;
    values = new BookValues(book);
  }

  /** The tables of these headings. */
  List<FoundTable> of(List<Guess> headings) {
    List<List<Guess>> groups = groups(headings);
    return groups.stream().flatMap(group -> table(group, groups).stream()).toList();
  }

  /** Headings of one table in one line; where a property comes again, another table begins. */
  private static List<List<Guess>> groups(List<Guess> headings) {
    Map<String, List<Guess>> lines = new LinkedHashMap<>();
    headings.stream().sorted(Comparator.comparingInt(BoundTables::place)).forEach(guess -> lines
        .computeIfAbsent(
            guess.table() + "|" + guess.at().sheet() + "|" + guess.across() + "|" + line(guess),
            key -> new ArrayList<>())
        .add(guess));
    List<List<Guess>> groups = new ArrayList<>();
    for (List<Guess> line : lines.values()) {
      Set<String> taken = new HashSet<>();
      List<Guess> group = new ArrayList<>();
      for (Guess guess : line) {
        if (!taken.add(guess.property())) {
          groups.add(group);
          group = new ArrayList<>();
          taken = new HashSet<>(Set.of(guess.property()));
        }
        group.add(guess);
      }
      groups.add(group);
    }
    return groups;
  }

  private static int line(Guess guess) {
    Ref ref = guess.at().ref();
    return guess.across() ? ref.column() : ref.row();
  }

  private static int place(Guess guess) {
    Ref ref = guess.at().ref();
    return guess.across() ? ref.row() : ref.column();
  }

  private Optional<FoundTable> table(List<Guess> group, List<List<Guess>> groups) {
    Guess one = group.get(0);
    return book.sheet(one.at().sheet()).map(sheet -> {
      Grid upright = new SheetGrid(file, sheet, ref -> values.cell(new Address(sheet.name(), ref)));
      Grid grid = one.across() ? upright.turned() : upright;
      List<FoundColumn> columns = new ArrayList<>();
      group.forEach(guess -> column(grid, guess).ifPresent(columns::add));
      int first = outward(grid, one, group.stream().mapToInt(BoundTables::place).min(), -1);
      int last = outward(grid, one, group.stream().mapToInt(BoundTables::place).max(), 1);
      int stop = stop(one, first, last, groups);
      Rows rows = new Rows(grid, columns, first, last, stop);
      return new FoundTable(
          one.table(), grid, line(one), columns, first, last, rows.sort(line(one) + 1), 1);
    });
  }

  /** As far as headings stand beside each other, bound or not. */
  private static int outward(Grid grid, Guess one, OptionalInt from, int step) {
    int at = from.orElseThrow();
    while (at + step >= 0 && !grid.text(line(one), at + step).isEmpty()) {
      at += step;
    }
    return at;
  }

  private static Optional<FoundColumn> column(Grid grid, Guess guess) {
    return Words.find(guess.table(), guess.property())
        .map(meaning -> new FoundColumn(
            place(guess),
            Heading.of(grid.text(line(guess), place(guess))),
            meaning,
            UnitWords.ofSymbol(guess.unit()).or(() -> UnitWords.find(guess.unit())),
            guess.sure(),
            guess.why()));
  }

  /** The line in which the next table begins under (or beside) this one. */
  private static int stop(Guess one, int first, int last, List<List<Guess>> groups) {
    return groups.stream()
        .map(group -> group.get(0))
        .filter(other -> other.across() == one.across()
            && other.at().sheet().equals(one.at().sheet())
            && line(other) > line(one))
        .filter(other -> groups.stream()
            .filter(group -> group.get(0).equals(other))
            .flatMap(List::stream)
            .anyMatch(it -> place(it) >= first && place(it) <= last))
        .mapToInt(BoundTables::line)
        .min()
        .orElse(Integer.MAX_VALUE);
  }
}
