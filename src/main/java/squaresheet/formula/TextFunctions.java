package squaresheet.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Texts, as labels need them. */
final class TextFunctions {

  /** The longest text a cell holds. */
  private static final int LONGEST = 32_767;

  /** The most decimals that FIXED writes, by its documentation. */
  private static final int MOST_DECIMALS = 127;

  private TextFunctions() {}

  static List<Spec> specs() {
    List<Spec> specs = new ArrayList<>(List.of(
        one("LEN", it -> Value.of(it.text(0).length())),
        one("TRIM", it -> text(it.text(0).strip().replaceAll(" +", " "))),
        one("CLEAN", it -> text(it.text(0).replaceAll("[\\x00-\\x1f]", ""))),
        one("UPPER", it -> text(it.text(0).toUpperCase(Locale.ROOT))),
        one("LOWER", it -> text(it.text(0).toLowerCase(Locale.ROOT))),
        one("PROPER", it -> text(Texts.proper(it.text(0)))),
        one("VALUE", it -> Value.of(Texts.value(it.sound(0)))),
        one("CHAR", it -> text(Texts.character(it.number(0)))),
        one("CODE", it -> Value.of(Texts.code(it.text(0)))),
        new Spec("LEFT", 1, 2, "s", it -> text(Texts.left(it.text(0), count(it, 1)))),
        new Spec("RIGHT", 1, 2, "s", it -> text(Texts.right(it.text(0), count(it, 1)))),
        new Spec("MID", 3, 3, "s", it -> text(Texts.middle(it.text(0), it.whole(1), it.whole(2)))),
        new Spec("REPT", 2, 2, "s", it -> text(repeated(it.text(0), it.whole(1)))),
        new Spec("EXACT", 2, 2, "s", it -> Evaluation.truth(it.text(0).equals(it.text(1))))));
    specs.addAll(inside());
    return specs;
  }

  private static List<Spec> inside() {
    List<Spec> specs = new ArrayList<>(List.of(
        new Spec(
            "FIND", 2, 3, "s", it -> Value.of(Texts.find(it.text(0), it.text(1), it.whole(2, 1)))),
        new Spec(
            "SEARCH",
            2,
            3,
            "s",
            it -> Value.of(Texts.search(it.text(0), it.text(1), it.whole(2, 1)))),
        new Spec(
            "SUBSTITUTE",
            3,
            4,
            "s",
            it -> text(
                Texts.substitute(it.text(0), it.text(1), it.text(2), it.has(3) ? it.whole(3) : 0))),
        new Spec(
            "REPLACE",
            4,
            4,
            "s",
            it -> text(Texts.replace(it.text(0), it.whole(1), it.whole(2), it.text(3))))));
    specs.addAll(written());
    return specs;
  }

  private static List<Spec> written() {
    return List.of(
        new Spec("CONCATENATE", 1, Spec.ANY, "s", TextFunctions::joined),
        new Spec("CONCAT", 1, Spec.ANY, "m", it -> listed(it, "", false, 0)),
        new Spec("TEXTJOIN", 3, Spec.ANY, "msm", TextFunctions::separated),
        new Spec("TEXT", 2, 2, "s", TextFunctions::formatted),
        new Spec("FIXED", 1, 3, "s", TextFunctions::fixed),
        new Spec("DOLLAR", 1, 2, "s", it -> notPortable("DOLLAR")));
  }

  private static Spec one(String name, Spec.Body body) {
    return new Spec(name, 1, 1, "s", body);
  }

  /** A text that fits into a cell; a longer one is {@code #VALUE!}. */
  static Value text(String text) {
    if (text.length() > LONGEST) {
      throw Signal.VALUE;
    }
    return new Value.Text(text);
  }

  private static int count(Arguments arguments, int index) {
    int count = arguments.whole(index, 1);
    if (count < 0) {
      throw Signal.VALUE;
    }
    return count;
  }

  private static String repeated(String text, int times) {
    if (times < 0 || (long) text.length() * times > LONGEST) {
      throw Signal.VALUE;
    }
    return text.repeat(times);
  }

  private static Value joined(Arguments arguments) {
    StringBuilder all = new StringBuilder();
    for (int i = 0; i < arguments.size(); i++) {
      all.append(arguments.text(i));
    }
    return text(all.toString());
  }

  private static Value separated(Arguments arguments) {
    if (!arguments.grid(0).isSingle()) {
      throw Signal.notChecked("TEXTJOIN with several separators is not followed");
    }
    return listed(arguments, arguments.text(0), arguments.truth(1), 2);
  }

  private static Value listed(Arguments arguments, String between, boolean skipEmpty, int from) {
    StringBuilder all = new StringBuilder();
    boolean first = true;
    for (int i = from; i < arguments.size(); i++) {
      Grid grid = arguments.grid(i);
      for (int j = 0; j < grid.size(); j++) {
        String text = Coercion.text(grid.at(j));
        if (!skipEmpty || !text.isEmpty()) {
          all.append(first ? "" : between).append(text);
          first = false;
        }
      }
    }
    return text(all.toString());
  }

  private static Value formatted(Arguments arguments) {
    Value value = arguments.sound(0);
    String format = arguments.text(1);
    if (value instanceof Value.Truth
        || (value instanceof Value.Text words && !isNumber(words, format))) {
      return text(Coercion.text(value));
    }
    return text(NumberFormat.write(
        Coercion.number(value), format, arguments.evaluation().scope().dates()));
  }

  /** Whether a text is shown by a number format as the number it stands for. */
  private static boolean isNumber(Value.Text text, String format) {
    if (format.equals("@")) {
      return false;
    }
    if (format.contains("@")) {
      throw Signal.notChecked("number format '" + format + "' is not followed");
    }
    try {
      NumberText.read(text.value());
      return true;
    } catch (Signal none) {
      none.fault();
      return false;
    }
  }

  private static Value fixed(Arguments arguments) {
    int decimals = arguments.whole(1, 2);
    if (decimals > MOST_DECIMALS) {
      throw Signal.VALUE;
    }
    double rounded = Roundings.nearest(arguments.number(0), decimals);
    String commas = arguments.truth(2, false) ? "" : ",";
    return text(
        String.format(Locale.ROOT, "%" + commas + "." + Math.max(decimals, 0) + "f", rounded));
  }

  private static Value notPortable(String function) {
    throw Signal.notChecked(
        "function " + function + " writes the currency of the country it runs in");
  }
}
