package squaresheet.courses;

import squaresheet.units.Length;

/**
 * A place along the eave where the distance up the slope was measured: a rake, or anywhere between.
 *
 * @param name what the crew calls it, such as {@code left rake}
 * @param up the distance up the slope from the eave edge to the top of the courses; more than 0
 */
public record Station(String name, Length up) {

  public Station {
    if (name.isBlank()) {
      throw new IllegalArgumentException("a station must have a name, but it is empty");
    }
    if (!up.isPositive()) {
      throw new IllegalArgumentException(
          "the distance up the slope at " + name + " must be more than 0, but is " + up);
    }
  }
}
