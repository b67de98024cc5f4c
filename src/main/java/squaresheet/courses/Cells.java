package squaresheet.courses;

import squaresheet.geometry.Fraction;

/**
 * A run cut by joints into pieces: at most a left piece, full ones, and a right piece, or one piece with both ends cut.
 *
 * @param run the run
 * @param first the number of the first piece; piece i lies between joints i and i + 1
 * @param last the number of the last piece
 * @param joint the place of joint 0
 * @param piece the length of a piece
 */
record Cells(Run run, long first, long last, long joint, long piece) {

  static Cells of(Run run, long joint, long piece) {
    long first = Math.floorDiv(run.left().floor() - joint, piece);
    long last = -Math.floorDiv(joint - run.right().ceiling(), piece) - 1;
    return new Cells(run, first, last, joint, piece);
  }

  long count() {
    return last - first + 1;
  }

  boolean leftIsCut() {
    return !run.left().equals(Fraction.of(joint + first * piece));
  }

  boolean rightIsCut() {
    return !run.right().equals(Fraction.of(joint + (last + 1) * piece));
  }

  boolean isOneCutAtBothEnds() {
    return count() == 1 && leftIsCut() && rightIsCut();
  }

  long full() {
    return count() == 1
        ? leftIsCut() || rightIsCut() ? 0 : 1
        : count() - (leftIsCut() ? 1 : 0) - (rightIsCut() ? 1 : 0);
  }

  /** The width of the first piece. */
  Fraction leftWidth() {
    return run.right().min(Fraction.of(joint + (first + 1) * piece)).minus(run.left());
  }

  /** The width of the last piece. */
  Fraction rightWidth() {
    return run.right().minus(run.left().max(Fraction.of(joint + last * piece)));
  }
}
