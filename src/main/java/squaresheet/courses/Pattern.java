package squaresheet.courses;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Where;
import squaresheet.product.Shingle;
import squaresheet.product.Starter;
import squaresheet.units.Direction;
import squaresheet.units.Graduation;
import squaresheet.units.Length;

/**
 * What is the same on every plane: the products, the interval between lines and the stagger, with bad settings replaced by
 * ones that can be laid, and said so.
 *
 * @param shingle the shingle
 * @param starter the starter, if one was chosen
 * @param settings the settings as given
 * @param interval the interval to be laid
 * @param stagger the stagger to be laid
 * @param findings what is wrong with the settings
 */
record Pattern(
    Shingle shingle,
    Optional<Starter> starter,
    LayoutSettings settings,
    Interval interval,
    Stagger stagger,
    List<Finding> findings) {

  static Pattern of(Shingle shingle, Optional<Starter> starter, LayoutSettings settings) {
    List<Finding> findings = new ArrayList<>();
    Interval interval = interval(shingle.exposure(), settings.spacing(), findings);
    Stagger stagger = stagger(shingle, settings.joints(), findings);
    checkOverhang(settings.overhang(), findings);
    return new Pattern(shingle, starter, settings, interval, stagger, List.copyOf(findings));
  }

  /** The height of the starter as laid; one cut from a shingle, its exposure taken off, where none was chosen. */
  Length starterHeight() {
    return starter
        .map(Starter::laidHeight)
        .orElseGet(() -> shingle.height().minus(shingle.exposure()));
  }

  /** The length of a starter piece. */
  Length starterLength() {
    return starter.map(Starter::length).orElseGet(shingle::length);
  }

  /** The same at another interval. */
  Pattern with(Interval other) {
    return new Pattern(shingle, starter, settings, other, stagger, findings);
  }

  /** The same with other first pieces. */
  Pattern with(Stagger other) {
    return new Pattern(shingle, starter, settings, interval, other, findings);
  }

  private static Interval interval(
      Length most, LayoutSettings.Spacing spacing, List<Finding> findings) {
    int every = spacing.everyCourses();
    Length wanted = spacing.exposure().orElse(most);
    Length shown = wanted.compareTo(most) > 0 || !wanted.isPositive() ? most : wanted;
    Interval rounded = rounded(every, most, shown, spacing.rounding());
    Optional<Length> typed = spacing.interval();
    if (typed.isEmpty()) {
      return rounded;
    }
    try {
      return new Interval(every, most, typed.orElseThrow());
    } catch (IllegalArgumentException refusal) {
      findings.add(said(LayoutFindings.STRETCHED, "interval", refusal.getMessage()));
      return rounded;
    }
  }

  private static Interval rounded(int every, Length most, Length shown, Graduation mark) {
    Length whole = shown.times(every);
    Length down = whole.roundedTo(mark, Direction.DOWN);
    return new Interval(every, most, down.isPositive() ? down : whole);
  }

  private static Stagger stagger(
      Shingle shingle, LayoutSettings.Joints joints, List<Finding> findings) {
    Length minimum = shingle.jointOffset();
    if (joints.firstPieces().isEmpty()) {
      return usual(shingle, joints.sliver());
    }
    try {
      Stagger stagger = new Stagger(shingle.length(), joints.firstPieces(), minimum);
      for (int course : stagger.violations()) {
        findings.add(tooNear(stagger, course));
      }
      return stagger;
    } catch (IllegalArgumentException refusal) {
      findings.add(said(LayoutFindings.FIRST_PIECE, "first pieces", refusal.getMessage()));
      return usual(shingle, joints.sliver());
    }
  }

  /** A stair by the product's least offset, no first piece under it or under a sliver. */
  private static Stagger usual(Shingle shingle, Length sliver) {
    Length offset = shingle.jointOffset();
    Length step = offset.isPositive() ? offset : Stagger.USUAL;
    Length shortest = offset.compareTo(sliver) > 0 ? offset : sliver;
    return Stagger.stair(shingle.length(), step, shortest, offset);
  }

  private static Finding tooNear(Stagger stagger, int course) {
    if (stagger.repeat() == 1) {
      return said(
          LayoutFindings.STAGGER,
          "first pieces",
          "first pieces must differ from course to course, but all are " + stagger.firstPiece(0));
    }
    int next = (course + 1) % stagger.repeat();
    return said(
        LayoutFindings.STAGGER,
        "first pieces",
        String.format(
            "joints of courses %d and %s must be at least %s apart, but are %s apart",
            course + 1,
            next > course ? String.valueOf(next + 1) : (next + 1) + " of the next repeat",
            stagger.minimum(),
            stagger.offset(course)));
  }

  private static void checkOverhang(LayoutSettings.Overhang overhang, List<Finding> findings) {
    if (!overhang.limits().allow(overhang.eave())) {
      findings.add(said(
          LayoutFindings.OVERHANG,
          "eave overhang",
          String.format(
              "overhang at the eave must be %s to %s, but is %s",
              overhang.limits().least(), overhang.limits().most(), overhang.eave())));
    }
  }

  private static Finding said(CheckInfo card, String property, String says) {
    return new Finding(card, new Where.OfItem("layout", property), says);
  }
}
