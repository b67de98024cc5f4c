package squaresheet.verify;

import java.util.List;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.sheet.Address;

/**
 * A length of all edges of a kind in a workbook of foreign layout, beside what the sides of its planes make.
 *
 * @param model the model
 * @param called the kind or kinds, as {@code ridges and hips}
 * @param parts the cells that add up to it, at least one
 * @param feet what they come to
 * @param may the spans of feet between which it lies, by the planes that it may be of; the likeliest first
 */
record EdgeTotal(BookModel model, String called, List<Address> parts, double feet, List<Span> may) {

  /** Tape and planes differ by little, and people round a run up; a share of the length, common practice. */
  private static final double TOLERANCE = 0.02;

  /** Rounded up to the foot. */
  private static final double FOOT = 1;

  EdgeTotal {
    parts = List.copyOf(parts);
    may = List.copyOf(may);
  }

  /**
   * What planes make of a kind.
   *
   * @param sure feet of edges that are surely of the kind
   * @param all feet with those that may be something else, such as a ridge that no other plane meets
   */
  record Span(double sure, double all) {
    boolean contains(double feet) {
      return feet >= sure * (1 - TOLERANCE) && feet <= all * (1 + TOLERANCE) + FOOT;
    }
  }

  boolean isRight() {
    return may.stream().anyMatch(span -> span.contains(feet));
  }

  Finding says(CheckInfo info) {
    Address last = parts.get(parts.size() - 1);
    String unit = inItsUnit(may.get(0).all());
    String there = parts.size() == 1
        ? "is " + inItsUnit(feet)
        : "is the last of " + parts.size() + " cells that make " + inItsUnit(feet);
    return Says.about(
        info,
        model.book(),
        last,
        unit,
        called + " " + there + ", but the sides of the planes make " + unit);
  }

  private String inItsUnit(double feet) {
    Address at = parts.get(0);
    return model
        .bound()
        .cells()
        .item(at)
        .map(item -> Shown.number(
            Math.round(model.bound().inItsUnit(item, model.book().cell(at), feet) * 100) / 100.0))
        .orElseThrow();
  }
}
