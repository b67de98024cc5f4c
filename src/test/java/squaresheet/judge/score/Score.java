package squaresheet.judge.score;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import squaresheet.judge.slip.Slip;
import squaresheet.judge.slip.Spoilt;

/**
 * What the pass made of one workbook with one fault in it. A finding counts where it is new, at warning or above; a note does
 * where the fault changes no number today.
 *
 * @param slip the fault
 * @param layout the workbook's layout
 * @param own whether of our own layout
 * @param unseen whether of the unseen half
 * @param caught whether something new was said at a cell of the fault, or at one that shows another number by it
 * @param exact whether a new finding stands at the fault's own cell
 * @param named whether a finding names the slip
 * @param misnamed whether none does, and one names another slip
 * @param valued whether a finding there gives a value that it should be
 * @param rightValue whether that value is the one that was there before
 * @param worth whether what it is worth is told right, told wrong, or not told
 * @param findings how many new findings there are at warning or above
 * @param stray how many of them stand at a cell that the fault neither is in nor moves
 * @param mended what correct made of it
 */
record Score(
    Slip slip,
    String layout,
    boolean own,
    boolean unseen,
    boolean caught,
    boolean exact,
    boolean named,
    boolean misnamed,
    boolean valued,
    boolean rightValue,
    Worth worth,
    int findings,
    int stray,
    Mended mended) {

  /** Whether what a fault is worth is told. */
  enum Worth {
    RIGHT,
    WRONG,
    NOT_TOLD,
    /** It changes no price and no order, and nothing is said of any. */
    NOTHING
  }

  private static final Pattern NUMBER = Pattern.compile("-?[\\d,]*\\d(\\.\\d+)?");
  private static final Pattern TOLD =
      Pattern.compile("([\\d,]*\\d(?:\\.\\d+)?)[^,\\d]*too (much|little)");

  /** Faults that cost cents, or nothing: a note is enough. */
  private static final Set<String> LIGHT = Set.of(
      "MEC-02", "ITG-06", "ITG-12", "STL-02", "STL-03", "ACC-01", "ACC-09", "LOG-13", "ITG-07");

  /** Scores a workbook with one fault, given what was said of it clean. */
  static Score of(Spoilt spoilt, List<Heard> clean, List<Heard> after, Mended mended) {
    Slip slip = spoilt.slips().get(0);
    Set<String> before = clean.stream()
        .map(each -> each.id() + " at " + spoilt.moves().now(each.cell()))
        .collect(Collectors.toSet());
    boolean light =
        !slip.harmless() && (LIGHT.contains(slip.id()) || spoilt.moved().isEmpty());
    List<Heard> fresh = after.stream()
        .filter(each -> light || each.isLoud())
        .filter(each -> !before.contains(each.key()))
        .toList();
    Set<String> cells = new HashSet<>(slip.cells());
    List<Heard> there =
        fresh.stream().filter(each -> cells.contains(each.cell())).toList();
    List<Heard> about = fresh.stream()
        .filter(each -> cells.contains(each.cell()) || spoilt.moved().contains(each.cell()))
        .toList();
    List<Heard> valued = there.stream()
        .filter(each -> !each.should().isEmpty() && isKnown(each.cell(), spoilt))
        .toList();
    return new Score(
        slip,
        spoilt.made().layout(),
        spoilt.made().own(),
        spoilt.made().unseen(),
        slip.harmless() ? !fresh.isEmpty() : !about.isEmpty(),
        !there.isEmpty(),
        SlipNames.right(slip, about),
        SlipNames.wrong(slip, about),
        !valued.isEmpty(),
        valued.stream().anyMatch(each -> isRight(each, spoilt)),
        worth(slip, about),
        fresh.size(),
        fresh.size() - about.size(),
        mended);
  }

  private static boolean isKnown(String cell, Spoilt spoilt) {
    return spoilt.shown().containsKey(cell)
        || !spoilt.slips().get(0).right().getOrDefault(cell, "").isEmpty();
  }

  private static boolean isRight(Heard said, Spoilt spoilt) {
    String right = spoilt.slips().get(0).right().getOrDefault(said.cell(), "");
    if (right.startsWith("=") && said.should().startsWith("=")) {
      return said.should().replace(" ", "").equals(right.replace(" ", ""));
    }
    double before = spoilt.shown().getOrDefault(said.cell(), Double.NaN);
    if (right.startsWith("=") || !Double.isNaN(before)) {
      return same(number(said.should()), before);
    }
    return said.should().equals(right);
  }

  /** Whether the change of the price, or of an order where the price stays, is told with its sign. */
  private static Worth worth(Slip slip, List<Heard> about) {
    List<String> told = about.stream()
        .map(Heard::worth)
        .filter(each -> TOLD.matcher(each).find())
        .toList();
    boolean costs = Math.abs(slip.money()) >= 0.01;
    if (told.isEmpty()) {
      return costs || !slip.packs().isEmpty() ? Worth.NOT_TOLD : Worth.NOTHING;
    }
    boolean right = told.stream()
        .flatMap(each -> TOLD.matcher(each).results())
        .mapToDouble(each -> number(each.group(1)) * (each.group(2).equals("little") ? -1 : 1))
        .anyMatch(each -> costs
            ? near(each, slip.money())
            : slip.packs().values().stream().anyMatch(packs -> near(each, packs)));
    return right ? Worth.RIGHT : Worth.WRONG;
  }

  private static boolean near(double said, double is) {
    return Math.abs(said - is) <= 0.01 + 0.001 * Math.abs(is);
  }

  private static boolean same(double one, double other) {
    return Math.abs(one - other) <= 1e-4 * Math.max(1, Math.abs(other));
  }

  private static double number(String text) {
    Matcher number = NUMBER.matcher(text);
    return number.find() ? Double.parseDouble(number.group().replace(",", "")) : Double.NaN;
  }
}
