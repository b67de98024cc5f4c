package squaresheet.job;

import java.util.Locale;
import squaresheet.tape.TapeUnit;
import squaresheet.units.Area;

/**
 * What tells one job from another.
 *
 * @param name what the company calls it
 * @param measuredBy who measured, or empty
 * @param date the day it was measured, as written, or empty
 * @param unit the unit that bare lengths are written in
 * @param number the company's number for it, or empty
 * @param customer whose roof it is
 */
public record JobCard(
    String name, String measuredBy, String date, TapeUnit unit, String number, Customer customer) {

  /**
   * Whose roof it is, as written; what nobody said is empty.
   *
   * @param name who
   * @param address where the roof is
   * @param phone how to call
   */
  public record Customer(String name, String address, String phone) {
    /** Nobody said. */
    public static final Customer UNSAID = new Customer("", "", "");
  }

  /** A job of a customer that nobody named. */
  public JobCard(String name, String measuredBy, String date, TapeUnit unit, String number) {
    this(name, measuredBy, date, unit, number, Customer.UNSAID);
  }

  /** A job without a number. */
  public JobCard(String name, String measuredBy, String date, TapeUnit unit) {
    this(name, measuredBy, date, unit, "");
  }

  /** Whether the tape is in metres and millimetres. */
  public boolean isMetric() {
    return unit == TapeUnit.METRES || unit == TapeUnit.MILLIMETRES;
  }

  /** A job of which only the name is known, in feet. */
  public static JobCard of(String name) {
    return new JobCard(name, "", "", TapeUnit.FEET);
  }

  /** An area as it is spoken of where the roof was measured: in square feet, or in square metres. */
  public String show(Area area) {
    return unit.isImperial()
        ? area.show()
        : String.format(Locale.ROOT, "%.1f m\u00b2", area.toSquareMetres());
  }
}
