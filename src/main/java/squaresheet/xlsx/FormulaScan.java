package squaresheet.xlsx;

import java.io.IOException;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import squaresheet.sheet.Block;
import squaresheet.sheet.Content;
import squaresheet.sheet.Ref;

/**
 * Keeps formulas whole that depend on a changed cell: cells that shared its formula get it spelled out, and a cell that one
 * formula fills together with others is not changed alone.
 */
final class FormulaScan {

  private final Xml xml;
  private final Splices splices;
  private final Map<Ref, CellChange> changes;
  private final Map<String, SharedFormula> broken = new HashMap<>();
  private final Set<String> used = new HashSet<>();
  private boolean changed;

  FormulaScan(Xml xml, Splices splices, Map<Ref, CellChange> changes) {
    this.xml = xml;
    this.splices = splices;
    this.changes = changes;
  }

  /** Whether a formula came or went. */
  boolean changed() {
    return changed;
  }

  /** Notes what is put into a cell. */
  void fresh(CellChange change) {
    changed |= change.putsFormula();
  }

  /** Reads the formula just started, of a cell that is to be changed. */
  void changing(Element formula, Ref ref, CellChange change) throws IOException {
    String group = formula.attribute("si");
    boolean shared = formula.attribute("t").equals("shared");
    refuseInside(formula);
    String text = Content.unspelled(xml.text());
    ElementReader.end(xml, formula);
    if (!change.changesContent()) {
      return;
    }
    changed = true;
    if (shared && !text.isEmpty()) {
      refuseBehindUse(group, ref);
      broken.put(group, new SharedFormula(text, ref));
    }
  }

  /** The cells before this one are behind us by now, and would be left without their formula. */
  private void refuseBehindUse(String group, Ref ref) {
    if (used.contains(group)) {
      throw new Refusal("has the formula of cells above or left of " + ref + " on " + ref
          + " and must be saved once in a spreadsheet program before that is changed");
    }
  }

  private void refuseInside(Element formula) {
    if (!formula.attribute("t").matches("array|dataTable")) {
      return;
    }
    CellPlace.block(formula.attribute("ref"))
        .filter(block -> block.rows() > 1 || block.columns() > 1)
        .ifPresent(this::refuse);
  }

  private void refuse(Block block) {
    changes.forEach((ref, change) -> {
      if (change.changesContent() && block.contains(ref)) {
        throw new Refusal("has one formula that fills " + block + " as a whole, so " + ref
            + " cannot be changed alone");
      }
    });
  }

  /** Reads the cells of a row just started, none of which is to be changed. */
  void others(int row) throws IOException {
    int open = xml.depth();
    int column = -1;
    while (xml.child(open)) {
      if (broken.isEmpty()) {
        other(new Ref(row, 0));
      } else {
        column = CellPlace.columnAfter(column, xml.attribute("r"));
        other(new Ref(row, column));
      }
    }
  }

  /** Reads a cell just started that is not to be changed. */
  void other(Ref ref) throws IOException {
    int open = xml.depth();
    while (xml.child(open)) {
      if (xml.name().equals("f") && !xml.attribute("t").isEmpty()) {
        special(ref);
      }
    }
  }

  private void special(Ref ref) throws IOException {
    Element formula = ElementReader.read(xml);
    refuseInside(formula);
    if (formula.attribute("t").equals("shared") && formula.attribute("ref").isEmpty()) {
      used.add(formula.attribute("si"));
    }
    if (formula.attribute("t").equals("shared") && broken.containsKey(formula.attribute("si"))) {
      String text = Content.unspelled(xml.text());
      ElementReader.end(xml, formula);
      String own = text.isEmpty() ? broken.get(formula.attribute("si")).apply(ref) : text;
      splices.replace(
          formula.start, formula.end, new Markup(formula.prefix).leaf("f", own).toString());
    }
  }
}
