package squaresheet.verify;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import squaresheet.binding.AnyLayout;
import squaresheet.binding.BookUnits;
import squaresheet.binding.JobWorkbook;
import squaresheet.finding.Finding;
import squaresheet.finding.Where;
import squaresheet.formula.Calculation;
import squaresheet.formula.Formula;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.Workbook;

/** A workbook to be verified, with what follows from it: formulas read, values worked out anew, who reads whom. */
final class Book {

  private final String file;
  private final Calculation calculation;
  private final Looks looks;
  private final References references;
  private final Links links;
  private final Reckoning reckoning;
  private final Map<String, Tab> tabs = new LinkedHashMap<>();
  private final Optional<AnyLayout> layout;
  private final BookUnits units;
  private final Set<Address> moving;

  private Book(String file, Workbook workbook) {
    this.file = file;
    calculation = Calculation.of(file, AnyLayout.withoutNotes(workbook));
    looks = new Looks(workbook());
    references = new References(calculation);
    Map<Address, List<Cells>> reads = new LinkedHashMap<>();
    formulas().forEach((cell, formula) -> reads.put(cell, references.read(formula.tree(), cell)));
    links = new Links(reads, looks);
    reckoning = new Reckoning(calculation);
    moving = moving(formulas(), links);
    layout =
        JobWorkbook.isOne(workbook) ? Optional.empty() : Optional.of(AnyLayout.of(workbook, file));
    units = layout.map(AnyLayout::units).orElseGet(() -> BookUnits.of(workbook, file));
    workbook().sheets().forEach(sheet -> tabs.put(sheet.name(), new Tab(this, sheet)));
  }

  /** What is bound of a workbook of foreign layout; none of a job workbook of ours, which is bound by itself. */
  Optional<AnyLayout> layout() {
    return layout;
  }

  /** What is written of the units of its numbers. */
  BookUnits units() {
    return units;
  }

  /** Reads all formulas of the workbook and works out their values. */
  static Book of(String file, Workbook workbook) {
    return new Book(file, workbook);
  }

  private static Set<Address> moving(Map<Address, Formula> formulas, Links links) {
    Set<Address> all = new LinkedHashSet<>();
    formulas.forEach((cell, formula) -> {
      if (Nodes.calls(
              formula.tree(),
              "TODAY",
              "NOW",
              "RAND",
              "RANDBETWEEN",
              "OFFSET",
              "INDIRECT",
              "CELL",
              "INFO")
          .findAny()
          .isPresent()) {
        all.add(cell);
      }
    });
    all.addAll(links.dependents(all));
    return all;
  }

  String file() {
    return file;
  }

  Workbook workbook() {
    return calculation.workbook();
  }

  /** The formulas that could be read, by their cells, sheet by sheet, row by row. */
  Map<Address, Formula> formulas() {
    return calculation.formulas();
  }

  /** What there is to say about formulas that could not be read. */
  List<Finding> unreadable() {
    return calculation.findings();
  }

  /** How many formulas are not worked out because those before them look at more cells than are gone through. */
  long left() {
    return calculation.isCutShort()
        ? formulas().keySet().stream().filter(calculation::isLeft).count()
        : 0;
  }

  /** Whether the formula in that cell is one of those. */
  boolean isLeft(Address cell) {
    return calculation.isLeft(cell);
  }

  Optional<Formula> formula(Address cell) {
    looks.spend(1);
    return Optional.ofNullable(formulas().get(cell));
  }

  /** How often the check that is asked may look at cells yet. */
  Looks looks() {
    return looks;
  }

  References references() {
    return references;
  }

  Links links() {
    return links;
  }

  Reckoning reckoning() {
    return reckoning;
  }

  /** The formulas outside circles, those that are read before those that read them. */
  List<Address> order() {
    return calculation.order();
  }

  /** The formulas that come to themselves again. */
  Set<Address> circular() {
    return calculation.circular();
  }

  /** The formulas whose values change by themselves, with the day or with every calculation. */
  Set<Address> moving() {
    return moving;
  }

  List<Tab> tabs() {
    return List.copyOf(tabs.values());
  }

  /** The sheet of that name; an empty one where a formula or a name speaks of one that is not there. */
  Tab tab(String sheet) {
    return Optional.ofNullable(tabs.get(sheet))
        .orElseGet(() -> new Tab(this, Sheet.builder(sheet).build()));
  }

  /** The cells that a name of the whole workbook stands for, where their sheet is there. */
  Optional<Cells> named(String name) {
    return workbook().name(name).flatMap(it -> it.cell()
        .filter(cell -> workbook().sheet(cell.sheet()).isPresent())
        .flatMap(
            cell -> it.block().map(block -> new Cells(references.tab(cell.sheet(), cell), block))));
  }

  Cell cell(Address address) {
    looks.spend(1);
    return workbook().cell(address);
  }

  /** The value worked out anew, or the typed one. */
  Value value(Address address) {
    looks.spend(1);
    return reckoning.value(address);
  }

  /** The value worked out anew, where it is a number. */
  OptionalDouble number(Address address) {
    return Shown.number(value(address));
  }

  Where where(Address address) {
    return new Where.InCell(file, address);
  }
}
