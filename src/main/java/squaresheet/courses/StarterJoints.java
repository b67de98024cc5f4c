package squaresheet.courses;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import squaresheet.units.Length;

/**
 * The joints of the starter under those of the first course, along one eave. Positions run from the end of the first piece's
 * side; they are exact, so a drift of a hundredth of an inch a piece is seen where it ends.
 *
 * @param starter the length of a starter piece; more than 0
 * @param starterCut the length of the first starter piece; more than 0, at most a whole piece
 * @param shingle the length of a shingle; more than 0
 * @param shingleCut the length of the first shingle of the first course; more than 0, at most a whole shingle
 * @param eave the length to cover, overhangs in
 * @param minimum the least distance between a starter joint and a joint of the first course
 */
public record StarterJoints(
    Length starter,
    Length starterCut,
    Length shingle,
    Length shingleCut,
    Length eave,
    Length minimum) {

  /** The least distance crews keep; <em>common practice, no source</em>: start it at 7 in or more. */
  public static final Length USUAL = Length.ofInches(7);

  /**
   * One joint of the starter.
   *
   * @param number 1 for the joint after the first piece
   * @param at where it stands along the eave
   * @param distance to the nearest joint of the first course
   */
  public record Joint(int number, Length at, Length distance) {}

  /**
   * A stretch of the eave where no nail of the first course may go, because a starter joint lies under it.
   *
   * @param from where it begins along the eave
   * @param to where it ends
   * @param shingle which shingle of the first course it lies under, 1 being the first piece; where it spans a joint, the left
   * @param into from the start of that shingle to the starter joint
   */
  public record KeepAway(Length from, Length to, long shingle, Length into) {}

  /**
   * A starter piece cut shorter than a whole one, so that the joints after it come clear.
   *
   * @param from where it begins along the eave; the first one at 0
   * @param piece how long it is cut
   */
  public record Cut(Length from, Length piece) {}

  public StarterJoints {
    refuse("a starter piece", starter, starter);
    refuse("the first starter piece", starterCut, starter);
    refuse("a shingle", shingle, shingle);
    refuse("the first shingle", shingleCut, shingle);
  }

  private static void refuse(String what, Length cut, Length whole) {
    if (!cut.isPositive() || cut.compareTo(whole) > 0) {
      throw new IllegalArgumentException(
          what + " must be more than 0 and at most " + whole + " long, but is " + cut);
    }
  }

  /** Every joint of the starter, from the first piece on. */
  public List<Joint> joints() {
    List<Joint> joints = new ArrayList<>();
    for (Length at = starterCut; at.compareTo(eave) < 0; at = at.plus(starter)) {
      joints.add(new Joint(joints.size() + 1, at, distance(at)));
    }
    return List.copyOf(joints);
  }

  private Length distance(Length at) {
    long past = Math.floorMod(at.units() - shingleCut.units(), shingle.units());
    return new Length(Math.min(past, shingle.units() - past));
  }

  /** How far the joints drift past each other with every piece; nothing when both pieces are of one length. */
  public Length driftPerPiece() {
    return shingle.minus(starter).abs();
  }

  /** Every starter joint nearer to a joint of the first course than the minimum. */
  public List<Joint> clashes() {
    return joints().stream().filter(this::isClash).toList();
  }

  /** The first of them along the eave. */
  public Optional<Joint> firstClash() {
    return joints().stream().filter(this::isClash).findFirst();
  }

  private boolean isClash(Joint joint) {
    return joint.distance().compareTo(minimum) < 0;
  }

  /** The least distance anywhere along the eave; half a shingle where the starter has no joint. */
  public Length least() {
    return joints().stream()
        .map(Joint::distance)
        .min(Length::compareTo)
        .orElse(new Length(shingle.units() / 2));
  }

  /** The same eave with another first starter piece. */
  public StarterJoints withStarterCut(Length cut) {
    return new StarterJoints(starter, cut, shingle, shingleCut, eave, minimum);
  }

  /**
   * The first cut of the starter, on the given marks and not under {@code shortest}, that avoids a clash or puts the first
   * one off longest; among equals the one that keeps joints furthest apart, then the longest piece.
   */
  public StarterJoints withBestCut(Length mark, Length shortest) {
    StarterJoints best = withStarterCut(starter);
    for (Length cut = lastMark(mark);
        cut.isPositive() && cut.compareTo(shortest) >= 0;
        cut = cut.minus(mark)) {
      StarterJoints other = withStarterCut(cut);
      best = other.isBetterThan(best) ? other : best;
    }
    return best;
  }

  /**
   * The fewest pieces to tell a crew, the first one in any case and those that are cut, so that no starter joint clashes: after
   * each, whole pieces follow up to the next. Among those the ones that keep joints furthest apart. Nothing where no pieces
   * on the given marks and not under {@code shortest} keep every joint clear.
   */
  public Optional<List<Cut>> cuts(Length mark, Length shortest) {
    return new StarterCuts(this, mark, shortest).fewest();
  }

  private Length lastMark(Length mark) {
    return new Length(starter.units() / mark.units() * mark.units());
  }

  private boolean isBetterThan(StarterJoints other) {
    int later = clearUntil().compareTo(other.clearUntil());
    return later > 0 || (later == 0 && least().compareTo(other.least()) > 0);
  }

  /** How far along the eave the joints are clear of each other; the whole eave where no joint clashes. */
  public Length clearUntil() {
    return firstClash().map(Joint::at).orElse(eave);
  }

  /** Where nails of the first course keep away from starter joints, {@code clear} to either side. */
  public List<KeepAway> keepAway(Length clear) {
    return joints().stream().map(joint -> keepAway(joint, clear)).toList();
  }

  private KeepAway keepAway(Joint joint, Length clear) {
    long before =
        Math.floorDiv(joint.at().units() - shingleCut.units() + shingle.units(), shingle.units());
    Length start = before == 0 ? Length.ZERO : shingleCut.plus(shingle.times(before - 1));
    return new KeepAway(
        joint.at().minus(clear), joint.at().plus(clear), before + 1, joint.at().minus(start));
  }
}
