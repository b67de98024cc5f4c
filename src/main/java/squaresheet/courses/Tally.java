package squaresheet.courses;

import java.util.ArrayList;
import java.util.List;
import squaresheet.geometry.Fraction;

/** Counts pieces run by run. Keeps the widths of cut ends, at most two for each run; never the pieces themselves. */
final class Tally {

  private final long piece;
  private final Fraction sliver;
  private final List<Fraction> lefts = new ArrayList<>();
  private final List<Fraction> rights = new ArrayList<>();
  private long full;
  private long both;
  private long slivers;

  Tally(long piece, long sliver) {
    this.piece = piece;
    this.sliver = Fraction.of(sliver);
  }

  /** A run whose joints stand at {@code joint} and every piece from there, both ways. */
  void add(Run run, long joint) {
    Cells cells = Cells.of(run, joint, piece);
    full += cells.full();
    if (cells.isOneCutAtBothEnds()) {
      both++;
      countSliver(cells.leftWidth(), run.leftAtRake() || run.rightAtRake());
    } else {
      addEnds(cells, run);
    }
  }

  private void addEnds(Cells cells, Run run) {
    if (cells.leftIsCut()) {
      lefts.add(cells.leftWidth());
      countSliver(cells.leftWidth(), run.leftAtRake());
    }
    if (cells.rightIsCut()) {
      rights.add(cells.rightWidth());
      countSliver(cells.rightWidth(), run.rightAtRake());
    }
  }

  private void countSliver(Fraction width, boolean atRake) {
    slivers += atRake && width.compareTo(sliver) < 0 ? 1 : 0;
  }

  /** Takes in what another counted. */
  void add(Tally other) {
    full += other.full;
    both += other.both;
    slivers += other.slivers;
    lefts.addAll(other.lefts);
    rights.addAll(other.rights);
  }

  long slivers() {
    return slivers;
  }

  /** The pieces with no cut end used again. */
  Pieces unpaired() {
    return new Pieces(full, lefts.size() + rights.size() + both, 0);
  }

  /** The pieces with as many pairs as there can be. */
  Pieces paired() {
    return unpaired().withPairs(Pairing.most(lefts, rights, piece));
  }
}
