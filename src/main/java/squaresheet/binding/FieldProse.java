package squaresheet.binding;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import squaresheet.binding.FieldCells.Line;
import squaresheet.binding.Meaning.Role;

/** The words that our own form says, and the titles over tables: they stand on a filled sheet too and tell nothing new. */
final class FieldProse {

  private static final Set<String> PROSE = FieldForm.prose();
  private static final Set<String> HOW = FieldForm.how();

  /** A title stands so many rows over the headings. */
  private static final int TITLE_ROWS = 4;

  /** A word as short as that may stand for something where it does not stand alone. */
  private static final int SHORT = 20;

  private FieldProse() {}

  static void take(Grid grid, FieldCells cells, List<FoundTable> tables) {
    Set<Integer> over = new HashSet<>();
    tables.forEach(table -> {
      for (int up = 1; up <= TITLE_ROWS; up++) {
        over.add(table.heading() - up);
      }
    });
    for (Line line : cells.lines(grid)) {
      boolean titles = line.columns().stream()
          .map(column -> grid.text(line.row(), column))
          .allMatch(text -> PROSE.contains(text) || (over.contains(line.row()) && isTitle(text)));
      for (int column : line.columns()) {
        String text = grid.text(line.row(), column);
        if (titles || isProse(grid, text)) {
          cells.take(grid, line.row(), column);
        }
      }
    }
  }

  private static boolean isProse(Grid grid, String text) {
    return text.length() > SHORT
        ? PROSE.contains(text) || HOW.contains(text)
        : grid.name().equals(FieldForm.HOW) && HOW.contains(text);
  }

  private static boolean isTitle(String text) {
    return FieldReader.TAPED.stream()
        .flatMap(table -> Words.of(table).stream())
        .filter(meaning -> meaning.role() == Role.TITLE)
        .flatMap(meaning -> meaning.words().stream())
        .anyMatch(word -> word.tokens().equals(Tokens.of(text)));
  }
}
