package squaresheet.xlsx;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Functions younger than the file format carry a prefix in the file that people never see. Source: MS-XLSX 2.2.2, future
 * functions; the list is from memory of that table, limited to functions found in everyday workbooks.
 */
final class FutureFunctions {

  private static final Set<String> PREFIXED = Set.of(
      "ACOT",
      "ANCHORARRAY",
      "FIELDVALUE",
      "SINGLE",
      "_TRO_ALL",
      "_TRO_LEADING",
      "_TRO_TRAILING",
      "AGGREGATE",
      "ARABIC",
      "BASE",
      "BITAND",
      "BITOR",
      "BITXOR",
      "CEILING.MATH",
      "CEILING.PRECISE",
      "CONCAT",
      "COT",
      "CSC",
      "DAYS",
      "DECIMAL",
      "FLOOR.MATH",
      "FLOOR.PRECISE",
      "FORMULATEXT",
      "IFNA",
      "IFS",
      "ISFORMULA",
      "ISOWEEKNUM",
      "LET",
      "LAMBDA",
      "MAXIFS",
      "MINIFS",
      "MODE.SNGL",
      "NUMBERVALUE",
      "PERCENTILE.INC",
      "PERCENTILE.EXC",
      "QUARTILE.INC",
      "RANK.EQ",
      "RANK.AVG",
      "SEC",
      "SEQUENCE",
      "SHEET",
      "SHEETS",
      "STDEV.P",
      "STDEV.S",
      "SWITCH",
      "TEXTJOIN",
      "UNICHAR",
      "UNICODE",
      "UNIQUE",
      "VAR.P",
      "VAR.S",
      "XLOOKUP",
      "XMATCH",
      "XOR");
  private static final Set<String> WORKSHEET = Set.of("FILTER", "SORT");
  private static final Pattern IN_FILE = Pattern.compile("_xlfn\\.(_xlws\\.)?|_xlws\\.");
  private static final Pattern TOKEN =
      Pattern.compile("\"(?:[^\"]|\"\")*\"|'(?:[^']|'')*'|([\\p{L}_][\\p{L}\\p{N}_.]*)(?=\\()");
  private static final Pattern KEPT = Pattern.compile("\"(?:[^\"]|\"\")*\"|" + IN_FILE.pattern());

  private FutureFunctions() {}

  /** The formula as people see it. */
  static String shown(String formula) {
    if (formula.indexOf("_xl") < 0) {
      return formula;
    }
    return KEPT.matcher(formula)
        .replaceAll(it -> it.group().startsWith("\"") ? Matcher.quoteReplacement(it.group()) : "");
  }

  /** The formula as the file holds it. */
  static String inFile(String formula) {
    return TOKEN
        .matcher(formula)
        .replaceAll(it -> Matcher.quoteReplacement(prefixed(it.group(), it.group(1))));
  }

  private static String prefixed(String whole, String function) {
    if (function == null) {
      return whole;
    }
    String upper = function.toUpperCase(Locale.ROOT);
    if (WORKSHEET.contains(upper)) {
      return "_xlfn._xlws." + whole;
    }
    return PREFIXED.contains(upper) ? "_xlfn." + whole : whole;
  }
}
