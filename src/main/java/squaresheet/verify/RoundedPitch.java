package squaresheet.verify;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import squaresheet.formula.Node;
import squaresheet.formula.Node.Operator;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.tape.TapeReader;
import squaresheet.tape.TapeUnit;
import squaresheet.tape.Written;
import squaresheet.units.Pitch;

/**
 * A typed angle or percent that formulas compute with as a pitch, or a rise per 12 that was worked out from one, and the pitch
 * it may have been rounded from.
 *
 * @param cell the cell
 * @param span what it may be
 * @param in what the cell holds
 */
record RoundedPitch(TypedCell cell, Pitch.Span span, In in) {

  /** What a cell with a pitch holds. */
  enum In {
    DEGREES,
    RATIO,
    RISE
  }

  private static final double CLOSE = 1e-9;
  private static final int FAR = 200;

  static Optional<RoundedPitch> of(TypedCell cell) {
    boolean pitch = cell.cell().stored() instanceof Content.Numeric
        && PitchCell.isCalledPitch(cell.tab(), cell.ref())
        && cell.book().links().isRead(cell.at());
    return pitch ? span(cell).map(it -> new RoundedPitch(cell, it, in(cell))) : Optional.empty();
  }

  private static String words(TypedCell cell) {
    return cell.tab().label(cell.ref()) + " " + cell.tab().headingOf(cell.ref());
  }

  private static In in(TypedCell cell) {
    return cell.cell().isPercent()
        ? In.RATIO
        : PitchFactor.isInDegrees(words(cell)) ? In.DEGREES : In.RISE;
  }

  private static Optional<Pitch.Span> span(TypedCell cell) {
    double value = ((Content.Numeric) cell.cell().stored()).value();
    String format = cell.cell().format();
    if (in(cell) == In.RISE) {
      return TapeReader.spanBehind(value);
    }
    String shown = in(cell) == In.DEGREES ? format + "°" : format;
    return TapeReader.of(TapeUnit.FEET, Locale.US).pitchSpan(Written.of(value, shown));
  }

  /** The rise per 12 of an item of a table: of an angle the pitch it was rounded from, else by the number as it stands. */
  static OptionalDouble rise(Table table, int along, int pitch) {
    OptionalDouble number = table.number(along, pitch);
    if (number.isEmpty() || !PitchFactor.isInDegrees(table.heading(pitch))) {
      return number;
    }
    Written angle = Written.of(number.getAsDouble(), "0°");
    TapeReader reader = TapeReader.of(TapeUnit.FEET, Locale.US);
    return reader
        .pitch(angle, table.tab().book().where(table.at(along, pitch)))
        .value()
        .map(it -> OptionalDouble.of(it.rise().doubleValue()))
        .orElse(OptionalDouble.empty());
  }

  Book book() {
    return cell.book();
  }

  /** A pitch as the cell would hold it. */
  double inCell(Pitch pitch) {
    return switch (in) {
      case DEGREES -> pitch.toDegrees();
      case RATIO -> pitch.slope();
      case RISE -> pitch.rise().doubleValue();
    };
  }

  /** The first formula in which a comparison, a condition or a lookup comes out otherwise for one pitch than for another. */
  Optional<FormulaCell> turning(Pitch pitch, Pitch other) {
    Map<Node, FormulaCell> decisions = decisions();
    Reckoning one = putting(pitch);
    Reckoning two = putting(other);
    return decisions.entrySet().stream()
        .filter(it -> !outcome(one, it.getKey(), it.getValue())
            .equals(outcome(two, it.getKey(), it.getValue())))
        .map(Map.Entry::getValue)
        .findFirst();
  }

  private Reckoning putting(Pitch pitch) {
    return book().reckoning().putting(Map.of(cell.at(), Value.of(inCell(pitch))));
  }

  /** What formulas decide by the pitch, or by what is made of it alone. */
  private Map<Node, FormulaCell> decisions() {
    Set<Address> following = new LinkedHashSet<>(Set.of(cell.at()));
    Deque<Address> next = new ArrayDeque<>(following);
    Map<Node, FormulaCell> all = new LinkedHashMap<>();
    while (!next.isEmpty() && all.size() < FAR && following.size() < FAR) {
      FormulaCell.readersOf(book(), next.pop()).forEach(reader -> {
        reader
            .formula()
            .decisionsOn(part -> isOneOf(reader, part, following))
            .forEach(part -> all.putIfAbsent(part, reader));
        boolean follows = reader.formula().followsFrom(part -> isOneOf(reader, part, following));
        if (follows && following.add(reader.at())) {
          next.add(reader.at());
        }
      });
    }
    return all;
  }

  private static boolean isOneOf(FormulaCell reader, Node part, Set<Address> cells) {
    return reader
        .cells(part)
        .filter(block -> cells.stream().anyMatch(block::contains))
        .isPresent();
  }

  /** What a decision comes to; at a limit itself, without the noise of working an angle out. */
  private static Value outcome(Reckoning reckoning, Node part, FormulaCell reader) {
    if (part instanceof Node.Binary binary) {
      OptionalDouble left = Shown.number(reckoning.evaluate(binary.left(), reader.at()));
      OptionalDouble right = Shown.number(reckoning.evaluate(binary.right(), reader.at()));
      boolean same = left.isPresent()
          && right.isPresent()
          && Math.abs(left.getAsDouble() - right.getAsDouble())
              <= CLOSE * Math.abs(right.getAsDouble());
      if (same) {
        return new Value.Truth(Set.of(Operator.EQUAL, Operator.AT_MOST, Operator.AT_LEAST)
            .contains(binary.operator()));
      }
    }
    return reckoning.evaluate(part, reader.at());
  }
}
