package squaresheet.verify;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

/** Finds the tables of a sheet by the runs of one relative form in its formulas. */
final class TableSearch {

  /** So many items in a row may fall out of a run before it counts as two. */
  private static final int GAP = 3;

  private final Tab tab;
  private final Axis axis;
  private final Map<Integer, Map<Integer, String>> forms;
  private final int lastAcross;

  TableSearch(Tab tab, Axis axis) {
    this.tab = tab;
    this.axis = axis;
    forms = tab.forms(axis);
    lastAcross = forms.keySet().stream().mapToInt(it -> it).max().orElse(0);
  }

  private record Segment(int across, String form, int first, int last, int count) {
    int size() {
      return last - first + 1;
    }
  }

  List<Table> tables() {
    List<Segment> left = new ArrayList<>();
    forms.forEach((across, column) -> left.addAll(segments(across, column)));
    left.sort(Comparator.comparingInt(Segment::count).reversed());
    List<Table> tables = new ArrayList<>();
    while (!left.isEmpty()) {
      Segment core = left.get(0);
      List<Segment> together = together(core, left);
      Table table = table(core, together);
      Set<Segment> taken = new HashSet<>(together);
      left.removeIf(it -> taken.contains(it)
          || (it.first() <= table.last()
              && it.last() >= table.first()
              && table.forms().stream().anyMatch(form -> form.across() == it.across())));
      tables.add(table);
    }
    tables.removeIf(table -> table.size() < 3);
    return tables;
  }

  /** The stretches of one form in a property, short gaps allowed, empty lines not. */
  private List<Segment> segments(int across, Map<Integer, String> column) {
    Map<String, List<Integer>> byForm = new LinkedHashMap<>();
    column.forEach(
        (along, form) -> byForm.computeIfAbsent(form, key -> new ArrayList<>()).add(along));
    List<Segment> all = new ArrayList<>();
    byForm.forEach((form, places) -> {
      int start = 0;
      for (int i = 1; i <= places.size(); i++) {
        if (i == places.size() || isParted(places.get(i - 1), places.get(i))) {
          if (i - start >= 2) {
            all.add(new Segment(across, form, places.get(start), places.get(i - 1), i - start));
          }
          start = i;
        }
      }
    });
    return all;
  }

  private boolean isParted(int one, int next) {
    return next - one - 1 > GAP
        || IntStream.range(one + 1, next)
            .anyMatch(along -> tab.isEmptyLine(along, axis, 0, lastAcross));
  }

  /** The segments beside the core that cover at least half of the same items, with no empty property between. */
  private List<Segment> together(Segment core, List<Segment> all) {
    List<Segment> found = new ArrayList<>(List.of(core));
    List<Segment> near =
        new ArrayList<>(all.stream().filter(it -> shares(core, it)).toList());
    TreeSet<Integer> taken = new TreeSet<>(Set.of(core.across()));
    boolean grew = true;
    while (grew) {
      near.removeIf(it -> taken.contains(it.across()));
      grew = false;
      for (Segment it : near) {
        if (isBeside(core, it.across(), taken.first(), taken.last())) {
          grew = found.add(it) && taken.add(it.across());
          break;
        }
      }
    }
    return found;
  }

  private static boolean shares(Segment one, Segment other) {
    int overlap = Math.min(one.last(), other.last()) - Math.max(one.first(), other.first()) + 1;
    return overlap * 2 >= Math.min(one.size(), other.size())
        && overlap * 2 >= Math.max(one.size(), other.size()) - 2 * GAP;
  }

  private boolean isBeside(Segment core, int across, int left, int right) {
    int from = Math.min(across, right) + 1;
    int to = Math.max(across, left);
    return IntStream.range(from, to)
        .noneMatch(between -> IntStream.rangeClosed(core.first(), core.last())
            .allMatch(along -> tab.cell(axis.ref(along, between)).isBlank()));
  }

  private Table table(Segment core, List<Segment> together) {
    List<Table.Form> all = together.stream()
        .sorted(Comparator.comparingInt(Segment::across))
        .map(it -> new Table.Form(it.across(), it.form(), it.first(), it.count()))
        .toList();
    Table draft = new Table(tab, axis, core.first(), core.last(), inputs(core, together), all);
    int first = core.first();
    while (first > 0 && isMember(draft, first - 1)) {
      first--;
    }
    int last = core.last();
    while (isMember(draft, last + 1)) {
      last++;
    }
    return new Table(tab, axis, first, last, draft.inputs(), all);
  }

  /** The properties around the runs that hold typed numbers for most items of the core. */
  private List<Integer> inputs(Segment core, List<Segment> together) {
    int right = together.stream().mapToInt(Segment::across).max().orElseThrow();
    return IntStream.rangeClosed(0, right + 2)
        .filter(across -> together.stream().noneMatch(it -> it.across() == across))
        .filter(across -> {
          long typed = IntStream.rangeClosed(core.first(), core.last())
              .filter(along -> tab.isTypedNumber(axis.ref(along, across)))
              .count();
          return typed * 10 >= core.size() * 6L;
        })
        .boxed()
        .toList();
  }

  /** Whether the line continues the table: most of its formulas, or the same typed numbers and no word of a total. */
  private boolean isMember(Table table, int along) {
    if (Words.isTotal(lineText(along))) {
      return false;
    }
    return table.formsAt(along) * 2 > table.forms().size()
        || (table.hasInputs(along) && table.inputs().size() > 1 && !hasOtherFormulas(table, along));
  }

  private boolean hasOtherFormulas(Table table, int along) {
    long other = table.forms().stream()
        .filter(form -> tab.cell(axis.ref(along, form.across())).isFormula())
        .count();
    return other * 2 > table.forms().size();
  }

  private String lineText(int along) {
    if (axis == Axis.DOWN) {
      return tab.rowText(along);
    }
    StringBuilder words = new StringBuilder();
    for (int row = 0; row < 5; row++) {
      words.append(tab.text(axis.ref(along, row))).append(' ');
    }
    return words.toString();
  }
}
