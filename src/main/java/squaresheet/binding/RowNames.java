package squaresheet.binding;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import squaresheet.formula.Formula;
import squaresheet.formula.Node;
import squaresheet.formula.Respelling;

/** Rules become cell formulas: a name of the row's own table becomes the cell in that row, all other names stay names. */
final class RowNames {

  private RowNames() {}

  /** The formula with each name replaced by the cell that {@code cell} gives for it, if it gives one. */
  static String rowFormula(Formula formula, Function<String, Optional<String>> cell) {
    return formula
        .respelled(new Respelling() {
          @Override
          public Node name(Node.Name name, boolean many) {
            return cell.apply(name.name().toLowerCase(Locale.ROOT))
                .map(text -> Formula.of(text).tree())
                .orElse(name);
          }
        })
        .toFile();
  }
}
