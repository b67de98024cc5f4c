package squaresheet.verify;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.stream.IntStream;

/** Whether a typed number is another one with the slips that fingers make: a digit wrong, swapped, lost, or the point moved. */
final class MistypedDigits {

  /** Numbers of fewer digits are alike by chance. */
  private static final int SWAPPED = 3;

  private static final int OTHERWISE = 4;
  private static final int DECIMALS = 4;

  private MistypedDigits() {}

  /** Whether {@code typed} is {@code meant}, as a person would round it, with one such slip, and hardly by chance. */
  static boolean is(double typed, double meant) {
    return IntStream.rangeClosed(0, DECIMALS)
        .mapToDouble(scale -> rounded(meant, scale))
        .anyMatch(it -> is(typed, it, SWAPPED, OTHERWISE));
  }

  /** Whether it may be exactly that number with a slip, though numbers so short are often alike. */
  static boolean mayBe(double typed, double meant) {
    return is(typed, meant, 1, 1);
  }

  private static boolean is(double typed, double meant, int swapped, int otherwise) {
    return typed * meant > 0
        && !Shown.same(typed, meant)
        && isSlip(digits(typed), digits(meant), swapped, otherwise);
  }

  private static double rounded(double number, int scale) {
    return BigDecimal.valueOf(number).setScale(scale, RoundingMode.HALF_UP).doubleValue();
  }

  private static boolean isSlip(String typed, String wanted, int swapped, int otherwise) {
    int length = wanted.length();
    return (length >= swapped && (isMoved(typed, wanted) || isSwapped(typed, wanted)))
        || (length >= otherwise && isOneOff(typed, wanted));
  }

  /** Whether only the point stands elsewhere, and zeros with it. */
  private static boolean isMoved(String typed, String wanted) {
    return typed.replaceAll("0+$", "").equals(wanted.replaceAll("0+$", ""));
  }

  private static boolean isSwapped(String typed, String wanted) {
    int at = firstDifference(typed, wanted);
    return typed.length() == wanted.length()
        && at + 1 < typed.length()
        && typed.charAt(at) == wanted.charAt(at + 1)
        && typed.charAt(at + 1) == wanted.charAt(at)
        && typed.substring(at + 2).equals(wanted.substring(at + 2));
  }

  /** Whether one digit is another, is missing or is one too many. */
  private static boolean isOneOff(String typed, String wanted) {
    int at = firstDifference(typed, wanted);
    String rest = typed.substring(at);
    String should = wanted.substring(at);
    boolean wrong = rest.length() == should.length()
        && !rest.isEmpty()
        && rest.substring(1).equals(should.substring(1));
    boolean lost = !should.isEmpty() && rest.equals(should.substring(1));
    boolean more = !rest.isEmpty() && should.equals(rest.substring(1));
    return wrong || lost || more;
  }

  private static int firstDifference(String one, String other) {
    int at = 0;
    while (at < Math.min(one.length(), other.length()) && one.charAt(at) == other.charAt(at)) {
      at++;
    }
    return at;
  }

  /** The digits, the point left out, without zeros at either end that nobody types. */
  private static String digits(double number) {
    BigDecimal exact = BigDecimal.valueOf(Math.abs(number)).stripTrailingZeros();
    return exact.setScale(Math.max(0, exact.scale())).unscaledValue().toString();
  }
}
