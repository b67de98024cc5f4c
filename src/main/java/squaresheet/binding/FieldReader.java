package squaresheet.binding;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.formula.Value;
import squaresheet.roof.RoofNotes;
import squaresheet.tape.DateSystem;
import squaresheet.tape.Marks;
import squaresheet.tape.TapeUnit;
import squaresheet.units.Length;

/** Reads the tables and labels of a filled field sheet. */
final class FieldReader {

  /** The tables that a roof is taped into. */
  private static final Set<String> TAPED = Set.of("planes", "openings", "edges", "corners");

  private final String file;
  private final Locale locale;
  private final DateSystem dates;
  private final List<FoundTable> tables = new ArrayList<>();
  private final Map<String, FoundLabel> labels = new LinkedHashMap<>();
  private final List<Finding> findings = new ArrayList<>();
  private final List<FieldNotes.Unread> stray = new ArrayList<>();
  private final List<Finding> strayFindings = new ArrayList<>();

  FieldReader(String file, Locale locale, DateSystem dates, List<Grid> grids) {
    this.file = file;
    this.locale = locale;
    this.dates = dates;
    for (Grid grid : grids) {
      List<FoundTable> found = TableFinder.find(grid);
      tables.addAll(found);
      LabelFinder.filledIn(grid, found)
          .forEach(label -> labels.putIfAbsent(label.meaning().property(), label));
      stray(grid, found);
    }
  }

  /** Rows of a sheet with a table of the roof that stand in no table. */
  private void stray(Grid grid, List<FoundTable> found) {
    boolean upright = found.stream().noneMatch(FoundTable::isOnItsSide);
    boolean taped = found.stream().anyMatch(table -> TAPED.contains(table.table()));
    if (upright && taped) {
      StrayRows rows = new StrayRows(grid, found, LabelFinder.allFilledIn(grid, found));
      stray.addAll(rows.readings());
      strayFindings.addAll(rows.findings());
    }
  }

  Read<FieldNotes> read() {
    if (tables.stream().noneMatch(table -> table.table().equals("planes"))) {
      return Read.nothing(Complaint.SHEET_MISSING.at(
          new Where.InFile(file),
          "a field sheet must have a table of planes with headings like Plane, Shape, Eave, Up the"
              + " slope, Pitch, but there is none"));
    }
    Optional<TapeUnit> declared = declaredUnit();
    Tape tape = new Tape(declared.orElse(TapeUnit.FEET), marks(), dates, false);
    RoofReader roof = new RoofReader(tape).read(tables);
    findings.addAll(roof.findings());
    if (declared.isEmpty() && findings.stream().anyMatch(FieldReader::isAboutBareNumbers)) {
      findings.add(Complaint.UNIT_UNDECLARED.at(
          new Where.InFile(file),
          "the sheet must say the unit for bare numbers (feet, inches, metres or millimetres), but"
              + " does not; bare numbers are taken as feet"));
    }
    RoofNotes notes = new RoofNotes(roof.planes(), tolerance(tape), roof.lost());
    findings.addAll(strayFindings);
    List<FieldNotes.Unread> unread = new ArrayList<>(roof.unread());
    unread.addAll(stray);
    FieldNotes field = new FieldNotes(notes, tape.declared(), texts(tape), roof.wording(), unread);
    return Read.of(field, findings);
  }

  private static boolean isAboutBareNumbers(Finding finding) {
    return finding.info().id().equals("bare-number-unit");
  }

  private Map<String, FieldNotes.Label> texts(Tape tape) {
    Map<String, FieldNotes.Label> texts = new LinkedHashMap<>();
    labels.forEach((property, label) -> texts.put(property, tape.label(label)));
    return texts;
  }

  private Optional<TapeUnit> declaredUnit() {
    FoundLabel label = labels.get("unit");
    if (label == null || label.text().isEmpty()) {
      return Optional.empty();
    }
    Optional<TapeUnit> unit = UnitWords.find(label.text()).flatMap(Tape::unit);
    if (unit.isEmpty()) {
      findings.add(Complaint.WORD_UNKNOWN.at(
          label.where(),
          label.text(),
          "",
          "unit must be one of feet, inches, metres, millimetres, but is '" + label.text()
              + "'; bare numbers are taken as feet"));
    }
    return Optional.of(unit.orElse(TapeUnit.FEET));
  }

  private Marks marks() {
    Marks usual = Marks.of(locale);
    FoundLabel label = labels.get("decimal_mark");
    if (label == null || label.text().isEmpty()) {
      return usual;
    }
    Optional<Character> mark = Marks.named(label.text());
    if (mark.isEmpty()) {
      findings.add(Complaint.WORD_UNKNOWN.at(
          label.where(),
          label.text(),
          usual.word(),
          "decimal mark must be point or comma, but is '" + label.text()
              + "'; numbers are read with a decimal " + usual.word()));
    }
    return mark.map(usual::withDecimal).orElse(usual);
  }

  private Length tolerance(Tape tape) {
    FoundLabel label = labels.get("tape_tolerance");
    if (label == null) {
      return RoofNotes.usualTolerance();
    }
    Read<Value> read = new SettingReader(SettingsSheet.TOLERANCE, tape.label(label)).read();
    findings.addAll(read.findings());
    return read.value()
        .map(value -> Length.nearestInches(((Value.Number) value).value()))
        .orElse(RoofNotes.usualTolerance());
  }
}
