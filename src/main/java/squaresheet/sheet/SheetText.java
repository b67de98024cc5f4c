package squaresheet.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The texts and number formats that packed cells refer to by number. */
final class SheetText {

  /** Distinct own texts remembered so that repeated ones are kept once; more than this is a sheet of notes. */
  private static final int REMEMBERED = 1 << 16;

  private final List<String> shared;
  private final List<String> own = new ArrayList<>();
  private final List<String> formats = new ArrayList<>(List.of("General"));
  private final Map<String, Short> formatNumbers =
      new LinkedHashMap<>(Map.of("General", (short) 0));
  private Map<String, Integer> seen = new LinkedHashMap<>();

  SheetText(List<String> shared) {
    this.shared = shared;
  }

  short format(String code) {
    return formatNumbers.computeIfAbsent(code.isEmpty() ? "General" : code, fresh -> {
      if (formats.size() > Short.MAX_VALUE) {
        return (short) 0;
      }
      formats.add(fresh);
      return (short) (formats.size() - 1);
    });
  }

  int text(String text) {
    Integer known = seen.get(text);
    if (known != null) {
      return known;
    }
    own.add(text);
    if (seen.size() < REMEMBERED) {
      seen.put(text, own.size() - 1);
    }
    return own.size() - 1;
  }

  /** Forgets what was only needed while the sheet was being filled. */
  void done() {
    seen = Map.of();
  }

  int sharedCount() {
    return shared.size();
  }

  Cell cell(CellStore store, int cell, Ref at) {
    return new Cell(content(store, cell), store.formula(cell, at), formats.get(store.format(cell)));
  }

  private Content content(CellStore store, int cell) {
    long value = store.value(cell);
    return switch (store.kind(cell)) {
      case CellStore.NUMBER -> new Content.Numeric(Double.longBitsToDouble(value));
      case CellStore.SHARED_TEXT -> new Content.Text(shared.get((int) value));
      case CellStore.OWN_TEXT -> new Content.Text(own.get((int) value));
      case CellStore.TRUTH -> new Content.Truth(value != 0);
      case CellStore.FAULT -> new Content.Fault(own.get((int) value));
      default -> new Content.Blank();
    };
  }
}
