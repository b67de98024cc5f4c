package squaresheet.courses;

import java.util.List;
import java.util.Optional;
import squaresheet.units.Graduation;
import squaresheet.units.Length;

/**
 * How a crew lays: what the foreman decides, product limits apart. Every default is <em>common practice, no source</em>
 * unless it says otherwise.
 *
 * @param overhang how far shingles reach past the edges
 * @param spacing how lines are spaced and rounded
 * @param joints how joints are staggered
 * @param starting how the starter is begun
 * @param counting how pieces are counted
 */
public record LayoutSettings(
    Overhang overhang, Spacing spacing, Joints joints, Starting starting, Counting counting) {

  /** What a careful foreman does unless told otherwise. */
  public static LayoutSettings standard() {
    return new LayoutSettings(
        Overhang.standard(),
        Spacing.standard(),
        Joints.standard(),
        Starting.standard(),
        Counting.standard());
  }

  /**
   * How far shingles reach past the edges.
   *
   * @param eave past the eave, down the slope
   * @param rake past a rake, along the course
   * @param valley past a valley line, along the course; 0 where shingles are cut at the line
   * @param limits the least and most past the eave
   */
  public record Overhang(Length eave, Length rake, Length valley, EaveWander.Limits limits) {

    public Overhang {
      refuseNegative("overhang past the eave", eave);
      refuseNegative("overhang past a rake", rake);
      refuseNegative("lap past a valley", valley);
    }

    /** 3/4 in past the eave, 1/2 in past rakes, cut at the valley line. */
    public static Overhang standard() {
      return new Overhang(
          Length.ofInches(3, 4), Length.ofInches(1, 2), Length.ZERO, EaveWander.Limits.standard());
    }

    /** The same with another overhang past the eave. */
    public Overhang withEave(Length past) {
      return new Overhang(past, rake, valley, limits);
    }

    /** The same with another overhang past rakes. */
    public Overhang withRake(Length past) {
      return new Overhang(eave, past, valley, limits);
    }

    /** The same with another lap past valleys. */
    public Overhang withValley(Length past) {
      return new Overhang(eave, rake, past, limits);
    }
  }

  /**
   * How lines are spaced and rounded.
   *
   * @param everyCourses how many courses lie between two lines, 1 or more
   * @param exposure what is to show of each course; empty for all that the product allows
   * @param interval the distance between two lines as the crew has it; empty to round down
   * @param rounding the mark that the interval is rounded down to
   * @param tape the finest mark that is read and printed
   * @param taperShows the difference per line, between two stations, that can be seen from the ground
   */
  public record Spacing(
      int everyCourses,
      Optional<Length> exposure,
      Optional<Length> interval,
      Graduation rounding,
      Graduation tape,
      Length taperShows) {

    /** A line every five courses, not rounded past the 1/16 in of the tape; 1/4 in a line can be seen. */
    public static Spacing standard() {
      return new Spacing(
          5,
          Optional.empty(),
          Optional.empty(),
          Graduation.SIXTEENTH,
          Graduation.SIXTEENTH,
          Length.ofInches(1, 4));
    }

    /** The same with a line every so many courses, its interval rounded down to a mark. */
    public Spacing every(int courses, Graduation mark) {
      return new Spacing(courses, exposure, interval, mark, tape, taperShows);
    }

    /** The same with this much of each course to show. */
    public Spacing withExposure(Length shown) {
      return new Spacing(everyCourses, Optional.of(shown), interval, rounding, tape, taperShows);
    }

    /** The same with the interval as the crew has it. */
    public Spacing withInterval(Length laid) {
      return new Spacing(everyCourses, exposure, Optional.of(laid), rounding, tape, taperShows);
    }

    /** The same on another tape, to whose marks the interval is rounded too. */
    public Spacing on(Graduation marks) {
      return new Spacing(everyCourses, exposure, interval, marks, marks, taperShows);
    }
  }

  /** Which end of the courses is laid first. */
  public enum Hand {
    /** From the left rake or the left end of the eave. */
    LEFT,
    /** From the right. */
    RIGHT
  }

  /**
   * How joints are staggered.
   *
   * @param firstPieces the first piece of each course in the repeat; empty for a stair by the product's least offset
   * @param isSearched whether first pieces are looked for that leave the fewest slivers on the roof; those given count
   *     where none are better
   * @param nextButOne the least distance of joints from those two courses up or down; 0 where that does not matter
   * @param sliver a piece narrower than this at a rake is a sliver
   * @param from the end that courses begin at
   */
  public record Joints(
      List<Length> firstPieces, boolean isSearched, Length nextButOne, Length sliver, Hand from) {

    public Joints {
      firstPieces = List.copyOf(firstPieces);
      refuseNegative("width of a sliver", sliver);
      refuseNegative("distance of joints two courses apart", nextButOne);
    }

    /** A stair from the left, two courses apart anything; under 3 in is a sliver. */
    public static Joints standard() {
      return new Joints(List.of(), false, Length.ZERO, Length.ofInches(3), Hand.LEFT);
    }

    /** The same with these first pieces. */
    public Joints withFirstPieces(List<Length> pieces) {
      return new Joints(pieces, isSearched, nextButOne, sliver, from);
    }

    /** The same with first pieces looked for. */
    public Joints searched() {
      return new Joints(firstPieces, true, nextButOne, sliver, from);
    }

    /** The same with this distance two courses apart. */
    public Joints withNextButOne(Length least) {
      return new Joints(firstPieces, isSearched, least, sliver, from);
    }

    /** The same begun from the other or the same end. */
    public Joints from(Hand hand) {
      return new Joints(firstPieces, isSearched, nextButOne, sliver, hand);
    }
  }

  /**
   * How the starter is begun.
   *
   * @param firstCut the first piece; more than 0
   * @param onRakes whether starter runs up the rakes too
   * @param minimum the least distance between a starter joint and a joint of the first course
   * @param nailClear how far nails keep from a joint below
   */
  public record Starting(Length firstCut, boolean onRakes, Length minimum, Length nailClear) {

    public Starting {
      if (!firstCut.isPositive()) {
        throw new IllegalArgumentException(
            "the first starter piece must be more than 0, but is " + firstCut);
      }
    }

    /** Begun with a 7 in piece along eaves and rakes, joints 7 in apart, nails 2 in clear of a joint. */
    public static Starting standard() {
      return new Starting(StarterJoints.USUAL, true, StarterJoints.USUAL, Length.ofInches(2));
    }
  }

  /** Whether the other end of a cut shingle is used. */
  public enum Reuse {
    /** Every cut piece uses up a shingle. */
    NONE,
    /** Both ends are used, on one plane. */
    PLANE,
    /** Both ends are used, anywhere on the roof. */
    ROOF
  }

  /**
   * How pieces are counted.
   *
   * @param reuse whether the other end of a cut shingle is used
   * @param capCover how far the cap covers the courses below a ridge; a course that would lie wholly under it is not laid
   * @param isAsLined whether waste is reckoned at the exposure that the lines come to, rather than the one aimed at: so that
   *     one and the waste, times the area, over what a shingle covers is always the number of shingles
   */
  public record Counting(Reuse reuse, Length capCover, boolean isAsLined) {

    public Counting {
      refuseNegative("the cap's cover", capCover);
    }

    /** Both ends used on one plane, no allowance for the cap. */
    public static Counting standard() {
      return new Counting(Reuse.PLANE, Length.ZERO, false);
    }
  }

  /** The same with other overhangs. */
  public LayoutSettings with(Overhang other) {
    return new LayoutSettings(other, spacing, joints, starting, counting);
  }

  /** The same with other spacing. */
  public LayoutSettings with(Spacing other) {
    return new LayoutSettings(overhang, other, joints, starting, counting);
  }

  /** The same with other joints. */
  public LayoutSettings with(Joints other) {
    return new LayoutSettings(overhang, spacing, other, starting, counting);
  }

  /** The same with the starter begun otherwise. */
  public LayoutSettings with(Starting other) {
    return new LayoutSettings(overhang, spacing, joints, other, counting);
  }

  /** The same counted otherwise. */
  public LayoutSettings with(Counting other) {
    return new LayoutSettings(overhang, spacing, joints, starting, other);
  }

  private static void refuseNegative(String what, Length length) {
    if (length.units() < 0) {
      throw new IllegalArgumentException(what + " must be 0 or more, but is " + length);
    }
  }
}
