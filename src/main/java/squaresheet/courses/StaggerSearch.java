package squaresheet.courses;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import squaresheet.units.Length;

/**
 * Tries stairs of every step and start on a tape's marks, in repeats of two to seven courses, for the one that breaks no
 * minimum, leaves the fewest slivers at rakes and takes the fewest shingles. Where the courses run does not depend on their
 * joints, so the runs are found once.
 */
final class StaggerSearch {

  private static final int SHORTEST_REPEAT = 2;
  private static final int LONGEST_REPEAT = 7;

  private record Tried(Stagger stagger, long slivers, long shingles) {}

  /** Fewest slivers, then fewest shingles, then joints furthest from those two courses up, then the shortest repeat. */
  private static final Comparator<Tried> BEST = Comparator.comparingLong(Tried::slivers)
      .thenComparingLong(Tried::shingles)
      .thenComparing(tried -> tried.stagger().leastNextButOne(), Comparator.reverseOrder())
      .thenComparing(tried -> tried.stagger().least(), Comparator.reverseOrder())
      .thenComparingInt(tried -> tried.stagger().repeat());

  private final Bed bed;
  private final Pattern pattern;
  private final List<List<Run>> runs;

  StaggerSearch(Bed bed, Pattern pattern, int courses) {
    this.bed = bed;
    this.pattern = pattern;
    Joiner joiner = new Joiner(bed, pattern);
    this.runs = IntStream.range(0, courses)
        .mapToObj(course -> seen(bed.runs(joiner.band(course)), joiner))
        .toList();
  }

  private static List<Run> seen(List<Run> runs, Joiner joiner) {
    return joiner.isMirrored() ? runs.stream().map(Run::mirrored).toList() : runs;
  }

  /** The best of all; the pattern's own where no stair on these marks keeps the minimum. */
  Stagger best(Length mark) {
    Tried best = tried(pattern.stagger());
    boolean broken = !pattern.stagger().violations().isEmpty();
    for (Stagger stagger : candidates(mark)) {
      Tried other = tried(stagger);
      if (broken || BEST.compare(other, best) < 0) {
        best = other;
        broken = false;
      }
    }
    return best.stagger();
  }

  private List<Stagger> candidates(Length mark) {
    List<Stagger> candidates = new ArrayList<>();
    long piece = pattern.shingle().length().units();
    for (long step = mark.units(); 2 * step <= piece; step += mark.units()) {
      if (step >= pattern.shingle().jointOffset().units()) {
        addStairs(candidates, step, mark.units());
      }
    }
    return candidates;
  }

  private void addStairs(List<Stagger> candidates, long step, long mark) {
    long piece = pattern.shingle().length().units();
    for (long first = piece; first > 0; first = (first - 1) / mark * mark) {
      for (int repeat = SHORTEST_REPEAT; repeat <= LONGEST_REPEAT; repeat++) {
        Stagger stair = stair(first, step, repeat);
        if (stair.violations().isEmpty()) {
          candidates.add(stair);
        }
      }
    }
  }

  /** Each first piece shorter than the one below by the step, a whole shingle longer where nothing would be left. */
  private Stagger stair(long first, long step, int repeat) {
    long piece = pattern.shingle().length().units();
    List<Length> cuts = IntStream.range(0, repeat)
        .mapToObj(course -> new Length(1 + Math.floorMod(first - course * step - 1, piece)))
        .toList();
    return new Stagger(pattern.shingle().length(), cuts, pattern.shingle().jointOffset());
  }

  private Tried tried(Stagger stagger) {
    Joiner joiner = new Joiner(bed, pattern, stagger);
    Tally tally = new Tally(
        pattern.shingle().length().units(), pattern.settings().joints().sliver().units());
    for (int course = 0; course < runs.size(); course++) {
      for (Run run : runs.get(course)) {
        tally.add(run, joiner.joint(course));
      }
    }
    boolean alone = pattern.settings().counting().reuse() == LayoutSettings.Reuse.NONE;
    return new Tried(stagger, tally.slivers(), (alone ? tally.unpaired() : tally.paired()).used());
  }
}
