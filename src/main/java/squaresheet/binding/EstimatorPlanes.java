package squaresheet.binding;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.formula.Formula;
import squaresheet.formula.Node;
import squaresheet.roof.PlaneNotes;
import squaresheet.roof.PlaneNotes.Measured;
import squaresheet.roof.Shape;
import squaresheet.sheet.Address;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Ref;
import squaresheet.tape.DateSystem;
import squaresheet.tape.Marks;
import squaresheet.tape.TapeUnit;
import squaresheet.units.Length;
import squaresheet.units.Pitch;

/**
 * Reads planes out of an estimator's own table: an eave, a length across, a pitch. Where no shape is written, the formula of
 * the area says whether a plane is a rectangle or a triangle; where that does not say it either, the plane is not modelled.
 */
final class EstimatorPlanes {

  private final FoundTable table;
  private final Tape tape;
  private final Optional<Pitch> common;
  private final Map<Integer, PlaneNotes> planes = new LinkedHashMap<>();
  private final List<Finding> findings = new ArrayList<>();

  /**
   * Reads the planes of a table.
   *
   * @param common the pitch that a label says for all planes, where the table has no column of pitches
   */
  EstimatorPlanes(FoundTable table, boolean date1904, Optional<Pitch> common) {
    this.table = table;
    this.common = common;
    tape = tape(date1904);
    boolean measures =
        has("eave") && (has("pitch") || common.isPresent()) && (has("up_slope") || has("run"));
    if (measures) {
      table.rows(FoundTable.Row.DATA).forEach(this::plane);
    }
  }

  static Tape tape(boolean date1904) {
    DateSystem dates = date1904 ? DateSystem.SINCE_1904 : DateSystem.SINCE_1900;
    return new Tape(TapeUnit.FEET, Marks.of(Locale.ENGLISH), dates, true);
  }

  /** The planes by their rows. */
  Map<Integer, PlaneNotes> planes() {
    return planes;
  }

  List<Finding> findings() {
    return findings;
  }

  private boolean has(String property) {
    return table.column(property).isPresent();
  }

  private void plane(int row) {
    RowReader reader = new RowReader(table, row, tape);
    if (has("shape") && !reader.isBlank("shape") && has("measured") && has("pitch")) {
      new PlaneRow(reader, new CornerLists()).read().ifPresent(it -> planes.put(row, it));
    } else {
      reader
          .text("plane")
          .flatMap(id -> measured(id, reader, row))
          .ifPresent(it -> planes.put(row, it));
    }
    findings.addAll(reader.findings());
  }

  private Optional<PlaneNotes> measured(String id, RowReader reader, int row) {
    boolean up = has("up_slope") && !reader.isBlank("up_slope");
    Optional<Length> eave = reader.length("eave");
    Optional<Length> across = reader.length(up ? "up_slope" : "run");
    Optional<Pitch> pitch = has("pitch") ? reader.pitch("pitch") : common;
    if (eave.isEmpty() || across.isEmpty() || pitch.isEmpty()) {
      return Optional.empty();
    }
    Optional<Shape> shape = shape(reader, row, eave.get(), across.get());
    if (shape.isEmpty()) {
      reader.remark(Complaint.NOT_BOUND.at(
          reader.where("plane"),
          "neither a shape nor the formula of an area says what shape plane '" + id
              + "' is; it is not modelled"));
    }
    Measured how = up ? Measured.ON_SLOPE : Measured.IN_PLAN;
    return shape.map(
        it -> new PlaneNotes(id, it, how, pitch.get(), List.of(), List.of(), reader.places()));
  }

  private Optional<Shape> shape(RowReader reader, int row, Length eave, Length across) {
    String word = has("shape") ? table.text(row, "shape").toLowerCase(Locale.ROOT) : "";
    boolean pointed =
        word.isEmpty() && Cells.number(table.cell(row, "top")).stream().anyMatch(it -> it == 0);
    if (word.contains("tri") || pointed || (word.isEmpty() && isHalved(row) && !hasTop(row))) {
      return Optional.of(new Shape.Triangle(eave, across));
    }
    Optional<Length> top = hasTop(row) ? reader.lengthIfAny("top") : Optional.empty();
    if (top.isPresent() && !top.get().equals(eave)) {
      return Optional.of(new Shape.Trapezoid(eave, top.get(), across));
    }
    boolean rectangle = word.startsWith("rect") || (word.isEmpty() && hasArea(row));
    return rectangle ? Optional.of(new Shape.Rectangle(eave, across)) : Optional.empty();
  }

  private boolean hasTop(int row) {
    return has("top") && !Cells.text(table.cell(row, "top")).isEmpty();
  }

  private boolean hasArea(int row) {
    return areas(row).findAny().isPresent();
  }

  private java.util.stream.Stream<String> areas(int row) {
    return java.util.stream.Stream.of("plan_area", "sloped_area")
        .map(property -> table.cell(row, property))
        .filter(Cell::isFormula)
        .map(Cell::formula);
  }

  /** Whether the area is worked out from the eave and halved. */
  private boolean isHalved(int row) {
    return areas(row)
        .anyMatch(formula -> asksForEave(formula, row)
            && formula
                .replace(" ", "")
                .matches(".*(/2(?![\\d.])|\\*0?\\.5(?!\\d)|(?<![\\d.])0?\\.5\\*).*"));
  }

  private boolean asksForEave(String formula, int row) {
    Optional<Ref> eave = table.address(row, "eave").map(Address::ref);
    Read<Formula> read = Formula.parse(formula);
    return eave.isPresent()
        && read.value()
            .map(it -> it.references().stream()
                .map(Node.Reference::block)
                .anyMatch(block -> block.contains(eave.get())))
            .orElse(false);
  }
}
