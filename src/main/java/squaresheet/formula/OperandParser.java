package squaresheet.formula;

import java.util.ArrayList;
import java.util.List;
import squaresheet.formula.Node.Corner;
import squaresheet.formula.Node.Extent;
import squaresheet.formula.Node.Operator;
import squaresheet.formula.Node.Span;

/** Reads what stands between the operators: constants, references, names, functions and brackets. */
final class OperandParser {

  private final Parser parser;
  private final Tokens tokens;

  OperandParser(Parser parser, Tokens tokens) {
    this.parser = parser;
    this.tokens = tokens;
  }

  /** An operand, and the references that colons and spaces tie to it. */
  Node references() {
    Node left = operand();
    while (Parser.isReference(left)) {
      int from = tokens.at;
      boolean spaced = tokens.space();
      if (tokens.colon(tokens.at) > 0) {
        left = range(left);
      } else if (spaced && opensReference(left)) {
        left = binary(Operator.INTERSECTION, left, shared());
      } else {
        tokens.at = from;
        return left;
      }
    }
    return left;
  }

  /** Two references with the colon at the cursor between them. */
  private Node range(Node left) {
    int colon = tokens.at;
    tokens.at += tokens.colon(colon);
    String spelled = tokens.text.substring(colon, tokens.at);
    tokens.space();
    return Modern.range(spelled, binary(Operator.RANGE, left, operand()));
  }

  private Node operand() {
    return new Modern(parser, tokens).tied(tokens.at, primary());
  }

  private static Node binary(Operator operator, Node left, Node right) {
    return new Node.Binary(
        operator, left, right, new Span(left.at().start(), right.at().end()));
  }

  /** What stands after a space that means "what both share": a reference, or it was a slip. */
  private Node shared() {
    int start = tokens.at;
    Node right = intersected();
    if (!Parser.isReference(right)) {
      throw Stray.sideBySide(start);
    }
    return right;
  }

  private Node intersected() {
    Node right = operand();
    while (Parser.isReference(right)) {
      int from = tokens.at;
      tokens.space();
      if (tokens.colon(tokens.at) == 0) {
        tokens.at = from;
        return right;
      }
      right = range(right);
    }
    return right;
  }

  private boolean opensReference(Node left) {
    char c = tokens.peek();
    if (c == '(') {
      if (left instanceof Node.Name name) {
        throw new Complaint(
            tokens.at,
            "a space stands between " + name.name() + " and its bracket: take the space out");
      }
      return !(left instanceof Node.Call);
    }
    return Tokens.startsWord(c)
        || c == '$'
        || (Tokens.isDigit(c) && References.opensRows(tokens))
        || (c == '#' && References.isFaultNext(tokens))
        || (c == '\'' && tokens.text.indexOf('!', tokens.at) > 0);
  }

  private Node primary() {
    int start = tokens.at;
    char c = tokens.peek();
    if (Tokens.startsWord(c) || c == '$') {
      return word(start);
    }
    if (Tokens.isDigit(c) || (c == '.' && Tokens.isDigit(tokens.peek(1)))) {
      return number(start);
    }
    return switch (c) {
      case '"' -> new Node.Text(tokens.quoted(), new Span(start, tokens.at));
      case '#' -> References.fault(tokens);
      case '(' -> brackets(start);
      case '{' -> array(start);
      case '\'' -> onSheet(start, tokens.apostrophes());
      case '[' -> new TableParser(tokens).from(start, "");
      default -> throw Stray.noValue(tokens);
    };
  }

  private Node brackets(int start) {
    tokens.at++;
    return parser.bracketed(start);
  }

  private Node number(int start) {
    int end = start;
    while (end < tokens.text.length() && Tokens.isDigit(tokens.text.charAt(end))) {
      end++;
    }
    if (tokens.colon(end) > 0) {
      Node rows = References.rows(tokens, "");
      if (rows != null) {
        return rows;
      }
    }
    double value = tokens.number();
    return new Node.Number(value, new Span(start, tokens.at));
  }

  private Node word(int start) {
    int end = tokens.wordEnd(start);
    char next = end < tokens.text.length() ? tokens.text.charAt(end) : '\0';
    String word = tokens.text.substring(start, end);
    if (next == '(') {
      return call(start, word, end);
    }
    if (next == '!') {
      tokens.at = end;
      return onSheet(start, word);
    }
    if (next == '[') {
      tokens.at = end;
      return new TableParser(tokens).from(start, word);
    }
    Node reference = References.read(tokens, "");
    if (reference != null) {
      return reference;
    }
    tokens.at = end;
    if (word.indexOf('$') >= 0) {
      throw new Complaint(
          start + word.indexOf('$'),
          "'$' holds a row or a column of a cell such as " + "$B$7: take it out of '" + word + "'");
    }
    return named(start, word);
  }

  private Node named(int start, String word) {
    Span span = new Span(start, tokens.at);
    if (word.equalsIgnoreCase("TRUE") || word.equalsIgnoreCase("FALSE")) {
      return new Node.Truth(word.equalsIgnoreCase("TRUE"), span);
    }
    if (tokens.peek() == ':' && References.threeDimensional(tokens)) {
      return References.unsupported(tokens, start, "a reference through several sheets");
    }
    return new Node.Name("", word, span);
  }

  private Node call(int start, String word, int end) {
    tokens.at = end + 1;
    String function = Tokens.capitals(word);
    while (function.startsWith("_XLFN.") || function.startsWith("_XLWS.")) {
      function = function.substring("_XLFN.".length());
    }
    if (function.indexOf('$') >= 0) {
      throw new Complaint(start, "a function's name holds no '$': take it out of '" + word + "'");
    }
    List<Node> arguments = parser.arguments(end, function);
    Span span = new Span(start, tokens.at);
    Catalog.checkCount(function, arguments.size(), span);
    if (function.equals(Modern.SINGLE) && arguments.size() == 1) {
      return new Node.Unary(Node.Sign.AT, arguments.get(0), span);
    }
    return new Node.Call(function, arguments, span);
  }

  private Node onSheet(int start, String sheet) {
    if (!tokens.take('!')) {
      throw new Complaint(
          tokens.at,
          "a sheet's name must be followed by '!': write it as "
              + squaresheet.sheet.Address.quoted(sheet) + "!A1");
    }
    if (sheet.indexOf('[') >= 0 || sheet.indexOf(':') >= 0) {
      String reason = sheet.indexOf('[') >= 0
          ? "a reference to another workbook"
          : "a reference through several sheets";
      return References.unsupported(tokens, start, reason);
    }
    if (tokens.peek() == '#') {
      Node fault = References.fault(tokens);
      return new Node.Fault(((Node.Fault) fault).code(), new Span(start, tokens.at));
    }
    Node reference = References.read(tokens, sheet);
    if (reference != null) {
      return References.spanned(reference, start, tokens.at);
    }
    int end = tokens.wordEnd(tokens.at);
    String name = tokens.text.substring(tokens.at, end);
    if (name.isEmpty()) {
      throw new Complaint(
          tokens.at,
          "a cell must follow '!': write it as " + squaresheet.sheet.Address.quoted(sheet) + "!A1");
    }
    tokens.at = end;
    return new Node.Name(sheet, name, new Span(start, end));
  }

  private Node array(int start) {
    tokens.at++;
    List<List<Node>> rows = new ArrayList<>();
    do {
      List<Node> row = new ArrayList<>();
      do {
        tokens.space();
        row.add(constant());
        tokens.space();
      } while (tokens.take(','));
      if (!rows.isEmpty() && rows.get(0).size() != row.size()) {
        throw new Complaint(
            start,
            "the rows of an array must be of one length, but this one has " + row.size() + " after "
                + rows.get(0).size() + ": even them out");
      }
      rows.add(row);
    } while (tokens.take(';'));
    if (!tokens.take('}')) {
      throw new Complaint(start, "the array that opens here is never closed: write '}' at its end");
    }
    return new Node.Array(rows, new Span(start, tokens.at));
  }

  private Node constant() {
    int start = tokens.at;
    boolean minus = tokens.take('-');
    if (!minus) {
      tokens.take('+');
    }
    Node value = Tokens.isDigit(tokens.peek()) || tokens.peek() == '.' || minus
        ? new Node.Number(numberInArray(), new Span(tokens.at, tokens.at))
        : constantWord(start);
    return minus ? new Node.Unary(Node.Sign.MINUS, value, new Span(start, tokens.at)) : value;
  }

  private double numberInArray() {
    boolean point = tokens.peek() == '.' && Tokens.isDigit(tokens.peek(1));
    if (!Tokens.isDigit(tokens.peek()) && !point) {
      throw new Complaint(tokens.at, "an array holds constants only: write a number here");
    }
    return tokens.number();
  }

  private Node constantWord(int start) {
    if (tokens.peek() == '"') {
      return new Node.Text(tokens.quoted(), new Span(start, tokens.at));
    }
    if (tokens.peek() == '#') {
      return new Node.Fault(tokens.fault(), new Span(start, tokens.at));
    }
    int end = tokens.wordEnd(start);
    String word = tokens.text.substring(start, end);
    if (!word.equalsIgnoreCase("TRUE") && !word.equalsIgnoreCase("FALSE")) {
      throw new Complaint(
          start, "an array holds constants only: write a number, a text in \" or TRUE here");
    }
    tokens.at = end;
    return new Node.Truth(word.equalsIgnoreCase("TRUE"), new Span(start, end));
  }

  /** A corner spelled like {@code $B7}, or nothing. */
  static Corner corner(String text, int from, int to) {
    int at = from;
    boolean columnFixed = at < to && text.charAt(at) == '$';
    at += columnFixed ? 1 : 0;
    int column = 0;
    int letters = 0;
    while (at < to && Tokens.isLetter(text.charAt(at))) {
      column = column * 26 + Character.toUpperCase(text.charAt(at++)) - 'A' + 1;
      if (++letters > 3) {
        return null;
      }
    }
    boolean rowFixed = at < to && text.charAt(at) == '$';
    at += rowFixed ? 1 : 0;
    int digits = at;
    int row = 0;
    while (at < to && Tokens.isDigit(text.charAt(at)) && at - digits < 8) {
      row = row * 10 + text.charAt(at++) - '0';
    }
    boolean whole = at == to && letters > 0 && row > 0 && text.charAt(digits) != '0';
    return whole && column <= References.COLUMNS && row <= References.ROWS
        ? new Corner(row - 1, rowFixed, column - 1, columnFixed)
        : null;
  }

  static Extent cellOrBlock(boolean one) {
    return one ? Extent.CELL : Extent.BLOCK;
  }
}
