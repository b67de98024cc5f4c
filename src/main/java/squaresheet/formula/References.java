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
    if (tokens.peek() == ':') {
      Node block = block(tokens, sheet, start, first);
      if (block != null) {
        return block;
      }
    }
    return new Node.Reference(sheet, first, first, Extent.CELL, new Span(start, end));
  }

  private static Node block(Tokens tokens, String sheet, int start, Corner first) {
    int from = tokens.at + 1;
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
    return new Node.Reference(sheet, first, last, Extent.BLOCK, new Span(start, end));
  }

  private static Node columns(Tokens tokens, String sheet, int start, int end) {
    if (end >= tokens.text.length() || tokens.text.charAt(end) != ':') {
      return null;
    }
    int to = tokens.wordEnd(end + 1);
    char next = to < tokens.text.length() ? tokens.text.charAt(to) : '\0';
    int first = column(tokens.text, start, end);
    int last = column(tokens.text, end + 1, to);
    if (first < 0 || last < 0 || next == '!' || next == '(') {
      return null;
    }
    tokens.at = to;
    return new Node.Reference(
        sheet,
        new Corner(0, true, first, tokens.text.charAt(start) == '$'),
        new Corner(ROWS - 1, true, last, tokens.text.charAt(end + 1) == '$'),
        Extent.COLUMNS,
        new Span(start, to));
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
    if (middle < 0 || middle >= tokens.text.length() || tokens.text.charAt(middle) != ':') {
      return null;
    }
    int end = rowEnd(tokens.text, middle + 1);
    if (end < 0) {
      return null;
    }
    Corner first = new Corner(row(tokens.text, start, middle), tokens.peek() == '$', 0, true);
    boolean fixed = tokens.text.charAt(middle + 1) == '$';
    Corner last = new Corner(row(tokens.text, middle + 1, end), fixed, COLUMNS - 1, true);
    if (first.row() < 0 || last.row() < 0) {
      return null;
    }
    tokens.at = end;
    return new Node.Reference(sheet, first, last, Extent.ROWS, new Span(start, end));
  }

  /** Whether whole rows such as {@code 7:9} stand at the cursor. */
  static boolean opensRows(Tokens tokens) {
    int middle = rowEnd(tokens.text, tokens.at);
    return middle >= 0
        && middle < tokens.text.length()
        && tokens.text.charAt(middle) == ':'
        && rowEnd(tokens.text, middle + 1) >= 0;
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

  /** Whether the colon at the cursor joins two sheets, as in {@code First:Last!A1}. */
  static boolean threeDimensional(Tokens tokens) {
    int end = tokens.wordEnd(tokens.at + 1);
    return end < tokens.text.length() && tokens.text.charAt(end) == '!' && end > tokens.at + 1;
  }

  /** What is passed over up to the end of the reference, as not followed. */
  static Node unsupported(Tokens tokens, int start, String reason) {
    int end = tokens.at;
    while (end < tokens.text.length() && continuesReference(tokens.text.charAt(end))) {
      end++;
    }
    tokens.at = end;
    return new Node.Unsupported(tokens.text.substring(start, end), reason, new Span(start, end));
  }

  private static boolean continuesReference(char c) {
    return Tokens.continuesWord(c) || c == '$' || c == ':' || c == '!' || c == '#';
  }

  static Node spanned(Node node, int start, int end) {
    Node.Reference reference = (Node.Reference) node;
    return new Node.Reference(
        reference.sheet(),
        reference.first(),
        reference.last(),
        reference.extent(),
        new Span(start, end));
  }
}
