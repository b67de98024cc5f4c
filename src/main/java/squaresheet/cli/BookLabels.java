package squaresheet.cli;

import java.util.Optional;
import squaresheet.binding.BoundJob;
import squaresheet.binding.CellMap;
import squaresheet.binding.JobWorkbook;
import squaresheet.finding.Where;
import squaresheet.formula.Labels;
import squaresheet.sheet.Address;
import squaresheet.sheet.Workbook;
import squaresheet.takeoff.Rule;
import squaresheet.takeoff.Rulebook;
import squaresheet.units.Unit;

/** Tells the units of a job workbook's cells and names; of another workbook nothing is known. */
final class BookLabels implements Labels {

  private final Rulebook rulebook;
  private final CellMap cells;

  private BookLabels(BoundJob job) {
    rulebook = job.input().company().rulebook();
    cells = job.cells();
  }

  static Labels of(Workbook workbook, String file, Rulebook rulebook) {
    if (!JobWorkbook.isOne(workbook)) {
      return Labels.NONE;
    }
    return JobWorkbook.read(workbook, file, rulebook)
        .value()
        .<Labels>map(BookLabels::new)
        .orElse(Labels.NONE);
  }

  @Override
  public Optional<Unit> unit(Address cell) {
    return cells.item(cell).map(Where.OfItem::property).flatMap(this::unit);
  }

  @Override
  public Optional<Unit> unit(String name) {
    return rulebook.rule(name).filter(rule -> rule.holds() == Rule.Holds.NUMBER).map(Rule::unit);
  }

  @Override
  public String origin(String name) {
    return cells.cell("job", name).map(Address::toString).orElse("");
  }
}
