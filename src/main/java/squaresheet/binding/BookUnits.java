package squaresheet.binding;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import squaresheet.finding.Where;
import squaresheet.formula.Labels;
import squaresheet.sheet.Address;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.Workbook;
import squaresheet.takeoff.Rule;
import squaresheet.takeoff.Rulebook;
import squaresheet.units.Unit;

/**
 * What the numbers in a workbook's cells count: as its headings, labels, unit columns and number formats write it out, and in
 * a job workbook as its rules state. Where nothing is written nothing is known; a unit is never guessed.
 */
public final class BookUnits implements Labels {

  private final Map<Address, Unit> written;
  private final Optional<BoundJob> job;

  private BookUnits(Map<Address, Unit> written, Optional<BoundJob> job) {
    this.written = written;
    this.job = job;
  }

  /** What is written in a workbook of any layout; the sheets of our own layout speak by their rules instead. */
  public static BookUnits of(Workbook book, String file) {
    return of(book, new SheetTables(file));
  }

  static BookUnits of(Workbook book, SheetTables sheets) {
    Map<Address, Unit> written = new HashMap<>();
    for (Sheet sheet : book.sheets()) {
      if (!AnyLayout.isOurs(sheet) && !isOurs(book, sheet)) {
        List<FoundTable> tables = sheets.of(sheet);
        tables.forEach(table -> new TableUnits(table).into(written));
        new SheetUnits(sheets.grid(sheet), tables).into(written);
      }
    }
    written.replaceAll((at, unit) -> shown(book.cell(at), unit));
    return new BookUnits(written, Optional.empty());
  }

  /** What is written in a workbook, and in a job workbook what these rules state. */
  public static BookUnits of(Workbook book, String file, Rulebook rulebook) {
    BookUnits units = of(book, file);
    return JobWorkbook.isOne(book)
        ? JobWorkbook.read(book, file, rulebook).value().map(units::with).orElse(units)
        : units;
  }

  private static boolean isOurs(Workbook book, Sheet sheet) {
    return JobWorkbook.isOne(book)
        && book.names().stream().flatMap(name -> name.cell().stream()).anyMatch(cell -> cell.sheet()
            .equalsIgnoreCase(sheet.name()));
  }

  /** These, and what the rules state of the cells of a job workbook. */
  public BookUnits with(BoundJob bound) {
    return new BookUnits(written, Optional.of(bound));
  }

  /** A percentage that the number format writes, or that is 1 at most, is a ratio: 10 % is kept as 0.1. */
  private static Unit shown(Cell cell, Unit unit) {
    boolean ratio = unit.isLike(Unit.RATIO)
        && (cell.format().contains("%") || Math.abs(Cells.number(cell).orElse(0)) <= 1);
    return ratio ? Unit.RATIO : unit;
  }

  @Override
  public Optional<Unit> unit(Address cell) {
    return job.flatMap(it -> it.cells().item(cell))
        .map(Where.OfItem::property)
        .flatMap(this::unit)
        .or(() -> Optional.ofNullable(written.get(cell)));
  }

  @Override
  public Optional<Unit> unit(String name) {
    return rulebook()
        .flatMap(rules -> rules.rule(name))
        .filter(rule -> rule.holds() == Rule.Holds.NUMBER)
        .map(Rule::unit);
  }

  private Optional<Rulebook> rulebook() {
    return job.map(it -> it.input().company().rulebook());
  }

  @Override
  public String origin(String name) {
    return job.flatMap(it -> it.cells().cell("job", name))
        .map(Address::toString)
        .orElse("");
  }
}
