package squaresheet.sheet;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Fills a {@link Sheet}. Cells may come in any order; of two at one place the later one counts. Rows and columns count
 * from 0.
 */
public final class SheetBuilder {

  private final String name;
  private final SheetText texts;
  private final CellStore store = new CellStore();
  private final SheetParts parts;
  private int top = Integer.MAX_VALUE;
  private int left = Integer.MAX_VALUE;
  private int bottom = -1;
  private int right = -1;

  SheetBuilder(String name, List<String> sharedTexts) {
    this(name, sharedTexts, new SheetParts());
  }

  SheetBuilder(String name, List<String> sharedTexts, SheetParts parts) {
    this.name = name;
    this.parts = parts;
    texts = new SheetText(sharedTexts);
  }

  /** The number by which cells refer to this format code. */
  public short format(String code) {
    return texts.format(code);
  }

  /** A number. */
  public void number(int row, int column, short format, double value) {
    add(row, column, CellStore.NUMBER, format, Double.doubleToRawLongBits(value));
  }

  /** The text of that number in the shared list. */
  public void sharedText(int row, int column, short format, int index) {
    if (index < 0 || index >= texts.sharedCount()) {
      throw new IllegalArgumentException(
          "a shared text must be one of 0 to " + (texts.sharedCount() - 1) + ", but is " + index);
    }
    add(row, column, CellStore.SHARED_TEXT, format, index);
  }

  /** A text. */
  public void text(int row, int column, short format, String text) {
    add(row, column, CellStore.OWN_TEXT, format, texts.text(text));
  }

  /** TRUE or FALSE. */
  public void truth(int row, int column, short format, boolean value) {
    add(row, column, CellStore.TRUTH, format, value ? 1 : 0);
  }

  /** An error such as {@code #REF!}. */
  public void fault(int row, int column, short format, String code) {
    add(row, column, CellStore.FAULT, format, texts.text(code));
  }

  /** A blank; only worth adding where it carries a format or a formula. */
  public void blank(int row, int column, short format) {
    store.add(row, column, CellStore.BLANK, format, 0);
  }

  /** Any content. */
  public void content(int row, int column, String format, Content content) {
    short number = format(format);
    if (content instanceof Content.Numeric it) {
      number(row, column, number, it.value());
    } else if (content instanceof Content.Text it) {
      text(row, column, number, it.value());
    } else if (content instanceof Content.Truth it) {
      truth(row, column, number, it.value());
    } else if (content instanceof Content.Fault it) {
      fault(row, column, number, it.code());
    } else {
      blank(row, column, number);
    }
  }

  /** Gives the cell added last a formula, made when asked for; {@code text} answers for the cell's place. */
  public void formula(int row, int column, Function<Ref, String> text) {
    grow(row, column);
    store.formula(text);
  }

  /** Gives the cell added last this formula. */
  public void formula(int row, int column, String text) {
    formula(row, column, ref -> text);
  }

  private void add(int row, int column, byte kind, short format, long value) {
    grow(row, column);
    store.add(row, column, kind, format, value);
  }

  private void grow(int row, int column) {
    top = Math.min(top, row);
    left = Math.min(left, column);
    bottom = Math.max(bottom, row);
    right = Math.max(right, column);
  }

  /** Whether a person sees the sheet. */
  public void visibility(Sheet.Visibility is) {
    parts.visibility(is);
  }

  /** A merged block. */
  public void merged(Block block) {
    parts.merged().add(block);
  }

  /** A row that does not show. */
  public void hiddenRow(int row) {
    parts.hiddenRows().set(row);
  }

  /** Columns that do not show, both ends included. */
  public void hiddenColumns(int first, int last) {
    parts.hiddenColumns().set(first, last + 1);
  }

  /** A structured table. */
  public void table(Sheet.Table table) {
    parts.tables().add(table);
  }

  /** A note. */
  public void comment(Sheet.Comment comment) {
    parts.comments().put(comment.ref(), comment);
  }

  /** Takes a note away. */
  void withoutComment(Ref ref) {
    parts.comments().remove(ref);
  }

  /** A rule for typing. */
  public void validation(Sheet.Validation validation) {
    parts.validations().add(validation);
  }

  /** A link. */
  public void link(Sheet.Link link) {
    parts.links().add(link);
  }

  /** The block with filter buttons. */
  public void filter(Block block) {
    parts.filter(block);
  }

  /** A block that one array formula fills. */
  public void array(Block block) {
    parts.arrays().add(block);
  }

  /** The sheet is protected against changes. */
  public void protect() {
    parts.protect();
  }

  /** A formula whose style hides it while the sheet is protected. */
  public void hiddenFormula(int row, int column) {
    parts.hiddenFormula(new Ref(row, column));
  }

  /** Rows and columns that stay in sight. */
  public void frozen(int rows, int columns) {
    parts.frozen(rows, columns);
  }

  /** How many cells were added so far. */
  public int size() {
    return store.size();
  }

  /** The sheet; the builder must not be used again. */
  public Sheet build() {
    texts.done();
    parts.done();
    parts.used(
        bottom < 0
            ? Optional.empty()
            : Optional.of(new Block(new Ref(top, left), new Ref(bottom, right))));
    return new Sheet(name, store.inOrder(), texts, parts);
  }
}
