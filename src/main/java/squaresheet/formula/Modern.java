package squaresheet.formula;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import squaresheet.formula.Node.Span;

/**
 * What newer spreadsheet programs write beside references and functions: {@code A1#}, {@code A.:.A}, {@code @A1:A9}, {@code
 * A1.[Price]} and {@code LAMBDA(x,x+1)(5)}. In files these are functions; they are read as such, so that what they read is
 * known and fills move them, and are followed no further.
 */
final class Modern {

  /** The function that files write for {@code @}. */
  static final String SINGLE = "SINGLE";

  private static final String SPILLED = "ANCHORARRAY";
  private static final String FIELD = "FIELDVALUE";
  private static final Map<String, String> TRIMMED =
      Map.of(".:", "_TRO_LEADING", ":.", "_TRO_TRAILING", ".:.", "_TRO_ALL");
  /** Functions that hand on a function where one stands in them. */
  private static final Set<String> HANDING_ON =
      Set.of("IF", "IFS", "SWITCH", "CHOOSE", "IFERROR", "IFNA", "INDEX", "XLOOKUP");

  private final Parser parser;
  private final Tokens tokens;

  Modern(Parser parser, Tokens tokens) {
    this.parser = parser;
    this.tokens = tokens;
  }

  /** The range as it is spelled: with dots at its colon, empty cells at its ends are left out. */
  static Node range(String colon, Node range) {
    String function = TRIMMED.get(colon);
    return function == null ? range : new Node.Call(function, List.of(range), range.at());
  }

  /** The operand with what is tied to its end. */
  Node tied(int start, Node operand) {
    Node node = operand;
    Node before = null;
    while (node != before) {
      before = node;
      if (tokens.peek() == '#' && isSpilled(node)) {
        tokens.at++;
        node = new Node.Call(SPILLED, List.of(node), new Span(start, tokens.at));
      } else if (tokens.peek() == '(' && givesFunction(node)) {
        int opened = tokens.at++;
        List<Node> arguments = parser.arguments(opened, "a function");
        node = new Node.Applied(node, arguments, new Span(start, tokens.at));
      } else if (tokens.peek() == '.' && tokens.peek(1) == '[' && Parser.isReference(node)) {
        node = field(start, node);
      }
    }
    return node;
  }

  private boolean isSpilled(Node node) {
    return Parser.isReference(node) && !References.isFaultNext(tokens);
  }

  private Node field(int start, Node of) {
    tokens.at++;
    int opened = tokens.at;
    Node field = new TableParser(tokens).from(opened, "");
    Span span = new Span(start, tokens.at);
    Node name = field instanceof Node.Table it ? new Node.Text(it.firstColumn(), span) : field;
    return new Node.Call(FIELD, List.of(of, name), span);
  }

  /** Whether what stands there may be a function that is made by a formula, named on a sheet or kept in another workbook. */
  private static boolean givesFunction(Node node) {
    if (node instanceof Node.Call call && Catalog.get(call.function()) != null) {
      return HANDING_ON.contains(call.function())
          && call.arguments().stream().anyMatch(Modern::holdsFunction);
    }
    return node instanceof Node.Call
        || node instanceof Node.Applied
        || node instanceof Node.Unsupported
        || (node instanceof Node.Name name && !name.sheet().isEmpty());
  }

  private static boolean holdsFunction(Node node) {
    return node instanceof Node.Name
        || givesFunction(node)
        || node.parts().stream().anyMatch(Modern::holdsFunction);
  }

  /** How people write such a function of one part: what stands at the colon or behind the part; nothing for others. */
  static Optional<String> spelling(Node.Call call) {
    if (call.arguments().size() != 1) {
      return Optional.empty();
    }
    Node part = call.arguments().get(0);
    if (call.function().equals(SPILLED)) {
      boolean tied = Parser.isReference(part)
          && !(part instanceof Node.Unsupported)
          && !(part instanceof Node.Fault);
      return tied ? Optional.of("#") : Optional.empty();
    }
    boolean range = part instanceof Node.Reference reference && !reference.isCell();
    return range
        ? TRIMMED.entrySet().stream()
            .filter(entry -> entry.getValue().equals(call.function()))
            .map(Map.Entry::getKey)
            .findFirst()
        : Optional.empty();
  }

  /** Why a call of a function that is not evaluated has no value. */
  static String reason(Node.Call call) {
    String spelled = Printer.print(call, false);
    return call.function().equals(SPILLED)
        ? spelled + " is a spilled range"
        : TRIMMED.containsValue(call.function())
            ? spelled + " leaves out the empty cells at its ends, which is not followed"
            : "function " + call.function() + " is not followed";
  }
}
