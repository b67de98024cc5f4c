package squaresheet.binding;

import java.util.List;
import squaresheet.courses.CoursePlan;
import squaresheet.courses.Pieces;
import squaresheet.courses.RoofLayout;
import squaresheet.courses.Stagger;
import squaresheet.courses.Strip;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.units.Ratio;

/** What was counted piece by piece, and the first pieces it was counted with; a spreadsheet program cannot lay courses. */
final class LayoutCounts {

  private final RoofLayout layout;
  private final Downward down;
  private final TapeColumn tape;

  LayoutCounts(RoofLayout layout, Downward down, TapeColumn tape) {
    this.layout = layout;
    this.down = down;
    this.tape = tape;
  }

  void write() {
    down.headings(List.of(
        "Pieces",
        "Laid whole",
        "Laid cut",
        "Pairs out of one",
        "Pieces used",
        "Waste",
        "Slivers at rakes",
        "That rounding lines costs"));
    layout.plans().forEach(this::plane);
    row("The roof", layout.pieces(), layout.simulatedWaste());
    down.put(6, number(layout.slivers()));
    down.skip(1);
    strip("Starter", layout.starter());
    strip("Cap on hips and ridges", layout.cap());
    down.skip(1);
    firstPieces(layout.stagger());
  }

  private void plane(CoursePlan plan) {
    row("Plane " + plan.plane().id(), plan.pieces(), plan.waste());
    down.put(6, number(plan.slivers()));
    down.put(7, number(plan.shinglesForRounding()));
    down.skip(1);
  }

  private void strip(String name, Strip strip) {
    row(name, strip.pieces(), strip.waste());
    down.skip(1);
  }

  private void row(String name, Pieces pieces, Ratio waste) {
    down.put(0, Entries.label(name));
    down.put(1, number(pieces.full()));
    down.put(2, number(pieces.cut()));
    down.put(3, number(pieces.pairs()));
    down.put(4, number(pieces.used()));
    down.put(5, Entry.number(waste.toDouble()).format("0.0%"));
  }

  private static Entry number(long count) {
    return Entry.number((double) count).format("#,##0");
  }

  private void firstPieces(Stagger stagger) {
    down.headings(List.of(
        "First piece of each course, from the " + hand(),
        tape.heading(),
        "Joints from the next course",
        "Joints from the next but one"));
    for (int course = 0; course < stagger.repeat(); course++) {
      down.put(0, Entries.label("Course " + (course + 1)));
      down.put(1, tape.still(stagger.firstPiece(course).toInches()));
      down.put(2, tape.still(stagger.offset(course).toInches()));
      down.put(3, tape.still(stagger.offsetNextButOne(course).toInches()));
      down.skip(1);
    }
    down.put(0, Entries.note("Then again from course 1."));
    down.skip(2);
  }

  private String hand() {
    return layout.settings().joints().from().name().toLowerCase(java.util.Locale.ROOT);
  }
}
