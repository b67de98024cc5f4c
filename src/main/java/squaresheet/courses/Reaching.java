package squaresheet.courses;

import squaresheet.geometry.Fraction;

/** The outermost place found so far on one hand, and whether it is a rake's. */
final class Reaching {

  private final boolean left;
  private Fraction place;
  private boolean rake;
  private boolean found;

  Reaching(boolean left) {
    this(left, Fraction.of(0));
    this.found = false;
  }

  Reaching(boolean left, Fraction place) {
    this.left = left;
    this.place = place;
    this.found = true;
  }

  void reach(Flank flank, Fraction at) {
    int further = found ? (left ? place.compareTo(at) : at.compareTo(place)) : 1;
    if (further >= 0) {
      rake = flank.isRake() || (further == 0 && rake);
      place = at;
    }
    found = true;
  }

  Fraction place() {
    return place;
  }

  boolean isRake() {
    return rake;
  }
}
