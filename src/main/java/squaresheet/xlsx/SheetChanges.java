package squaresheet.xlsx;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Ref;

/** All that is to become of one sheet. */
final class SheetChanges {

  final Map<Ref, CellChange> cells = new TreeMap<>();
  private final Map<Ref, Edit.SetComment> comments = new LinkedHashMap<>();
  private final Set<Ref> dropped = new LinkedHashSet<>();
  private final Map<Ref, Edit.SetLink> links = new LinkedHashMap<>();
  final List<DraftSheet.Picture> pictures = new ArrayList<>();

  CellChange cell(Ref ref) {
    return cells.computeIfAbsent(ref, fresh -> new CellChange());
  }

  /** Pins a note; of several at one cell the last counts. */
  void pin(Edit.SetComment note) {
    dropped.remove(note.cell().ref());
    comments.put(note.cell().ref(), note);
  }

  /** Takes a note off, one pinned just now included. */
  void drop(Ref ref) {
    comments.remove(ref);
    dropped.add(ref);
  }

  /** Puts a link; of several at one cell the last counts. */
  void link(Edit.SetLink link) {
    links.put(link.cell().ref(), link);
  }

  List<Edit.SetComment> comments() {
    return List.copyOf(comments.values());
  }

  List<Ref> dropped() {
    return List.copyOf(dropped);
  }

  List<Edit.SetLink> links() {
    return List.copyOf(links.values());
  }

  boolean changesContent() {
    return cells.values().stream().anyMatch(CellChange::changesContent);
  }
}
