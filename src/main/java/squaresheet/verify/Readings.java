package squaresheet.verify;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import squaresheet.binding.BoundJob;
import squaresheet.binding.JobWorkbook;
import squaresheet.finding.Read;
import squaresheet.formula.Calculation;
import squaresheet.formula.Interval;
import squaresheet.formula.Ranges;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Workbook;
import squaresheet.takeoff.Rule;
import squaresheet.takeoff.Rulebook;
import squaresheet.tape.TapeUnit;
import squaresheet.units.Length;
import squaresheet.units.Pack;

/**
 * What a job orders when the tape was off: the workbook's own formulas over intervals. Two readings of one edge may differ by
 * the workbook's tolerance, so each may be off by half of it. Pitches are taken as they stand.
 *
 * @param off what each length may be off by
 * @param lengths how many typed lengths there are
 * @param orders every product that is ordered, in the order of the rulebook
 */
public record Readings(Length off, int lengths, List<Ordered> orders) {

  /** Columns that hold lengths as they were taped, by their defined names. */
  private static final List<String> TAPED = List.of(
      "eave_width",
      "plane_up_slope",
      "plane_top",
      "plane_offset",
      "corner_along",
      "corner_up",
      "opening_width",
      "opening_up_slope",
      "edge_taped",
      "edge_other_taped");

  /** Behind such a name where the tape was not in feet: the column that is typed. */
  private static final String TYPED = "_typed";

  public Readings {
    orders = List.copyOf(orders);
  }

  /**
   * A product that is ordered.
   *
   * @param label what it is
   * @param unit its packs
   * @param cell where the order stands
   * @param now packs as it stands
   * @param range packs when every reading may be off at once; the same twice where the tape cannot move it
   * @param isFollowed whether its formulas could be followed; if not, the range says nothing
   * @param again the cells of readings that alone change the order by a pack, the one that changes it most first
   */
  public record Ordered(
      String label,
      String unit,
      Address cell,
      double now,
      Interval range,
      boolean isFollowed,
      List<String> again) {

    public Ordered {
      again = List.copyOf(again);
    }
  }

  /** Works out the ranges of a job workbook. */
  public static Read<Readings> of(Workbook workbook, String file, Rulebook rulebook) {
    Read<BoundJob> job = JobWorkbook.read(workbook, file, rulebook);
    return job.map(bound -> of(workbook, file, bound));
  }

  private static Readings of(Workbook workbook, String file, BoundJob job) {
    Calculation calculation = Calculation.of(file, workbook);
    Length off = Length.nearestInches(job.roof().tapeTolerance().toInches() / 2);
    Map<Address, Interval> taped =
        taped(workbook, calculation, job.input().card().unit(), off);
    Ranges ranges = Ranges.of(calculation, taped);
    List<Ordered> orders = new ArrayList<>();
    for (Rule rule : job.input().company().rulebook().rules()) {
      rule.role().flatMap(job.selection()::of).ifPresent(product -> job.cells()
          .cell("job", rule.name())
          .filter(cell -> calculation.value(cell) instanceof Value.Number)
          .ifPresent(cell -> orders.add(
              ordered(rule.label(), product.packing().pack(), cell, calculation, ranges))));
    }
    return new Readings(off, taped.size(), orders);
  }

  private static Ordered ordered(
      String label, Pack pack, Address cell, Calculation calculation, Ranges ranges) {
    double now = ((Value.Number) calculation.value(cell)).value();
    String quantity = cell.toString();
    Interval range = ranges.range(quantity).orElse(Interval.of(now));
    List<String> again = range.isExact()
        ? List.of()
        : ranges.deciding(quantity, now, 1).stream()
            .map(Ranges.Deciding::reading)
            .toList();
    return new Ordered(
        label, pack.word(Math.round(now)), cell, now, range, ranges.isFollowed(quantity), again);
  }

  private static Map<Address, Interval> taped(
      Workbook workbook, Calculation calculation, TapeUnit unit, Length off) {
    Map<Address, Interval> taped = new LinkedHashMap<>();
    for (String name : TAPED) {
      boolean inFeet = workbook.name(name + TYPED).isEmpty();
      double by = inFeet ? off.toFeet() : in(unit, off);
      cells(workbook, inFeet ? name : name + TYPED).forEach(cell -> number(calculation.value(cell))
          .filter(value -> !workbook.cell(cell).isFormula())
          .ifPresent(value -> taped.put(cell, Interval.around(value, by))));
    }
    return taped;
  }

  private static double in(TapeUnit unit, Length off) {
    return switch (unit) {
      case FEET -> off.toFeet();
      case INCHES -> off.toInches();
      case METRES -> off.toMetres();
      case MILLIMETRES -> off.toMillimetres();
    };
  }

  /** The cells of a column, found by its defined name. */
  private static List<Address> cells(Workbook workbook, String name) {
    Optional<Address> first = workbook.name(name).flatMap(Workbook.Name::cell);
    Optional<Block> block = workbook.name(name).flatMap(Workbook.Name::block);
    List<Address> cells = new ArrayList<>();
    if (first.isPresent() && block.isPresent()) {
      for (int row = block.get().first().row(); row <= block.get().last().row(); row++) {
        cells.add(
            new Address(first.get().sheet(), new Ref(row, first.get().ref().column())));
      }
    }
    return cells;
  }

  private static Optional<Double> number(Value value) {
    return value instanceof Value.Number number ? Optional.of(number.value()) : Optional.empty();
  }
}
