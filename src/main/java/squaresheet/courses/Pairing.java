package squaresheet.courses;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import squaresheet.geometry.Fraction;

/**
 * The ends that come out of one shingle together. A shingle cut once gives a left piece and a right piece, so a left piece
 * and a right piece share one when together they are no longer than it.
 */
final class Pairing {

  private Pairing() {}

  /**
   * The most pairs there can be. The longest left piece takes the shortest right piece, if that fits; else nothing fits it.
   * Any other choice can be exchanged for this one without losing a pair.
   */
  static long most(List<Fraction> lefts, List<Fraction> rights, long piece) {
    List<Fraction> longestFirst = new ArrayList<>(lefts);
    longestFirst.sort(Collections.reverseOrder());
    List<Fraction> shortestFirst = new ArrayList<>(rights);
    Collections.sort(shortestFirst);
    return count(longestFirst, shortestFirst, Fraction.of(piece));
  }

  private static long count(List<Fraction> lefts, List<Fraction> rights, Fraction piece) {
    long pairs = 0;
    int right = 0;
    for (Fraction left : lefts) {
      if (right < rights.size() && left.plus(rights.get(right)).compareTo(piece) <= 0) {
        pairs++;
        right++;
      }
    }
    return pairs;
  }
}
