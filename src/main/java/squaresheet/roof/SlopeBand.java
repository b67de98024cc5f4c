package squaresheet.roof;

import squaresheet.units.Pitch;

/** The bands of pitch that decide what may lie under, or instead of, the shingles. */
public enum SlopeBand {
  /** Below 2:12, where shingles are refused. */
  BELOW_2,
  /** From 2:12 up to, not including, 4:12, where underlayment is doubled. */
  FROM_2_BELOW_4,
  /** 4:12 and steeper. */
  FROM_4;

  /** The band this pitch lies in. */
  public static SlopeBand of(Pitch pitch) {
    if (pitch.compareTo(Pitch.of(2)) < 0) {
      return BELOW_2;
    }
    return pitch.compareTo(Pitch.of(4)) < 0 ? FROM_2_BELOW_4 : FROM_4;
  }
}
