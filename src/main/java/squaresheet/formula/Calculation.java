package squaresheet.formula;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Workbook;

/**
 * All formulas of a workbook worked out anew from what is typed, each after those it needs. What the file stored for them
 * is not looked at. Formulas in a circle, and what needs them, are not checked; the circles are named cell by cell.
 */
public final class Calculation {

  private final String file;
  private final Workbook workbook;
  private final Tabs tabs;
  private final Map<Address, Formula> formulas = new LinkedHashMap<>();
  private final List<Finding> findings = new ArrayList<>();
  private final List<FormulaCell> order;
  private final List<List<Address>> cycles = new ArrayList<>();

  private Calculation(String file, Workbook workbook) {
    this.file = file;
    this.workbook = workbook;
    this.tabs = new Tabs(workbook);
    List<FormulaCell> cells = new ArrayList<>();
    workbook.sheets().forEach(sheet -> sheet
        .cells()
        .filter(placed -> placed.cell().isFormula())
        .forEach(placed -> cells.addAll(read(
            new Address(sheet.name(), placed.ref()),
            placed.cell().formula(),
            sheet.arrayAt(placed.ref())))));
    CalculationOrder found = new CalculationOrder(tabs, cells);
    this.order = found.inOrder();
    found.cycles().forEach(this::close);
    work();
  }

  /** Reads and works out all formulas of a workbook that is no file yet. */
  public static Calculation of(Workbook workbook) {
    return of("", workbook);
  }

  /** Reads and works out all formulas of a workbook. */
  public static Calculation of(String file, Workbook workbook) {
    return new Calculation(file, workbook);
  }

  /**
   * These edits, and behind them for every formula beside which another value would stand the one it then comes to, so that
   * no old value misleads. What the library does not stand by keeps its old value until a spreadsheet program
   * works it out.
   */
  public static List<Edit> settled(Workbook workbook, List<Edit> edits) {
    return Settled.of(workbook, edits);
  }

  private List<FormulaCell> read(Address cell, String text, Optional<Block> array) {
    Read<Formula> read = Formula.parse(text, new Where.InCell(file, cell));
    findings.addAll(read.findings());
    if (read.value().isEmpty()) {
      tabs.put(cell, new Value.NotChecked("the formula at " + cell + " cannot be read"));
      return List.of();
    }
    formulas.put(cell, read.value().get());
    if (array.isPresent() && tabs.cover(cell, array.get())) {
      return List.of();
    }
    return List.of(tabs.put(cell, read.value().get(), array));
  }

  private void close(List<FormulaCell> cycle) {
    List<Address> cells = cycle.stream().map(FormulaCell::at).toList();
    String named = String.join(" needs ", cells.stream().map(Address::toString).toList());
    Value value = new Value.NotChecked("formulas in a circle: " + named + " needs " + cells.get(0));
    cycle.forEach(cell -> cell.become(value));
    cycles.add(cells);
  }

  private void work() {
    for (FormulaCell cell : order) {
      cell.work(new CellScope(tabs, cell.at()));
    }
  }

  /** Works out all formulas once more. */
  public void again() {
    work();
  }

  /** The formulas that could be read, by their cells, sheet by sheet, row by row. */
  public Map<Address, Formula> formulas() {
    return Collections.unmodifiableMap(formulas);
  }

  /** What there is to say about formulas that could not be read. */
  public List<Finding> findings() {
    return List.copyOf(findings);
  }

  /** The circles: each cell needs the next, and the last needs the first. */
  public List<List<Address>> cycles() {
    return List.copyOf(cycles);
  }

  /** The cells with formulas outside circles, each after those it needs. */
  public List<Address> order() {
    return order.stream().map(FormulaCell::at).toList();
  }

  /** What a cell comes to, or what is typed there; blank where nothing is. */
  public Value value(Address cell) {
    return tabs.value(cell);
  }

  /** What stands behind the references of a formula in that cell. */
  public Scope scope(Address here) {
    return new CellScope(tabs, here);
  }

  /** How the formula in a cell came to its value, line by line; empty where there is no formula. */
  public List<String> explain(Address cell, Labels labels) {
    return Optional.ofNullable(formulas.get(cell))
        .map(formula -> Explainer.explain(cell.toString(), formula, scope(cell), labels))
        .orElse(List.of());
  }

  /** The workbook. */
  public Workbook workbook() {
    return workbook;
  }
}
