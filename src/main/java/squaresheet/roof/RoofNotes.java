package squaresheet.roof;

import java.util.List;
import squaresheet.units.Length;

/**
 * A roof as written down: incomplete or wrong it may be. {@link Roof#resolve} judges it.
 *
 * @param planes the planes in the order written
 * @param tapeTolerance how far two readings of one length may differ; 1 in unless set
 */
public record RoofNotes(List<PlaneNotes> planes, Length tapeTolerance) {

  /** The tape tolerance unless set: 1 in. Common practice, no source. */
  public static Length usualTolerance() {
    return Length.ofInches(1);
  }

  public RoofNotes {
    planes = List.copyOf(planes);
  }

  /** A roof measured to the usual tolerance. */
  public RoofNotes(List<PlaneNotes> planes) {
    this(planes, usualTolerance());
  }

  /** A roof measured to the usual tolerance. */
  public static RoofNotes of(PlaneNotes... planes) {
    return new RoofNotes(List.of(planes));
  }
}
