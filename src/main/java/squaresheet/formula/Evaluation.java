package squaresheet.formula;

import java.util.IdentityHashMap;
import java.util.Optional;
import java.util.Set;
import squaresheet.formula.Node.Operator;
import squaresheet.formula.Node.Sign;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Ref;

/**
 * One evaluation of a formula: walks the tree, hands arithmetic to its compiled programs, and asks the scope what stands
 * behind references and names. Errors are values; what is not checked travels as a signal.
 */
final class Evaluation {

  /** Names that stand for names that stand for names: more than any workbook needs. */
  private static final int NAMES_DEEP = 32;

  private static final Set<String> MAKE_ARRAYS = Set.of("ROW", "COLUMN");

  static final Value BLANK = new Value.Blank();
  private static final Value TRUE = new Value.Truth(true);
  private static final Value FALSE = new Value.Truth(false);

  private final Scope scope;
  private final IdentityHashMap<Node, Plan> plans;
  private int namesDeep;

  Evaluation(Scope scope, IdentityHashMap<Node, Plan> plans) {
    this.scope = scope;
    this.plans = plans;
  }

  Scope scope() {
    return scope;
  }

  static Value truth(boolean value) {
    return value ? TRUE : FALSE;
  }

  /** One value; a block gives the cell in the formula's own row or column. */
  Value scalar(Node node) {
    try {
      return one(value(node));
    } catch (Signal signal) {
      return signal.fault();
    }
  }

  private static Value one(Value value) {
    Value single = value instanceof Value.Matrix matrix ? matrix.at(0, 0) : value;
    if (single instanceof Value.NotChecked unknown) {
      throw Signal.of(unknown);
    }
    return single;
  }

  private Value value(Node node) {
    if (node instanceof Node.Reference reference) {
      return reference.isCell()
          ? scope.cell(new Address(sheet(reference), ref(reference.first())))
          : intersected(reference);
    }
    if (node instanceof Node.Binary || node instanceof Node.Unary) {
      Plan plan = plans.get(node);
      return plan != null ? plan.run(this) : operated(node);
    }
    if (node instanceof Node.Call call) {
      Plan plan = plans.get(node);
      return plan != null ? plan.run(this) : call(call);
    }
    if (node instanceof Node.Name name) {
      return name(name);
    }
    return constant(node);
  }

  private Value constant(Node node) {
    if (node instanceof Node.Number number) {
      return new Value.Number(number.value());
    }
    if (node instanceof Node.Text text) {
      return new Value.Text(text.value());
    }
    if (node instanceof Node.Truth truth) {
      return truth(truth.value());
    }
    if (node instanceof Node.Fault fault) {
      return new Value.Fault(fault.code());
    }
    if (node instanceof Node.Array || node instanceof Node.Table) {
      return node instanceof Node.Table table
          ? scalar(resolved(table))
          : grid(node).toValue();
    }
    if (node instanceof Node.Unsupported unsupported) {
      throw Signal.notChecked(unsupported.text() + " is " + unsupported.reason());
    }
    if (node instanceof Node.Applied applied) {
      throw Signal.notChecked(
          Printer.print(applied.function(), false) + " is a function made by a formula");
    }
    return BLANK;
  }

  /** The value of an operator or sign, step by step: where a program cannot run or has met an error. */
  Value operated(Node node) {
    if (node instanceof Node.Unary unary) {
      Value operand = scalar(unary.operand());
      return signed(unary.sign(), operand);
    }
    Node.Binary binary = (Node.Binary) node;
    if (binary.operator().strength() >= Operator.UNION.strength()) {
      return one(intersected(grid(node)));
    }
    return combined(binary.operator(), scalar(binary.left()), scalar(binary.right()));
  }

  static Value signed(Sign sign, Value operand) {
    return switch (sign) {
      case PLUS, AT -> operand;
      case MINUS -> Value.of(-Coercion.number(operand));
      case PERCENT -> Value.of(Coercion.number(operand) / 100);
    };
  }

  static Value combined(Operator operator, Value left, Value right) {
    if (operator.strength() >= Operator.PLUS.strength()) {
      return Value.of(Arithmetic.apply(operator, Coercion.number(left), Coercion.number(right)));
    }
    Coercion.sound(left);
    Coercion.sound(right);
    return operator == Operator.JOIN
        ? TextFunctions.text(Coercion.text(left) + Coercion.text(right))
        : truth(Comparison.holds(operator, left, right));
  }

  /** One value of a name. */
  Value named(Node.Name name) {
    return one(name(name));
  }

  private Value name(Node.Name name) {
    Optional<Node> defined = scope.defined(name);
    if (defined.isEmpty()) {
      return scope.name(name.name());
    }
    deeper(name);
    Value value = scalar(defined.get());
    namesDeep--;
    return value;
  }

  private void deeper(Node.Name name) {
    if (++namesDeep > NAMES_DEEP) {
      throw Signal.notChecked("name " + name.name() + " stands for itself");
    }
  }

  Value call(Node.Call call) {
    Spec spec = Catalog.get(call.function());
    if (spec == null) {
      throw Signal.notChecked(Modern.reason(call));
    }
    return spec.body().apply(new Arguments(this, call.arguments(), null, false));
  }

  /** Many values where references and arrays are wanted; operators over cells inside still give one value. */
  Grid grid(Node node) {
    if (node instanceof Node.Reference reference) {
      return cells(reference);
    }
    if (node instanceof Node.Table table) {
      return cells(resolved(table));
    }
    if (node instanceof Node.Name name) {
      return names(name);
    }
    if (node instanceof Node.Array array) {
      return ArrayWork.constants(this, array);
    }
    if (node instanceof Node.Binary binary
        && binary.operator().strength() >= Operator.UNION.strength()) {
      return ReferenceWork.combined(this, binary);
    }
    if (ArrayWork.gives(this, node)) {
      return ArrayWork.of(this, node, false);
    }
    if (node instanceof Node.Call call && ReferenceWork.gives(call)) {
      return ReferenceWork.of(this, call);
    }
    if (node instanceof Node.Call call && Catalog.get(call.function()) != null) {
      return untouched(call, Grid.of(call(call)));
    }
    return Grid.of(scalar(node));
  }

  /** Many rows or columns at once are made outside array formulas by some programs only. */
  private static Grid untouched(Node.Call call, Grid result) {
    if (!result.isSingle() && MAKE_ARRAYS.contains(call.function())) {
      throw Signal.notChecked(
          call.function() + " of several cells outside an array formula differs between programs");
    }
    return result;
  }

  /** Many values, computed element by element where operators and functions meet arrays. */
  Grid array(Node node) {
    return ArrayWork.of(this, node, true);
  }

  private Grid names(Node.Name name) {
    Optional<Node> defined = scope.defined(name);
    if (defined.isEmpty()) {
      Value value = scope.names(name.name());
      return value instanceof Value.Matrix matrix && matrix.columns() == 1
          ? Grid.union(matrix)
          : Grid.of(value);
    }
    deeper(name);
    Grid grid = grid(defined.get());
    namesDeep--;
    return grid;
  }

  Node.Reference resolved(Node.Table table) {
    return scope
        .table(table)
        .orElseThrow(() -> Signal.notChecked(
            "table reference " + Printer.print(table, false) + " is not followed"));
  }

  Grid cells(Node.Reference reference) {
    String sheet = sheet(reference);
    if (reference.isCell()) {
      Address cell = new Address(sheet, ref(reference.first()));
      return Grid.reference(scope.cell(cell), cell);
    }
    return cells(sheet, reference.block());
  }

  /** The cells of a block, read no further than the sheet is used. */
  Grid cells(String sheet, Block block) {
    boolean large = (long) block.rows() * block.columns() > 10_000;
    Block read = large ? clipped(sheet, block) : block;
    return Grid.reference(scope.block(sheet, read), sheet, block);
  }

  private Block clipped(String sheet, Block block) {
    Optional<Block> used = scope.used(sheet);
    int lastRow = Math.min(block.last().row(), used.map(it -> it.last().row()).orElse(0));
    int lastColumn =
        Math.min(block.last().column(), used.map(it -> it.last().column()).orElse(0));
    return new Block(
        block.first(),
        new Ref(
            Math.max(lastRow, block.first().row()),
            Math.max(lastColumn, block.first().column())));
  }

  /** The cell of a block that lies in the formula's own row or column. */
  private Value intersected(Node.Reference reference) {
    return ReferenceWork.own(this, sheet(reference), reference.block());
  }

  /** One value of many: the cell in the formula's own row or column where these are cells. */
  Value intersected(Grid grid) {
    if (!grid.isReference()) {
      return grid.toValue();
    }
    return grid.isSingle() ? grid.at(0) : ReferenceWork.own(this, grid.sheet(), grid.asked);
  }

  /** Where a reference lies; its cells are not asked for. */
  Block place(Node node) {
    if (node instanceof Node.Reference reference) {
      return reference.block();
    }
    Grid grid = grid(node);
    if (!grid.isReference()) {
      throw Signal.VALUE;
    }
    return grid.asked;
  }

  String sheet(Node.Reference reference) {
    return reference.sheet().isEmpty()
        ? scope.here().map(Address::sheet).orElse("")
        : reference.sheet();
  }

  static Ref ref(Node.Corner corner) {
    return new Ref(corner.row(), corner.column());
  }
}
