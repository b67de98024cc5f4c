package squaresheet.courses;

/** Where joints stand, seen from the hand that is laid first: to the right of it x grows. */
final class Joiner {

  private final Bed bed;
  private final Stagger stagger;
  private final Interval interval;
  private final long height;
  private final boolean mirrored;
  private final long begin;

  Joiner(Bed bed, Pattern pattern) {
    this(bed, pattern, pattern.stagger());
  }

  Joiner(Bed bed, Pattern pattern, Stagger stagger) {
    this.bed = bed;
    this.stagger = stagger;
    this.interval = pattern.interval();
    this.height = pattern.shingle().height().units();
    this.mirrored = pattern.settings().joints().from() == LayoutSettings.Hand.RIGHT;
    this.begin = mirrored ? -bed.corner(false) : bed.corner(true);
  }

  boolean isMirrored() {
    return mirrored;
  }

  /** The place of a joint of course {@code course}; the others stand whole shingles from it. */
  long joint(int course) {
    return begin + stagger.firstPiece(course).units();
  }

  /** The body of course {@code course}, 0 being the lowest. */
  Band band(int course) {
    long shares = interval.courses();
    long low = bed.start() * shares + course * interval.laid().units();
    return new Band(low, low + height * shares, shares);
  }

  /** The course whose lower edge lies at or next below a height. */
  int courseAt(long height) {
    return Math.toIntExact(Math.max(
        0, Whole.down(height - bed.start(), interval.courses(), interval.laid().units())));
  }
}
