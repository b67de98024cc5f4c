package squaresheet.job;

import squaresheet.tape.TapeUnit;

/**
 * What tells one job from another.
 *
 * @param name what the company calls it
 * @param measuredBy who measured, or empty
 * @param date the day it was measured, as written, or empty
 * @param unit the unit that bare lengths are written in
 */
public record JobCard(String name, String measuredBy, String date, TapeUnit unit) {

  /** A job of which only the name is known, in feet. */
  public static JobCard of(String name) {
    return new JobCard(name, "", "", TapeUnit.FEET);
  }
}
