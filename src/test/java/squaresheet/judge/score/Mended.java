package squaresheet.judge.score;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import squaresheet.judge.slip.Slip;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Workbook;
import squaresheet.verify.Corrections;
import squaresheet.verify.Verdict;

/**
 * What correct made of one workbook.
 *
 * @param changes how many cells it changed
 * @param harms how many of them were right, and show something else now
 * @param mended whether every cell of the fault shows again what it should
 */
record Mended(int changes, int harms, boolean mended) {

  static final Mended NOTHING = new Mended(0, 0, false);

  private static final double ALIKE = 1e-4;

  /**
   * Corrects a workbook and looks at the cells it changed.
   *
   * @param slips the faults in it; none where it is in order
   * @param right what each cell should show, where that is a number
   */
  static Mended of(
      Workbook book,
      Function<Workbook, Verdict> pass,
      List<Slip> slips,
      Map<String, Double> right) {
    Corrections corrections = Corrections.of(book, pass, cell -> false);
    if (corrections.edits().isEmpty()) {
      return NOTHING;
    }
    Workbook after = book.after(corrections.edits());
    Set<String> wrong = new HashSet<>();
    slips.stream().filter(slip -> !slip.harmless()).forEach(slip -> wrong.addAll(slip.cells()));
    long harms = corrections.changes().stream()
        .filter(change -> !wrong.contains(name(change.cell())))
        .filter(change ->
            !shows(after, change.cell(), right) || slips.stream().anyMatch(Slip::harmless))
        .count();
    boolean touched =
        corrections.changes().stream().anyMatch(change -> wrong.contains(name(change.cell())));
    boolean mended = touched
        && wrong.stream().filter(right::containsKey).allMatch(at -> shows(after, at, right));
    return new Mended(corrections.changes().size(), (int) harms, mended);
  }

  private static String name(Address cell) {
    return cell.toString().replace("'", "");
  }

  private static boolean shows(Workbook book, Address cell, Map<String, Double> right) {
    return shows(book, name(cell), right);
  }

  private static boolean shows(Workbook book, String at, Map<String, Double> right) {
    int mark = at.lastIndexOf('!');
    Double should = right.get(at);
    Address cell = Address.of(at.substring(0, mark), at.substring(mark + 1));
    Content content = book.cell(cell).stored();
    return should != null
        && content instanceof Content.Numeric number
        && Math.abs(number.value() - should) <= ALIKE * Math.max(1, Math.abs(should));
  }
}
