package squaresheet.courses;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import squaresheet.units.Direction;
import squaresheet.units.Graduation;
import squaresheet.units.Length;

/**
 * How far the joints of one course stand beside those of the next: the first piece of each course in a repeat, which then
 * begins again.
 *
 * @param piece the length of a shingle; more than 0
 * @param firstPieces the first piece of each course, from the lowest; at least one, each more than 0 and at most a whole
 *     shingle
 * @param minimum the least offset between joints of neighbouring courses
 */
public record Stagger(Length piece, List<Length> firstPieces, Length minimum) {

  /** Under this no stagger is accepted, whatever a product's row says; <em>common practice, no source</em>. */
  public static final Length FLOOR = Length.ofInches(4);

  /** What a product without a stated minimum gets; <em>common practice, no source</em>. */
  public static final Length USUAL = Length.ofInches(6);

  public Stagger {
    firstPieces = List.copyOf(firstPieces);
    if (!piece.isPositive()) {
      throw new IllegalArgumentException("a shingle must be longer than 0, but is " + piece);
    }
    if (firstPieces.isEmpty()) {
      throw new IllegalArgumentException("a stagger must have a first piece, but has none");
    }
    for (Length first : firstPieces) {
      refuseOutside(piece, first);
    }
  }

  private static void refuseOutside(Length piece, Length first) {
    if (!first.isPositive() || first.compareTo(piece) > 0) {
      throw new IllegalArgumentException(String.format(
          "a first piece must be more than 0 and at most a whole shingle of %s, but is %s",
          piece, first));
    }
  }

  /**
   * A stair: a whole shingle, then each course's first piece shorter by {@code step}, until the next would be shorter
   * than {@code shortest}; then again.
   */
  public static Stagger stair(Length piece, Length step, Length shortest, Length minimum) {
    if (!step.isPositive()) {
      throw new IllegalArgumentException(
          "the step of a stagger must be more than 0, but is " + step);
    }
    List<Length> cuts = new ArrayList<>(List.of(piece));
    for (Length next = piece.minus(step);
        next.isPositive() && next.compareTo(shortest) >= 0;
        next = next.minus(step)) {
      cuts.add(next);
    }
    return new Stagger(piece, cuts, minimum);
  }

  /** The same with every first piece but the whole ones cut down to a mark of the tape. */
  Stagger cutDownTo(Graduation tape) {
    List<Length> cuts = firstPieces.stream()
        .map(cut -> cut.equals(piece) ? cut : cut.roundedTo(tape, Direction.DOWN))
        .toList();
    return new Stagger(piece, cuts, minimum);
  }

  /** How many courses until the pattern begins again. */
  public int repeat() {
    return firstPieces.size();
  }

  /** The first piece of course {@code course}, 0 being the lowest. */
  public Length firstPiece(int course) {
    return firstPieces.get(course % repeat());
  }

  /** How far the joints of course {@code course} of the repeat stand from the next course's: 0 to half a shingle. */
  public Length offset(int course) {
    return between(course, course + 1);
  }

  /** How far the joints of course {@code course} stand from those two courses up: 0 to half a shingle. */
  public Length offsetNextButOne(int course) {
    return between(course, course + 2);
  }

  private Length between(int one, int other) {
    long apart = Math.floorMod(firstPiece(other).units() - firstPiece(one).units(), piece.units());
    return new Length(Math.min(apart, piece.units() - apart));
  }

  /** The courses of the repeat (0 being the lowest) whose joints stand too near the next course's. */
  public List<Integer> violations() {
    return IntStream.range(0, repeat())
        .filter(course -> offset(course).compareTo(minimum) < 0)
        .boxed()
        .toList();
  }

  /** The courses of the repeat (0 being the lowest) whose joints stand nearer than this to those two courses up. */
  public List<Integer> nextButOneUnder(Length least) {
    return IntStream.range(0, repeat())
        .filter(course -> offsetNextButOne(course).compareTo(least) < 0)
        .boxed()
        .toList();
  }

  /** The least offset between neighbouring courses. */
  public Length least() {
    return IntStream.range(0, repeat())
        .mapToObj(this::offset)
        .min(Length::compareTo)
        .orElseThrow();
  }

  /** The least offset between courses and the next but one. */
  public Length leastNextButOne() {
    return IntStream.range(0, repeat())
        .mapToObj(this::offsetNextButOne)
        .min(Length::compareTo)
        .orElseThrow();
  }

  /** The cut list for the crew: one line for each course of the repeat, the lowest first. */
  public List<String> cutList(Graduation tape) {
    return IntStream.range(0, repeat())
        .mapToObj(course -> "course " + (course + 1) + ": start with " + cut(course, tape))
        .toList();
  }

  private String cut(int course, Graduation tape) {
    return firstPiece(course).equals(piece)
        ? "a whole shingle"
        : firstPiece(course).showOnTape(tape);
  }
}
