package squaresheet.finding;

import java.util.List;
import java.util.stream.Stream;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Edit;

/**
 * What puts a finding right, to the last digit. It goes along with the sentence that people read; nothing of it is ever read
 * back from there.
 *
 * @param edits what is put where; none where that is not known
 * @param isRule whether it is the formula that the workbook's own rules have there, and makes what the model makes
 */
public record Fix(List<Edit> edits, boolean isRule) {

  /** Of a finding that says what is wrong and knows nothing better. */
  public static final Fix NONE = new Fix(List.of(), false);

  public Fix {
    edits = List.copyOf(edits);
  }

  /** A number in place of what the cell holds. */
  public static Fix number(Address cell, double number) {
    return new Fix(List.of(new Edit.SetContent(cell, new Content.Numeric(number))), false);
  }

  /** A formula, without its equals sign, in place of what the cell holds. */
  public static Fix formula(Address cell, String formula) {
    return new Fix(List.of(new Edit.SetFormula(cell, formula, new Content.Blank())), false);
  }

  /** The formula that the workbook's own rules have in the cell. */
  public static Fix rule(Address cell, String formula) {
    return new Fix(formula(cell, formula).edits(), true);
  }

  /** A number in a cell that shows it as a day. */
  public static Fix numberForDay(Address cell, double number) {
    return number(cell, number).and(new Fix(List.of(new Edit.SetFormat(cell, "General")), false));
  }

  /** This and another. */
  public Fix and(Fix other) {
    return new Fix(Stream.concat(edits.stream(), other.edits.stream()).toList(), false);
  }

  /** Whether anything better is known. */
  public boolean isKnown() {
    return !edits.isEmpty();
  }
}
