package squaresheet.courses;

import java.util.ArrayList;
import java.util.List;
import squaresheet.geometry.Fraction;
import squaresheet.geometry.Outline;
import squaresheet.geometry.Point;
import squaresheet.geometry.Region;
import squaresheet.geometry.Span;
import squaresheet.roof.EdgeKind;
import squaresheet.roof.Plane;
import squaresheet.roof.Side;

/**
 * What the courses of a plane are laid on: the plane, and past its edges the overhangs. Past rakes and valleys shingles
 * reach sideways, along the course; past the lowest eave downward, the sides beside it running on in their own direction.
 */
final class Bed {

  private final Region region;
  private final List<Flank> flanks;
  private final boolean isSimple;
  private final long bottom;
  private final long top;
  private final long overhang;

  private Bed(Region region, List<Flank> flanks, long overhang) {
    this.region = region;
    this.flanks = flanks;
    this.isSimple = isSimple(region.outline());
    this.bottom = region.outline().bottom().units();
    this.top = region.outline().top().units();
    this.overhang = overhang;
  }

  static Bed of(Plane plane, LayoutSettings.Overhang past) {
    long bottom = plane.outline().bottom().units();
    boolean onEave = plane.sides(EdgeKind.EAVE).stream().anyMatch(side -> low(side) == bottom);
    long overhang = onEave ? past.eave().units() : 0;
    List<Flank> flanks = new ArrayList<>();
    for (Side side : plane.sides()) {
      if (!side.up().isZero()) {
        boolean runsOn = low(side) == bottom && side.kind() != EdgeKind.EAVE;
        flanks.add(flank(side, past, runsOn ? bottom - overhang : low(side)));
      }
    }
    return new Bed(plane.region(), List.copyOf(flanks), overhang);
  }

  private static long low(Side side) {
    return Math.min(side.from().y().units(), side.to().y().units());
  }

  /** Corners run counter-clockwise, so a side that goes down has the plane on its right. */
  private static Flank flank(Side side, LayoutSettings.Overhang past, long from) {
    boolean down = side.to().y().compareTo(side.from().y()) < 0;
    Point low = down ? side.to() : side.from();
    Point high = down ? side.from() : side.to();
    long reach =
        switch (side.kind()) {
          case RAKE -> past.rake().units();
          case VALLEY -> past.valley().units();
          case EAVE, RIDGE, HIP, SIDEWALL, HEADWALL, PITCH_BREAK, OPEN -> 0;
        };
    return new Flank(
        low.x().units(),
        low.y().units(),
        high.x().units(),
        high.y().units(),
        from,
        down,
        reach,
        side.kind() == EdgeKind.RAKE);
  }

  /** Whether every level line meets the outline in one stretch: it then goes up on one side and down on the other, once. */
  private static boolean isSimple(Outline outline) {
    int turns = 0;
    int before = 0;
    int first = 0;
    for (int side = 0; side < outline.corners().size(); side++) {
      int way = outline.corner(side + 1).y().compareTo(outline.corner(side).y());
      if (way != 0) {
        turns += before != 0 && way != before ? 1 : 0;
        first = first == 0 ? way : first;
        before = way;
      }
    }
    return turns + (before == first ? 0 : 1) <= 2;
  }

  /** The height of the lower edge of the first course. */
  long start() {
    return bottom - overhang;
  }

  long top() {
    return top;
  }

  /** How far the first course hangs over; nothing where the lowest side is no eave. */
  long overhang() {
    return overhang;
  }

  /** Twice the area of the plane, placed openings out, in square units. */
  long doubledArea() {
    return region.doubledArea();
  }

  /** The outermost place of the lowest corner on one hand, past a rake that rises from it. */
  long corner(boolean left) {
    long corner = region.outline().corners().stream()
        .filter(at -> at.y().units() == bottom)
        .mapToLong(at -> left ? -at.x().units() : at.x().units())
        .max()
        .orElseThrow();
    long past = flanks.stream()
        .filter(flank -> flank.isRake() && flank.isLeft() == left && flank.lowY() == bottom)
        .mapToLong(Flank::past)
        .max()
        .orElse(0);
    return left ? -corner - past : corner + past;
  }

  /** The runs of a course whose shingles lie in the band, from left to right. */
  List<Run> runs(Band course) {
    Band band =
        new Band(course.low(), Math.min(course.high(), top * course.shares()), course.shares());
    List<Flank> beside = new ArrayList<>();
    for (Flank flank : flanks) {
      if (flank.isIn(band)) {
        beside.add(flank);
      }
    }
    if (isSimple && !isBroken(band)) {
      return List.of(between(beside, band));
    }
    return region.spansOver(band.bottom(), band.top()).stream()
        .map(span -> grown(span, beside, band))
        .toList();
  }

  private boolean isBroken(Band band) {
    for (Outline hole : region.holes()) {
      if (band.meets(hole.bottom().units(), hole.top().units())) {
        return true;
      }
    }
    return false;
  }

  private static Run between(List<Flank> flanks, Band band) {
    Reaching left = new Reaching(true);
    Reaching right = new Reaching(false);
    flanks.forEach(flank -> (flank.isLeft() ? left : right).reach(flank, flank.outermost(band)));
    return new Run(left.place(), right.place(), left.isRake(), right.isRake());
  }

  private static Run grown(Span span, List<Flank> flanks, Band band) {
    Reaching left = new Reaching(true, span.left());
    Reaching right = new Reaching(false, span.right());
    for (Flank flank : flanks) {
      if (isOn(flank.proper().bare(band), span)) {
        (flank.isLeft() ? left : right).reach(flank, flank.outermost(band));
      }
    }
    return new Run(left.place(), right.place(), left.isRake(), right.isRake());
  }

  private static boolean isOn(Fraction place, Span span) {
    return place.compareTo(span.left()) >= 0 && place.compareTo(span.right()) <= 0;
  }
}
