package squaresheet.verify;

import java.util.Arrays;
import java.util.Comparator;
import squaresheet.sheet.Block;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Content;
import squaresheet.sheet.Sheet;

/** Where the texts of a sheet stand along an axis, so that the nearest before a cell is found without a look at every cell. */
final class TextPlaces {

  private static final int ALONG = 20;

  private final Sheet sheet;
  private final Axis axis;
  /** The cells with texts, line by line. */
  private final long[] texts;
  /** The merged blocks with texts, by where they end. */
  private final Block[] merged;

  TextPlaces(Sheet sheet, Axis axis) {
    this.sheet = sheet;
    this.axis = axis;
    texts = sheet
        .cells()
        .filter(placed -> !text(placed.cell()).isEmpty())
        .mapToLong(placed -> place(axis.along(placed.ref()), axis.across(placed.ref())))
        .sorted()
        .toArray();
    merged = sheet.merged().stream()
        .filter(block -> !text(sheet.cell(block.first())).isEmpty())
        .sorted(Comparator.comparingInt(block -> axis.along(block.last())))
        .toArray(Block[]::new);
  }

  /** The text of a cell, without spaces at its ends; empty where it holds none. */
  static String text(Cell cell) {
    return cell.stored() instanceof Content.Text text ? text.value().strip() : "";
  }

  private static long place(int along, int across) {
    return ((long) across << ALONG) | along;
  }

  /** The nearest place before this one with a text of its own; -1 where there is none. */
  int own(int along, int across) {
    int at = Arrays.binarySearch(texts, place(along, across));
    int before = (at < 0 ? -at - 1 : at) - 1;
    return before >= 0 && texts[before] >> ALONG == across
        ? (int) (texts[before] - place(0, across))
        : -1;
  }

  /** The nearest place before this one with a text, or under merged cells; -1 where there is none. */
  int any(int along, int across) {
    boolean covered = along > 0 && sheet.mergedAt(axis.ref(along - 1, across)).isPresent();
    if (covered) {
      return along - 1;
    }
    int own = own(along, across);
    for (int i = endingBefore(along) - 1; i >= 0 && axis.along(merged[i].last()) > own; i--) {
      if (axis.across(merged[i].first()) <= across && axis.across(merged[i].last()) >= across) {
        return axis.along(merged[i].last());
      }
    }
    return own;
  }

  private int endingBefore(int along) {
    int low = 0;
    int high = merged.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (axis.along(merged[middle].last()) < along) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
