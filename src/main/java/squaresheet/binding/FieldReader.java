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
import squaresheet.job.Unread;
import squaresheet.roof.RoofNotes;
import squaresheet.takeoff.Rulebook;
import squaresheet.tape.DateSystem;
import squaresheet.tape.Marks;
import squaresheet.tape.TapeUnit;
import squaresheet.tape.Written;
import squaresheet.units.Length;

/** Reads the tables and labels of a filled field sheet, and tells what is left. */
final class FieldReader {

  /** The tables that a roof is taped into. */
  static final Set<String> TAPED = Set.of("planes", "openings", "edges", "corners");

  /** The title over the labels, which some write before the name of the job. */
  private static final String TITLE = "Job";

  /** Of a sheet that is no field sheet so many rows are told. */
  private static final int TOLD = 200;

  private final String file;
  private final Locale locale;
  private final DateSystem dates;
  private final FieldCells cells;
  private final FieldWords words;
  private final FieldRest rest;
  private final Map<Grid, List<FoundTable>> tables = new LinkedHashMap<>();
  private final Map<String, FieldLabel> labels = new LinkedHashMap<>();
  private final List<Finding> findings = new ArrayList<>();
  private final List<Unread> unread = new ArrayList<>();

  FieldReader(String file, Locale locale, DateSystem dates, List<Grid> grids, Rulebook rulebook) {
    this.file = file;
    this.locale = locale;
    this.dates = dates;
    cells = new FieldCells(grids);
    words = new FieldWords(rulebook);
    rest = new FieldRest(cells, words);
    for (Grid grid : grids) {
      tables.put(
          grid,
          TableFinder.find(grid).stream()
              .filter(table -> TAPED.contains(table.table()))
              .toList());
    }
  }

  Read<FieldNotes> read() {
    List<FoundTable> all = tables.values().stream().flatMap(List::stream).toList();
    if (all.stream().noneMatch(table -> table.table().equals("planes"))) {
      return noFieldSheet();
    }
    tables.forEach(this::labels);
    Optional<TapeUnit> declared = declaredUnit();
    Tape tape = new Tape(declared.orElse(TapeUnit.FEET), marks(), dates, false);
    Length tolerance = tolerance(tape);
    RoofReader roof = RoofReader.ofFieldSheet(tape, rest::item).read(all);
    findings.addAll(roof.findings());
    if (declared.isEmpty() && findings.stream().anyMatch(FieldReader::isAboutBareNumbers)) {
      findings.add(Complaint.UNIT_UNDECLARED.at(
          new Where.InFile(file),
          "the sheet must say the unit for bare numbers (feet, inches, metres or millimetres), but"
              + " does not; bare numbers are taken as feet"));
    }
    unread.addAll(0, roof.unread());
    rest(all);
    return Read.of(
        new FieldNotes(
            new RoofNotes(roof.planes(), tolerance, roof.lost()),
            tape.declared(),
            texts(tape),
            roof.wording(),
            unread,
            rest.remarks()),
        findings);
  }

  /** What is left when tables and labels are read. */
  private void rest(List<FoundTable> all) {
    tables.forEach((grid, found) -> FieldProse.take(grid, cells, found));
    all.forEach(rest::table);
    tables.forEach(rest::outside);
    findings.addAll(rest.findings());
    unread.addAll(rest.unread());
  }

  private Read<FieldNotes> noFieldSheet() {
    findings.add(Complaint.SHEET_MISSING.at(
        new Where.InFile(file),
        "a field sheet must have a table of planes with headings like Plane, Shape, Eave, Up the"
            + " slope, Pitch, but there is none"));
    tables.keySet().stream()
        .flatMap(grid -> cells.lines(grid).stream())
        .limit(TOLD)
        .forEach(line -> findings.add(Complaint.WORDS_LEFT.at(
            line.grid().where(line.row(), line.first()),
            "nothing is read of this row: '" + String.join(" | ", line.written()) + "'")));
    return Read.nothing(findings);
  }

  private static boolean isAboutBareNumbers(Finding finding) {
    return finding.info().id().equals("bare-number-unit");
  }

  /** Takes the labels of a grid; what stands beside one for the second time is taken where it says the same. */
  private void labels(Grid grid, List<FoundTable> found) {
    for (FieldLabel label : FieldLabels.take(grid, cells, words, found)) {
      FieldLabel before = labels.get(label.property());
      if (before == null) {
        labels.put(label.property(), label);
      } else if (!before.text().equals(label.text())) {
        boolean titled = before.label().equalsIgnoreCase(TITLE);
        if (titled) {
          labels.put(label.property(), label);
        }
        twice(titled ? label : before, titled ? before : label);
      }
    }
  }

  private void twice(FieldLabel before, FieldLabel label) {
    String property = label.property();
    String says = words.label(property) + " must be said once, but is '" + before.text() + "' at "
        + before.where() + " and '" + label.text() + "' here; the first counts";
    if (words.counts(property)) {
      refuse(label, "", says);
    } else {
      rest.keep(label.where(), words.label(property) + ", said again", label.text());
    }
  }

  /** Something that the job is worked out by, and that cannot be read. */
  private void refuse(FieldLabel label, String expected, String says) {
    findings.add(Complaint.WORD_UNKNOWN.at(label.where(), label.text(), expected, says));
    unread.add(setting(label, says));
  }

  private Unread setting(FieldLabel label, String why) {
    String name = words.label(label.property());
    return Unread.of(
        label.where(), Unread.Kind.SETTING, name, List.of(label.label(), label.text()), name, why);
  }

  private Map<String, FieldNotes.Label> texts(Tape tape) {
    Map<String, FieldNotes.Label> texts = new LinkedHashMap<>();
    labels.forEach((property, label) -> texts.put(property, text(tape, label)));
    return texts;
  }

  private FieldNotes.Label text(Tape tape, FieldLabel label) {
    Written written = Tape.written(label.cell());
    return new FieldNotes.Label(
        dates.day(written).orElseGet(label::text),
        written,
        tape.reader(label.unit()),
        label.where());
  }

  private Optional<TapeUnit> declaredUnit() {
    FieldLabel label = labels.get("unit");
    if (label == null || label.text().isEmpty()) {
      return Optional.empty();
    }
    Optional<TapeUnit> unit = UnitWords.find(label.text()).flatMap(Tape::unit);
    if (unit.isEmpty()) {
      refuse(
          label,
          "",
          "unit must be one of feet, inches, metres, millimetres, but is '" + label.text()
              + "'; bare numbers are taken as feet");
    }
    return Optional.of(unit.orElse(TapeUnit.FEET));
  }

  private Marks marks() {
    Marks usual = Marks.of(locale);
    FieldLabel label = labels.get("decimal_mark");
    if (label == null || label.text().isEmpty()) {
      return usual;
    }
    Optional<Character> mark = Marks.named(label.text());
    if (mark.isEmpty()) {
      refuse(
          label,
          usual.word(),
          "decimal mark must be point or comma, but is '" + label.text()
              + "'; numbers are read with a decimal " + usual.word());
    }
    return mark.map(usual::withDecimal).orElse(usual);
  }

  private Length tolerance(Tape tape) {
    FieldLabel label = labels.get(SettingsSheet.TOLERANCE.name());
    if (label == null) {
      return RoofNotes.usualTolerance();
    }
    Read<Value> read = new SettingReader(SettingsSheet.TOLERANCE, text(tape, label)).read();
    findings.addAll(read.findings());
    if (read.value().isEmpty()) {
      unread.add(setting(label, read.findings().get(0).says()));
    }
    return read.value()
        .map(value -> Length.nearestInches(((Value.Number) value).value()))
        .orElse(RoofNotes.usualTolerance());
  }
}
