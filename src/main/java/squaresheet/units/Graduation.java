package squaresheet.units;

import java.util.StringJoiner;

/** The finest mark a tape is read or printed to, and the notation that goes with it. */
public enum Graduation {
  /** 1/64 in. */
  SIXTY_FOURTH(127, 64),
  /** 1/32 in. */
  THIRTY_SECOND(254, 32),
  /** 1/16 in, the usual tape. */
  SIXTEENTH(508, 16),
  /** 1/8 in. */
  EIGHTH(1016, 8),
  /** 1/4 in. */
  QUARTER(2032, 4),
  /** 1/2 in. */
  HALF(4064, 2),
  /** 1 in. */
  INCH(8128, 1),
  /** 1 mm. */
  MILLIMETRE(320, 0),
  /** 0.1 mm. */
  TENTH_MILLIMETRE(32, 0);

  private static final long PER_INCH = 8128;
  private static final long PER_MILLIMETRE = 320;

  private final long units;
  private final int perInch;

  Graduation(long units, int perInch) {
    this.units = units;
    this.perInch = perInch;
  }

  /** The distance between two marks, in 1/320 mm. */
  long units() {
    return units;
  }

  /** The distance between two marks. */
  public Length mark() {
    return new Length(units);
  }

  /** Whether the notation is feet and inches rather than millimetres. */
  public boolean isImperial() {
    return perInch > 0;
  }

  String write(Length onAMark) {
    String sign = onAMark.units() < 0 ? "-" : "";
    Length size = onAMark.abs();
    return sign + (isImperial() ? imperial(size.units()) : metric(size.units()));
  }

  private static String metric(long size) {
    long tenths = size * 10 / PER_MILLIMETRE;
    return tenths / 10 + (tenths % 10 == 0 ? "" : "." + tenths % 10) + " mm";
  }

  private String imperial(long size) {
    long feet = size / (12 * PER_INCH);
    long inches = size / PER_INCH % 12;
    long marks = size % PER_INCH / units;
    StringJoiner text = new StringJoiner(" ");
    if (feet > 0) {
      text.add(feet + "'");
    }
    if (inches > 0 || marks > 0 || feet == 0) {
      text.add(inchesText(inches, marks, feet == 0));
    }
    return text.toString();
  }

  private String inchesText(long inches, long marks, boolean alone) {
    if (marks == 0) {
      return inches + "\"";
    }
    long common = greatestCommonDivisor(marks, perInch);
    String fraction = marks / common + "/" + perInch / common + "\"";
    return inches == 0 && alone
        ? fraction
        : inches == 0 ? "0 " + fraction : inches + " " + fraction;
  }

  private static long greatestCommonDivisor(long a, long b) {
    return b == 0 ? a : greatestCommonDivisor(b, a % b);
  }
}
