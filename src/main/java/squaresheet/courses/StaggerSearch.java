package squaresheet.courses;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import squaresheet.units.Length;

/**
 * Looks for the first pieces that keep every minimum, leave the fewest slivers at rakes and take the fewest shingles: first
 * stairs of every step and start on a tape's marks, in repeats of two to twelve courses; then, from the best stair of each
 * repeat, one course after another is changed as long as that helps, which finds repeats that are no stair. Where the
 * courses run does not depend on their joints, so the runs are found once.
 */
final class StaggerSearch {

  private static final int SHORTEST_REPEAT = 2;
  private static final int LONGEST_REPEAT = 12;
  /** Courses looked at; what suits so many suits the rest of a large roof. */
  private static final int MOST_COURSES = 600;

  /** Fewest slivers, then fewest shingles, then joints furthest from those two courses up, then the shortest repeat. */
  private static final Comparator<Tried> BEST = Comparator.comparingLong(Tried::slivers)
      .thenComparingLong(Tried::shingles)
      .thenComparing(tried -> tried.stagger().leastNextButOne(), Comparator.reverseOrder())
      .thenComparing(tried -> tried.stagger().least(), Comparator.reverseOrder())
      .thenComparingInt(tried -> tried.stagger().repeat());

  private final Pattern pattern;
  private final List<Laying> layings;

  private record Tried(Stagger stagger, long slivers, long shingles) {}

  /** A plane and the runs of its courses. */
  private record Laying(CoursePlan plan, List<List<Run>> runs) {

    Tally tally(Stagger stagger, long piece, long sliver) {
      Joiner joiner = plan.joiner(stagger);
      Tally tally = new Tally(piece, sliver);
      for (int course = 0; course < runs.size(); course++) {
        for (Run run : runs.get(course)) {
          tally.add(run, joiner.joint(course));
        }
      }
      return tally;
    }
  }

  private StaggerSearch(Pattern pattern, List<Laying> layings) {
    this.pattern = pattern;
    this.layings = layings;
  }

  /** The search over planes, the same first pieces on all. */
  static StaggerSearch over(List<CoursePlan> plans, Pattern pattern) {
    List<Laying> layings = new ArrayList<>();
    int courses = 0;
    for (CoursePlan plan : plans) {
      if (courses < MOST_COURSES) {
        layings.add(new Laying(plan, plan.runs()));
        courses += plan.courses();
      }
    }
    return new StaggerSearch(pattern, layings);
  }

  /** The best of all; the pattern's own where nothing on these marks keeps the minimum or is better. */
  Stagger best(Length mark) {
    Map<Integer, Tried> byRepeat = new TreeMap<>();
    stairs(mark.units())
        .forEach(stair -> byRepeat.merge(stair.repeat(), tried(stair), StaggerSearch::better));
    Optional<Tried> found = byRepeat.values().stream()
        .map(stair -> changed(stair, mark.units()))
        .reduce(StaggerSearch::better);
    Tried own = tried(pattern.stagger());
    boolean kept = keeps(pattern.stagger());
    return found
        .map(best -> kept ? better(own, best) : best)
        .map(Tried::stagger)
        .orElse(pattern.stagger());
  }

  private static Tried better(Tried one, Tried other) {
    return BEST.compare(other, one) < 0 ? other : one;
  }

  private boolean keeps(Stagger stagger) {
    return stagger.violations().isEmpty()
        && stagger.nextButOneUnder(pattern.settings().joints().nextButOne()).isEmpty();
  }

  private List<Stagger> stairs(long mark) {
    long piece = pattern.shingle().length().units();
    List<Stagger> stairs = new ArrayList<>();
    for (long step = mark; step < piece; step += mark) {
      for (long first = piece; first > 0; first = (first - 1) / mark * mark) {
        for (int repeat = SHORTEST_REPEAT; repeat <= LONGEST_REPEAT; repeat++) {
          Stagger stair = stair(first, step, repeat);
          if (keeps(stair)) {
            stairs.add(stair);
          }
        }
      }
    }
    return stairs;
  }

  /** Each first piece shorter than the one below by the step, a whole shingle longer where nothing would be left. */
  private Stagger stair(long first, long step, int repeat) {
    long piece = pattern.shingle().length().units();
    return stagger(IntStream.range(0, repeat)
        .mapToObj(course -> new Length(1 + Math.floorMod(first - course * step - 1, piece)))
        .toList());
  }

  private Stagger stagger(List<Length> cuts) {
    return new Stagger(pattern.shingle().length(), cuts, pattern.shingle().jointOffset());
  }

  /** Changes the first piece of one course after another for as long as that is better. */
  private Tried changed(Tried start, long mark) {
    Tried best = start;
    Tried before;
    do {
      before = best;
      for (int course = 0; course < best.stagger().repeat(); course++) {
        best = changed(best, course, mark);
      }
    } while (BEST.compare(best, before) < 0);
    return best;
  }

  private Tried changed(Tried start, int course, long mark) {
    long piece = pattern.shingle().length().units();
    Tried best = start;
    for (long cut = piece; cut > 0; cut = (cut - 1) / mark * mark) {
      List<Length> cuts = new ArrayList<>(start.stagger().firstPieces());
      cuts.set(course, new Length(cut));
      Stagger other = stagger(cuts);
      if (keeps(other)) {
        best = better(best, tried(other));
      }
    }
    return best;
  }

  private Tried tried(Stagger stagger) {
    long piece = pattern.shingle().length().units();
    long sliver = pattern.settings().joints().sliver().units();
    List<Tally> tallies =
        layings.stream().map(laying -> laying.tally(stagger, piece, sliver)).toList();
    long slivers = tallies.stream().mapToLong(Tally::slivers).sum();
    return new Tried(stagger, slivers, shingles(tallies, piece));
  }

  private long shingles(List<Tally> tallies, long piece) {
    return switch (pattern.settings().counting().reuse()) {
      case NONE -> tallies.stream().mapToLong(tally -> tally.unpaired().used()).sum();
      case PLANE -> tallies.stream().mapToLong(tally -> tally.paired().used()).sum();
      case ROOF -> {
        Tally all = new Tally(piece, 0);
        tallies.forEach(all::add);
        yield all.paired().used();
      }
    };
  }
}
