package squaresheet.estimate;

import java.math.BigDecimal;
import squaresheet.units.Unit;

/**
 * A rate of the company: hours or money for each unit of a quantity of the takeoff, for planes within a band of pitch and
 * buildings within a band of height.
 *
 * @param item what is done or paid for; rates of one item divide the work between them by their bands
 * @param category what its lines are for
 * @param costCode the company's code, or empty
 * @param quantity the takeoff's name for how much there is to do; empty where it is paid once
 * @param amount hours or money for one unit of it, 0 or more
 * @param unit such as {@code hour/square}, {@code $/square} or {@code $}
 * @param crew for hours, the name of the loaded rate they are paid at; empty for money
 * @param band the pitches and stories it is for
 */
public record Rate(
    String item,
    Category category,
    String costCode,
    String quantity,
    BigDecimal amount,
    Unit unit,
    String crew,
    Band band) {

  /**
   * Pitches and stories, each from a number, included, up to another, not included.
   *
   * @param pitchFrom rise per 12
   * @param pitchBelow rise per 12
   * @param storiesFrom stories
   * @param storiesBelow stories
   */
  public record Band(
      BigDecimal pitchFrom,
      BigDecimal pitchBelow,
      BigDecimal storiesFrom,
      BigDecimal storiesBelow) {

    boolean holdsPitch(double rise) {
      return pitchFrom.doubleValue() <= rise && rise < pitchBelow.doubleValue();
    }

    boolean holdsStories(double stories) {
      return storiesFrom.doubleValue() <= stories && stories < storiesBelow.doubleValue();
    }

    /** For people: {@code 6:12 up to 9:12}. */
    String show() {
      return pitchFrom.toPlainString() + ":12 up to " + pitchBelow.toPlainString() + ":12";
    }
  }

  /** Whether it is a rate of hours. */
  public boolean isHours() {
    return !crew.isEmpty();
  }
}
