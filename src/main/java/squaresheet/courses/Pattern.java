package squaresheet.courses;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
    Graduation tape = settings.spacing().tape();
    Stagger stagger = stagger(shingle, settings.joints(), tape, findings);
    checkOverhang(settings.overhang(), tape, findings);
    return new Pattern(shingle, starter, settings, interval, stagger, List.copyOf(findings));
  }

  /** The height of the starter as laid; one cut from a shingle, its exposure taken off, where none was chosen. */
  Length starterHeight() {
    return starter
        .map(Starter::laidHeight)
        .orElseGet(() -> shingle.height().minus(shingle.exposure()));
  }

  /** The exposure that waste is reckoned at: the one aimed at, or the one that the lines come to. */
  Interval cover() {
    if (settings.counting().isAsLined()) {
      return interval;
    }
    Length most = shingle.exposure();
    return Interval.exact(1, aimedAt(most, settings.spacing()));
  }

  private static Length aimedAt(Length most, LayoutSettings.Spacing spacing) {
    Length wanted = spacing.exposure().orElse(most);
    return wanted.compareTo(most) > 0 || !wanted.isPositive() ? most : wanted;
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
    Interval rounded = rounded(every, most, aimedAt(most, spacing), spacing.rounding());
    Optional<Length> typed = spacing.interval();
    if (typed.isEmpty()) {
      return rounded;
    }
    try {
      return new Interval(every, most, typed.orElseThrow());
    } catch (IllegalArgumentException refusal) {
      findings.add(said(
          LayoutFindings.STRETCHED,
          "interval",
          stretched(every, most, typed.orElseThrow(), spacing.tape())));
      return rounded;
    }
  }

  private static String stretched(int every, Length most, Length typed, Graduation tape) {
    if (every < 1 || !typed.isPositive()) {
      return String.format(
          "lines must stand more than 0 apart, every 1 or more courses, but stand %s apart every %d",
          typed.show(tape), every);
    }
    double exposure = typed.toInches() / every;
    return String.format(
        "lines every %d courses may stand at most %s apart, but %s apart stretches the exposure to %s, past the product's"
            + " %s",
        every,
        most.times(every).show(tape),
        typed.show(tape),
        tape.isImperial()
            ? String.format(java.util.Locale.ROOT, "%.3f in", exposure)
            : String.format(java.util.Locale.ROOT, "%.1f mm", exposure * 25.4),
        most.show(tape));
  }

  private static Interval rounded(int every, Length most, Length shown, Graduation mark) {
    Length whole = shown.times(every);
    Length down = whole.roundedTo(mark, Direction.DOWN);
    return new Interval(every, most, down.isPositive() ? down : whole);
  }

  private static Stagger stagger(
      Shingle shingle, LayoutSettings.Joints joints, Graduation tape, List<Finding> findings) {
    Length minimum = shingle.jointOffset();
    if (joints.firstPieces().isEmpty()) {
      return usual(shingle, joints.sliver(), tape);
    }
    try {
      Stagger stagger = new Stagger(shingle.length(), joints.firstPieces(), minimum);
      for (int course : stagger.violations()) {
        findings.add(tooNear(stagger, course, tape));
      }
      stagger.nextButOneUnder(joints.nextButOne()).stream()
          .map(course -> nextButOne(stagger, course, joints.nextButOne(), tape))
          .forEach(findings::add);
      return stagger;
    } catch (IllegalArgumentException refusal) {
      findings.add(said(
          LayoutFindings.FIRST_PIECE,
          "first pieces",
          String.format(
              "first pieces must be more than 0 and at most a whole shingle of %s, but are %s",
              shingle.length().showOnTape(tape),
              joints.firstPieces().stream()
                  .map(piece -> piece.showOnTape(tape))
                  .collect(Collectors.joining(", ")))));
      return usual(shingle, joints.sliver(), tape);
    }
  }

  /**
   * A stair by the product's least offset, no first piece under it or under a sliver; every cut on a mark of the tape, so that
   * what is printed stands as far apart as what is printed that it must.
   */
  private static Stagger usual(Shingle shingle, Length sliver, Graduation tape) {
    Length offset = shingle.jointOffset();
    Length step = (offset.isPositive() ? offset : Stagger.USUAL).roundedTo(tape, Direction.UP);
    Length shortest = Stream.of(offset, sliver, tape.mark())
        .max(Length::compareTo)
        .orElseThrow()
        .roundedTo(tape, Direction.UP);
    return Stagger.stair(shingle.length(), step, shortest, offset).cutDownTo(tape);
  }

  private static Finding nextButOne(Stagger stagger, int course, Length least, Graduation tape) {
    return said(
        LayoutFindings.NEXT_BUT_ONE,
        "first pieces",
        String.format(
            "joints of course %d must be at least %s from those two courses up, but are %s",
            course + 1, least.showOnTape(tape), stagger.offsetNextButOne(course).showOnTape(tape)));
  }

  private static Finding tooNear(Stagger stagger, int course, Graduation tape) {
    if (stagger.repeat() == 1) {
      return said(
          LayoutFindings.STAGGER,
          "first pieces",
          "first pieces must differ from course to course, but all are "
              + stagger.firstPiece(0).showOnTape(tape));
    }
    int next = (course + 1) % stagger.repeat();
    return said(
        LayoutFindings.STAGGER,
        "first pieces",
        String.format(
            "joints of courses %d and %s must be at least %s apart, but are %s apart",
            course + 1,
            next > course ? String.valueOf(next + 1) : (next + 1) + " of the next repeat",
            stagger.minimum().showOnTape(tape),
            stagger.offset(course).showOnTape(tape)));
  }

  private static void checkOverhang(
      LayoutSettings.Overhang overhang, Graduation tape, List<Finding> findings) {
    if (!overhang.limits().allow(overhang.eave())) {
      findings.add(said(
          LayoutFindings.OVERHANG,
          "eave overhang",
          String.format(
              "overhang at the eave must be %s to %s, but is %s",
              overhang.limits().least().showOnTape(tape),
              overhang.limits().most().showOnTape(tape),
              overhang.eave().showOnTape(tape))));
    }
  }

  private static Finding said(CheckInfo card, String property, String says) {
    return new Finding(card, new Where.OfItem("layout", property), says);
  }
}
