package squaresheet.courses;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import squaresheet.finding.Finding;
import squaresheet.geometry.Fraction;
import squaresheet.product.Shingle;
import squaresheet.roof.EdgeKind;
import squaresheet.roof.Opening;
import squaresheet.roof.Plane;
import squaresheet.units.DerivedLength;
import squaresheet.units.Graduation;
import squaresheet.units.Length;
import squaresheet.units.Ratio;

/**
 * The courses of one plane: where its lines are snapped, how its joints fall, and how many pieces it takes, counted course by
 * course and exactly.
 */
public final class CoursePlan {

  private final Plane plane;
  private final Pattern pattern;
  private final Bed bed;
  private final Reach reach;
  private final Tally tally;
  private final List<EaveStarter> starters;
  private final Tally starterTally;
  private final Length starterRun;
  private final List<Finding> findings;

  private CoursePlan(Plane plane, Pattern pattern) {
    this.plane = plane;
    this.pattern = pattern;
    this.bed = Bed.of(plane, pattern.settings().overhang());
    this.reach = new Reach(covered(plane, pattern, bed), pattern.interval());
    this.tally = count(new Joiner(bed, pattern), reach.courses());
    StarterRow row = StarterRow.of(plane, pattern, bed);
    this.starters = row.eaves();
    this.starterTally = row.tally();
    this.starterRun = row.run();
    this.findings = new PlaneFindings(this).list();
  }

  static CoursePlan of(Plane plane, Pattern pattern) {
    return new CoursePlan(plane, pattern);
  }

  /** From the lower edge of the first course to the top, less what a ridge's cap covers; at least something. */
  private static Length covered(Plane plane, Pattern pattern, Bed bed) {
    Length whole = new Length(bed.top() - bed.start());
    boolean capped = plane.sides(EdgeKind.RIDGE).stream()
        .anyMatch(side -> Math.max(side.from().y().units(), side.to().y().units()) == bed.top());
    Length cover = capped ? pattern.settings().counting().capCover() : Length.ZERO;
    return cover.compareTo(whole) < 0 ? whole.minus(cover) : whole;
  }

  private Tally count(Joiner joiner, int courses) {
    Tally counted = new Tally(
        pattern.shingle().length().units(), pattern.settings().joints().sliver().units());
    for (int course = 0; course < courses; course++) {
      for (Run run : bed.runs(joiner.band(course))) {
        counted.add(joiner.isMirrored() ? run.mirrored() : run, joiner.joint(course));
      }
    }
    return counted;
  }

  /** The plane. */
  public Plane plane() {
    return plane;
  }

  /** Whether the plane is too flat for the shingle; it is laid out all the same. */
  public boolean isTooFlat() {
    return plane.pitch().compareTo(shingle().minimumSlope()) < 0;
  }

  /** The shingle it is covered with. */
  public Shingle shingle() {
    return pattern.shingle();
  }

  /** The settings it is laid out by. */
  public LayoutSettings settings() {
    return pattern.settings();
  }

  /** How many courses there are, and how they come out at the top. */
  public Reach reach() {
    return reach;
  }

  /** How many courses are laid. */
  public int courses() {
    return reach.courses();
  }

  /** The interval between snapped lines. */
  public Interval interval() {
    return pattern.interval();
  }

  /** How joints are staggered. */
  public Stagger stagger() {
    return pattern.stagger();
  }

  /** The lines, with marks at both ends of the eave. */
  public Lines lines() {
    return lines(Stations.of(plane));
  }

  /** The lines, with marks at these stations. */
  public Lines lines(List<Lines.Station> stations) {
    return Lines.of(
        pattern.shingle().height(),
        pattern.starterHeight(),
        new Length(bed.overhang()),
        pattern.interval(),
        pattern.settings().spacing().tape(),
        stations);
  }

  /** The cut list of the repeat, the lowest course first. */
  public List<String> cutList() {
    return stagger().cutList(tape());
  }

  /** The shingles, with the pairs found on this plane; none where no cut end is used again. */
  public Pieces pieces() {
    return reuse() == LayoutSettings.Reuse.NONE ? tally.unpaired() : tally.paired();
  }

  /** The shingles with no cut end used again. */
  public Pieces piecesWithoutReuse() {
    return tally.unpaired();
  }

  /** What the pieces cover over the net area, less one. */
  public Ratio waste() {
    return waste(pieces().used());
  }

  /** The same with no cut end used again. */
  public Ratio wasteWithoutReuse() {
    return waste(tally.unpaired().used());
  }

  private Ratio waste(long used) {
    return Waste.ofArea(used, pattern.cover(), shingle().length(), doubledNet());
  }

  /** Pieces narrower than a sliver that end at a rake. */
  public long slivers() {
    return tally.slivers();
  }

  /** The shingles that rounding the interval down costs; negative where it happens to save some. */
  public long shinglesForRounding() {
    Pattern full = pattern.with(Interval.exact(interval().courses(), shingle().exposure()));
    return pieces().used() - new CoursePlan(plane, full).pieces().used();
  }

  /** The starter along each eave. */
  public List<EaveStarter> starters() {
    return starters;
  }

  /** The starter along eaves and, where set, rakes. */
  public Strip starter() {
    Pieces pieces =
        reuse() == LayoutSettings.Reuse.NONE ? starterTally.unpaired() : starterTally.paired();
    return new Strip(pieces, pattern.starterLength(), starterRun);
  }

  /** What there is to say about this plane. */
  public List<Finding> findings() {
    return findings;
  }

  /** The courses as laid, for drawing: course {@code number}, 0 being the lowest. */
  public Course course(int number) {
    Joiner joiner = new Joiner(bed, pattern);
    Band band = joiner.band(number);
    List<Stretch> stretches = new ArrayList<>();
    for (Run run : bed.runs(band)) {
      stretches.add(stretch(run, joiner, number));
    }
    return new Course(
        number, band.bottom().toLength(), band.top().toLength(), List.copyOf(stretches));
  }

  private Stretch stretch(Run run, Joiner joiner, int number) {
    Run seen = joiner.isMirrored() ? run.mirrored() : run;
    Cells cells = Cells.of(seen, joiner.joint(number), shingle().length().units());
    List<DerivedLength> joints = IntStream.rangeClosed(1, Math.toIntExact(cells.count() - 1))
        .mapToObj(piece -> Fraction.of(cells.joint() + (cells.first() + piece) * cells.piece()))
        .map(joint -> joiner.isMirrored() ? joint.negated() : joint)
        .sorted()
        .map(Fraction::toLength)
        .toList();
    return new Stretch(run.left().toLength(), run.right().toLength(), joints);
  }

  /**
   * The stagger that breaks no minimum on this plane and leaves the fewest slivers, then takes the fewest shingles, among
   * stairs of every step and start and what single courses of them can be changed to.
   *
   * @param mark first pieces are whole numbers of this
   */
  public Stagger bestStagger(Graduation mark) {
    return StaggerSearch.over(List.of(this), pattern).best(mark.mark());
  }

  /** This plane with other first pieces. */
  public CoursePlan with(Stagger other) {
    return new CoursePlan(plane, pattern.with(other));
  }

  Tally tally() {
    return tally;
  }

  /** The runs of every course, seen from the hand that is laid first. */
  List<List<Run>> runs() {
    Joiner joiner = new Joiner(bed, pattern);
    return IntStream.range(0, reach.courses())
        .mapToObj(course -> bed.runs(joiner.band(course)).stream()
            .map(run -> joiner.isMirrored() ? run.mirrored() : run)
            .toList())
        .toList();
  }

  /** Where joints would stand with other first pieces. */
  Joiner joiner(Stagger other) {
    return new Joiner(bed, pattern, other);
  }

  Tally starterTally() {
    return starterTally;
  }

  /** Twice the net area, in square units. */
  BigInteger doubledNet() {
    long unplaced = plane.unplacedOpenings().stream()
        .map(Opening::outline)
        .mapToLong(outline -> outline.doubledArea())
        .sum();
    return BigInteger.valueOf(bed.doubledArea() - unplaced);
  }

  Graduation tape() {
    return settings().spacing().tape();
  }

  private LayoutSettings.Reuse reuse() {
    return settings().counting().reuse();
  }

  /**
   * One course as laid.
   *
   * @param number 0 is the lowest
   * @param bottom the lower edge of its shingles, up from the plane's origin
   * @param top their upper edge, before it is cut at the top of the plane
   * @param stretches its unbroken stretches
   */
  public record Course(
      int number, DerivedLength bottom, DerivedLength top, List<Stretch> stretches) {}

  /**
   * An unbroken stretch of a course.
   *
   * @param from its left end
   * @param to its right end
   * @param joints the joints in it, from left to right
   */
  public record Stretch(DerivedLength from, DerivedLength to, List<DerivedLength> joints) {}
}
