package squaresheet.roof;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.units.Length;

/** Makes a shape from its word and its lengths. */
final class ShapeReader {

  /** The lengths each shape needs, besides an offset that may stay away. */
  private static final Map<String, List<String>> NEEDED = Map.of(
      "rectangle", List.of("eave", "rake"),
      "triangle", List.of("eave", "height"),
      "trapezoid", List.of("eave", "ridge", "height"),
      "parallelogram", List.of("eave", "height", "offset"));

  private ShapeReader() {}

  static Read<Shape> read(String word, Map<String, Length> lengths, Where where) {
    String plain = Words.plain(word);
    List<String> needed = NEEDED.get(plain);
    if (needed == null) {
      return Read.nothing(unknown(word, where));
    }
    List<Finding> missing = needed.stream()
        .filter(name -> !lengths.containsKey(name))
        .map(name -> RoofFindings.plane(
            where, "a " + plain + " must have " + article(name) + " " + name + ", but has none"))
        .toList();
    return missing.isEmpty() ? Read.of(shape(plain, lengths)) : Read.nothing(missing);
  }

  private static String article(String name) {
    return name.matches("[aeiou].*") ? "an" : "a";
  }

  private static Finding unknown(String word, Where where) {
    List<String> known = NEEDED.keySet().stream().sorted().toList();
    return RoofFindings.plane(where, "no shape '" + word + "'; " + Words.neighbours(word, known));
  }

  static Shape shape(Shape like, Map<String, Length> lengths) {
    return NEEDED.containsKey(like.word()) ? shape(like.word(), lengths) : like;
  }

  private static Shape shape(String word, Map<String, Length> lengths) {
    Length eave = lengths.get("eave");
    Length height = lengths.get("height");
    Optional<Length> offset = Optional.ofNullable(lengths.get("offset"));
    if (word.equals("rectangle")) {
      return new Shape.Rectangle(eave, lengths.get("rake"));
    }
    if (word.equals("triangle")) {
      return new Shape.Triangle(eave, height, offset);
    }
    return word.equals("trapezoid")
        ? new Shape.Trapezoid(eave, lengths.get("ridge"), height, offset)
        : new Shape.Parallelogram(eave, height, offset.orElseThrow());
  }
}
