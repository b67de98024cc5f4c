package squaresheet.formula;

import java.util.Map;

/** How functions are called, for the sentences that say what to write instead. */
final class Wording {

  private static final Map<String, String> CALLED = Map.ofEntries(
      Map.entry("ROUND", "ROUND(number,digits)"),
      Map.entry("ROUNDUP", "ROUNDUP(number,digits)"),
      Map.entry("ROUNDDOWN", "ROUNDDOWN(number,digits)"),
      Map.entry("CEILING", "CEILING(number,multiple)"),
      Map.entry("FLOOR", "FLOOR(number,multiple)"),
      Map.entry("MROUND", "MROUND(number,multiple)"),
      Map.entry("IF", "IF(condition,then,otherwise)"),
      Map.entry("IFS", "IFS(condition,value,condition,value)"),
      Map.entry("IFERROR", "IFERROR(value,instead)"),
      Map.entry("SQRT", "SQRT(number)"),
      Map.entry("PI", "PI()"),
      Map.entry("TODAY", "TODAY()"),
      Map.entry("MOD", "MOD(number,divisor)"),
      Map.entry("POWER", "POWER(number,power)"),
      Map.entry("SUMIF", "SUMIF(cells,condition,cells_to_add)"),
      Map.entry("SUMIFS", "SUMIFS(cells_to_add,cells,condition)"),
      Map.entry("COUNTIF", "COUNTIF(cells,condition)"),
      Map.entry("VLOOKUP", "VLOOKUP(what,table,column,FALSE)"),
      Map.entry("INDEX", "INDEX(table,row,column)"),
      Map.entry("MATCH", "MATCH(what,cells,0)"),
      Map.entry("CONVERT", "CONVERT(number,\"ft\",\"in\")"),
      Map.entry("DATE", "DATE(year,month,day)"));

  private Wording() {}

  /** What to write instead of a call with the wrong number of arguments. */
  static String cure(String function, int count, Spec spec) {
    String called = CALLED.get(function);
    if (called != null) {
      return "write " + called;
    }
    return count < spec.least() ? "write what is missing" : "take out what is too much";
  }
}
