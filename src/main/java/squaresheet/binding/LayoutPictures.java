package squaresheet.binding;

import java.util.List;
import squaresheet.courses.CoursePlan;
import squaresheet.courses.RoofLayout;
import squaresheet.paper.Drawing;
import squaresheet.paper.Drawings;
import squaresheet.sheet.Block;
import squaresheet.sheet.DraftSheet.Png;
import squaresheet.sheet.Ref;

/**
 * The drawings under the cells, each on rows of its own: the roof, then each plane with its starter strips. No drawing is
 * cut by the end of a page, on Letter or A4.
 */
final class LayoutPictures {

  /** Drawings of larger roofs are written to files instead, so that the workbook can still be sent. */
  private static final int MOST_PLANES = 40;

  /** Across a drawing: 170 to the inch on paper. */
  private static final int PIXELS = 1400;

  private static final double ROW = 15;
  /** The height of a drawing, so that it stands on a page with its caption. */
  private static final double HIGHEST = 465;

  private static final double PAGE = HIGHEST + 2 * ROW;
  /** How wide a character of a column is, in points. */
  private static final double CHARACTER = 5.25;

  /** Drawings reach at most over the columns up to this one. */
  private static final int LAST_COLUMN = 5;

  private final RoofLayout layout;
  private final Downward down;
  private double used = PAGE;

  LayoutPictures(RoofLayout layout, Downward down) {
    this.layout = layout;
    this.down = down;
  }

  /** Writes them; says where they are instead when they are too many, or why there are none. */
  void write() {
    if (Drawing.obstacle().isPresent()) {
      down.put(0, Entries.label(Drawing.obstacle().get()));
      return;
    }
    Drawings.roof(layout).forEach(this::put);
    if (layout.plans().size() > MOST_PLANES) {
      down.put(
          0,
          Entries.label(
              "More than " + MOST_PLANES + " planes: draw them to files with squaresheet draw."));
      return;
    }
    for (CoursePlan plan : layout.plans()) {
      put(Drawings.plane(plan));
      plan.starters().forEach(eave -> put(Drawings.starter(plan, eave)));
    }
  }

  private void put(Drawing drawing) {
    int last = lastColumn(drawing);
    double high = width(last) * drawing.height() / drawing.width();
    if (used + high + 2 * ROW > PAGE) {
      down.sheet().breakAbove(down.row());
      used = 0;
    }
    down.put(
        0,
        Entries.label(drawing.title() + ", as the workbook was written; draw anew after a change"));
    down.skip(1);
    int rows = (int) Math.ceil(high / ROW);
    Ref first = new Ref(down.row(), 0);
    for (int row = 0; row < rows; row++) {
      down.sheet().height(down.row() + row, Math.min(ROW, high - row * ROW));
    }
    down.sheet()
        .picture(
            new Block(first, new Ref(down.row() + rows - 1, last)),
            Png.drawn(() -> drawing.png(PIXELS)),
            drawing.title());
    down.skip(rows + 1);
    used += high + 2 * ROW;
  }

  private int lastColumn(Drawing drawing) {
    int last = LAST_COLUMN;
    while (last > 0 && width(last) * drawing.height() / drawing.width() > HIGHEST) {
      last--;
    }
    return last;
  }

  private static double width(int last) {
    List<Integer> widths = LayoutSheet.WIDTHS.subList(0, last + 1);
    return widths.stream().mapToInt(width -> width).sum() * CHARACTER;
  }
}
