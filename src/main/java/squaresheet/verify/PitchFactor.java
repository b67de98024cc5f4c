package squaresheet.verify;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import squaresheet.sheet.Address;
import squaresheet.sheet.Ref;

/**
 * An item of a table that has a pitch per 12 and a factor.
 *
 * @param table the table
 * @param along the item
 * @param rise the pitch
 * @param across the property that is the factor
 * @param factor the factor
 */
record PitchFactor(Table table, int along, double rise, int across, double factor) {

  private static final Pattern FACTOR = Pattern.compile(
      "(?<!\\p{L})((pitch|slope|roof|area) )?(factor|multiplier)(?!\\p{L})",
      Pattern.CASE_INSENSITIVE);
  private static final Pattern DEGREES =
      Pattern.compile("degrees?|(?<!\\p{L})deg(?!\\p{L})|\u00B0", Pattern.CASE_INSENSITIVE);
  private static final Pattern OTHER = Pattern.compile(
      "(?<!\\p{L})(hip|valley|waste|labou?r|price|line|cost|height)(?!\\p{L})",
      Pattern.CASE_INSENSITIVE);

  /** Every item of the table, where it has both columns. */
  static Stream<PitchFactor> in(Table table) {
    Optional<Integer> pitch = table.property(Words::isPitch);
    Optional<Integer> factor = table.property(PitchFactor::isFactor);
    return pitch.isPresent() && factor.isPresent()
        ? table.items().boxed().flatMap(along -> of(table, along, pitch.get(), factor.get()))
        : Stream.empty();
  }

  /** Whether a heading stands over pitch factors, not over those of hips, labour and the like. */
  static boolean isFactor(String heading) {
    return FACTOR.matcher(heading).find() && !OTHER.matcher(heading).find();
  }

  private static Stream<PitchFactor> of(Table table, int along, int pitch, int across) {
    OptionalDouble rise = table.tab().book().number(table.at(along, pitch));
    OptionalDouble factor = table.tab().book().number(table.at(along, across));
    boolean usual = rise.isPresent() && rise.getAsDouble() >= 1 && rise.getAsDouble() <= 24;
    boolean typedPitch = table
        .tab()
        .isTypedNumber(new Ref(
            table.axis() == Axis.DOWN ? along : pitch, table.axis() == Axis.DOWN ? pitch : along));
    return usual && typedPitch && factor.isPresent() && !isInDegrees(table, pitch)
        ? Stream.of(new PitchFactor(table, along, rise.getAsDouble(), across, factor.getAsDouble()))
        : Stream.empty();
  }

  /** Whether the pitches are angles, whose factor is another. */
  private static boolean isInDegrees(Table table, int pitch) {
    return isInDegrees(table.heading(pitch));
  }

  static boolean isInDegrees(String words) {
    return DEGREES.matcher(words).find();
  }

  Book book() {
    return table.tab().book();
  }

  Address at() {
    return table.at(along, across);
  }

  double wanted() {
    return Math.hypot(1, rise / 12);
  }

  /** Whether the item before it has the same slip, so that it was said there. */
  boolean isHeld() {
    return in(table)
        .takeWhile(row -> row.along() < along)
        .anyMatch(row -> sameForm(row) && Math.abs(row.factor() - row.wanted()) > 0.0006);
  }

  private boolean sameForm(PitchFactor other) {
    return table.fills().stream()
        .filter(fill -> fill.form().across() == across)
        .anyMatch(fill -> fill.hasForm(along) && fill.hasForm(other.along()));
  }
}
