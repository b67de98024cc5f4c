package squaresheet.binding;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import squaresheet.finding.Finding;
import squaresheet.finding.Neighbours;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.job.Unread;
import squaresheet.units.Length;
import squaresheet.units.Pitch;

/** One row of a table while it is read: remembers what was understood and what was said. */
final class RowReader {

  private static final Set<String> DASHES = Set.of("-", "\u2013", "\u2014", "n/a", "na");

  private final FoundTable table;
  private final int row;
  private final Tape tape;
  /** Whether the row is read off a field sheet: what is only likely is refused there, and nothing may go unread. */
  private final boolean strict;

  private final List<Finding> findings = new ArrayList<>();
  private final Map<String, String> understood = new LinkedHashMap<>();
  private final Map<String, Where> places = new LinkedHashMap<>();
  private final Set<String> used = new HashSet<>();
  private boolean whole = true;

  RowReader(FoundTable table, int row, Tape tape) {
    this(table, row, tape, false);
  }

  RowReader(FoundTable table, int row, Tape tape, boolean strict) {
    this.table = table;
    this.row = row;
    this.tape = tape;
    this.strict = strict;
  }

  /** The text of a property, if the cell has any. */
  Optional<String> text(String property) {
    String text = table.text(row, property);
    used.add(property);
    if (!text.isEmpty()) {
      understood.put(property, text);
      places.put(property, where(property));
    }
    return text.isEmpty() ? Optional.empty() : Optional.of(text);
  }

  /** A length that must be there. */
  Optional<Length> length(String property) {
    return needed(take(property, tape.length(table, row, property)));
  }

  /** A length that may stay away. */
  Optional<Length> lengthIfAny(String property) {
    return isNothing(property)
        ? Optional.empty()
        : needed(take(property, tape.length(table, row, property)));
  }

  /** A length that must be there, and may be 0 or negative. */
  Optional<Length> offset(String property) {
    return needed(take(property, tape.offset(table, row, property)));
  }

  /** A length that may stay away, be 0 or negative. */
  Optional<Length> offsetIfAny(String property) {
    return isNothing(property)
        ? Optional.empty()
        : needed(take(property, tape.offset(table, row, property)));
  }

  Optional<Pitch> pitch(String property) {
    return needed(take(property, tape.pitch(table, row, property)));
  }

  /** What a pitch may be as well, where it is written too coarsely to be taken as a named one. */
  Optional<Pitch.Span> doubt(String property) {
    return tape.pitchSpan(table, row, property).filter(span -> span.named().isEmpty());
  }

  /** One of a family of words; a finding lists the family where the word is none of it. */
  <T> Optional<T> word(
      String property, String text, Function<String, Optional<T>> from, List<String> words) {
    Optional<T> found = from.apply(text);
    if (found.isEmpty()) {
      refuse(
          property,
          Complaint.WORD_UNKNOWN.at(
              where(property),
              text,
              "",
              property.replace('_', ' ') + " must be one of " + String.join(", ", words)
                  + ", but is '" + text + "'" + Neighbours.sentence(text, words)));
    }
    return found;
  }

  private <T> Optional<T> take(String property, Read<T> read) {
    findings.addAll(read.findings());
    used.add(property);
    if (strict && !read.isClean()) {
      return Optional.empty();
    }
    read.value().ifPresent(value -> {
      understood.put(property, table.text(row, property));
      places.put(property, where(property));
    });
    return read.value();
  }

  private <T> Optional<T> needed(Optional<T> value) {
    whole &= value.isPresent();
    return value;
  }

  /** Says something that keeps the row from being read. */
  void refuse(String property, Finding finding) {
    findings.add(finding);
    understood.remove(property);
    whole = false;
  }

  /** Says something that does not keep the row from being read. */
  void remark(Finding finding) {
    findings.add(finding);
  }

  boolean has(String property) {
    return table.column(property).isPresent();
  }

  boolean isBlank(String property) {
    return table.column(property).isEmpty() || table.text(row, property).isEmpty();
  }

  /** Whether nothing stands there, or a dash. */
  boolean isNothing(String property) {
    return isBlank(property) || (strict && isDash(table.text(row, property)));
  }

  /** Takes a cell that says nothing more. */
  void take(String property) {
    used.add(property);
  }

  /** Lets go of a cell that is used for nothing after all. */
  void leave(String property) {
    used.remove(property);
  }

  /**
   * Refuses a bare number that is larger than such a thing is ever measured in the sheet's unit, and fits a smaller one.
   *
   * @param most the largest that is believed without a unit behind it
   */
  void judgeBare(String property, Optional<Length> length, Length most) {
    if (strict && length.isPresent() && length.get().compareTo(most) > 0) {
      tape.smallerUnit(table, row, property)
          .ifPresent(says -> refuse(
              property,
              Complaint.SMALLER_UNIT.at(
                  where(property),
                  table.text(row, property),
                  "",
                  property.replace('_', ' ') + says)));
    }
  }

  Where where(String property) {
    return table.where(row, property);
  }

  Map<String, Where> places() {
    return places;
  }

  Map<String, String> understood() {
    return understood;
  }

  Tape tape() {
    return tape;
  }

  boolean isWhole() {
    return whole;
  }

  List<Finding> findings() {
    return findings;
  }

  FoundTable table() {
    return table;
  }

  int row() {
    return row;
  }

  boolean isStrict() {
    return strict;
  }

  /** The properties that were asked for, whether or not anything stands there. */
  Set<String> used() {
    return used;
  }

  /** Lets go of the row: what stands in it is used for nothing after all. */
  void letGo() {
    used.clear();
  }

  /** Whether the text only says that there is nothing. */
  static boolean isDash(String text) {
    return DASHES.contains(text.strip().toLowerCase(Locale.ROOT));
  }

  /** What the row is called: the name of its plane or opening; of an edge its kind and its planes. */
  String name() {
    return name(table, row);
  }

  static String name(FoundTable table, int row) {
    return switch (table.table()) {
      case "openings" -> table.text(row, "opening");
      case "edges" ->
        Stream.of("edge", "plane", "meets")
            .map(property -> table.text(row, property))
            .filter(text -> !text.isEmpty())
            .reduce((one, other) -> one + ", " + other)
            .orElse("");
      default -> table.text(row, "plane");
    };
  }

  static Unread.Kind kind(FoundTable table) {
    return switch (table.table()) {
      case "planes" -> Unread.Kind.PLANE;
      case "openings" -> Unread.Kind.OPENING;
      case "corners" -> Unread.Kind.CORNER;
      default -> Unread.Kind.EDGE;
    };
  }

  /** {@code plane Front}. */
  String subject() {
    return kind(table) + " " + name();
  }

  /** The cells of the row as written, blank ones left out. */
  List<String> written() {
    List<String> written = new ArrayList<>();
    for (int column = table.first(); column <= table.last(); column++) {
      String text = Cells.text(table.grid().cell(row, column));
      if (!text.isEmpty()) {
        written.add(text);
      }
    }
    return written;
  }

  /** This row among those that could not be read. */
  Unread unread() {
    String understoodWords = understood.entrySet().stream()
        .map(entry -> entry.getKey().replace('_', ' ') + " " + entry.getValue())
        .reduce((one, other) -> one + ", " + other)
        .orElse("nothing");
    String why = findings.stream()
        .filter(Finding::isError)
        .map(Finding::says)
        .reduce((one, other) -> one + "; " + other)
        .orElse("");
    return Unread.of(
        table.grid().where(row, table.first()),
        kind(table),
        name(),
        written(),
        understoodWords,
        why);
  }
}
