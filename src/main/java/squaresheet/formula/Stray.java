package squaresheet.formula;

/** Finds the sentence for a character that nothing in the grammar expects where it stands. */
final class Stray {

  private Stray() {}

  /** For what follows a complete expression. */
  static Complaint after(Tokens tokens, Node left) {
    int at = tokens.at;
    char c = tokens.peek();
    if (c == ')') {
      return new Complaint(
          at, "this bracket closes nothing: take it out, or write '(' where it should open");
    }
    if (c == ',') {
      return new Complaint(
          at,
          "a comma stands outside a function's brackets: write '.' for a "
              + "decimal point, or take it out");
    }
    if (c == ';') {
      return new Complaint(at, "';' stands outside a function's brackets: take it out");
    }
    return sideBySide(tokens, left);
  }

  /** For an opening bracket that is not closed where the arguments end. */
  static Complaint unclosed(Tokens tokens, int opened) {
    char c = tokens.peek();
    if (tokens.atEnd()) {
      return new Complaint(
          opened, "the bracket that opens here is never closed: write ')' at its end");
    }
    if (c == ';' || c == ',') {
      return new Complaint(tokens.at, "'" + c + "' does not belong here: take it out");
    }
    return sideBySide(tokens, null);
  }

  private static Complaint sideBySide(Tokens tokens, Node left) {
    int at = tokens.at;
    char c = tokens.peek();
    boolean value = Tokens.startsWord(c) || Tokens.isDigit(c) || "\"'$#{([.".indexOf(c) >= 0;
    if (!value) {
      return unknown(at, c);
    }
    if (c == '\'' || (c == '"' && left instanceof Node.Number)) {
      return new Complaint(
          at,
          "feet and inch marks are not read in a formula: write 24.5 for " + "24' 6\", or 24+6/12");
    }
    if (c == '(' && left instanceof Node.Number) {
      return new Complaint(at, "a bracket follows a number: write '*' between them to multiply");
    }
    return sideBySide(at);
  }

  /** For two values with nothing between them. */
  static Complaint sideBySide(int at) {
    return new Complaint(
        at, "two values stand side by side: write an operator such as '+' or '*' between them");
  }

  /** For a character that no formula holds. */
  static Complaint unknown(int at, char c) {
    return switch (c) {
      case '×', '·' ->
        new Complaint(at, "'" + c + "' is not an operator here: write '*' to multiply");
      case '÷' -> new Complaint(at, "'÷' is not an operator here: write '/' to divide");
      case '–', '−', '—' -> new Complaint(at, "this is a long dash, not a minus: write '-'");
      case '“', '”', '„' -> new Complaint(at, "this is a curly quote: write \" around a text");
      case '‘', '’' ->
        new Complaint(at, "this is a curly apostrophe: write ' around a sheet's name");
      case '≤' -> new Complaint(at, "'≤' is not an operator here: write '<='");
      case '≥' -> new Complaint(at, "'≥' is not an operator here: write '>='");
      case '≠' -> new Complaint(at, "'≠' is not an operator here: write '<>'");
      case '√' -> new Complaint(at, "'√' is not an operator here: write SQRT(...)");
      case '²' -> new Complaint(at, "'²' is not an operator here: write '^2'");
      case '³' -> new Complaint(at, "'³' is not an operator here: write '^3'");
      case '!' ->
        new Complaint(
            at,
            "'!' follows no sheet's name: write the sheet's name before it, "
                + "or NOT(...) to turn a condition round");
      case '|' -> new Complaint(at, "'|' is not an operator here: write OR(...)");
      case '~' ->
        new Complaint(at, "'~' is not an operator here: write ',' between two references");
      case ']' -> new Complaint(at, "this square bracket closes nothing: take it out");
      case '}' -> new Complaint(at, "this curly bracket closes nothing: take it out");
      default ->
        new Complaint(
            at, "'" + c + "' does not belong in a formula: take it out, or put \" around a text");
    };
  }

  /** For a place where a value must stand and none does. */
  static Complaint noValue(Tokens tokens) {
    int at = tokens.at;
    char c = tokens.peek();
    if (tokens.atEnd()) {
      return new Complaint(at, "a value must stand here, but the formula ends");
    }
    if (c == ')') {
      return new Complaint(
          at, "a value must stand before this bracket: write it, or take the " + "brackets out");
    }
    if (c == '<' || c == '>' || c == '=') {
      return comparison(tokens);
    }
    if (c == '&' && at > 0 && tokens.text.charAt(at - 1) == '&') {
      return new Complaint(at - 1, "'&&' is not an operator here: write AND(...)");
    }
    if ("*/^&%".indexOf(c) >= 0) {
      return new Complaint(
          at, "a value must stand before '" + c + "': write it, or take the '" + c + "' out");
    }
    if (c == ',' || c == ';' || c == ':') {
      return new Complaint(
          at, "a value must stand before '" + c + "': write it, or take the '" + c + "' out");
    }
    return unknown(at, c);
  }

  private static Complaint comparison(Tokens tokens) {
    int at = tokens.at;
    char before = at == 0 ? '\0' : tokens.text.charAt(at - 1);
    if (tokens.peek() == '=' && before == '=') {
      return new Complaint(at, "'==' is not an operator here: write one '=' to compare");
    }
    if (tokens.peek() == '>' && before == '=') {
      return new Complaint(at - 1, "'=>' is not an operator here: write '>='");
    }
    if (tokens.peek() == '<' && before == '=') {
      return new Complaint(at - 1, "'=<' is not an operator here: write '<='");
    }
    return new Complaint(
        at, "a value must stand before '" + tokens.peek() + "': write what is compared");
  }
}
