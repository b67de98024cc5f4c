package squaresheet.binding;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import squaresheet.formula.Formula;
import squaresheet.formula.Node;
import squaresheet.formula.Scope;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Workbook;

/** Works out every formula of a draft, so that a program which does not recalculate shows the values too. */
final class DraftValues {

  private final Map<String, DraftSheet> sheets = new HashMap<>();
  private final Map<String, Node> names = new HashMap<>();
  private final Map<Address, Value> known = new HashMap<>();
  private final Set<Address> asked = new HashSet<>();

  private DraftValues(Draft draft) {
    draft.sheets().forEach(sheet -> sheets.put(key(sheet.name()), sheet));
    for (Workbook.Name name : draft.names()) {
      names.put(key(name.name()), Formula.of(name.text()).tree());
    }
  }

  /** Gives every formula of the draft its value. */
  static void store(Draft draft) {
    DraftValues values = new DraftValues(draft);
    for (DraftSheet sheet : draft.sheets()) {
      Map.copyOf(sheet.entries()).forEach((ref, entry) -> {
        if (!entry.formula().isEmpty()) {
          Value value = values.value(new Address(sheet.name(), ref));
          sheet.put(
              ref,
              new Entry(Entries.content(value), entry.formula(), entry.role(), entry.format()));
        }
      });
    }
  }

  private static String key(String name) {
    return name.toLowerCase(java.util.Locale.ROOT);
  }

  private Value value(Address at) {
    Value before = known.get(at);
    if (before != null) {
      return before;
    }
    Optional<Entry> entry =
        Optional.ofNullable(sheets.get(key(at.sheet()))).flatMap(sheet -> sheet.entry(at.ref()));
    if (entry.isEmpty()) {
      return new Value.Blank();
    }
    if (entry.get().formula().isEmpty()) {
      return Value.of(entry.get().stored());
    }
    if (!asked.add(at)) {
      return new Value.NotChecked("a circle of formulas through " + at);
    }
    Value value = Formula.of(entry.get().formula()).evaluate(new At(at));
    known.put(at, value);
    return value;
  }

  /** What stands behind references and names for the formula of a cell. */
  private final class At implements Scope {
    private final Address here;

    At(Address here) {
      this.here = here;
    }

    @Override
    public Value cell(Address cell) {
      return value(cell.sheet().isEmpty() ? new Address(here.sheet(), cell.ref()) : cell);
    }

    @Override
    public Optional<Block> used(String sheet) {
      DraftSheet asked = sheets.get(key(sheet.isEmpty() ? here.sheet() : sheet));
      return asked == null || asked.entries().isEmpty()
          ? Optional.empty()
          : Optional.of(new Block(new Ref(0, 0), last(asked)));
    }

    @Override
    public Optional<Node> defined(Node.Name name) {
      return Optional.ofNullable(names.get(key(name.name())));
    }

    @Override
    public Optional<Address> here() {
      return Optional.of(here);
    }
  }

  private static Ref last(DraftSheet sheet) {
    int row = 0;
    int column = 0;
    for (Ref ref : sheet.entries().keySet()) {
      row = Math.max(row, ref.row());
      column = Math.max(column, ref.column());
    }
    return new Ref(row, column);
  }
}
