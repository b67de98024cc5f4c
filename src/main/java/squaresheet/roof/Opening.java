package squaresheet.roof;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.geometry.Outline;
import squaresheet.units.Area;
import squaresheet.units.DerivedLength;
import squaresheet.units.Length;

/**
 * Something cut out of a plane, in the plane's slope coordinates.
 *
 * @param id its name
 * @param kind what it is
 * @param outline its outline; from the origin where its position was not measured
 * @param isPlaced whether its position was measured
 * @param slopedArea its area on the slope, from its lengths as measured, where the outline rounds them
 * @param height how far it reaches up the slope, in the same way
 */
public record Opening(
    String id,
    Kind kind,
    Outline outline,
    boolean isPlaced,
    Area.Sloped slopedArea,
    DerivedLength height) {

  /** What an opening is. Text form: the lower-case word. */
  public enum Kind {
    /** A chimney. */
    CHIMNEY,
    /** A skylight. */
    SKYLIGHT,
    /** The footprint of a dormer. */
    DORMER,
    /** Anything else. */
    OTHER;

    /** The word for it. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }

    /** The kind with this word, in any letter case, in the singular or the plural. */
    public static Optional<Kind> from(String word) {
      String plain = Words.plain(word);
      return Arrays.stream(values())
          .filter(kind -> plain.equals(kind.word()) || plain.equals(kind.word() + "s"))
          .findFirst();
    }

    /** As {@link #from}; a finding that proposes the nearest words where there is none such. */
    public static Read<Kind> read(String word, Where where) {
      return from(word)
          .map(Read::of)
          .orElseGet(() -> Read.nothing(RoofFindings.opening(
              where, "no kind of opening '" + word + "'; " + Words.neighbours(word, words()))));
    }

    /** All words, in order. */
    public static List<String> words() {
      return Arrays.stream(values()).map(Kind::word).toList();
    }

    @Override
    public String toString() {
      return word();
    }
  }

  /** How far it reaches along the eave. */
  public Length width() {
    return outline.right().minus(outline.left());
  }
}
