package squaresheet.formula;

import java.util.List;
import java.util.regex.Pattern;

/** A cursor over the text of a formula, and the small words read at it. */
final class Tokens {

  private static final List<String> FAULTS = List.of(
      "#NULL!",
      "#DIV/0!",
      "#VALUE!",
      "#REF!",
      "#NAME?",
      "#NUM!",
      "#N/A",
      "#GETTING_DATA",
      "#SPILL!",
      "#CALC!",
      "#FIELD!",
      "#BLOCKED!",
      "#CONNECT!",
      "#UNKNOWN!",
      "#EXTERNAL!",
      "#PYTHON!",
      "#TIMEOUT!",
      "#BUSY!");
  private static final Pattern WORD_START = Pattern.compile("[\\p{L}_\\\\]");

  final String text;
  int at;

  Tokens(String text) {
    this.text = text;
  }

  boolean atEnd() {
    return at >= text.length();
  }

  char peek() {
    return at < text.length() ? text.charAt(at) : '\0';
  }

  char peek(int ahead) {
    return at + ahead < text.length() ? text.charAt(at + ahead) : '\0';
  }

  /** A word with its plain letters as capitals; others stay, because some have capitals that are two letters. */
  static String capitals(String word) {
    StringBuilder capitals = new StringBuilder(word.length());
    for (int i = 0; i < word.length(); i++) {
      char c = word.charAt(i);
      capitals.append(c >= 'a' && c <= 'z' ? (char) (c - 'a' + 'A') : c);
    }
    return capitals.toString();
  }

  /** Passes over spaces and line ends; whether there were any. */
  boolean space() {
    int from = at;
    while (at < text.length() && isSpace(text.charAt(at))) {
      at++;
    }
    return at > from;
  }

  private static boolean isSpace(char c) {
    return c == ' ' || c == '\t' || c == '\n' || c == '\r' || c == '\u00a0';
  }

  /** Passes over the character if it is the next one. */
  boolean take(char c) {
    if (peek() == c) {
      at++;
      return true;
    }
    return false;
  }

  static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  static boolean isLetter(char c) {
    return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
  }

  static boolean startsWord(char c) {
    return isLetter(c)
        || c == '_'
        || c == '\\'
        || (c > 127 && WORD_START.matcher(String.valueOf(c)).matches());
  }

  static boolean continuesWord(char c) {
    return isLetter(c)
        || isDigit(c)
        || c == '_'
        || c == '.'
        || c == '\\'
        || c == '?'
        || (c > 127 && Character.isLetterOrDigit(c));
  }

  /**
   * The end of the word (letters, digits, dots, underscores, dollars) that begins at a place; a dot that belongs to a colon
   * or to a field's name is none of its own.
   */
  int wordEnd(int from) {
    int end = from;
    while (end < text.length() && (continuesWord(text.charAt(end)) || text.charAt(end) == '$')) {
      char next = end + 1 < text.length() ? text.charAt(end + 1) : '\0';
      if (text.charAt(end) == '.' && (next == ':' || next == '[')) {
        return end;
      }
      end++;
    }
    return end;
  }

  /**
   * How long the colon at a place is: {@code :}, or {@code .:}, {@code :.} and {@code .:.}, which leave out empty cells at the
   * ends; 0 where none is.
   */
  int colon(int place) {
    int colon = text.startsWith(".:", place) ? place + 1 : place;
    if (!text.startsWith(":", colon)) {
      return 0;
    }
    return colon + 1 - place + (text.startsWith(".", colon + 1) ? 1 : 0);
  }

  /** A number, which the cursor stands at. */
  double number() {
    int from = at;
    digits();
    if (take('.')) {
      digits();
    }
    int mantissaEnd = at;
    if (peek() == 'e' || peek() == 'E') {
      at++;
      if (!take('+')) {
        take('-');
      }
      if (isDigit(peek())) {
        digits();
      } else {
        at = mantissaEnd;
      }
    }
    double value = Double.parseDouble(text.substring(from, at));
    if (Double.isInfinite(value)) {
      throw new Complaint(
          from,
          "the number " + text.substring(from, at)
              + " is too large: a number must be under 1.8E+308");
    }
    return value;
  }

  private void digits() {
    while (isDigit(peek())) {
      at++;
    }
  }

  /** A text between double quotes, which the cursor stands at. */
  String quoted() {
    int from = at;
    String inside = between('"');
    if (inside == null) {
      throw new Complaint(from, "the text that begins here is never closed: write \" at its end");
    }
    return inside;
  }

  /** A sheet's name between apostrophes, which the cursor stands at. */
  String apostrophes() {
    int from = at;
    String inside = between('\'');
    if (inside == null) {
      throw new Complaint(
          from, "the sheet name that begins here is never closed: write ' at its end, then !");
    }
    return inside;
  }

  private String between(char quote) {
    StringBuilder inside = new StringBuilder();
    at++;
    while (!atEnd()) {
      char c = text.charAt(at++);
      if (c != quote) {
        inside.append(c);
      } else if (take(quote)) {
        inside.append(quote);
      } else {
        return inside.toString();
      }
    }
    return null;
  }

  /** The spreadsheet error the cursor stands at. */
  String fault() {
    for (String code : FAULTS) {
      if (text.regionMatches(true, at, code, 0, code.length())) {
        at += code.length();
        return code;
      }
    }
    throw new Complaint(
        at, "'#' does not begin a known error: write one such as #N/A, or take it out");
  }
}
