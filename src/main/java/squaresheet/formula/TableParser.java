package squaresheet.formula;

import java.util.ArrayList;
import java.util.List;
import squaresheet.formula.Node.Span;

/** Reads structured references, {@code Lines[Length]}, {@code Lines[[#Totals],[Length]]}, {@code [@Length]}. */
final class TableParser {

  private final Tokens tokens;
  private final List<String> items = new ArrayList<>();
  private final List<String> columns = new ArrayList<>();

  TableParser(Tokens tokens) {
    this.tokens = tokens;
  }

  /** The reference whose opening square bracket the cursor stands at. */
  Node from(int start, String table) {
    int opened = tokens.at;
    if (isOtherWorkbook()) {
      return References.unsupported(tokens, start, "a reference to another workbook");
    }
    tokens.at++;
    tokens.space();
    if (tokens.take('@')) {
      items.add("#This Row");
    }
    if (tokens.peek() == '[') {
      inner(opened);
    } else if (tokens.peek() != ']') {
      add(name(opened));
    }
    tokens.space();
    if (!tokens.take(']')) {
      throw unclosed(opened);
    }
    String first = columns.isEmpty() ? "" : columns.get(0);
    String last = columns.isEmpty() ? "" : columns.get(columns.size() - 1);
    return new Node.Table(table, items, first, last, new Span(start, tokens.at));
  }

  private void inner(int opened) {
    do {
      tokens.space();
      if (!tokens.take('[')) {
        throw unclosed(opened);
      }
      add(name(opened));
      if (!tokens.take(']')) {
        throw unclosed(opened);
      }
      tokens.space();
    } while (tokens.take(',') || tokens.take(':'));
  }

  private void add(String name) {
    (name.startsWith("#") ? items : columns).add(name);
  }

  private String name(int opened) {
    StringBuilder name = new StringBuilder();
    while (tokens.peek() != ']') {
      if (tokens.atEnd() || tokens.peek() == '[') {
        throw unclosed(opened);
      }
      tokens.take('\'');
      name.append(tokens.peek());
      tokens.at++;
    }
    return name.toString();
  }

  private boolean isOtherWorkbook() {
    int close = tokens.text.indexOf(']', tokens.at);
    if (close < 0) {
      return false;
    }
    int end = tokens.wordEnd(close + 1);
    end = tokens.text.startsWith(":", end) ? tokens.wordEnd(end + 1) : end;
    boolean followed = tokens.text.startsWith("!", end);
    if (followed) {
      tokens.at = end;
    }
    return followed;
  }

  private static Complaint unclosed(int opened) {
    return new Complaint(
        opened, "the square bracket that opens here is never closed: write ']' at its end");
  }
}
