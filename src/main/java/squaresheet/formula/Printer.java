package squaresheet.formula;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import squaresheet.formula.Node.Operator;
import squaresheet.formula.Node.Sign;
import squaresheet.sheet.Address;
import squaresheet.sheet.Ref;

/** Writes a tree as formula text, with brackets only where the meaning needs them. */
class Printer {

  private static final int LOOSEST = 0;
  private static final int SIGN = 6;
  private static final int TIED = 10;
  /** Below this a number is read more easily as 1E-9 than by its zeros. */
  private static final double SMALL = 1e-6;

  final StringBuilder out = new StringBuilder();
  private final boolean prefixed;

  /** For people, or with the prefixes that files want before newer functions. */
  Printer(boolean prefixed) {
    this.prefixed = prefixed;
  }

  static String print(Node tree, boolean prefixed) {
    Printer printer = new Printer(prefixed);
    printer.write(tree, LOOSEST);
    return printer.out.toString();
  }

  final void write(Node node, int strength) {
    if (node instanceof Node.Binary binary) {
      binary(binary, strength);
    } else if (node instanceof Node.Unary unary) {
      unary(unary, strength);
    } else if (node instanceof Node.Call call) {
      call(call);
    } else if (node instanceof Node.Applied applied) {
      write(applied.function(), TIED);
      bracketed(applied.arguments());
    } else if (node instanceof Node.Reference reference) {
      reference(reference, ":");
    } else if (node instanceof Node.Array array) {
      array(array);
    } else {
      leaf(node);
    }
  }

  private void call(Node.Call call) {
    Optional<String> spelling = prefixed ? Optional.empty() : Modern.spelling(call);
    if (spelling.isEmpty()) {
      out.append(prefixed ? Catalog.prefixed(call.function()) : call.function());
      bracketed(call.arguments());
    } else if (spelling.get().contains(":")) {
      reference((Node.Reference) call.arguments().get(0), spelling.get());
    } else {
      write(call.arguments().get(0), TIED);
      out.append(spelling.get());
    }
  }

  private void bracketed(List<Node> arguments) {
    out.append('(');
    list(arguments, ',');
    out.append(')');
  }

  private void leaf(Node node) {
    if (node instanceof Node.Number number) {
      out.append(number(number.value()));
    } else if (node instanceof Node.Text text) {
      out.append('"').append(text.value().replace("\"", "\"\"")).append('"');
    } else if (node instanceof Node.Truth truth) {
      out.append(truth.value() ? "TRUE" : "FALSE");
    } else if (node instanceof Node.Fault fault) {
      out.append(fault.code());
    } else if (node instanceof Node.Name name) {
      sheet(name.sheet());
      out.append(name.name());
    } else if (node instanceof Node.Table table) {
      table(table);
    } else if (node instanceof Node.Unsupported unsupported) {
      out.append(unsupported.text());
    }
  }

  private void binary(Node.Binary node, int outside) {
    int strength = node.operator().strength();
    boolean brackets = strength < outside || node.operator() == Operator.UNION;
    out.append(brackets ? "(" : "");
    write(node.left(), strength);
    boolean wouldRunOn = node.operator() == Operator.RANGE
        && (node.left() instanceof Node.Unsupported || node.left() instanceof Node.Name);
    out.append(wouldRunOn ? " " : "").append(node.operator().spelling());
    write(node.right(), strength + 1);
    out.append(brackets ? ")" : "");
  }

  private void unary(Node.Unary node, int outside) {
    if (prefixed && node.sign() == Sign.AT) {
      out.append(Catalog.prefixed(Modern.SINGLE));
      bracketed(List.of(node.operand()));
      return;
    }
    boolean behind = node.sign() == Sign.PERCENT;
    boolean brackets = outside > SIGN;
    out.append(brackets ? "(" : "");
    if (behind) {
      write(node.operand(), SIGN);
      out.append('%');
    } else {
      out.append(node.sign().spelling());
      boolean percent = node.operand() instanceof Node.Unary inner && inner.sign() == Sign.PERCENT;
      write(node.operand(), percent ? SIGN + 1 : SIGN);
    }
    out.append(brackets ? ")" : "");
  }

  private void list(List<Node> nodes, char between) {
    for (int i = 0; i < nodes.size(); i++) {
      if (i > 0) {
        out.append(between);
      }
      write(nodes.get(i), LOOSEST);
    }
  }

  private void array(Node.Array array) {
    out.append('{');
    for (int i = 0; i < array.rows().size(); i++) {
      out.append(i > 0 ? ";" : "");
      list(array.rows().get(i), ',');
    }
    out.append('}');
  }

  void sheet(String sheet) {
    if (!sheet.isEmpty()) {
      out.append(Address.quoted(sheet)).append('!');
    }
  }

  void reference(Node.Reference node, String colon) {
    sheet(node.sheet());
    corner(node.first(), node.extent());
    if (!node.isCell()) {
      out.append(colon);
      corner(node.last(), node.extent());
    }
  }

  void corner(Node.Corner corner, Node.Extent extent) {
    if (extent != Node.Extent.ROWS) {
      out.append(corner.columnFixed() ? "$" : "").append(Ref.letters(corner.column()));
    }
    if (extent != Node.Extent.COLUMNS) {
      out.append(corner.rowFixed() ? "$" : "").append(corner.row() + 1);
    }
  }

  private void table(Node.Table table) {
    out.append(table.table()).append('[');
    boolean one = isBare(table.firstColumn())
        && ((table.items().isEmpty() && table.firstColumn().equals(table.lastColumn()))
            || (table.items().size() == 1 && table.firstColumn().isEmpty()));
    if (one) {
      table.items().forEach(out::append);
      out.append(escaped(table.firstColumn()));
    } else {
      out.append(
          String.join(",", table.items().stream().map(item -> "[" + item + "]").toList()));
      if (!table.firstColumn().isEmpty()) {
        out.append(table.items().isEmpty() ? "" : ",");
        out.append('[').append(escaped(table.firstColumn())).append(']');
        if (!table.firstColumn().equals(table.lastColumn())) {
          out.append(":[").append(escaped(table.lastColumn())).append(']');
        }
      }
    }
    out.append(']');
  }

  /** Whether a column's name may stand in one pair of brackets, where spaces before it would be lost. */
  private static boolean isBare(String column) {
    return column.equals(column.stripLeading());
  }

  private static String escaped(String column) {
    return column.replaceAll("([\\[\\]#'@])", "'$1");
  }

  /** A number of 0 or more as formulas spell it; reads back as the same double. */
  static String number(double value) {
    if (value == Math.rint(value) && value < 1e15) {
      return Long.toString((long) value);
    }
    BigDecimal digits = new BigDecimal(Double.toString(value)).stripTrailingZeros();
    if (value < SMALL) {
      return digits.toString();
    }
    String plain = digits.toPlainString();
    return plain.length() <= 20 ? plain : Double.toString(value);
  }
}
