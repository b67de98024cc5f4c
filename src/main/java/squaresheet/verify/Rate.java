package squaresheet.verify;

import java.util.Optional;
import java.util.regex.Pattern;
import squaresheet.formula.Node;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;

/**
 * A rate that belongs on an amount once.
 *
 * @param kind what it is for
 * @param source the cell it stands in, or the number where it is typed into formulas
 * @param bare whether its label says nothing but its kind: two cells called plainly waste are one rate
 * @param times what an amount is multiplied with
 */
record Rate(Kind kind, String source, boolean bare, double times) {

  /** What a rate is for. */
  enum Kind {
    /** Sloped measure from plan measure. */
    PITCH_FACTOR("factor"),
    /** What is cut off and thrown away. */
    WASTE("waste"),
    /** What is put on a cost. */
    MARKUP("mark-?up|marked[ -]?up");

    private final Pattern word;

    Kind(String word) {
      this.word = Pattern.compile("(?<!\\p{L})(" + word + ")(?!\\p{L})", Pattern.CASE_INSENSITIVE);
    }

    boolean isIn(String text) {
      return word.matcher(text).find();
    }
  }

  private static final Pattern BARE = Pattern.compile(
      "(?<!\\p{L})(waste|mark-?up|rate|factor|ratio|allowance|percent|multiplier|the|for|on)(?!\\p{L})|[^\\p{L}]",
      Pattern.CASE_INSENSITIVE);
  private static final Pattern OTHER_FACTOR = Pattern.compile(
      "(?<!\\p{L})(hip|valley|waste|labou?r|price|line|cost|height|difficulty)(?!\\p{L})",
      Pattern.CASE_INSENSITIVE);

  /** The rate that a factor of a product is, where it is one. */
  static Optional<Rate> of(FormulaCell cell, Node factor) {
    Optional<Rate> onOne = factor instanceof Node.Binary sum
            && sum.operator() == Node.Operator.PLUS
            && sum.left() instanceof Node.Number one
            && one.value() == 1
        ? ofCell(cell, sum.right(), 1)
        : Optional.empty();
    return onOne
        .or(() -> ofCell(cell, factor, 0))
        .or(() -> typed(cell, factor))
        .or(() -> ofPitch(cell, factor));
  }

  /** The rate that a divisor {@code 1 - rate} puts on an amount. */
  static Optional<Rate> ofDivisor(FormulaCell cell, Node divisor) {
    return divisor instanceof Node.Binary less
            && less.operator() == Node.Operator.MINUS
            && less.left() instanceof Node.Number one
            && one.value() == 1
        ? ofCell(cell, less.right(), 1)
        : Optional.empty();
  }

  private static Optional<Rate> ofCell(FormulaCell cell, Node node, int on) {
    Optional<Address> at = cell.cells(node).filter(Cells::isOne).map(Cells::first);
    if (at.isEmpty()) {
      return Optional.empty();
    }
    String called = called(cell.book(), at.get());
    double times = on + cell.book().number(at.get()).orElse(0);
    return kind(called, times)
        .map(kind -> new Rate(kind, source(cell.book(), kind, at.get()), isBare(called), times));
  }

  private static String called(Book book, Address at) {
    Tab tab = book.tab(at.sheet());
    return tab.tableAt(at.ref()).isPresent() ? tab.headingOf(at.ref()) : tab.label(at.ref());
  }

  private static Optional<Kind> kind(String called, double times) {
    if (times <= 1 || times > 2.5) {
      return Optional.empty();
    }
    boolean rate = times < 2;
    boolean factor =
        Kind.PITCH_FACTOR.isIn(called) && !OTHER_FACTOR.matcher(called).find();
    return rate && Kind.WASTE.isIn(called)
        ? Optional.of(Kind.WASTE)
        : rate && Kind.MARKUP.isIn(called)
            ? Optional.of(Kind.MARKUP)
            : factor ? Optional.of(Kind.PITCH_FACTOR) : Optional.empty();
  }

  private static boolean isBare(String called) {
    return BARE.matcher(called).replaceAll("").isEmpty();
  }

  /** A factor that is worked out from a pitch is the same wherever that is done. */
  private static String source(Book book, Kind kind, Address at) {
    return kind == Kind.PITCH_FACTOR
        ? book.formula(at)
            .flatMap(it -> pitch(new FormulaCell(book, at, it), it.tree()))
            .orElse(at)
            .toString()
        : at.toString();
  }

  /** The pitch factor worked out on the spot: the root of one and the squared rise over twelve. */
  private static Optional<Rate> ofPitch(FormulaCell cell, Node node) {
    return Nodes.isCall(node, "SQRT")
            && Nodes.any(node, it -> it instanceof Node.Number one && one.value() == 1)
        ? pitch(cell, node)
            .map(at -> new Rate(Kind.PITCH_FACTOR, at.toString(), false, value(cell, node)))
        : Optional.empty();
  }

  private static Optional<Address> pitch(FormulaCell cell, Node node) {
    return Nodes.all(node)
        .flatMap(part -> cell.cells(part).stream())
        .filter(Cells::isOne)
        .map(Cells::first)
        .filter(at -> Words.isPitch(called(cell.book(), at)))
        .findFirst();
  }

  /** A number like 1.25 where the cell says that it is marked up. */
  private static Optional<Rate> typed(FormulaCell cell, Node node) {
    boolean typed = node instanceof Node.Number number && number.value() > 1 && number.value() < 2;
    String words = cell.label() + " " + called(cell.book(), cell.at());
    return typed && Kind.MARKUP.isIn(words)
        ? Optional.of(
            new Rate(Kind.MARKUP, Shown.number(value(cell, node)), false, value(cell, node)))
        : Optional.empty();
  }

  private static double value(FormulaCell cell, Node node) {
    return cell.book().reckoning().evaluate(node, cell.at()) instanceof Value.Number number
        ? number.value()
        : 1;
  }

  /** Whether an amount that has the other has this one already. */
  boolean isSame(Rate other) {
    return kind == other.kind && (source.equals(other.source) || (bare && other.bare));
  }
}
