package squaresheet.judge.slip;

import static squaresheet.judge.made.Meaning.AMOUNT;
import static squaresheet.judge.made.Meaning.EDGE_TOTAL;
import static squaresheet.judge.made.Meaning.MARKUP;
import static squaresheet.judge.made.Meaning.PACKS;
import static squaresheet.judge.made.Meaning.PITCH_FACTOR;
import static squaresheet.judge.made.Meaning.PLAN_AREA;
import static squaresheet.judge.made.Meaning.PRICE;
import static squaresheet.judge.made.Meaning.QUANTITY;
import static squaresheet.judge.made.Meaning.SLOPED_AREA;
import static squaresheet.judge.made.Meaning.SQUARES;
import static squaresheet.judge.made.Meaning.SUBTOTAL;
import static squaresheet.judge.made.Meaning.TAX;
import static squaresheet.judge.made.Meaning.TOTAL;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import squaresheet.judge.made.KnownCell;
import squaresheet.judge.made.Meaning;

/** Faults of formulas: mechanical, in references, in units and in the logic of a roof or a price. */
@SuppressWarnings("UnnecessaryLambda") // each stands beside others that take parameters
final class FormulaFaults {

  private static final Pattern REFERENCE =
      Pattern.compile("(?<![A-Za-z!'])([A-Z]{1,2})(\\d+)(?![\\d(])");
  private static final Pattern RANGE = Pattern.compile("SUM\\(([A-Z]+)(\\d+):([A-Z]+)(\\d+)\\)");

  private FormulaFaults() {}

  private static Optional<String> changed(String before, String after) {
    return before.equals(after) ? Optional.empty() : Optional.of(after);
  }

  /** A change of the formula's text. */
  static BiFunction<OpenBook, KnownCell, Optional<String>> swap(String pattern, String by) {
    return (book, cell) -> {
      String text = book.content(cell.at());
      return text.startsWith("=")
          ? changed(text.substring(1), text.substring(1).replaceFirst(pattern, by))
          : Optional.empty();
    };
  }

  /** The formula with something around it. */
  static BiFunction<OpenBook, KnownCell, Optional<String>> wrap(String before, String after) {
    return (book, cell) -> Optional.of(book.content(cell.at()))
        .filter(text -> text.startsWith("="))
        .map(text -> before + text.substring(1) + after);
  }

  /** One of the formula's references to another row or column. */
  static BiFunction<OpenBook, KnownCell, Optional<String>> shift(int rows, int columns) {
    return (book, cell) -> {
      String text = book.content(cell.at()).replaceFirst("^=", "");
      Matcher reference = REFERENCE.matcher(text);
      if (!reference.find() || text.contains(":")) {
        return Optional.empty();
      }
      String moved = OpenBook.moved("x!" + reference.group(), rows, columns).substring(2);
      return Optional.of(
          text.substring(0, reference.start()) + moved + text.substring(reference.end()));
    };
  }

  /** The range of a sum with its ends moved. */
  private static BiFunction<OpenBook, KnownCell, Optional<String>> range(int first, int last) {
    return (book, cell) -> {
      String text = book.content(cell.at()).replaceFirst("^=", "");
      Matcher sum = RANGE.matcher(text);
      if (!sum.find() || !sum.group(1).equals(sum.group(3))) {
        return Optional.empty();
      }
      int from = Integer.parseInt(sum.group(2)) + first;
      int to = Integer.parseInt(sum.group(4)) + last;
      return from < 1 || to <= from
          ? Optional.empty()
          : Optional.of(text.substring(0, sum.start()) + "SUM(" + sum.group(1) + from + ":"
              + sum.group(3) + to + ")" + text.substring(sum.end()));
    };
  }

  static List<Fault> all() {
    return List.of(
        new Fault(
            "MEC-01",
            "typed over, wrong",
            book -> over(book, 0.6 + 0.35 * book.random.nextDouble())),
        new Fault("MEC-02", "typed over, right today", book -> over(book, 1)),
        new Fault("MEC-03", "formula cleared", book -> clear(book)),
        Fault.oneRow(
            "FRM-05",
            "reference one row off",
            shift(1, 0),
            SLOPED_AREA,
            SQUARES,
            PLAN_AREA,
            AMOUNT,
            PITCH_FACTOR),
        Fault.oneRow(
            "FRM-06", "reference one column off", shift(0, -1), SQUARES, AMOUNT, SLOPED_AREA),
        Fault.everyRow("FRM-06", "reference one column off", shift(0, -1), SQUARES, AMOUNT),
        Fault.oneRow("FRM-01", "sum one row short", range(0, -1), SUBTOTAL, SLOPED_AREA, SQUARES),
        Fault.oneRow(
            "FRM-01b", "sum misses its first row", range(1, 0), SUBTOTAL, SLOPED_AREA, SQUARES),
        Fault.oneRow("FRM-19", "term added again after the sum", addLast(), SUBTOTAL, SLOPED_AREA),
        Fault.oneRow(
            "FRM-09",
            "error hidden by a guard",
            wrap("IFERROR(", "+#REF!,0)"),
            SLOPED_AREA,
            AMOUNT,
            PACKS),
        Fault.oneRow(
            "FRM-12",
            "parentheses lost in the waste",
            swap("\\*\\(1\\+([^)]*)\\)", "*1+$1"),
            PACKS),
        Fault.oneRow(
            "FRM-15",
            "rounded to nearest",
            swap("^(ROUNDUP|CEILING)\\((.*),[01]\\)$", "ROUND($2,0)"),
            PACKS),
        Fault.oneRow("UNI-03", "square feet for squares", swap("/100\\b", ""), SQUARES),
        Fault.oneRow("FRM-16", "odd constant", swap("/100\\b", "/110"), SQUARES),
        Fault.oneRow("FRM-17", "circular", circle(), SUBTOTAL, TOTAL),
        Fault.oneRow(
            "FRM-10",
            "lookup range short",
            swap("(\\$[A-Z]+\\$\\d+:\\$[A-Z]+\\$)\\d+", "$14"),
            PRICE),
        Fault.oneRow("FRM-11", "lookup column one off", swap(",3,FALSE", ",2,FALSE"), PRICE),
        Fault.oneRow(
            "FRM-13",
            "ranges of unlike height",
            swap("(,\\$[A-Z]+\\$)(\\d+):", "$11:"),
            EDGE_TOTAL),
        Fault.oneRow(
            "FRM-14", "key with a stray letter", swap("\"([A-Z][a-z]+)\"", "\"$1s\""), EDGE_TOTAL),
        Fault.oneRow("UNI-04", "divided by 100 twice", wrap("(", ")/100"), SQUARES),
        Fault.everyRow("UNI-04", "divided by 100 twice", wrap("(", ")/100"), SQUARES),
        Fault.oneRow(
            "UNI-14", "trigonometry on degrees", swap("RADIANS\\((.*?)\\)", "$1"), PITCH_FACTOR),
        Fault.everyRow(
            "UNI-14", "trigonometry on degrees", swap("RADIANS\\((.*?)\\)", "$1"), PITCH_FACTOR),
        Fault.oneRow("UNI-08", "square price by another quantity", shift(1, 0), AMOUNT),
        Fault.oneRow("LOG-01", "factor dropped", swap("\\*[$]?[A-Z]+[$]?\\d+$", "*1"), SLOPED_AREA),
        Fault.everyRow(
            "LOG-01", "factor dropped", swap("\\*[$]?[A-Z]+[$]?\\d+$", "*1"), SLOPED_AREA),
        Fault.oneRow("LOG-03", "factor twice", swap("(\\*[A-Z]+\\d+)$", "$1$1"), SLOPED_AREA),
        Fault.oneRow("LOG-04", "waste twice", swap("(\\*\\(1\\+[^)]*\\))", "$1$1"), PACKS),
        Fault.oneRow(
            "LOG-05",
            "waste after rounding",
            swap("^ROUNDUP\\((.*)\\*(\\(1\\+[^)]*\\))(.*),0\\)$", "ROUNDUP($1$3,0)*$2"),
            PACKS),
        Fault.oneRow(
            "LOG-07",
            "rounded down",
            swap("^(ROUNDUP|CEILING)\\((.*),[01]\\)$", "ROUNDDOWN($2,0)"),
            PACKS),
        Fault.oneRow("LOG-12", "waste subtracted", swap("\\(1\\+", "(1-"), PACKS),
        Fault.oneRow(
            "LOG-14",
            "linear pitch factor",
            swap("^SQRT\\(1\\+\\((.*)/12\\)\\^2\\)$", "1+$1/12"),
            PITCH_FACTOR),
        Fault.everyRow(
            "LOG-14",
            "linear pitch factor",
            swap("^SQRT\\(1\\+\\((.*)/12\\)\\^2\\)$", "1+$1/12"),
            PITCH_FACTOR),
        Fault.oneRow(
            "LOG-10",
            "long side only",
            swap("^\\(([A-Z]+\\d+)\\+[A-Z]+\\d+\\)/2", "$1"),
            SLOPED_AREA),
        Fault.oneRow(
            "DOM-07",
            "hips left out of the cap",
            withHips(swap("\\(([^()+]+)\\+([^()+]+)\\)/25", "($1)/25")),
            PACKS),
        Fault.oneRow(
            "ACC-03",
            "markup where a margin is meant",
            swap("/\\(1-(.*)\\)$", "*(1+$1)"),
            SUBTOTAL),
        Fault.oneRow("ACC-02", "tax on labor too", taxOnAll(), TAX),
        Fault.oneRow(
            "ACC-05", "a part left out of the total", swap("\\+[^+()]+$", ""), SUBTOTAL, TOTAL),
        Fault.oneRow(
            "ACC-12",
            "price of the neighbour",
            swap("([A-Z]+\\d+\\*[A-Z]+)(\\d+)", "$11$2"),
            AMOUNT),
        Fault.oneRow("FRM-02", "a rate added as an amount", swap("\\*", "+"), MARKUP, TAX),
        Fault.oneRow("QTY-01", "labor by another area", shift(0, 1), QUANTITY));
  }

  /** A change where the roof has hips. */
  private static BiFunction<OpenBook, KnownCell, Optional<String>> withHips(
      BiFunction<OpenBook, KnownCell, Optional<String>> change) {
    return (book, cell) -> book.made
        .all(EDGE_TOTAL)
        .filter(total -> total.item().equals("Hip") && book.value(total.at()) > 0)
        .findFirst()
        .flatMap(hips -> change.apply(book, cell));
  }

  private static BiFunction<OpenBook, KnownCell, Optional<String>> circle() {
    return (book, cell) -> Optional.of(book.content(cell.at()).substring(1)
        + "+0*"
        + cell.at().substring(cell.at().lastIndexOf('!') + 1));
  }

  private static BiFunction<OpenBook, KnownCell, Optional<String>> addLast() {
    return (book, cell) -> {
      String text = book.content(cell.at()).replaceFirst("^=", "");
      Matcher sum = RANGE.matcher(text);
      return sum.matches()
          ? Optional.of(text + "+" + sum.group(3) + sum.group(4))
          : Optional.empty();
    };
  }

  private static BiFunction<OpenBook, KnownCell, Optional<String>> taxOnAll() {
    return (book, cell) -> {
      String text = book.content(cell.at()).replaceFirst("^=", "");
      return book.all(false, SUBTOTAL).stream()
          .filter(each -> each.item().equals("Price before tax"))
          .findFirst()
          .map(each -> each.at().substring(each.at().lastIndexOf('!') + 1)
              + text.substring(text.indexOf('*')));
    };
  }

  private static Optional<Fault.Done> over(OpenBook book, double by) {
    Meaning[] any = {
      SLOPED_AREA, PLAN_AREA, SQUARES, PACKS, AMOUNT, PITCH_FACTOR, EDGE_TOTAL, SUBTOTAL
    };
    return book.any(book.all(false, any)).findFirst().map(cell -> {
      book.type(
          cell.at(),
          by == 1 ? book.value(cell.at()) : Math.round(book.value(cell.at()) * by * 100) / 100.0);
      return Fault.Done.at(cell.at(), book.family(cell).size() >= 3);
    });
  }

  private static Optional<Fault.Done> clear(OpenBook book) {
    return book.any(book.all(false, SLOPED_AREA, SQUARES, AMOUNT, PITCH_FACTOR))
        .findFirst()
        .map(cell -> {
          book.cell(cell.at()).setBlank();
          return Fault.Done.at(cell.at(), book.family(cell).size() >= 3);
        });
  }
}
