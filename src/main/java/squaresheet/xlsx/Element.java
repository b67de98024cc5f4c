package squaresheet.xlsx;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** An element of a part and where its bytes are: from start to before end, its start tag to before tagEnd. */
final class Element {

  final String prefix;
  final String name;
  final Map<String, String> attributes = new LinkedHashMap<>();
  final List<Element> children = new ArrayList<>();
  final long start;
  final long tagEnd;
  long contentEnd;
  long end;

  Element(String prefix, String name, long start, long tagEnd) {
    this.prefix = prefix;
    this.name = name;
    this.start = start;
    this.tagEnd = tagEnd;
  }

  /** Whether it is closed in its start tag. */
  boolean isClosedInItself() {
    return end == tagEnd;
  }

  String attribute(String local) {
    return attributes.getOrDefault(local, "");
  }

  int number(String local, int usual) {
    try {
      return Integer.parseInt(attribute(local).strip());
    } catch (NumberFormatException none) {
      return usual;
    }
  }

  Optional<Element> child(String local) {
    return children.stream().filter(child -> child.name.equals(local)).findFirst();
  }

  List<Element> all(String local) {
    return children.stream().filter(child -> child.name.equals(local)).toList();
  }
}
