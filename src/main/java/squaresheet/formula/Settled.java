package squaresheet.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import squaresheet.sheet.Address;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Content;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.Workbook;

/** Edits together with the values that all formulas come to once they are carried out. */
final class Settled {

  /** Nearer than this two numbers are one: programs differ in the last digits. */
  private static final double CLOSE = 1e-9;

  private final Workbook after;
  private final Calculation then;

  private Settled(Workbook book, List<Edit> edits) {
    after = book.after(edits);
    then = Calculation.of(after);
  }

  static List<Edit> of(Workbook book, List<Edit> edits) {
    List<Edit> all = new ArrayList<>(edits);
    all.addAll(new Settled(book, edits).values());
    return all;
  }

  private List<Edit> values() {
    List<Edit> values = new ArrayList<>();
    for (Map.Entry<Address, Formula> entry : then.formulas().entrySet()) {
      Address at = entry.getKey();
      Value now = then.value(at);
      Cell cell = after.cell(at);
      if (now.isChecked() && !isInArray(at) && !isNear(now.content(), cell.stored())) {
        values.add(new Edit.SetFormula(at, cell.formula(), now.content()));
      }
    }
    return values;
  }

  private boolean isInArray(Address at) {
    return after.sheet(at.sheet()).flatMap((Sheet it) -> it.arrayAt(at.ref())).isPresent();
  }

  private static boolean isNear(Content one, Content other) {
    return one.equals(other)
        || (one instanceof Content.Numeric a
            && other instanceof Content.Numeric b
            && Math.abs(a.value() - b.value()) <= CLOSE * Math.max(1, Math.abs(a.value())));
  }
}
