package squaresheet.xlsx;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import squaresheet.sheet.Block;
import squaresheet.sheet.Content;
import squaresheet.sheet.Ref;
import squaresheet.sheet.SheetBuilder;

/** Reads the formula of a cell: its own, one shared with other cells, or one that fills a block. */
final class FormulaReader {

  /** More blocks than this that are filled at the same height come from no program; the rest stay without text. */
  private static final int MOST_OPEN_BLOCKS = 1000;

  private final Xml xml;
  private final SheetBuilder to;
  private final Remarks remarks;
  private final String sheet;
  private final Map<String, Group> groups = new HashMap<>();
  private final List<Filled> open = new ArrayList<>();
  private Optional<Function<Ref, String>> text = Optional.empty();
  private int length;
  private int row;
  private int column;

  private record Filled(Block block, String text) {}

  /** A shared formula, which some files use before they tell what it is. */
  private static final class Group implements Function<Ref, String> {
    private Optional<SharedFormula> formula = Optional.empty();

    @Override
    public String apply(Ref cell) {
      return formula.map(it -> it.apply(cell)).orElse("");
    }
  }

  FormulaReader(Xml xml, SheetBuilder to, Remarks remarks, String sheet) {
    this.xml = xml;
    this.to = to;
    this.remarks = remarks;
    this.sheet = sheet;
  }

  /** Starts a cell: without a formula, unless a block that covers it is being filled. */
  void startCell(int row, int column) {
    this.row = row;
    this.column = column;
    text = Optional.empty();
    length = 0;
    if (!open.isEmpty()) {
      open.removeIf(filled -> filled.block().last().row() < row);
      covering();
    }
  }

  private void covering() {
    for (Filled filled : open) {
      Block block = filled.block();
      if (row >= block.first().row()
          && column >= block.first().column()
          && column <= block.last().column()) {
        text = Optional.of(cell -> filled.text());
        return;
      }
    }
  }

  boolean hasFormula() {
    return text.isPresent();
  }

  Function<Ref, String> text() {
    return text.orElseThrow();
  }

  /** How much memory the formula's own text takes. */
  int length() {
    return length;
  }

  /** Reads the formula element just started. */
  void read() throws IOException {
    String type = xml.attribute("t");
    String block = xml.attribute("ref");
    String group = xml.attribute("si");
    String table = table();
    String own = FutureFunctions.shown(Content.unspelled(xml.text()));
    length = 2 * own.length() + 40;
    switch (type) {
      case "shared" -> shared(group, block, own);
      case "array" -> array(block, own);
      case "dataTable" -> own(own.isEmpty() ? table : own);
      default -> own(own);
    }
  }

  /** A table of values for one or two changing cells, as people see it: the cell for its row first, then the one for its column. */
  private String table() {
    String first = xml.attribute("r1");
    boolean both = xml.flag("dt2D", false);
    return "TABLE("
        + (both || xml.flag("dtr", false) ? first + "," + xml.attribute("r2") : "," + first)
        + ")";
  }

  private void own(String formula) {
    text = formula.isEmpty() ? text : Optional.of(cell -> formula);
  }

  private void shared(String number, String block, String own) {
    if (!own.isEmpty() && block.isEmpty() && groups.containsKey(number)) {
      own(own);
      return;
    }
    Group group = groups.computeIfAbsent(number, fresh -> new Group());
    if (!own.isEmpty()) {
      group = group.formula.isEmpty() ? group : new Group();
      group.formula = Optional.of(new SharedFormula(own, new Ref(row, column)));
      groups.put(number, group);
    }
    text = Optional.of(group);
  }

  private void array(String ref, String own) {
    own(own);
    Ref here = new Ref(row, column);
    CellPlace.block(ref).filter(block -> block.first().equals(here)).ifPresent(block -> {
      if (open.size() < MOST_OPEN_BLOCKS) {
        to.array(block);
        if (block.rows() > 1 || block.columns() > 1) {
          open.add(new Filled(block, own));
        }
      }
    });
  }

  /** Says which shared formulas were used and never told. */
  void finish() {
    groups.forEach((number, group) -> {
      if (group.formula.isEmpty()) {
        remarks.add(
            Complaint.PARTLY_READ,
            "sheet '" + sheet + "' uses shared formula " + Excerpt.of(number)
                + ", but no cell says what it is; the stored values are kept");
      }
    });
  }
}
