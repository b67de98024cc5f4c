package squaresheet.xlsx;

import java.util.List;
import java.util.Optional;
import java.util.function.IntUnaryOperator;
import squaresheet.sheet.Content;
import squaresheet.sheet.Ref;

/** What is to become of one cell: its content, its look, or both. */
final class CellChange {

  private Optional<Content> content = Optional.empty();
  private String formula = "";
  private IntUnaryOperator style = IntUnaryOperator.identity();

  void put(Content stored, String formulaText) {
    content = Optional.of(stored);
    formula = formulaText;
  }

  /** Adds a change of look, from style number to style number, after those before it. */
  void restyle(IntUnaryOperator change) {
    style = style.andThen(change);
  }

  boolean changesContent() {
    return content.isPresent();
  }

  boolean putsFormula() {
    return !formula.isEmpty();
  }

  int style(int old) {
    return style.applyAsInt(old);
  }

  /** The start tag of a cell that was there, changed. */
  String tag(String tag, int oldStyle) {
    String changed = tag;
    if (style(oldStyle) != oldStyle) {
      changed = Tag.with(changed, "s", Integer.toString(style(oldStyle)));
    }
    if (!changesContent()) {
      return changed;
    }
    String type = CellMarkup.type(content.orElseThrow(), formula);
    for (String gone : List.of("cm", "vm")) {
      changed = Tag.without(changed, gone);
    }
    boolean number = type.isEmpty() && Tag.with(changed, "t", "n").equals(changed);
    if (number) {
      return changed;
    }
    changed = Tag.without(changed, "t");
    return type.isEmpty() ? changed : Tag.with(changed, "t", type);
  }

  /** What stands between the cell's tags. */
  String inside(String prefix) {
    return CellMarkup.inside(prefix, content.orElseThrow(), formula);
  }

  /** A cell that was not there yet, in the look of its row or column; nothing where it comes to nothing. */
  String fresh(String prefix, Ref ref, int oldStyle) {
    String inside = changesContent() ? inside(prefix) : "";
    if (inside.isEmpty() && style(oldStyle) == oldStyle) {
      return "";
    }
    String name = prefix.isEmpty() ? "c" : prefix + ":c";
    String tag = Tag.with("<" + name + ">", "r", ref.toString());
    tag = style(oldStyle) == 0 ? tag : Tag.with(tag, "s", Integer.toString(style(oldStyle)));
    String type = changesContent() ? CellMarkup.type(content.orElseThrow(), formula) : "";
    tag = type.isEmpty() ? tag : Tag.with(tag, "t", type);
    return tag + inside + "</" + name + ">";
  }
}
