package squaresheet.formula;

import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Predicate;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.finding.Severity;
import squaresheet.finding.Where;
import squaresheet.sheet.Ref;

/**
 * A cell formula, read. Two formulas are equal when they are spelled alike but for spaces and needless brackets.
 *
 * <p>Text form: {@code net_area*(1+waste_rate)}, without the equals sign.
 */
public final class Formula {

  /** What a text that is no formula is reported under. */
  public static final CheckInfo UNREADABLE =
      new CheckInfo("formula-not-read", Severity.ERROR, "A formula cannot be read");

  private final Node tree;
  private volatile IdentityHashMap<Node, Plan> plans;
  /** The plan of the whole tree, where that is arithmetic; written before {@link #plans} and read after it. */
  private Plan whole;

  private Formula(Node tree) {
    this.tree = tree;
  }

  /** The formula of a tree. */
  public static Formula of(Node tree) {
    return new Formula(tree);
  }

  /** Reads a formula, with or without its equals sign; a text that is none gives a finding at the place. */
  public static Read<Formula> parse(String text, Where where) {
    String bare = bare(text);
    try {
      return Read.of(new Formula(Parser.parse(bare)));
    } catch (Complaint complaint) {
      String says = complaint.getMessage() + " (character " + (complaint.place() + 1) + " of '"
          + Caret.onOneLine(shortened(bare)) + "')";
      return Read.nothing(new Finding(UNREADABLE, where, bare, "", says, ""));
    }
  }

  /** Reads a formula that stands nowhere in particular. */
  public static Read<Formula> parse(String text) {
    return parse(text, new Where.OfItem("formula", ""));
  }

  /**
   * Reads a formula that is known to be right.
   *
   * @throws IllegalArgumentException with a sentence, if it is not
   */
  public static Formula of(String text) {
    try {
      return new Formula(Parser.parse(bare(text)));
    } catch (Complaint complaint) {
      throw new IllegalArgumentException(diagnose(text), complaint);
    }
  }

  /** Three lines for people: the text, a caret under the place, and the sentence; empty where the text is a formula. */
  public static String diagnose(String text) {
    String bare = bare(text);
    try {
      Parser.parse(bare);
      return "";
    } catch (Complaint complaint) {
      return Caret.under(bare, complaint.place()) + "\n" + complaint.getMessage();
    }
  }

  private static String bare(String text) {
    return text.startsWith("=") ? text.substring(1) : text;
  }

  private static String shortened(String text) {
    return text.length() <= 80 ? text : text.substring(0, 77) + "...";
  }

  /** The syntax tree. */
  public Node tree() {
    return tree;
  }

  /** What the formula comes to. An empty cell that is handed on counts as 0. */
  public Value evaluate(Scope scope) {
    try {
      IdentityHashMap<Node, Plan> made = plans();
      Evaluation evaluation = new Evaluation(scope, made);
      Value value = whole == null ? evaluation.scalar(tree) : whole.run(evaluation);
      return value instanceof Value.Blank ? new Value.Number(0) : value;
    } catch (Signal signal) {
      return signal.value();
    }
  }

  /** What the formula comes to where it was entered as an array formula, or stands for many values. */
  public Value evaluateArray(Scope scope) {
    try {
      return new Evaluation(scope, plans()).array(tree).toValue();
    } catch (Signal signal) {
      return signal.value();
    }
  }

  private IdentityHashMap<Node, Plan> plans() {
    IdentityHashMap<Node, Plan> made = plans;
    if (made == null) {
      made = Plan.of(tree);
      whole = made.get(tree);
      plans = made;
    }
    return made;
  }

  /** How the formula comes to its value: the rule under its name, what goes in, the steps with units, the rounding. */
  public List<String> explain(String name, Scope scope, Labels labels) {
    return Explainer.explain(name, this, scope, labels);
  }

  /** The cells and blocks the formula is written with, in order, each once. */
  public Set<Node.Reference> references() {
    return leaves(Node.Reference.class);
  }

  /** The names the formula is written with, in order, each once. */
  public Set<Node.Name> names() {
    return leaves(Node.Name.class);
  }

  /**
   * The parts that turn from one value to another at a limit of something the formula asks for: comparisons, lookups and
   * roundings of it, and as counts the conditions on it.
   *
   * @param it whether a name or reference is what is asked about
   */
  public List<Node> decisionsOn(Predicate<Node> it) {
    return new Decisions(it).in(tree);
  }

  /** Whether everything the formula asks for is among these, and it asks for something. */
  public boolean followsFrom(Predicate<Node> these) {
    return new Decisions(these).follows(tree);
  }

  private <T extends Node> Set<T> leaves(Class<T> type) {
    Set<T> found = new LinkedHashSet<>();
    Trees.walk(tree, node -> {
      if (type.isInstance(node)) {
        found.add(type.cast(node));
      }
    });
    return found;
  }

  /** The form that is equal for every cell of a column filled down from one formula. */
  public Relative relative(Ref here) {
    return Relative.of(tree, here);
  }

  /** The formula as it reads after being filled from one cell to another; what falls off the sheet is {@code #REF!}. */
  public Formula filled(Ref from, Ref to) {
    return new Formula(Trees.moved(tree, to.row() - from.row(), to.column() - from.column()));
  }

  /** The formula with names and references spelled otherwise. */
  public Formula respelled(Respelling respelling) {
    return new Formula(Trees.respelled(tree, respelling, false, false));
  }

  /** The text as a workbook file holds it, newer functions with their prefix, without the equals sign. */
  public String toFile() {
    return Printer.print(tree, true);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Formula formula && tree.equals(formula.tree);
  }

  @Override
  public int hashCode() {
    return Objects.hashCode(tree);
  }

  @Override
  public String toString() {
    return Printer.print(tree, false);
  }
}
