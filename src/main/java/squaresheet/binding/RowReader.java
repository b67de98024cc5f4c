package squaresheet.binding;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.units.Length;
import squaresheet.units.Pitch;

/** One row of a table while it is read: remembers what was understood and what was said. */
final class RowReader {

  private final FoundTable table;
  private final int row;
  private final Tape tape;
  private final List<Finding> findings = new ArrayList<>();
  private final Map<String, String> understood = new LinkedHashMap<>();
  private final Map<String, Where> places = new LinkedHashMap<>();
  private boolean whole = true;

  RowReader(FoundTable table, int row, Tape tape) {
    this.table = table;
    this.row = row;
    this.tape = tape;
  }

  /** The text of a property, if the cell has any. */
  Optional<String> text(String property) {
    String text = table.text(row, property);
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
    return isBlank(property)
        ? Optional.empty()
        : needed(take(property, tape.length(table, row, property)));
  }

  /** A length that may stay away, be 0 or negative. */
  Optional<Length> offsetIfAny(String property) {
    return isBlank(property)
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
                  + ", but is '" + text + "'"));
    }
    return found;
  }

  private <T> Optional<T> take(String property, Read<T> read) {
    findings.addAll(read.findings());
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

  /** This row among those that could not be read. */
  FieldNotes.Unread unread(String subject) {
    List<String> written = new ArrayList<>();
    for (int column = table.first(); column <= table.last(); column++) {
      String text = Cells.text(table.grid().cell(row, column));
      if (!text.isEmpty()) {
        written.add(text);
      }
    }
    String understoodWords = understood.entrySet().stream()
        .map(entry -> entry.getKey().replace('_', ' ') + " " + entry.getValue())
        .reduce((one, other) -> one + ", " + other)
        .orElse("nothing");
    String why = findings.stream()
        .filter(Finding::isError)
        .map(Finding::says)
        .reduce((one, other) -> one + "; " + other)
        .orElse("");
    return new FieldNotes.Unread(
        table.grid().where(row, table.first()), subject, written, understoodWords, why);
  }
}
