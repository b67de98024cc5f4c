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
 * What the pass made of one workbook with one fault in it.
 *
 * @param slip the fault
 * @param layout the workbook's layout
 * @param own whether of our own layout
 * @param unseen whether of the unseen half
 * @param caught whether something new was said at warning or above
 * @param exact whether a new finding stands at the fault's own cell
 * @param valued whether a finding there gives a value that it should be
 * @param rightValue whether that value is the one that was there before
 * @param rightWorth whether what it says of the price is right; true where it says nothing and nothing changed
 * @param findings how many new findings there are at warning or above
 * @param stray how many of them stand at a cell that the fault neither is in nor moves
 */
record Score(
    Slip slip,
    String layout,
    boolean own,
    boolean unseen,
    boolean caught,
    boolean exact,
    boolean valued,
    boolean rightValue,
    boolean rightWorth,
    int findings,
    int stray) {

  private static final Pattern NUMBER = Pattern.compile("-?[\\d,]+(\\.\\d+)?");

  /** Scores a workbook with one fault, given what was said of it clean. */
  static Score of(Spoilt spoilt, List<Heard> clean, List<Heard> after) {
    Slip slip = spoilt.slips().get(0);
    Set<String> before = clean.stream().map(Heard::key).collect(Collectors.toSet());
    List<Heard> fresh = after.stream()
        .filter(
            each -> (each.isLoud() || each.id().endsWith("latent")) && !before.contains(each.key()))
        .toList();
    Set<String> cells = new HashSet<>(slip.cells());
    List<Heard> there =
        fresh.stream().filter(each -> cells.contains(each.cell())).toList();
    long stray = fresh.stream()
        .filter(each -> !cells.contains(each.cell()) && !spoilt.moved().contains(each.cell()))
        .count();
    List<Heard> valued = there.stream().filter(each -> !each.should().isEmpty()).toList();
    return new Score(
        slip,
        spoilt.made().layout(),
        spoilt.made().own(),
        spoilt.made().unseen(),
        !fresh.isEmpty(),
        !there.isEmpty(),
        !valued.isEmpty(),
        valued.stream().anyMatch(each -> isRight(each, spoilt)),
        worth(slip, fresh),
        fresh.size(),
        (int) stray);
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

  private static boolean worth(Slip slip, List<Heard> fresh) {
    List<Heard> worths =
        fresh.stream().filter(each -> each.worth().contains("otal:")).toList();
    if (worths.isEmpty()) {
      return Math.abs(slip.money()) < 0.01;
    }
    return worths.stream().anyMatch(each -> {
      String after = each.worth().substring(each.worth().indexOf("otal:"));
      double sign = after.contains("too little") ? -1 : 1;
      return Math.abs(number(after) * sign - slip.money()) <= 0.01 + 0.001 * Math.abs(slip.money());
    });
  }

  private static boolean same(double one, double other) {
    return Math.abs(one - other) <= 1e-4 * Math.max(1, Math.abs(other));
  }

  private static double number(String text) {
    Matcher number = NUMBER.matcher(text);
    return number.find()
        ? Double.parseDouble(number.group().replace(",", "").replaceAll("^$", "NaN"))
        : Double.NaN;
  }
}
