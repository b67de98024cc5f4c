package squaresheet.formula;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import net.objecthunter.exp4j.Expression;
import net.objecthunter.exp4j.ExpressionBuilder;
import org.apache.poi.ss.formula.FormulaParser;
import org.apache.poi.ss.formula.FormulaType;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFEvaluationWorkbook;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Ref;
import squaresheet.sheet.SheetBuilder;
import squaresheet.sheet.Workbook;

/** Ours beside the libraries: one rule, ten thousand cells of one relative form, a workbook of 620 formulas. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class FormulaBench {

  private static final int CELLS = 10_000;
  private static final int PLANES = 100;

  private final Map<String, Value> values = new HashMap<>();
  private final List<String> texts = new ArrayList<>();
  private final List<String> forms = List.of(
      "B%1$d*C%1$d",
      "SQRT(1+(D%1$d/12)^2)",
      "F%1$d*E%1$d",
      "G%1$d/100",
      "H%1$d*(1+$B$2)",
      "ROUNDUP(J%1$d*3,0)");
  /** One of the rule's numbers changes from call to call, as down a column. */
  private final Value[] areas = new Value[8];

  private int turn;
  private Formula rule;
  private squaresheet.formula.Scope scope;
  private Expression raw;
  private XSSFEvaluationWorkbook names;
  private XSSFWorkbook theirs;
  private Calculation ours;

  /** Makes the rule, the texts and the two workbooks. */
  @Setup
  public void prepare() {
    for (int i = 0; i < areas.length; i++) {
      areas[i] = new Value.Number(2013 + i);
    }
    Map.of("net_area", 2013.0, "waste_rate", 0.1, "pieces_each", 3.0, "starter_area", 40.5, "roof_rise", 6.0)
        .forEach((name, number) -> values.put(name, new Value.Number(number)));
    scope = new squaresheet.formula.Scope() {
      @Override
      public Value cell(Address cell) {
        return new Value.Blank();
      }

      @Override
      public Value name(String name) {
        return values.get(name);
      }
    };
    rule = Formula.of("(net_area*SQRT(1+(roof_rise/12)^2)*(1+waste_rate)-starter_area)/100*pieces_each");
    raw = new ExpressionBuilder("(v0*sqrt(1+(v1/12)^2)*(1+v2)-v3)/100*v4")
        .variables("v0", "v1", "v2", "v3", "v4")
        .build();
    for (int row = 1; row <= CELLS; row++) {
      texts.add("ROUNDUP(B" + row + "*C" + row + "*SQRT(1+(D" + row + "/12)^2)*(1+$B$2)/100,0)");
    }
    theirs = new XSSFWorkbook();
    names = XSSFEvaluationWorkbook.create(theirs);
    fill();
  }

  private void fill() {
    XSSFSheet sheet = theirs.createSheet("Planes");
    SheetBuilder builder = squaresheet.sheet.Sheet.builder("Planes");
    number(sheet, builder, 1, 1, 0.1);
    for (int row = 6; row < 6 + PLANES; row++) {
      number(sheet, builder, row, 1, 20 + row % 17);
      number(sheet, builder, row, 2, 12.5 + row % 5);
      number(sheet, builder, row, 3, row % 12);
      for (int i = 0; i < forms.size(); i++) {
        formula(sheet, builder, row, new int[] {5, 4, 6, 7, 9, 10}[i], String.format(forms.get(i), row + 1));
      }
    }
    for (int column = 4; column < 24; column++) {
      String letters = Ref.letters(4 + column % 7);
      formula(sheet, builder, 6 + PLANES, column, "SUM(" + letters + "7:" + letters + (6 + PLANES) + ")");
    }
    ours = Calculation.of(new Workbook(
        List.of(builder.build()), List.of(), false, Workbook.Calculation.USUAL, List.of(), Map.of()));
    check();
  }

  private static XSSFRow row(XSSFSheet sheet, int row) {
    return sheet.getRow(row) == null ? sheet.createRow(row) : sheet.getRow(row);
  }

  private static void number(XSSFSheet sheet, SheetBuilder builder, int row, int column, double value) {
    row(sheet, row).createCell(column).setCellValue(value);
    builder.content(row, column, "General", new Content.Numeric(value));
  }

  private static void formula(XSSFSheet sheet, SheetBuilder builder, int row, int column, String text) {
    row(sheet, row).createCell(column).setCellFormula(text);
    builder.content(row, column, "General", new Content.Blank());
    builder.formula(row, column, text);
  }

  /** Both engines come to the same totals, or the comparison means nothing. */
  private void check() {
    theirsAll();
    for (int column = 4; column < 24; column++) {
      Value value = ours.value(new Address("Planes", new Ref(6 + PLANES, column)));
      double number = theirs.getSheet("Planes").getRow(6 + PLANES).getCell(column).getNumericCellValue();
      if (!(value instanceof Value.Number mine) || Math.abs(mine.value() - number) > 1e-6) {
        throw new IllegalStateException("column " + column + ": " + value + " and " + number);
      }
    }
  }

  /** A rule over names. */
  @Benchmark
  public Value ruleOurs() {
    values.put("net_area", areas[++turn & 7]);
    return rule.evaluate(scope);
  }

  /** The same expression in exp4j alone, its variables taken from the same values. */
  @Benchmark
  public double ruleRaw() {
    values.put("net_area", areas[++turn & 7]);
    raw.setVariable("v0", ((Value.Number) values.get("net_area")).value());
    raw.setVariable("v1", ((Value.Number) values.get("roof_rise")).value());
    raw.setVariable("v2", ((Value.Number) values.get("waste_rate")).value());
    raw.setVariable("v3", ((Value.Number) values.get("starter_area")).value());
    raw.setVariable("v4", ((Value.Number) values.get("pieces_each")).value());
    return raw.evaluate();
  }

  /** Ten thousand cells of one relative form, read and compiled. */
  @Benchmark
  public int cellsOurs() {
    int compiled = 0;
    for (String text : texts) {
      compiled += Plan.of(Formula.of(text).tree()).size();
    }
    return compiled;
  }

  /** The same cells read by POI's parser. */
  @Benchmark
  public int cellsTheirs() {
    int parsed = 0;
    for (String text : texts) {
      Ptg[] tokens = FormulaParser.parse(text, names, FormulaType.CELL, 0, 0);
      parsed += tokens.length;
    }
    return parsed;
  }

  /** All formulas of the workbook. */
  @Benchmark
  public Value graphOurs() {
    ours.again();
    return ours.value(new Address("Planes", new Ref(6 + PLANES, 5)));
  }

  /** The same workbook by POI. */
  @Benchmark
  public FormulaEvaluator graphTheirs() {
    return theirsAll();
  }

  private FormulaEvaluator theirsAll() {
    FormulaEvaluator evaluator = theirs.getCreationHelper().createFormulaEvaluator();
    evaluator.evaluateAll();
    return evaluator;
  }
}
