package squaresheet.binding;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.formula.Value;
import squaresheet.job.Company;
import squaresheet.job.JobCard;
import squaresheet.job.JobInput;
import squaresheet.product.Catalogue;
import squaresheet.product.Role;
import squaresheet.product.Selection;
import squaresheet.roof.RoofNotes;
import squaresheet.sheet.Address;
import squaresheet.sheet.Workbook;
import squaresheet.takeoff.Rule;
import squaresheet.takeoff.Rulebook;
import squaresheet.takeoff.SettingRange;
import squaresheet.takeoff.Settings;
import squaresheet.tape.DateSystem;
import squaresheet.tape.Marks;
import squaresheet.tape.TapeUnit;

/** Reads a job workbook back by its defined names and headings, wherever its sheets, rows and columns have gone. */
final class JobReader {

  private static final String USUAL_COUNTS = "; the usual value counts instead";

  private final Workbook book;
  private final String file;
  private final Rulebook rulebook;
  private final NamedCells names;
  private final BookValues values;
  private final List<Finding> findings = new ArrayList<>();
  private final List<FoundTable> tables = new ArrayList<>();
  private final Items items;

  JobReader(Workbook book, String file, Rulebook rulebook) {
    this.book = book;
    this.file = file;
    names = new NamedCells(book, file);
    values = new BookValues(book);
    this.rulebook = rules(rulebook);
    items = new Items(book, values, names, this.rulebook);
  }

  /** The rules that this workbook follows. */
  private Rulebook rules(Rulebook given) {
    Read<Rulebook> read =
        OwnRulesSheet.read(given, names, new NamedRows(file, names, values, findings));
    findings.addAll(read.findings());
    return read.value().orElseThrow();
  }

  Read<BoundJob> read() {
    JobTables.ALL.forEach((table, columns) ->
        new NamedTable(names, values, file, table, columns).find().ifPresent(tables::add));
    if (tables.stream().noneMatch(table -> table.table().equals("planes"))) {
      return Read.nothing(Complaint.SHEET_MISSING.at(
          new Where.InFile(file),
          "a job workbook must have the table of planes with its defined names (plane_name,"
              + " pitch_rise, …), but has none"));
    }
    Format.newer(book, Format.JOB, new Where.InFile(file)).ifPresent(findings::add);
    missingTables();
    missingColumns();
    NamedRows rows = new NamedRows(file, names, values, findings);
    UnreadRows unread = new UnreadRows(book, file, names, rows);
    RoofReader roof = new RoofReader(tape()).missing(unread.planes()).read(tables);
    findings.addAll(roof.findings());
    Map<String, Value> settings = settings();
    Catalogue catalogue = catalogue();
    Selection selection = selection(catalogue);
    items.of(tables);
    findings.addAll(items.findings());
    items.estimate();
    Company company = company(catalogue, rows);
    RoofNotes notes = new RoofNotes(roof.planes(), tolerance(), roof.lost());
    findings.addAll(unread.judge(notes, rulebook, settings));
    JobInput input =
        onTheSafeSide(new JobInput(card(), notes, company, selection, settings, unread.unread()));
    return Read.of(new BoundJob(input, items.rules(), items.map(), items.coverage()), findings);
  }

  private Company company(Catalogue catalogue, NamedRows rows) {
    Pricing pricing = new PricingReader(rows).read();
    findings.addAll(pricing.prices().without(catalogue));
    findings.addAll(new ListRows(book, file, names, values, tables).findings());
    findings.addAll(names.findings());
    return new Company(catalogue, rulebook, pricing.prices(), pricing.rates(), pricing.terms());
  }

  private JobInput onTheSafeSide(JobInput input) {
    Read<JobInput> settled = input.onTheSafeSide();
    findings.addAll(settled.findings());
    return settled.value().orElseThrow();
  }

  private void missingTables() {
    JobTables.ALL.keySet().stream()
        .filter(name -> tables.stream().noneMatch(table -> table.table().equals(name)))
        .forEach(name -> findings.add(Complaint.SHEET_MISSING.at(
            new Where.InFile(file),
            "a job workbook must have the table of " + name
                + " with its defined names, but has none; nothing of it is read")));
  }

  private void missingColumns() {
    for (FoundTable table : tables) {
      JobTables.ALL.get(table.table()).forEach((property, name) -> {
        if (table.column(property).isEmpty()) {
          findings.add(Complaint.COLUMN_MISSING.at(
              table.grid().where(table.heading(), table.first()),
              "the table of " + table.table() + " must have the column '"
                  + property.replace('_', ' ') + "' (defined name " + name
                  + "), but it is missing"));
        }
      });
    }
  }

  private Tape tape() {
    DateSystem dates = book.date1904() ? DateSystem.SINCE_1904 : DateSystem.SINCE_1900;
    return new Tape(TapeUnit.FEET, Marks.of(Locale.ENGLISH), dates, false);
  }

  private squaresheet.units.Length tolerance() {
    return setting(SettingsSheet.TOLERANCE)
        .filter(Value.Number.class::isInstance)
        .map(value -> squaresheet.units.Length.nearestInches(((Value.Number) value).value()))
        .orElse(RoofNotes.usualTolerance());
  }

  private Map<String, Value> settings() {
    Map<String, Value> settings = new LinkedHashMap<>();
    for (Rule rule : rulebook.settings()) {
      setting(rule).ifPresent(value -> settings.put(rule.name(), value));
    }
    return settings;
  }

  private Optional<Value> setting(Rule rule) {
    return names
        .needed(names.typed(rule.name()), "the setting '" + rule.label() + "'")
        .flatMap(cell -> setting(rule, cell));
  }

  private Optional<Value> setting(Rule rule, Address cell) {
    Value typed = values.value(cell);
    Value value = counted(rule, typed);
    boolean fits =
        switch (rule.holds()) {
          case NUMBER -> value instanceof Value.Number;
          case TEXT -> value instanceof Value.Text;
          case TRUTH -> value instanceof Value.Truth;
        };
    if (!fits) {
      String text = Cells.text(book.cell(cell));
      findings.add(Complaint.NOT_A_NUMBER.at(
          new Where.InCell(file, cell),
          text,
          "",
          rule.label() + " must be " + must(rule) + ", but "
              + (text.isEmpty() ? "the cell is empty" : "reads '" + text + "'")
              + USUAL_COUNTS));
      return Optional.empty();
    }
    Optional<Finding> off = off(rule, typed, value, new Where.InCell(file, cell));
    off.map(finding -> finding.adding(USUAL_COUNTS)).ifPresent(findings::add);
    return off.isEmpty() ? Optional.of(value) : Optional.empty();
  }

  /** What is wrong with a setting, in the unit in which it is typed. */
  private Optional<Finding> off(Rule rule, Value typed, Value counted, Where where) {
    Optional<SettingRange> metric = isInItsUnit(rule)
        ? Optional.empty()
        : MetricLength.of(rule).flatMap(unit -> rule.range().map(unit::typed));
    return metric.isEmpty()
        ? Settings.finding(rule, counted, where)
        : metric
            .filter(range -> !range.holds(((Value.Number) typed).value()))
            .map(range -> Settings.off(rule, range.mustBe(), typed, where));
  }

  private boolean isInItsUnit(Rule rule) {
    return names.typed(rule.name()).equals(rule.name());
  }

  /** What is typed, in the unit of the rule. */
  private Value counted(Rule rule, Value typed) {
    return !isInItsUnit(rule) && typed instanceof Value.Number number
        ? MetricLength.of(rule)
            .<Value>map(unit -> Value.of(unit.read(number.value())))
            .orElse(typed)
        : typed;
  }

  private static String must(Rule rule) {
    if (!rule.choices().isEmpty()) {
      return "one of " + String.join(", ", rule.choices());
    }
    return switch (rule.holds()) {
      case NUMBER -> "a number" + unit(rule);
      case TEXT -> "a word";
      case TRUTH -> "TRUE or FALSE";
    };
  }

  private static String unit(Rule rule) {
    return rule.unit().equals(squaresheet.units.Unit.RATIO) ? "" : " in " + rule.unit();
  }

  private Catalogue catalogue() {
    Read<Catalogue> read = new CatalogueSheet(file, names, values).read();
    findings.addAll(read.findings());
    return read.value().orElse(new Catalogue(List.of()));
  }

  private Selection selection(Catalogue catalogue) {
    Map<Role, Selection.Choice> choices = new EnumMap<>(Role.class);
    for (Role role : Role.values()) {
      names.cell(role + "_product").ifPresent(cell -> {
        String id = Cells.text(values.cell(cell));
        if (!id.isEmpty()) {
          choices.put(role, new Selection.Choice(id, new Where.InCell(file, cell)));
        }
      });
    }
    Read<Selection> read = Selection.read(catalogue, choices);
    findings.addAll(read.findings());
    return read.value().orElseGet(() -> new Selection(Map.of()));
  }

  private JobCard card() {
    TapeUnit unit = UnitWords.find(label("job_unit")).flatMap(Tape::unit).orElse(TapeUnit.FEET);
    return new JobCard(
        label("job_name"),
        label("job_measured_by"),
        label("job_date"),
        unit,
        label("job_number"),
        new JobCard.Customer(label("job_customer"), label("job_address"), label("job_phone")));
  }

  private String label(String name) {
    return names.cell(name).map(values::cell).map(Cells::text).orElse("");
  }
}
