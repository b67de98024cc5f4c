package squaresheet.verify;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Ref;

/**
 * A sheet and those that are laid out like it: one for each building, or a copy.
 *
 * @param tab the sheet
 * @param like the others, one or more
 * @param readers for each sheet, the formulas on other sheets that read it
 */
record LikeSheets(Tab tab, List<Tab> like, Map<String, List<Address>> readers) {

  /** So much of two sheets' formulas must be the same for them to be alike; totals stand a few rows apart. */
  private static final double ALIKE = 0.6;

  /** Every sheet that has others like it. */
  static Stream<LikeSheets> in(Book book) {
    Map<Tab, Set<String>> shapes =
        book.tabs().stream().collect(Collectors.toMap(tab -> tab, LikeSheets::shape));
    Map<String, List<Address>> readers = readers(book);
    return book.tabs().stream()
        .map(tab -> new LikeSheets(tab, like(tab, shapes), readers))
        .filter(group -> !group.like().isEmpty());
  }

  private static Map<String, List<Address>> readers(Book book) {
    Map<String, List<Address>> readers = new HashMap<>();
    book.formulas().keySet().forEach(at -> book.links().reads(at).stream()
        .map(Cells::sheet)
        .filter(sheet -> !sheet.equals(at.sheet()))
        .distinct()
        .forEach(
            sheet -> readers.computeIfAbsent(sheet, key -> new ArrayList<>()).add(at)));
    return readers;
  }

  private static List<Tab> like(Tab tab, Map<Tab, Set<String>> shapes) {
    return tab.book().tabs().stream()
        .filter(other -> other != tab && isLike(shapes.get(tab), shapes.get(other)))
        .toList();
  }

  private static boolean isLike(Set<String> one, Set<String> other) {
    Set<String> both = new HashSet<>(one);
    both.retainAll(other);
    return both.size() >= 2 && both.size() >= ALIKE * Math.max(one.size(), other.size());
  }

  /** The relative formulas by column; the rows of blocks are left out, as they end where the data does. */
  private static Set<String> shape(Tab tab) {
    Set<String> shape = new HashSet<>();
    tab.forms(Axis.DOWN)
        .forEach((column, forms) ->
            forms.values().forEach(form -> shape.add(column + " " + withoutRowsOfBlocks(form))));
    return shape;
  }

  private static String withoutRowsOfBlocks(String form) {
    return form.contains(":") ? form.replaceAll("R(\\[-?\\d+]|\\d+)?(?=C)", "R") : form;
  }

  Book book() {
    return tab.book();
  }

  /** The formulas on other sheets that read a sheet. */
  List<Address> readersOf(Tab read) {
    return readers.getOrDefault(read.name(), List.of());
  }

  /** Whether the sheet is a copy of the other, by its name: {@code Roof (2)}, {@code Copy of Roof}, {@code Roof old}. */
  static boolean isCopy(Tab copy, Tab original) {
    return !copy.name().equals(original.name()) && base(copy).equals(lower(original.name()));
  }

  private static String base(Tab tab) {
    return lower(tab.name())
        .replaceAll("^copy of ", "")
        .replaceAll("\\s*\\(\\d+\\)$|[ _-]+(copy|old|backup|back-up|saved)\\s*\\d*$", "");
  }

  private static String lower(String name) {
    return name.strip().toLowerCase(Locale.ROOT);
  }

  /** Whether other numbers are typed on the two sheets. */
  static boolean differ(Tab one, Tab other) {
    return !typed(one).equals(typed(other));
  }

  private static Map<Ref, Content> typed(Tab tab) {
    Map<Ref, Content> all = new TreeMap<>();
    tab.sheet()
        .cells()
        .filter(placed -> tab.isTypedNumber(placed.ref()))
        .forEach(placed -> all.put(placed.ref(), placed.cell().stored()));
    return all;
  }
}
