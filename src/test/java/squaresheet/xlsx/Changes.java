package squaresheet.xlsx;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.assertj.core.util.diff.Delta;
import org.assertj.core.util.diff.DiffUtils;

/** What is different between two files, part by part and tag by tag; what is not told is the same byte for byte. */
final class Changes {

  private Changes() {}

  /** The names of the parts that differ, came or went. */
  static Set<String> parts(Map<String, byte[]> before, Map<String, byte[]> after) {
    Set<String> names = new TreeSet<>(before.keySet());
    names.addAll(after.keySet());
    names.removeIf(name -> Arrays.equals(before.get(name), after.get(name)));
    return names;
  }

  /** Every difference: parts that came and went by name, changed parts by the tags that came and went. */
  static String told(Map<String, byte[]> before, Map<String, byte[]> after) {
    StringBuilder all = new StringBuilder();
    for (String name : parts(before, after)) {
      if (!before.containsKey(name)) {
        all.append(name).append(" comes\n");
      } else if (!after.containsKey(name)) {
        all.append(name).append(" goes\n");
      } else {
        all.append(name).append('\n').append(inside(before.get(name), after.get(name)));
      }
    }
    return all.toString();
  }

  private static String inside(byte[] before, byte[] after) {
    return DiffUtils.diff(tags(before), tags(after)).getDeltas().stream()
        .map(Changes::told)
        .collect(Collectors.joining());
  }

  private static String told(Delta<String> delta) {
    return lines("  - ", delta.getOriginal().getLines())
        + lines("  + ", delta.getRevised().getLines());
  }

  private static String lines(String sign, List<String> tags) {
    return tags.isEmpty() ? "" : sign + String.join("", tags).replace("\n", "\\n") + "\n";
  }

  /** The part cut before every tag; put together again it is the part. */
  private static List<String> tags(byte[] part) {
    return List.of(new String(part, StandardCharsets.UTF_8).split("(?=<)"));
  }
}
