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

/** Ours beside the libraries: one rule, ten thousand cells of one relative form, a job workbook. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class FormulaBench {

  private static final int CELLS = 10_000;

  private final Map<String, Value> values = new HashMap<>();
  private final List<String> texts = new ArrayList<>();
  /** One of the rule's numbers changes from call to call, as down a column. */
  private final Value[] areas = new Value[8];
  private final List<Map<String, Value>> changing = new ArrayList<>();

  private int turn;
  private Formula rule;
  private squaresheet.formula.Scope scope;
  private Expression raw;
  private XSSFEvaluationWorkbook names;
  private JobGraph job;

  /** Makes the rule, the texts and the job workbook. */
  @Setup
  public void prepare() {
    for (int i = 0; i < areas.length; i++) {
      areas[i] = new Value.Number(2013 + i);
      double scale = 1 + i / 16.0;
      Map<String, Value> other = new HashMap<>();
      Map.of("net_area", 2013.0, "waste_rate", 0.1, "pieces_each", 3.0, "starter_area", 40.5, "roof_rise", 6.0)
          .forEach((name, number) -> other.put(name, new Value.Number(number * scale)));
      changing.add(other);
    }
    values.putAll(changing.get(0));
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
    names = XSSFEvaluationWorkbook.create(new XSSFWorkbook());
    job = new JobGraph();
  }

  /** The job workbook. */
  JobGraph job() {
    return job;
  }

  /** A rule over names, one of which changes from call to call. */
  @Benchmark
  public Value ruleOurs() {
    values.put("net_area", areas[++turn & 7]);
    return rule.evaluate(scope);
  }

  /** The same expression in exp4j alone, its variables taken from the same values. */
  @Benchmark
  public double ruleRaw() {
    values.put("net_area", areas[++turn & 7]);
    return raw();
  }

  /** A rule over names, all of which change from call to call. */
  @Benchmark
  public Value changingOurs() {
    values.putAll(changing.get(++turn & 7));
    return rule.evaluate(scope);
  }

  /** The same in exp4j alone. */
  @Benchmark
  public double changingRaw() {
    values.putAll(changing.get(++turn & 7));
    return raw();
  }

  private double raw() {
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

  /** All formulas of a job workbook. */
  @Benchmark
  public Value graphOurs() {
    return job.ours();
  }

  /** The same formulas by POI. */
  @Benchmark
  public FormulaEvaluator graphTheirs() {
    return job.theirs();
  }
}
