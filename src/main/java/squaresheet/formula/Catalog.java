package squaresheet.formula;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import squaresheet.formula.Node.Span;

/** The functions that are evaluated, and those that are known by name only. */
final class Catalog {

  /** Newer functions that files write with {@code _xlfn.}, evaluated or not. */
  private static final Set<String> PREFIXED = Set.of(
      "IFS",
      "SWITCH",
      "XLOOKUP",
      "XMATCH",
      "TEXTJOIN",
      "CONCAT",
      "MAXIFS",
      "MINIFS",
      "IFNA",
      "XOR",
      "CEILING.MATH",
      "FLOOR.MATH",
      "CEILING.PRECISE",
      "FLOOR.PRECISE",
      "DAYS",
      "NUMBERVALUE",
      "UNICHAR",
      "UNICODE",
      "SHEET",
      "SHEETS",
      "FORMULATEXT",
      "ISFORMULA",
      "LET",
      "LAMBDA",
      "FILTER",
      "SORT",
      "SORTBY",
      "UNIQUE",
      "SEQUENCE",
      "RANDARRAY",
      "ACOT",
      "COT",
      "SEC",
      "CSC",
      "ARABIC",
      "BASE",
      "DECIMAL",
      "COMBINA",
      "BITAND",
      "TEXTBEFORE",
      "TEXTAFTER",
      "TEXTSPLIT",
      "VSTACK",
      "HSTACK",
      "TOCOL",
      "TOROW",
      "TAKE",
      "DROP",
      "CHOOSEROWS",
      "CHOOSECOLS",
      "ISOWEEKNUM",
      "STDEV.S",
      "STDEV.P",
      "VAR.S",
      "VAR.P",
      "MODE.SNGL",
      "PERCENTILE.INC",
      "QUARTILE.INC",
      "RANK.EQ",
      "RANK.AVG",
      "SINGLE",
      "ANCHORARRAY",
      "FIELDVALUE",
      "_TRO_LEADING",
      "_TRO_TRAILING",
      "_TRO_ALL");

  private static final Map<String, Spec> SPECS = specs();

  private Catalog() {}

  private static Map<String, Spec> specs() {
    Map<String, Spec> all = new HashMap<>();
    for (Iterable<Spec> family : java.util.List.of(
        ArithmeticFunctions.specs(),
        TotalFunctions.specs(),
        ConditionFunctions.specs(),
        LogicFunctions.specs(),
        LookupFunctions.specs(),
        TextFunctions.specs(),
        DateFunctions.specs())) {
      family.forEach(spec -> all.put(spec.name(), spec));
    }
    return all;
  }

  /** The function of this name in capitals, if it is evaluated. */
  static Optional<Spec> find(String function) {
    return Optional.ofNullable(SPECS.get(function));
  }

  /** The function of this name, or null: for the inner loop. */
  static Spec get(String function) {
    return SPECS.get(function);
  }

  /** The names of all functions that are evaluated. */
  static Set<String> names() {
    return SPECS.keySet();
  }

  /** The name as files write it. */
  static String prefixed(String function) {
    return PREFIXED.contains(function) ? "_xlfn." + function : function;
  }

  /** Refuses a known function with too few or too many arguments. */
  static void checkCount(String function, int count, Span span) {
    Spec spec = SPECS.get(function);
    if (spec == null || (count >= spec.least() && count <= spec.most())) {
      return;
    }
    String wanted = spec.least() == spec.most()
        ? String.valueOf(spec.least())
        : spec.most() == Spec.ANY
            ? spec.least() + " or more"
            : spec.least() + (spec.most() == spec.least() + 1 ? " or " : " to ") + spec.most();
    String noun = spec.most() == 1 ? " argument" : " arguments";
    throw new Complaint(
        span.start(),
        function + " takes " + (spec.most() == 0 ? "no" : wanted) + noun + ", but has " + count
            + ": " + Wording.cure(function, count, spec));
  }
}
