package squaresheet.roof;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import squaresheet.finding.Read;
import squaresheet.finding.Where;

/** What a side of a plane is to a roofer. Text form: the lower-case word, such as {@code eave} or {@code pitch break}. */
public enum EdgeKind {
  /** The lower edge, where water leaves the roof. */
  EAVE(false),
  /** The sloped edge of a gable end. */
  RAKE(false),
  /** The level edge at the top, where two planes meet. */
  RIDGE(true),
  /** A sloped edge standing out, where two planes meet. */
  HIP(true),
  /** A sloped edge lying in, where two planes meet. */
  VALLEY(true),
  /** A sloped edge against a wall. */
  SIDEWALL(false),
  /** A level edge below a wall. */
  HEADWALL(false),
  /** A level edge where a plane of one pitch goes on at another. */
  PITCH_BREAK(true),
  /** An edge that gets no material, such as where the work stops. */
  OPEN(false);

  private final boolean shared;

  EdgeKind(boolean shared) {
    this.shared = shared;
  }

  /** Whether two planes meet at such an edge: ridge, hip, valley, pitch break. */
  public boolean isShared() {
    return shared;
  }

  /** The word for it. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** The kind with this word, in any letter case, in the singular or the plural, with space, hyphen or underscore. */
  public static Optional<EdgeKind> from(String word) {
    String plain = Words.plain(word);
    return Arrays.stream(values())
        .filter(kind -> plain.equals(kind.word()) || plain.equals(kind.word() + "s"))
        .findFirst();
  }

  /** As {@link #from}; a finding that proposes the nearest words where there is none such. */
  public static Read<EdgeKind> read(String word, Where where) {
    return from(word)
        .map(Read::of)
        .orElseGet(() -> Read.nothing(RoofFindings.edge(
            where, "no kind of edge '" + word + "'; " + Words.neighbours(word, words()))));
  }

  /** All words, in order. */
  public static List<String> words() {
    return Arrays.stream(values()).map(EdgeKind::word).toList();
  }

  @Override
  public String toString() {
    return word();
  }
}
