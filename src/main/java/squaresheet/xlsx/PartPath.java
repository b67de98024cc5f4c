package squaresheet.xlsx;

import java.net.URI;
import java.net.URISyntaxException;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;

/** Finds the part that a relationship's target means, seen from the part it starts at. */
final class PartPath {

  private PartPath() {}

  /** The name of the part, from the root; backslashes and letters spelled by their codes are taken for what they mean. */
  static String resolve(String from, String target) {
    String meant = plain(target);
    if (meant.startsWith("/")
        && !meant.contains("/./")
        && !meant.contains("/../")
        && !meant.contains("//")) {
      return meant;
    }
    try {
      URI start = new URI(null, null, from.isEmpty() ? "/" : plain(from), null);
      String path = start.resolve(new URI(null, null, meant, null)).normalize().getPath();
      return "/" + path.replaceFirst("^(/|\\.\\./)+", "");
    } catch (URISyntaxException | IllegalArgumentException wrong) {
      throw new Refusal("points to a part by a name that is none: '" + Excerpt.of(target) + "'");
    }
  }

  private static String plain(String name) {
    String slashed = name.indexOf('\\') < 0 ? name : name.replace('\\', '/');
    if (slashed.indexOf('%') < 0) {
      return slashed;
    }
    try {
      return URLDecoder.decode(slashed.replace("+", "%2B"), StandardCharsets.UTF_8);
    } catch (IllegalArgumentException asItIs) {
      return slashed;
    }
  }
}
