package squaresheet.binding;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.formula.Formula;
import squaresheet.formula.Node;
import squaresheet.formula.Respelling;
import squaresheet.sheet.Address;
import squaresheet.sheet.Block;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Workbook;
import squaresheet.takeoff.Rule;
import squaresheet.takeoff.Rulebook;

/** Which cell of a job workbook is which item, and what its rules say as they stand. */
final class Items {

  private final Workbook book;
  private final BookValues values;
  private final List<Finding> findings = new ArrayList<>();
  private final NamedCells names;
  private final Rulebook rulebook;
  private final Map<Where.OfItem, Address> cells = new LinkedHashMap<>();
  private final List<BoundJob.BoundRule> rules = new ArrayList<>();
  private final List<BoundJob.Part> coverage = new ArrayList<>();

  Items(Workbook book, BookValues values, NamedCells names, Rulebook rulebook) {
    this.book = book;
    this.values = values;
    this.names = names;
    this.rulebook = rulebook;
  }

  void of(List<FoundTable> tables) {
    for (FoundTable table : tables) {
      switch (table.table()) {
        case "planes" -> rows(table, "plane ", "plane", Rule.Per.PLANE, "plane_name");
        case "edges" -> rows(table, "edge ", "remarks", Rule.Per.EDGE, "edge_name");
        case "openings" -> typed(table, "opening ", "opening");
        default -> {}
      }
    }
    job();
  }

  /** The cells of a table of the rulebook: what was typed, what is given, what is worked out, and the sums. */
  private void rows(FoundTable table, String subject, String key, Rule.Per per, String anchor) {
    typed(table, subject, key);
    List<Rule> named = rulebook.rules().stream()
        .filter(rule -> rule.per() == per && !rule.name().equals(anchor))
        .toList();
    int bound = 0;
    if (per == Rule.Per.PLANE) {
      missingRows(table, key);
    }
    for (Rule rule : named) {
      Optional<Address> first = names.cell(rule.name());
      Optional<Block> block = names.block(rule.name());
      if (first.isPresent() && block.isPresent()) {
        bound++;
        column(table, subject, key, rule, block.get());
      }
    }
    coverage.add(new BoundJob.Part("rules of each " + per, bound, named.size()));
  }

  private void column(FoundTable table, String subject, String key, Rule rule, Block block) {
    Address first = names.cell(rule.name()).orElseThrow();
    for (int row : table.rows(FoundTable.Row.DATA)) {
      String item = subject + table.text(row, key);
      Optional<Integer> own = rowOn(first.sheet(), table, row, key);
      own.map(at -> new Address(first.sheet(), new Ref(at, first.ref().column())))
          .ifPresent(cell -> {
            cells.putIfAbsent(new Where.OfItem(item, rule.name()), cell);
            if (rule.isWorkedOut()) {
              rules.add(bound(rule, item, cell, table.address(row, key)));
            }
          });
    }
    Address sum =
        new Address(first.sheet(), new Ref(block.last().row() + 1, first.ref().column()));
    if (book.cell(sum).isFormula()) {
      cells.putIfAbsent(new Where.OfItem("all " + subject.strip() + "s", rule.name()), sum);
    }
  }

  /** The row of an item on a sheet: its own, or on the second sheet of planes the one that bears its name. */
  private Optional<Integer> rowOn(String sheet, FoundTable table, int row, String key) {
    if (table.grid().name().equalsIgnoreCase(sheet)) {
      return Optional.of(row);
    }
    Optional<Address> first = names.cell(PlanesSheet.WORK_KEY);
    Optional<Block> block = names.block(PlanesSheet.WORK_KEY);
    if (first.isEmpty() || block.isEmpty()) {
      return Optional.of(row);
    }
    String name = table.text(row, key);
    for (int at = block.get().first().row(); at <= block.get().last().row(); at++) {
      Address cell =
          new Address(first.get().sheet(), new Ref(at, first.get().ref().column()));
      if (Cells.text(values.cell(cell)).equals(name)) {
        return Optional.of(at);
      }
    }
    return Optional.empty();
  }

  private void missingRows(FoundTable table, String key) {
    Optional<Address> work = names.cell(PlanesSheet.WORK_KEY);
    for (int row : table.rows(FoundTable.Row.DATA)) {
      boolean there =
          work.map(cell -> rowOn(cell.sheet(), table, row, key).isPresent()).orElse(true);
      if (!there) {
        findings.add(Complaint.ROW_MISSING.at(
            table.where(row, key),
            "plane '" + table.text(row, key) + "' must have a row on the sheet '"
                + work.get().sheet() + "', but has none; what it takes is not in the totals"));
      }
    }
  }

  List<Finding> findings() {
    return findings;
  }

  private void typed(FoundTable table, String subject, String key) {
    Map<String, String> columns = JobTables.ALL.get(table.table());
    for (int row : table.rows(FoundTable.Row.DATA)) {
      columns.forEach((property, name) -> table
          .address(row, property)
          .ifPresent(cell -> cells.putIfAbsent(
              new Where.OfItem(subject + table.text(row, key), names.typed(name)), cell)));
    }
    coverage.add(new BoundJob.Part(
        table.table() + " as typed",
        (int)
            columns.keySet().stream().filter(it -> table.column(it).isPresent()).count(),
        columns.size()));
  }

  private void job() {
    List<Rule> all =
        rulebook.rules().stream().filter(rule -> rule.per() == Rule.Per.JOB).toList();
    int bound = 0;
    for (Rule rule : all) {
      Optional<Address> cell = rule.isWorkedOut()
          ? names.needed(rule.name(), "the rule '" + rule.label() + "'")
          : names.cell(names.typed(rule.name()));
      if (cell.isPresent()) {
        bound++;
        cells.put(new Where.OfItem("job", rule.name()), cell.get());
        if (rule.isWorkedOut()) {
          rules.add(bound(rule, "job", cell.get(), Optional.empty()));
        }
      }
    }
    coverage.add(new BoundJob.Part("settings, products and rules of the job", bound, all.size()));
  }

  /** The lines and sums of the estimate: {@code line Shingles: line_amount}, {@code job: estimate_total}. */
  void estimate() {
    int bound = 0;
    List<String> sums = EstimateSheet.SUMS;
    for (String name : sums) {
      Optional<Address> cell = names.needed(name, "the estimate's " + name.replace('_', ' '));
      bound += cell.isPresent() ? 1 : 0;
      cell.ifPresent(at -> cells.put(new Where.OfItem("job", name), at));
    }
    coverage.add(new BoundJob.Part("sums of the estimate", bound, sums.size()));
    lines();
  }

  private void lines() {
    Optional<Block> block = names.block("line_amount");
    Optional<Address> item = names.cell("line_item");
    if (block.isEmpty() || item.isEmpty()) {
      coverage.add(new BoundJob.Part("lines of the estimate", 0, 1));
      return;
    }
    int bound = 0;
    int count = 0;
    for (int row = block.get().first().row(); row <= block.get().last().row(); row++) {
      Address name =
          new Address(item.get().sheet(), new Ref(row, item.get().ref().column()));
      String text = Cells.text(book.cell(name));
      if (!text.isEmpty()) {
        count++;
        bound += line(text, row) ? 1 : 0;
      }
    }
    coverage.add(new BoundJob.Part("lines of the estimate", bound, count));
  }

  private boolean line(String text, int row) {
    boolean whole = true;
    for (String column :
        List.of("line_category", "line_cost_code", "line_quantity", "line_price", "line_amount")) {
      Optional<Address> cell = names
          .cell(column)
          .map(first -> new Address(first.sheet(), new Ref(row, first.ref().column())));
      whole &= cell.isPresent();
      cell.ifPresent(at -> cells.putIfAbsent(new Where.OfItem("line " + text, column), at));
    }
    return whole;
  }

  private BoundJob.BoundRule bound(
      Rule rule, String subject, Address cell, Optional<Address> item) {
    Optional<Formula> formula = Optional.of(book.cell(cell).formula())
        .filter(text -> !text.isEmpty())
        .map(Formula::parse)
        .flatMap(Read::value)
        .map(it -> it.respelled(new ToNames(cell, item)))
        .map(Items::plain);
    boolean same = formula.isPresent() && formula.equals(rulebook.formula(rule.name()));
    return new BoundJob.BoundRule(rule.name(), subject, cell, formula, same);
  }

  /** Some programs save TRUE as the function TRUE(). */
  private static Formula plain(Formula formula) {
    String text = formula.toString();
    String plain = text.replaceAll("\\b(TRUE|FALSE)\\(\\)", "$1");
    return plain.equals(text) ? formula : Formula.of(plain);
  }

  /** Turns cells of the formula's own row, and of its item's row, back into the names of their columns. */
  private final class ToNames implements Respelling {
    private final Address here;
    private final Optional<Address> item;

    ToNames(Address here, Optional<Address> item) {
      this.here = here;
      this.item = item;
    }

    @Override
    public Node reference(Node.Reference reference, boolean many) {
      Block block = reference.block();
      String sheet = reference.sheet().isEmpty() ? here.sheet() : reference.sheet();
      boolean ownRow =
          isIn(here, sheet, block) || item.filter(at -> isIn(at, sheet, block)).isPresent();
      return reference.isCell() && ownRow
          ? column(sheet, block.first())
              .<Node>map(name -> new Node.Name("", name, Node.Span.NONE))
              .orElse(reference)
          : reference;
    }
  }

  private static boolean isIn(Address cell, String sheet, Block block) {
    return cell.sheet().equalsIgnoreCase(sheet)
        && cell.ref().row() == block.first().row();
  }

  /** The name of the rule whose column lies over the cell. */
  private Optional<String> column(String sheet, Ref cell) {
    return rulebook.rules().stream()
        .filter(rule -> rule.per() != Rule.Per.JOB)
        .map(Rule::name)
        .filter(name -> names
                .cell(name)
                .filter(
                    it -> it.sheet().equalsIgnoreCase(sheet) && it.ref().column() == cell.column())
                .isPresent()
            && names.block(name).filter(block -> block.contains(cell)).isPresent())
        .findFirst();
  }

  CellMap map() {
    return new CellMap(cells);
  }

  List<BoundJob.BoundRule> rules() {
    return rules;
  }

  List<BoundJob.Part> coverage() {
    return coverage;
  }
}
