package squaresheet.verify;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import squaresheet.sheet.Address;

/**
 * An item of a table that has a pitch and a number of layers of underlayment.
 *
 * @param table the table
 * @param along the item
 * @param pitch the property that is the pitch
 * @param rise the pitch per 12
 * @param across the property that is the number of layers
 */
record Underlayment(Table table, int along, int pitch, double rise, int across) {

  private static final Pattern LAYERS =
      Pattern.compile("(?<!\\p{L})(layers|plies|ply)(?!\\p{L})", Pattern.CASE_INSENSITIVE);
  private static final Pattern OLD = Pattern.compile(
      "(?<!\\p{L})(tear|torn|existing|old|remove|shingle|strip|disposal)",
      Pattern.CASE_INSENSITIVE);

  /** Every item of the table, where it has both columns. */
  static Stream<Underlayment> in(Table table) {
    Optional<Integer> pitch = table.property(Words::isPitch);
    Optional<Integer> layers = table.property(
        heading -> LAYERS.matcher(heading).find() && !OLD.matcher(heading).find());
    return pitch.isPresent() && layers.isPresent()
        ? table.items().boxed().flatMap(along -> of(table, along, pitch.get(), layers.get()))
        : Stream.empty();
  }

  private static Stream<Underlayment> of(Table table, int along, int pitch, int layers) {
    OptionalDouble rise = RoundedPitch.rise(table, along, pitch);
    return rise.isPresent() && table.number(along, layers).isPresent()
        ? Stream.of(new Underlayment(table, along, pitch, rise.getAsDouble(), layers))
        : Stream.empty();
  }

  Book book() {
    return table.tab().book();
  }

  Address at() {
    return table.at(along, across);
  }

  /** Where its pitch stands. */
  Address pitchAt() {
    return table.at(along, pitch);
  }

  double layers() {
    return table.number(along, across).orElse(0);
  }

  /** Everything written about the item and the column. */
  String words() {
    return table.tab().wordsAbout(at().ref()) + " " + table.heading(across);
  }
}
