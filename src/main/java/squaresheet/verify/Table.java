package squaresheet.verify;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import squaresheet.sheet.Address;
import squaresheet.sheet.Ref;

/**
 * Items that follow each other on a sheet, with the same formulas for each.
 *
 * @param tab the sheet
 * @param axis which way the items follow each other
 * @param first the first item
 * @param last the last item
 * @param inputs the properties that are typed as numbers for most items
 * @param forms the properties that are worked out, one relative form each
 */
record Table(Tab tab, Axis axis, int first, int last, List<Integer> inputs, List<Form> forms) {

  Table {
    inputs = List.copyOf(inputs);
    forms = List.copyOf(forms);
  }

  /**
   * A formula that was filled along the items.
   *
   * @param across the property
   * @param text the relative form
   * @param sample an item that has it
   * @param count how many items have it
   */
  record Form(int across, String text, int sample, int count) {}

  int size() {
    return last - first + 1;
  }

  IntStream items() {
    return IntStream.rangeClosed(first, last);
  }

  /** The rows of the sheet that it stands in. */
  IntStream rows() {
    return axis == Axis.DOWN ? items() : IntStream.rangeClosed(leftmost(), rightmost());
  }

  Ref ref(int along, int across) {
    return axis.ref(along, across);
  }

  Address at(int along, int across) {
    return tab.at(ref(along, across));
  }

  private int leftmost() {
    return IntStream.concat(
            inputs.stream().mapToInt(it -> it), forms.stream().mapToInt(Form::across))
        .min()
        .orElse(0);
  }

  private int rightmost() {
    return IntStream.concat(
            inputs.stream().mapToInt(it -> it), forms.stream().mapToInt(Form::across))
        .max()
        .orElse(0);
  }

  /** The properties whose heading is one of those, texts beside the numbers included. */
  List<Integer> properties(Predicate<String> heading) {
    return IntStream.rangeClosed(0, rightmost() + 2)
        .filter(across -> heading.test(heading(across)))
        .boxed()
        .toList();
  }

  /** The only property whose heading is one of those. */
  Optional<Integer> property(Predicate<String> heading) {
    List<Integer> all = properties(heading);
    return all.size() == 1 ? Optional.of(all.get(0)) : Optional.empty();
  }

  String heading(int across) {
    return tab.heading(ref(first, across), axis);
  }

  OptionalDouble number(int along, int across) {
    return tab.book().number(at(along, across));
  }

  boolean contains(Ref ref) {
    int along = axis.along(ref);
    int across = axis.across(ref);
    return along >= first && along <= last && across >= leftmost() && across <= rightmost();
  }

  boolean overlaps(Table other) {
    return forms.stream().anyMatch(form -> other.contains(ref(form.sample(), form.across())));
  }

  /** The worked-out properties as runs, each to be asked on its own. */
  List<Fill> fills() {
    return forms.stream().map(form -> new Fill(this, form)).toList();
  }

  /** Whether the item has a typed number in at least half of the typed properties. */
  boolean hasInputs(int along) {
    long typed =
        inputs.stream().filter(across -> tab.isTypedNumber(ref(along, across))).count();
    return typed > 0 && typed * 2 >= inputs.size();
  }

  /** How many of the runs have their formula in the item. */
  long formsAt(int along) {
    return fills().stream().filter(fill -> fill.hasForm(along)).count();
  }

  /** What the item is called: its first text. */
  String itemName(int along) {
    for (int across = 0; across <= rightmost(); across++) {
      String text = tab.text(ref(along, across));
      if (!text.isEmpty()) {
        return text;
      }
    }
    return "";
  }
}
