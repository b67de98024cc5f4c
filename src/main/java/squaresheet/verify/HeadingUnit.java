package squaresheet.verify;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import squaresheet.units.Unit;

/** The unit that a word or a heading names. */
final class HeadingUnit {

  /** Words for a unit of ours that people shorten. */
  private static final Pattern SQUARES =
      Pattern.compile("sqs?\\.?|squares?", Pattern.CASE_INSENSITIVE);

  private static final Set<Unit.Kind> COUNTED = Set.of(
      Unit.Kind.LENGTH,
      Unit.Kind.AREA,
      Unit.Kind.PLAN_AREA,
      Unit.Kind.SLOPED_AREA,
      Unit.Kind.SQUARES,
      Unit.Kind.BUNDLES,
      Unit.Kind.ROLLS,
      Unit.Kind.BOXES,
      Unit.Kind.SHEETS,
      Unit.Kind.PIECES,
      Unit.Kind.HOURS);

  private static final Pattern BRACKETED = Pattern.compile("[(\\[]([^)\\]]+)[)\\]]");

  private HeadingUnit() {}

  /** The unit that a text is, where it is nothing else. */
  static Optional<Unit> of(String text) {
    return any(text).filter(unit -> COUNTED.contains(unit.kind()));
  }

  /** The same of any kind, a rate or a pitch included. */
  static Optional<Unit> any(String text) {
    String word = text.strip().toLowerCase(Locale.ROOT);
    if (SQUARES.matcher(word).matches()) {
      return Optional.of(Unit.parse("square"));
    }
    try {
      return Optional.of(Unit.parse(word));
    } catch (IllegalArgumentException none) {
      return Optional.empty();
    }
  }

  /** The unit at the end of a heading or in its brackets: {@code Roof sf}, {@code Area (sq ft)}, {@code Squares}. */
  static Optional<Unit> in(String heading) {
    Matcher bracketed = BRACKETED.matcher(heading);
    if (bracketed.find()) {
      return of(bracketed.group(1));
    }
    String[] words = heading.strip().split("\\s+");
    return Stream.of(2, 1)
        .filter(count -> count <= words.length)
        .map(count ->
            String.join(" ", Arrays.copyOfRange(words, words.length - count, words.length)))
        .flatMap(text -> of(text).stream())
        .findFirst();
  }
}
