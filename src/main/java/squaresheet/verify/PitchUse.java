package squaresheet.verify;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import squaresheet.formula.Node;
import squaresheet.formula.Node.Operator;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;

/**
 * Whether formulas take a number for a pitch, however they are written and whatever the number is called: some part of them
 * makes of it what only a pitch makes, a factor or an angle, or looks it up among pitches.
 */
final class PitchUse {

  /** Two pitches that are put in the number's place; what is right for both is no accident. */
  private static final double ONE = 3;

  private static final double OTHER = 7;
  private static final double CLOSE = 1e-9;
  private static final double FOOT = 12;

  /** So many formulas that only hand the number on are followed. */
  private static final int FAR = 200;

  /** What a rise over a run makes: factors of rafters and hips, their squares, angles. */
  private static final List<DoubleUnaryOperator> OF_SLOPE = List.of(
      slope -> Math.hypot(1, slope),
      slope -> 1 + slope * slope,
      slope -> 1 / Math.hypot(1, slope),
      slope -> Math.sqrt(2 + slope * slope),
      slope -> 2 + slope * slope,
      slope -> FOOT * Math.hypot(1, slope),
      slope -> FOOT * FOOT * (1 + slope * slope),
      Math::atan,
      slope -> Math.toDegrees(Math.atan(slope)));

  private static final Set<Operator> COMPARE = EnumSet.of(
      Operator.EQUAL,
      Operator.UNEQUAL,
      Operator.LESS,
      Operator.AT_MOST,
      Operator.MORE,
      Operator.AT_LEAST);

  private final Book book;
  private final double run;
  private final Reckoning one;
  private final Reckoning other;
  private final Set<Address> seen = new HashSet<>();

  private PitchUse(Book book, Address number, double run) {
    this.book = book;
    this.run = run;
    one = book.reckoning().putting(Map.of(number, Value.of(ONE)));
    other = book.reckoning().putting(Map.of(number, Value.of(OTHER)));
  }

  /** Whether the number is taken for a rise per 12. */
  static boolean asRise(Book book, Address number) {
    return new PitchUse(book, number, FOOT).isUsed(number, FOOT);
  }

  /** Whether the number is taken for a rise over a run of 1. */
  static boolean asRatio(Book book, Address number) {
    return new PitchUse(book, number, 1).isUsed(number, 1);
  }

  /** Whether a cell with the rise over that run is used as a pitch by the formulas that read it. */
  private boolean isUsed(Address cell, double over) {
    return FormulaCell.readersOf(book, cell)
        .filter(reader -> seen.size() < FAR && seen.add(reader.at()))
        .anyMatch(reader -> isUse(reader, over));
  }

  private boolean isUse(FormulaCell reader, double over) {
    boolean made = Nodes.all(reader.tree())
        .filter(part -> part instanceof Node.Binary || part instanceof Node.Call)
        .anyMatch(part -> OF_SLOPE.stream().anyMatch(makes -> comesTo(reader, part, makes)));
    if (made || isLookedUp(reader, over) || isCompared(reader, over)) {
      return true;
    }
    if (comesTo(reader, reader.tree(), slope -> over * slope)) {
      return PitchCell.isCalledPitch(reader.tab(), reader.at().ref()) || isUsed(reader.at(), over);
    }
    return comesTo(reader, reader.tree(), slope -> slope) && isUsed(reader.at(), 1);
  }

  /** Whether a part of a formula is this of the slope, whichever of the two it is. */
  private boolean comesTo(FormulaCell reader, Node part, DoubleUnaryOperator of) {
    return isClose(one, reader, part, of.applyAsDouble(ONE / run))
        && isClose(other, reader, part, of.applyAsDouble(OTHER / run));
  }

  private boolean isClose(Reckoning reckoning, FormulaCell reader, Node part, double wanted) {
    book.looks().spend(1);
    OptionalDouble number = Shown.number(reckoning.evaluate(part, reader.at()));
    return number.isPresent()
        && Math.abs(number.getAsDouble() - wanted) <= CLOSE * Math.abs(wanted);
  }

  /** Whether it is looked up in a line whose heading says pitch. */
  private boolean isLookedUp(FormulaCell reader, double over) {
    return reader
        .calls("VLOOKUP", "HLOOKUP", "LOOKUP", "MATCH", "XLOOKUP", "XMATCH")
        .filter(call -> call.arguments().size() > 1)
        .filter(call -> comesTo(reader, call.arguments().get(0), slope -> over * slope))
        .anyMatch(call -> isPitches(reader, call.arguments().get(1)));
  }

  /** Whether it is held against a pitch, as a limit is. */
  private boolean isCompared(FormulaCell reader, double over) {
    return Nodes.all(reader.tree(), Node.Binary.class)
        .filter(part -> COMPARE.contains(part.operator()))
        .anyMatch(part ->
            (comesTo(reader, part.left(), slope -> over * slope) && isPitches(reader, part.right()))
                || (comesTo(reader, part.right(), slope -> over * slope)
                    && isPitches(reader, part.left())));
  }

  /** Whether these are cells that are called pitches. */
  private boolean isPitches(FormulaCell reader, Node part) {
    return reader.cells(part).stream()
        .anyMatch(cells ->
            PitchCell.isCalledPitch(book.tab(cells.sheet()), cells.first().ref())
                || Words.isPitch(book.tab(cells.sheet()).text(cells.first().ref())));
  }
}
