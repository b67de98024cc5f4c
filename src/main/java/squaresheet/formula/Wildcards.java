package squaresheet.formula;

import java.util.ArrayList;
import java.util.List;

/**
 * The texts that a text with * for any run, ? for any one, and ~ before a plain one of these, stands for, without regard to
 * case. Matching goes once through the text, however many stars there are.
 */
final class Wildcards {

  /** Stands for any one character; no text holds it. */
  private static final char ANY = '\uFFFF';

  /** What stands between the stars; one more than there are stars. */
  private final List<String> pieces;

  private Wildcards(List<String> pieces) {
    this.pieces = pieces;
  }

  static Wildcards of(String text) {
    List<String> pieces = new ArrayList<>();
    StringBuilder piece = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean plain = c == '~' && i + 1 < text.length() && "*?~".indexOf(text.charAt(i + 1)) >= 0;
      if (c == '*') {
        pieces.add(piece.toString());
        piece.setLength(0);
      } else {
        piece.append(plain ? text.charAt(++i) : c == '?' ? ANY : folded(c));
      }
    }
    pieces.add(piece.toString());
    return new Wildcards(pieces);
  }

  private static char folded(char c) {
    return Character.toLowerCase(Character.toUpperCase(c));
  }

  /** Whether this stands for the whole text. */
  boolean matches(String text) {
    String first = pieces.get(0);
    String last = pieces.get(pieces.size() - 1);
    if (pieces.size() == 1) {
      return text.length() == first.length() && isAt(text, 0, first);
    }
    int end = text.length() - last.length();
    if (end < first.length() || !isAt(text, 0, first) || !isAt(text, end, last)) {
      return false;
    }
    int after = through(text, first.length(), pieces.subList(1, pieces.size() - 1));
    return after >= 0 && after <= end;
  }

  /** Where in the text the first part begins that this stands for, from a place on; negative where there is none. */
  int find(String text, int from) {
    int start = next(text, from, pieces.get(0));
    boolean found = start >= 0
        && through(text, start + pieces.get(0).length(), pieces.subList(1, pieces.size())) >= 0;
    return found ? start : -1;
  }

  /** The place behind all pieces, each at its first place behind the one before; negative where one is missing. */
  private static int through(String text, int from, List<String> pieces) {
    int at = from;
    for (String piece : pieces) {
      int found = next(text, at, piece);
      if (found < 0) {
        return -1;
      }
      at = found + piece.length();
    }
    return at;
  }

  private static int next(String text, int from, String piece) {
    for (int at = from; at + piece.length() <= text.length(); at++) {
      if (isAt(text, at, piece)) {
        return at;
      }
    }
    return -1;
  }

  private static boolean isAt(String text, int at, String piece) {
    for (int i = 0; i < piece.length(); i++) {
      char c = piece.charAt(i);
      if (c != ANY && c != folded(text.charAt(at + i))) {
        return false;
      }
    }
    return true;
  }
}
