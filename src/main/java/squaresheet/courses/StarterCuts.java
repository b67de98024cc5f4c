package squaresheet.courses;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import squaresheet.courses.StarterJoints.Cut;
import squaresheet.units.Length;

/**
 * The fewest pieces of starter to tell a crew so that no joint clashes. Every place that a joint can come to is so many whole
 * pieces and so many marks of cut ones from the start, so all of them are gone through: first those that one piece told leads
 * to, then those of two, until one of them lets a last piece reach the end of the eave.
 */
final class StarterCuts {

  private final StarterJoints row;
  private final long starter;
  private final long eave;
  private final long mark;
  /** The shortest and the longest piece that may be cut, in marks. */
  private final int shortest;

  private final int longest;

  /**
   * The pieces of one eave.
   *
   * @param mark pieces are cut on whole marks of this
   * @param shortest no piece is cut shorter
   */
  StarterCuts(StarterJoints row, Length mark, Length shortest) {
    this.row = row;
    this.mark = mark.units();
    starter = row.starter().units();
    eave = row.eave().units();
    this.shortest = (int) Math.max(1, (shortest.units() + this.mark - 1) / this.mark);
    longest = (int) ((starter - 1) / this.mark);
  }

  /** The fewest, and among those the ones that keep joints furthest apart, then the longest; nothing where none do. */
  Optional<List<Cut>> fewest() {
    Optional<List<Cut>> best = apart(row.minimum().units(), Integer.MAX_VALUE);
    long low = row.minimum().units();
    long high = row.shingle().units() / 2;
    while (best.isPresent() && low < high) {
      long middle = low + (high - low + 1) / 2;
      Optional<List<Cut>> further = apart(middle, best.get().size());
      if (further.isPresent()) {
        best = further;
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return best;
  }

  /** At most so many pieces that keep joints so far apart. */
  private Optional<List<Cut>> apart(long distance, int most) {
    if (eave <= starter) {
      return Optional.of(List.of(new Cut(Length.ZERO, row.starter())));
    }
    BitSet[] seen = places();
    List<BitSet[]> steps = new ArrayList<>();
    steps.add(places());
    steps.get(0)[0].set(0);
    while (steps.size() <= most) {
      BitSet[] next = next(steps, seen, distance);
      if (Stream.of(next).allMatch(BitSet::isEmpty)) {
        return Optional.empty();
      }
      steps.add(next);
      for (int wholes = next.length - 1; wholes >= 0; wholes--) {
        int marks = next[wholes].length() - 1;
        if (marks >= 0 && at(wholes, marks) + starter >= eave) {
          return Optional.of(back(steps, wholes, marks));
        }
      }
    }
    return Optional.empty();
  }

  /** By how many whole pieces, then by how many marks. */
  private BitSet[] places() {
    return IntStream.rangeClosed(0, (int) (eave / starter))
        .mapToObj(wholes -> new BitSet())
        .toArray(BitSet[]::new);
  }

  private long at(int wholes, int marks) {
    return wholes * starter + marks * mark;
  }

  /** The joints that one more piece told leads to, and whole ones after it, where none before it came. */
  private BitSet[] next(List<BitSet[]> steps, BitSet[] seen, long distance) {
    BitSet[] before = steps.get(steps.size() - 1);
    BitSet[] next = places();
    for (int wholes = 0; wholes < next.length; wholes++) {
      BitSet joints = next[wholes];
      cut(before[wholes], joints, (int) ((eave - 1 - wholes * starter) / mark));
      if (wholes > 0) {
        joints.or(next[wholes - 1]);
      }
      if (wholes == 1 && steps.size() == 1) {
        joints.set(0);
      }
      joints.andNot(seen[wholes]);
      for (int marks = joints.nextSetBit(0); marks >= 0; marks = joints.nextSetBit(marks + 1)) {
        joints.set(marks, isClear(at(wholes, marks), distance));
      }
      seen[wholes].or(joints);
    }
    return next;
  }

  /** Every number of marks, up to the last on the eave, that a cut piece behind one of these comes to. */
  private void cut(BitSet before, BitSet next, int last) {
    for (int from = before.nextSetBit(0); from >= 0; ) {
      int past = before.nextClearBit(from);
      int to = Math.min(past - 1 + longest, last);
      if (shortest <= longest && from + shortest <= to) {
        next.set(from + shortest, to + 1);
      }
      from = before.nextSetBit(past);
    }
  }

  private boolean isClear(long at, long distance) {
    long shingle = row.shingle().units();
    long past = Math.floorMod(at - row.shingleCut().units(), shingle);
    return at < eave && Math.min(past, shingle - past) >= distance;
  }

  /** The pieces that led to a joint, from the first on. */
  private List<Cut> back(List<BitSet[]> steps, int wholes, int marks) {
    Deque<Cut> cuts = new ArrayDeque<>();
    int step = steps.size() - 1;
    while (step > 0) {
      if (step == 1 && wholes == 1 && marks == 0) {
        cuts.addFirst(new Cut(Length.ZERO, row.starter()));
        step = 0;
      } else if (wholes > 0 && steps.get(step)[wholes - 1].get(marks)) {
        wholes--;
      } else {
        BitSet before = steps.get(--step)[wholes];
        int from = before.nextSetBit(Math.max(0, marks - longest));
        cuts.addFirst(new Cut(new Length(at(wholes, from)), new Length((marks - from) * mark)));
        marks = from;
      }
    }
    return List.copyOf(cuts);
  }
}
