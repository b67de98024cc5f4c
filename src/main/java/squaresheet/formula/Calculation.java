package squaresheet.formula;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
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

  /** So many cells of a circle are named. */
  private static final int NAMED = 12;

  private final String file;
  private final Workbook workbook;
  private final Tabs tabs;
  private final Map<Address, Formula> formulas;
  private final List<Finding> findings;
  private final List<FormulaCell> order;
  private final List<List<Address>> cycles;
  private final Set<Address> circular;
  private boolean cutShort;

  private Calculation(String file, Workbook workbook) {
    this.file = file;
    this.workbook = workbook;
    this.tabs = new Tabs(workbook);
    this.formulas = new LinkedHashMap<>();
    this.findings = new ArrayList<>();
    this.cycles = new ArrayList<>();
    this.circular = new LinkedHashSet<>();
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
    found.circles().forEach(this::close);
    work();
  }

  /** Over another one, in which some cells hold something else. */
  private Calculation(Calculation before, Map<Address, Value> put) {
    file = before.file;
    workbook = before.workbook;
    tabs = before.tabs.over();
    formulas = before.formulas;
    findings = before.findings;
    order = before.order;
    cycles = before.cycles;
    circular = before.circular;
    put.forEach((cell, value) -> tabs.tab(cell.sheet()).ifPresent(it -> it.put(cell.ref(), value)));
    renewed().forEach(cell -> cell.work(new CellScope(tabs, cell.at())));
  }

  /** The formulas that need a cell put to another value, or one of these formulas; each a new one. */
  private List<FormulaCell> renewed() {
    List<FormulaCell> behind = new ArrayList<>();
    for (FormulaCell cell : order) {
      Tabs.Tab own = tabs.tab(cell.at().sheet()).orElseThrow();
      boolean reads =
          cell.reads().stream().anyMatch(it -> tabs.same(it.tab()).isTouched(it.block()));
      if (reads && !own.isPut(cell.at().ref())) {
        behind.add(own.renew(cell));
      }
    }
    return behind;
  }

  /**
   * The same workbook if some cells held other values: what needs them is worked out anew, all else is as it is here. This
   * one is left as it is.
   */
  public Calculation putting(Map<Address, Value> other) {
    return new Calculation(this, other);
  }

  /** Whether formulas were left because those before them look at more cells than are gone through. */
  public boolean isCutShort() {
    return cutShort;
  }

  /** Whether the formula in that cell is one of those left. */
  public boolean isLeft(Address cell) {
    return Effort.isReason(value(cell));
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

  private void close(CalculationOrder.Circle circle) {
    List<Address> way = circle.way().stream().map(FormulaCell::at).toList();
    Value value = new Value.NotChecked("formulas in a circle: " + named(way));
    circle.all().forEach(cell -> {
      cell.become(value);
      circular.add(cell.at());
    });
    cycles.add(way);
  }

  /** A circle in words; of a long one its first cells and its last. */
  private static String named(List<Address> way) {
    List<String> cells = way.stream().map(Address::toString).toList();
    List<String> shown = cells.size() <= NAMED
        ? cells
        : Stream.of(
                cells.subList(0, NAMED - 2),
                List.of(cells.size() - NAMED + 1 + " others"),
                cells.subList(cells.size() - 1, cells.size()))
            .flatMap(List::stream)
            .toList();
    return String.join(" needs ", shown) + " needs " + cells.get(0);
  }

  private void work() {
    for (FormulaCell cell : order) {
      cell.work(new CellScope(tabs, cell.at()));
      tabs.worked(cell);
    }
    cutShort = tabs.rest();
  }

  /** Works out all formulas once more. */
  public void again() {
    order.forEach(FormulaCell::forget);
    tabs.forget();
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

  /** The cells with formulas that need their own results, in the circles or between them. */
  public Set<Address> circular() {
    return Collections.unmodifiableSet(circular);
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
