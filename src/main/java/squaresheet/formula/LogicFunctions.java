package squaresheet.formula;

import java.util.List;
import java.util.function.Predicate;

/** Conditions, choices and questions about values. */
final class LogicFunctions {

  private LogicFunctions() {}

  static List<Spec> specs() {
    return List.of(
        new Spec("IF", 2, 3, "s", LogicFunctions::choose),
        new Spec("IFS", 2, Spec.ANY, "s", LogicFunctions::firstTrue),
        new Spec("SWITCH", 3, Spec.ANY, "s", LogicFunctions::switched),
        new Spec("AND", 1, Spec.ANY, "m", it -> truth(truths(it).allFalse == 0)),
        new Spec("OR", 1, Spec.ANY, "m", it -> truth(truths(it).allTrue > 0)),
        new Spec("XOR", 1, Spec.ANY, "m", it -> truth(truths(it).allTrue % 2 == 1)),
        new Spec("NOT", 1, 1, "s", it -> truth(!it.truth(0))),
        new Spec("TRUE", 0, 0, "", it -> truth(true)),
        new Spec("FALSE", 0, 0, "", it -> truth(false)),
        new Spec("NA", 0, 0, "", it -> Signal.MISSING.value()),
        new Spec("IFERROR", 2, 2, "s", it -> instead(it, value -> true)),
        new Spec("IFNA", 2, 2, "s", it -> instead(it, LogicFunctions::isMissing)),
        asks("ISBLANK", Value.Blank.class::isInstance),
        asks("ISNUMBER", Value.Number.class::isInstance),
        asks("ISTEXT", Value.Text.class::isInstance),
        asks("ISNONTEXT", value -> !(value instanceof Value.Text)),
        asks("ISLOGICAL", Value.Truth.class::isInstance),
        asks("ISERROR", Value.Fault.class::isInstance),
        asks("ISERR", value -> value instanceof Value.Fault && !isMissing(value)),
        asks("ISNA", LogicFunctions::isMissing),
        new Spec("ISEVEN", 1, 1, "s", it -> truth(whole(it) % 2 == 0)),
        new Spec("ISODD", 1, 1, "s", it -> truth(whole(it) % 2 != 0)),
        new Spec("N", 1, 1, "s", LogicFunctions::numberOf),
        new Spec("T", 1, 1, "s", LogicFunctions::textOf),
        new Spec("TYPE", 1, 1, "m", LogicFunctions::typeOf),
        new Spec("ERROR.TYPE", 1, 1, "s", LogicFunctions::faultOf));
  }

  private static Value truth(boolean value) {
    return Evaluation.truth(value);
  }

  private static Spec asks(String name, Predicate<Value> question) {
    return new Spec(name, 1, 1, "s", it -> truth(question.test(it.value(0))));
  }

  static boolean isMissing(Value value) {
    return value.equals(Signal.MISSING.value());
  }

  private static double whole(Arguments arguments) {
    return Roundings.toward(arguments.number(0), 0);
  }

  private static Value choose(Arguments arguments) {
    boolean then = arguments.truth(0);
    if (then) {
      return arguments.has(1) ? arguments.value(1) : new Value.Number(0);
    }
    if (arguments.size() < 3) {
      return truth(false);
    }
    return arguments.has(2) ? arguments.value(2) : new Value.Number(0);
  }

  private static Value firstTrue(Arguments arguments) {
    for (int i = 0; i + 1 < arguments.size(); i += 2) {
      if (arguments.truth(i)) {
        return arguments.value(i + 1);
      }
    }
    throw Signal.MISSING;
  }

  private static Value switched(Arguments arguments) {
    Value subject = arguments.sound(0);
    int last = arguments.size() - 1;
    for (int i = 1; i < last; i += 2) {
      if (Comparison.compare(subject, arguments.value(i)) == 0) {
        return arguments.value(i + 1);
      }
    }
    if (last % 2 == 1) {
      return arguments.value(last);
    }
    throw Signal.MISSING;
  }

  private static Value instead(Arguments arguments, Predicate<Value> caught) {
    Value value = arguments.value(0);
    if (value instanceof Value.Fault && caught.test(value)) {
      return arguments.value(1);
    }
    return value instanceof Value.Blank ? new Value.Number(0) : value;
  }

  private static final class Truths {
    int allTrue;
    int allFalse;

    void add(boolean truth) {
      allTrue += truth ? 1 : 0;
      allFalse += truth ? 0 : 1;
    }
  }

  private static Truths truths(Arguments arguments) {
    Truths truths = new Truths();
    for (int i = 0; i < arguments.size(); i++) {
      Grid grid = arguments.grid(i);
      boolean inCells = grid.isReference() || !grid.isSingle();
      for (int j = 0; j < grid.size(); j++) {
        Value value = Coercion.sound(grid.at(j));
        boolean counts = value instanceof Value.Truth || value instanceof Value.Number;
        if (counts || !inCells) {
          truths.add(Coercion.truth(value));
        }
      }
    }
    if (truths.allTrue + truths.allFalse == 0) {
      throw Signal.VALUE;
    }
    return truths;
  }

  private static Value numberOf(Arguments arguments) {
    Value value = arguments.sound(0);
    boolean counts = value instanceof Value.Number || value instanceof Value.Truth;
    return Value.of(counts ? Coercion.number(value) : 0);
  }

  private static Value textOf(Arguments arguments) {
    return arguments.sound(0) instanceof Value.Text text ? text : new Value.Text("");
  }

  private static Value typeOf(Arguments arguments) {
    Grid grid = arguments.grid(0);
    if (!grid.isSingle()) {
      return Value.of(64);
    }
    Value value = grid.at(0);
    if (value instanceof Value.Fault) {
      return Value.of(16);
    }
    return Value.of(value instanceof Value.Text ? 2 : value instanceof Value.Truth ? 4 : 1);
  }

  private static Value faultOf(Arguments arguments) {
    List<String> codes =
        List.of("#NULL!", "#DIV/0!", "#VALUE!", "#REF!", "#NAME?", "#NUM!", "#N/A");
    boolean fault = arguments.value(0) instanceof Value.Fault;
    int place = fault ? codes.indexOf(((Value.Fault) arguments.value(0)).code()) : -1;
    if (place < 0) {
      throw Signal.MISSING;
    }
    return Value.of(place + 1);
  }
}
