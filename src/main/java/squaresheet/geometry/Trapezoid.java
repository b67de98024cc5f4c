package squaresheet.geometry;

/**
 * A piece of a figure between two lines at which no side begins or ends within.
 *
 * @param bottom where it stands on the lower line
 * @param top where it meets the upper line
 * @param height from line to line, more than 0
 */
record Trapezoid(Span bottom, Span top, Fraction height) {

  /** From the leftmost to the rightmost corner. */
  Span extent() {
    return bottom.around(top);
  }

  Fraction doubledArea() {
    return bottom.width().plus(top.width()).times(height);
  }
}
