package squaresheet.xlsx;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Ref;

/** All that is to become of one sheet. */
final class SheetChanges {

  final Map<Ref, CellChange> cells = new TreeMap<>();
  final List<Edit.SetComment> comments = new ArrayList<>();
  final List<Ref> dropped = new ArrayList<>();
  final List<Edit.SetLink> links = new ArrayList<>();
  final List<DraftSheet.Picture> pictures = new ArrayList<>();

  CellChange cell(Ref ref) {
    return cells.computeIfAbsent(ref, fresh -> new CellChange());
  }

  boolean changesContent() {
    return cells.values().stream().anyMatch(CellChange::changesContent);
  }
}
