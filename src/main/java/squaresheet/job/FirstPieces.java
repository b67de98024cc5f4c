package squaresheet.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.finding.Severity;
import squaresheet.finding.Where;
import squaresheet.tape.TapeReader;
import squaresheet.tape.TapeUnit;
import squaresheet.units.Length;

/** Reads the setting that says how first pieces are cut: {@code stair}, {@code search}, or the pieces, one for each course. */
final class FirstPieces {

  private static final CheckInfo NOT_READ = new CheckInfo(
      "first-pieces-not-read", Severity.WARNING, "First pieces of courses cannot be read");

  private static final Where WHERE = new Where.OfItem("job", "stagger_pattern");

  private final TapeReader tape;

  FirstPieces(JobCard card) {
    TapeUnit unit = card.isMetric() ? TapeUnit.MILLIMETRES : TapeUnit.INCHES;
    this.tape = TapeReader.of(unit, java.util.Locale.ENGLISH);
  }

  /** The pieces typed; none for a word, and none with a finding where a piece cannot be read. */
  Read<List<Length>> read(String text) {
    if (List.of("", "stair", "search").contains(text)) {
      return Read.of(List.of(), List.of());
    }
    List<Length> pieces = new ArrayList<>();
    for (String part : text.split(";")) {
      Read<Length> read = tape.length(part.strip(), WHERE);
      Optional<Length> piece = read.value().filter(length -> read.isClean());
      if (piece.isEmpty()) {
        return Read.of(List.of(), List.of(notRead(text, part.strip())));
      }
      pieces.add(piece.get());
    }
    return Read.of(List.copyOf(pieces), List.of());
  }

  private static Finding notRead(String text, String part) {
    return new Finding(
        NOT_READ,
        WHERE,
        text,
        "",
        "first pieces must be stair, search, or lengths such as 39 3/8; 33 3/8; 27 3/8, but '"
            + part + "' is none; a stair by the product's least offset is laid",
        "");
  }
}
