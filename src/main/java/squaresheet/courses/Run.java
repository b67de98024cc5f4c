package squaresheet.courses;

import squaresheet.geometry.Fraction;

/**
 * One unbroken stretch of a course, from the first shingle's end to the last's, overhangs in.
 *
 * @param left its left end
 * @param right its right end
 * @param leftAtRake whether the left end is that of a rake
 * @param rightAtRake whether the right end is that of a rake
 */
record Run(Fraction left, Fraction right, boolean leftAtRake, boolean rightAtRake) {

  Run mirrored() {
    return new Run(right.negated(), left.negated(), rightAtRake, leftAtRake);
  }
}
