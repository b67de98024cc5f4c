package squaresheet.formula;

import squaresheet.formula.Node.Corner;
import squaresheet.formula.Node.Extent;
import squaresheet.formula.Node.Span;

/** Reads cells, blocks, whole columns and whole rows. */
final class References {

  static final int ROWS = 1 << 20;
  static final int COLUMNS = 1 << 14;

  private References() {}

  /** The reference the cursor stands at, or nothing, the cursor unmoved. */
  static Node read(Tokens tokens, String sheet) {
    int start = tokens.at;
    int end = tokens.wordEnd(start);
    Corner first = OperandParser.corner(tokens.text, start, end);
    if (first == null) {
      Node columns = columns(tokens, sheet, start, end);
      return columns == null ? rows(tokens, sheet) : columns;
    }
    tokens.at = end;
    if (tokens.colon(end) > 0) {
      Node block = block(tokens, sheet, start, first);
      if (block != null) {
        return block;
      }
    }
    return new Node.Reference(sheet, first, first, Extent.CELL, new Span(start, end));
  }

  private static Node block(Tokens tokens, String sheet, int start, Corner first) {
    int colon = tokens.at;
    int from = colon + tokens.colon(colon);
    String spelled = tokens.text.substring(colon, from);
    int end = tokens.wordEnd(from);
    char next = end < tokens.text.length() ? tokens.text.charAt(end) : '\0';
    if (next == '!' && tokens.text.substring(from, end).equalsIgnoreCase(sheet)) {
      from = end + 1;
      end = tokens.wordEnd(from);
      next = end < tokens.text.length() ? tokens.text.charAt(end) : '\0';
    }
    Corner last = next == '(' || next == '!' ? null : OperandParser.corner(tokens.text, from, end);
    if (last == null) {
      return null;
    }
    tokens.at = end;
    return Modern.range(
        spelled, new Node.Reference(sheet, first, last, Extent.BLOCK, new Span(start, end)));
  }

  private static Node columns(Tokens tokens, String sheet, int start, int end) {
    int from = end + tokens.colon(end);
    if (from == end) {
      return null;
    }
    int to = tokens.wordEnd(from);
    char next = to < tokens.text.length() ? tokens.text.charAt(to) : '\0';
    int first = column(tokens.text, start, end);
    int last = column(tokens.text, from, to);
    if (first < 0 || last < 0 || next == '!' || next == '(') {
      return null;
    }
    tokens.at = to;
    return Modern.range(
        tokens.text.substring(end, from),
        new Node.Reference(
            sheet,
            new Corner(0, true, first, tokens.text.charAt(start) == '$'),
            new Corner(ROWS - 1, true, last, tokens.text.charAt(from) == '$'),
            Extent.COLUMNS,
            new Span(start, to)));
  }

  private static int column(String text, int from, int to) {
    int at = from < to && text.charAt(from) == '$' ? from + 1 : from;
    int column = 0;
    for (int i = at; i < to; i++) {
      if (!Tokens.isLetter(text.charAt(i)) || i - at >= 3) {
        return -1;
      }
      column = column * 26 + Character.toUpperCase(text.charAt(i)) - 'A' + 1;
    }
    return column > 0 && column <= COLUMNS ? column - 1 : -1;
  }

  /** Whole rows such as {@code 7:9}, or nothing, the cursor unmoved. */
  static Node rows(Tokens tokens, String sheet) {
    int start = tokens.at;
    int middle = rowEnd(tokens.text, start);
    int from = middle < 0 ? -1 : middle + tokens.colon(middle);
    int end = from == middle ? -1 : rowEnd(tokens.text, from);
    if (end < 0) {
      return null;
    }
    Corner first = new Corner(row(tokens.text, start, middle), tokens.peek() == '$', 0, true);
    boolean fixed = tokens.text.charAt(from) == '$';
    Corner last = new Corner(row(tokens.text, from, end), fixed, COLUMNS - 1, true);
    if (first.row() < 0 || last.row() < 0) {
      return null;
    }
    tokens.at = end;
    return Modern.range(
        tokens.text.substring(middle, from),
        new Node.Reference(sheet, first, last, Extent.ROWS, new Span(start, end)));
  }

  /** Whether whole rows such as {@code 7:9} stand at the cursor. */
  static boolean opensRows(Tokens tokens) {
    int middle = rowEnd(tokens.text, tokens.at);
    return middle >= 0
        && tokens.colon(middle) > 0
        && rowEnd(tokens.text, middle + tokens.colon(middle)) >= 0;
  }

  private static int rowEnd(String text, int from) {
    int at = from < text.length() && text.charAt(from) == '$' ? from + 1 : from;
    int digits = at;
    while (at < text.length() && Tokens.isDigit(text.charAt(at))) {
      at++;
    }
    return at == digits || at - digits > 7 ? -1 : at;
  }

  private static int row(String text, int from, int to) {
    int at = text.charAt(from) == '$' ? from + 1 : from;
    int row = Integer.parseInt(text.substring(at, to));
    return row >= 1 && row <= ROWS ? row - 1 : -1;
  }

  /** Whether a spreadsheet error such as {@code #REF!} follows. */
  static boolean isFaultNext(Tokens tokens) {
    return Tokens.isLetter(tokens.peek(1));
  }

  /** A spreadsheet error; a cell after {@code #REF!} is one of a sheet that was deleted, and no part of its own. */
  static Node fault(Tokens tokens) {
    int start = tokens.at;
    String code = tokens.fault();
    while (code.equals("#REF!") && continuesReference(tokens.peek())) {
      tokens.at++;
    }
    return new Node.Fault(code, new Span(start, tokens.at));
  }

  /** Whether the colon at the cursor joins two sheets, as in {@code First:Last!A1}. */
  static boolean threeDimensional(Tokens tokens) {
    int end = tokens.wordEnd(tokens.at + 1);
    return end < tokens.text.length() && tokens.text.charAt(end) == '!' && end > tokens.at + 1;
  }

  /** What is passed over up to the end of the reference, as not followed. */
  static Node unsupported(Tokens tokens, int start, String reason) {
    while (passed(tokens)) {
      // on to what follows
    }
    return new Node.Unsupported(
        tokens.text.substring(start, tokens.at), reason, new Span(start, tokens.at));
  }

  /** Whether one more part of a reference stood at the cursor: a letter, a quoted item or a table's columns. */
  private static boolean passed(Tokens tokens) {
    int from = tokens.at;
    if (tokens.peek() == '\'' && from > 0 && tokens.text.charAt(from - 1) == '!') {
      tokens.apostrophes();
    } else if (tokens.peek() == '[') {
      new TableParser(tokens).from(from, "");
    } else if (continuesReference(tokens.peek())) {
      tokens.at++;
    }
    return tokens.at > from;
  }

  private static boolean continuesReference(char c) {
    return Tokens.continuesWord(c) || c == '$' || c == ':' || c == '!' || c == '#';
  }

  static Node spanned(Node node, int start, int end) {
    if (!(node instanceof Node.Reference reference)) {
      return node;
    }
    return new Node.Reference(
        reference.sheet(),
        reference.first(),
        reference.last(),
        reference.extent(),
        new Span(start, end));
  }
}
