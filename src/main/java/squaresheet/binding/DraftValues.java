package squaresheet.binding;

import java.util.Map;
import squaresheet.sheet.Address;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.DraftSheet.Entry;

/** Works out every formula of a draft, so that a program which does not recalculate shows the values too. */
final class DraftValues {

  private DraftValues() {}

  /** Gives every formula of the draft its value. */
  static void store(Draft draft) {
    BookValues values = new BookValues(draft.workbook());
    for (DraftSheet sheet : draft.sheets()) {
      Map.copyOf(sheet.entries()).forEach((ref, entry) -> {
        if (!entry.formula().isEmpty()) {
          var value = values.value(new Address(sheet.name(), ref));
          sheet.put(ref, new Entry(value.content(), entry.formula(), entry.role(), entry.format()));
        }
      });
    }
  }
}
