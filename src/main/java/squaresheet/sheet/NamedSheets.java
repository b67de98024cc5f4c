package squaresheet.sheet;

import java.util.AbstractList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.RandomAccess;
import java.util.TreeMap;

/** Sheets in the order of their tabs, quick to find by name. */
final class NamedSheets extends AbstractList<Sheet> implements RandomAccess {

  private final List<Sheet> sheets;
  private final Map<String, Sheet> byName = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);

  private NamedSheets(List<Sheet> sheets) {
    this.sheets = List.copyOf(sheets);
    this.sheets.forEach(sheet -> byName.putIfAbsent(sheet.name(), sheet));
  }

  static NamedSheets of(List<Sheet> sheets) {
    return sheets instanceof NamedSheets already ? already : new NamedSheets(sheets);
  }

  /** The first sheet of that name, capital and small letters alike. */
  Optional<Sheet> named(String name) {
    return Optional.ofNullable(byName.get(name));
  }

  @Override
  public Sheet get(int index) {
    return sheets.get(index);
  }

  @Override
  public int size() {
    return sheets.size();
  }
}
