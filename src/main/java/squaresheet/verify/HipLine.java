package squaresheet.verify;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import squaresheet.sheet.Address;
import squaresheet.sheet.Ref;

/**
 * A length worked out in the row of a hip or a valley, which also has the length in plan and the pitch.
 *
 * @param cell the length worked out
 * @param plan the length in plan, or the run of the common rafter
 * @param rise the pitch per 12
 */
record HipLine(FormulaCell cell, double plan, double rise) {

  /** No sheet of lines is wider. */
  private static final int COLUMNS = 16;
  /** A factor rounded to three decimals. */
  private static final double ROUNDED = 0.0006;

  private static final Pattern HIP =
      Pattern.compile("(?<!\\p{L})(hips?|valleys?)(?!\\p{L})", Pattern.CASE_INSENSITIVE);
  private static final Pattern PLAN =
      Pattern.compile("(?<!\\p{L})(plan|run|horizontal|level)(?!\\p{L})", Pattern.CASE_INSENSITIVE);
  private static final Pattern LENGTH = Pattern.compile(
      "(?<!\\p{L})(true|actual|sloped?|lengths?|on the roof)(?!\\p{L})", Pattern.CASE_INSENSITIVE);

  static Optional<HipLine> of(FormulaCell cell) {
    boolean hip = HIP.matcher(cell.tab().rowText(cell.at().ref().row())).find();
    return hip && isLength(cell.tab().headings(cell.at().ref()))
        ? measured(cell)
        : Optional.empty();
  }

  private static boolean isLength(String heading) {
    return LENGTH.matcher(heading).find()
        && !PLAN.matcher(heading).find()
        && !Words.isPitch(heading);
  }

  private static Optional<HipLine> measured(FormulaCell cell) {
    OptionalDouble plan = beside(cell, heading -> PLAN.matcher(heading).find());
    OptionalDouble rise = beside(cell, Words::isPitch);
    boolean known = plan.orElse(0) > 0 && rise.orElse(0) >= 2 && rise.orElse(0) <= 24;
    return known
        ? Optional.of(new HipLine(cell, plan.getAsDouble(), rise.getAsDouble()))
        : Optional.empty();
  }

  /** The number in the only column of the row with such a heading. */
  private static OptionalDouble beside(FormulaCell cell, Predicate<String> heading) {
    List<Address> all = IntStream.range(0, COLUMNS)
        .mapToObj(column -> new Ref(cell.at().ref().row(), column))
        .filter(ref -> !cell.tab().cell(ref).isBlank())
        .filter(ref -> heading.test(cell.tab().headings(ref)))
        .map(cell.tab()::at)
        .toList();
    return all.size() == 1 ? cell.book().number(all.get(0)) : OptionalDouble.empty();
  }

  Book book() {
    return cell.book();
  }

  Address at() {
    return cell.at();
  }

  /** Whether the length is so many times the length in plan. */
  boolean isTimes(double factor) {
    return Math.abs(book().number(at()).orElse(0) / plan - factor) < ROUNDED;
  }

  /** The factor of a rafter square to the eave. */
  double common() {
    return Math.hypot(1, rise / 12);
  }

  /** The length on the roof of a hip over a square corner, from its own length in plan. */
  double onSlope() {
    return plan * Math.sqrt(1 + Math.pow(rise / 12, 2) / 2);
  }
}
