package squaresheet.roof;

import java.util.List;
import squaresheet.roof.PlaneNotes.OpeningNotes;
import squaresheet.units.Length;

/**
 * A roof as written down: incomplete or wrong it may be. {@link Roof#resolve} judges it.
 *
 * @param planes the planes in the order written
 * @param tapeTolerance how far two readings of one length may differ; 1 in unless set
 * @param lost the planes that are there but could not be read
 */
public record RoofNotes(List<PlaneNotes> planes, Length tapeTolerance, List<Lost> lost) {

  /**
   * A plane that could not be read. What lies in it or meets it is kept.
   *
   * @param id its name
   * @param openings what is cut out of it
   */
  public record Lost(String id, List<OpeningNotes> openings) {
    public Lost {
      id = id.strip();
      openings = List.copyOf(openings);
    }
  }

  /** The tape tolerance unless set: 1 in. Common practice, no source. */
  public static Length usualTolerance() {
    return Length.ofInches(1);
  }

  public RoofNotes {
    planes = List.copyOf(planes);
    lost = List.copyOf(lost);
  }

  /** A roof of which every plane could be read. */
  public RoofNotes(List<PlaneNotes> planes, Length tapeTolerance) {
    this(planes, tapeTolerance, List.of());
  }

  /** A roof measured to the usual tolerance. */
  public RoofNotes(List<PlaneNotes> planes) {
    this(planes, usualTolerance());
  }

  /** This roof with other planes as they were written. */
  public RoofNotes with(List<PlaneNotes> others) {
    return new RoofNotes(others, tapeTolerance, lost);
  }

  /** A roof measured to the usual tolerance. */
  public static RoofNotes of(PlaneNotes... planes) {
    return new RoofNotes(List.of(planes));
  }
}
