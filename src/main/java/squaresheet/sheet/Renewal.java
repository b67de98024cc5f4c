package squaresheet.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** Puts a sheet of our own into a workbook, in place of the one that was put there before. */
final class Renewal {

  private Renewal() {}

  static List<Edit> of(Workbook book, DraftSheet fresh) {
    Content mark = stored(fresh, new Ref(0, 0));
    Optional<Sheet> old = book.sheets().stream()
        .filter(sheet -> sheet.cell(new Ref(0, 0)).stored().equals(mark))
        .findFirst();
    return old.map(sheet -> renewed(sheet, fresh))
        .orElseGet(() -> List.of(new Edit.AddSheet(fresh)));
  }

  private static Content stored(DraftSheet sheet, Ref ref) {
    DraftSheet.Entry entry = sheet.entries().get(ref);
    return entry == null ? new Content.Blank() : entry.stored();
  }

  private static List<Edit> renewed(Sheet old, DraftSheet fresh) {
    List<Edit> edits = new ArrayList<>();
    TreeSet<Ref> all = new TreeSet<>(fresh.entries().keySet());
    old.cells()
        .filter(placed -> !placed.cell().isBlank())
        .map(Sheet.Placed::ref)
        .forEach(all::add);
    for (Ref ref : all) {
      DraftSheet.Entry entry = fresh.entries().get(ref);
      put(
          new Address(old.name(), ref),
          old.cell(ref),
          entry == null ? DraftSheet.Entry.blank() : entry,
          edits);
    }
    return edits;
  }

  private static void put(Address at, Cell old, DraftSheet.Entry entry, List<Edit> edits) {
    if (!entry.formula().isEmpty()) {
      edits.add(new Edit.SetFormula(at, entry.formula(), entry.stored()));
    } else if (old.isFormula() || !old.stored().equals(entry.stored())) {
      edits.add(new Edit.SetContent(at, entry.stored()));
    }
    if (!entry.stored().isBlank() && !old.format().equals(entry.format())) {
      edits.add(new Edit.SetFormat(at, entry.format()));
    }
  }
}
