package squaresheet.binding;

import java.util.Map;
import java.util.TreeMap;
import squaresheet.sheet.Content;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Role;

/** Makes rows high enough for wrapped text and columns wide enough for what does not wrap. */
final class Fit {

  private static final double LINE_POINTS = 13;
  private static final double WIDEST = 64;
  private static final double USUAL = 9;
  /** Bold text takes a little more room than its letters. */
  private static final double BOLD = 1.15;
  /** Slanted notes take a little less. */
  private static final double SLANTED = 0.95;

  private final DraftSheet sheet;

  private Fit(DraftSheet sheet) {
    this.sheet = sheet;
  }

  static void fit(DraftSheet sheet) {
    Fit fit = new Fit(sheet);
    fit.columns();
    fit.rows();
  }

  private void columns() {
    Map<Integer, Double> needed = new TreeMap<>();
    sheet.entries().forEach((ref, entry) -> {
      boolean stretches = entry.role() == Role.LABEL
          || entry.role() == Role.INPUT
          || (entry.role() == Role.COMPUTED && entry.format().equals("@"));
      if (stretches && !text(entry).isEmpty()) {
        needed.merge(ref.column(), text(entry).length() + 2.0, Math::max);
      }
    });
    needed.forEach((column, width) -> {
      double is = sheet.widths().getOrDefault(column, USUAL);
      sheet.width(column, Math.max(is, Math.min(WIDEST, width)));
    });
  }

  private void rows() {
    Map<Integer, Integer> lines = new TreeMap<>();
    sheet.entries().forEach((ref, entry) -> {
      if (wraps(entry.role())) {
        lines.merge(ref.row(), lines(entry, width(ref)), Math::max);
      }
    });
    lines.forEach((row, count) -> {
      double needed = count * LINE_POINTS + 3;
      if (count > 1 && sheet.heights().getOrDefault(row, 0.0) < needed) {
        sheet.height(row, Math.min(400, needed));
      }
    });
  }

  private static boolean wraps(Role role) {
    return role == Role.HEADING || role == Role.NOTE || role == Role.CAUTION;
  }

  private double width(Ref ref) {
    double width = sheet.widths().getOrDefault(ref.column(), USUAL);
    return sheet.merged().stream()
        .filter(block -> block.first().equals(ref))
        .mapToDouble(block -> {
          double sum = 0;
          for (int column = ref.column(); column <= block.last().column(); column++) {
            sum += sheet.widths().getOrDefault(column, USUAL);
          }
          return sum;
        })
        .findFirst()
        .orElse(width);
  }

  private static int lines(Entry entry, double width) {
    double weight = entry.role() == Role.NOTE ? SLANTED : BOLD;
    int lines = 1;
    double used = 0;
    for (String word : text(entry).split(" ")) {
      double length = word.length() * weight;
      if (used > 0 && used + 1 + length > width - 1) {
        lines++;
        used = 0;
      }
      lines += (int) (length / Math.max(1, width - 1));
      used += (used > 0 ? 1 : 0) + length % Math.max(1, width - 1);
    }
    return lines;
  }

  private static String text(Entry entry) {
    return entry.stored() instanceof Content.Text text ? text.value() : "";
  }
}
