package squaresheet.xlsx;

import java.net.URI;

/** Finds the part that a relationship's target means, seen from the part it starts at. */
final class PartPath {

  private PartPath() {}

  static String resolve(String from, String target) {
    try {
      return URI.create(from.isEmpty() ? "/" : from)
          .resolve(target.replace(" ", "%20"))
          .getPath();
    } catch (IllegalArgumentException wrong) {
      throw new Refusal("points to a part by a name that is none: '" + Excerpt.of(target) + "'");
    }
  }
}
