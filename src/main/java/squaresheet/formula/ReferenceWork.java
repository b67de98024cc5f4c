package squaresheet.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import squaresheet.formula.Node.Operator;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Ref;

/** References that are computed: ranges between cells, unions, intersections, and functions that give a reference. */
final class ReferenceWork {

  private static final Set<String> GIVE = Set.of("IF", "CHOOSE", "INDEX");

  private ReferenceWork() {}

  /** The cell of a block that lies in the row or column of the formula's own cell. */
  static Value own(Evaluation evaluation, String sheet, Block block) {
    Optional<Address> here = evaluation.scope().here();
    if (block.rows() == 1 && block.columns() == 1) {
      return evaluation.scope().cell(new Address(sheet, block.first()));
    }
    if (here.isEmpty()) {
      throw Signal.VALUE;
    }
    Ref own = here.get().ref();
    Ref cell = block.columns() == 1
        ? new Ref(own.row(), block.first().column())
        : block.rows() == 1 ? new Ref(block.first().row(), own.column()) : own;
    if (!block.contains(cell) || (block.columns() > 1 && block.rows() > 1)) {
      throw Signal.VALUE;
    }
    return evaluation.scope().cell(new Address(sheet, cell));
  }

  static Grid combined(Evaluation evaluation, Node.Binary node) {
    Grid left = evaluation.grid(node.left());
    Grid right = evaluation.grid(node.right());
    if (node.operator() == Operator.UNION) {
      return union(left, right);
    }
    if (!left.isReference() || !right.isReference()) {
      throw Signal.notChecked("'" + Printer.print(node, false) + "' is not a plain reference");
    }
    if (!left.sheet().equals(right.sheet())) {
      throw Signal.VALUE;
    }
    Block block = node.operator() == Operator.RANGE
        ? around(left.asked, right.asked)
        : shared(left.asked, right.asked);
    return evaluation.cells(left.sheet(), block);
  }

  private static Grid union(Grid left, Grid right) {
    List<Value> all = new ArrayList<>();
    for (int i = 0; i < left.size(); i++) {
      all.add(left.at(i));
    }
    for (int i = 0; i < right.size(); i++) {
      all.add(right.at(i));
    }
    Value.Matrix column = Value.Matrix.column(all);
    return left.isReference() && right.isReference() ? Grid.union(column) : Grid.of(column);
  }

  private static Block around(Block a, Block b) {
    return new Block(
        new Ref(
            Math.min(a.first().row(), b.first().row()),
            Math.min(a.first().column(), b.first().column())),
        new Ref(
            Math.max(a.last().row(), b.last().row()),
            Math.max(a.last().column(), b.last().column())));
  }

  private static Block shared(Block a, Block b) {
    int top = Math.max(a.first().row(), b.first().row());
    int left = Math.max(a.first().column(), b.first().column());
    int bottom = Math.min(a.last().row(), b.last().row());
    int right = Math.min(a.last().column(), b.last().column());
    if (bottom < top || right < left) {
      throw Signal.NULL;
    }
    return new Block(new Ref(top, left), new Ref(bottom, right));
  }

  /** Whether the call gives a reference where one is wanted. */
  static boolean gives(Node.Call call) {
    return GIVE.contains(call.function()) && call.arguments().size() >= 2;
  }

  /** Whether that argument of the call may be handed on as it is: cells stay cells. */
  static boolean chooses(Node.Call call, int argument) {
    return argument > 0 && gives(call) && !call.function().equals("INDEX");
  }

  static Grid of(Evaluation evaluation, Node.Call call) {
    return of(
        call,
        new Arguments(evaluation, call.arguments(), null, false),
        index -> evaluation.grid(call.arguments().get(index)));
  }

  /** What the call gives, where its parts are worked out by {@code part}. */
  static Grid of(Node.Call call, Arguments arguments, IntFunction<Grid> part) {
    return switch (call.function()) {
      case "IF" -> chosen(arguments, arguments.truth(0) ? 1 : 2, part);
      case "CHOOSE" -> chosen(arguments, choice(arguments), part);
      default -> LookupFunctions.indexed(arguments);
    };
  }

  private static int choice(Arguments arguments) {
    int choice = arguments.whole(0);
    if (choice < 1 || choice >= arguments.size()) {
      throw Signal.VALUE;
    }
    return choice;
  }

  private static Grid chosen(Arguments arguments, int index, IntFunction<Grid> part) {
    if (index >= arguments.size()) {
      return Grid.of(Evaluation.truth(false));
    }
    return arguments.has(index) ? part.apply(index) : Grid.of(new Value.Number(0));
  }
}
