package squaresheet.roof;

import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.finding.Where;

/** The cards of what is said while a roof is resolved. */
final class RoofFindings {

  private static final CheckInfo PLANE =
      new CheckInfo("plane-not-understood", Severity.ERROR, "A plane's measurements make no plane");
  private static final CheckInfo SAME_NAME =
      new CheckInfo("plane-named-twice", Severity.ERROR, "Two planes have one name");
  private static final CheckInfo EDGE = new CheckInfo(
      "edge-not-understood", Severity.ERROR, "What is said of an edge does not fit the roof");
  private static final CheckInfo OPENING =
      new CheckInfo("opening-not-understood", Severity.ERROR, "An opening does not fit its plane");
  private static final CheckInfo NOT_PLACED =
      new CheckInfo("opening-not-placed", Severity.NOTE, "An opening's position was not measured");
  private static final CheckInfo AGAINST_SLOPE =
      new CheckInfo("edge-against-slope", Severity.WARNING, "An edge lies where its kind cannot");
  private static final CheckInfo TAPED = new CheckInfo(
      "taped-edge-disagrees", Severity.WARNING, "An edge measured with the tape is not as drawn");
  private static final CheckInfo DISAGREES = new CheckInfo(
      "shared-edge-disagrees", Severity.WARNING, "Two planes give one edge two lengths");
  private static final CheckInfo ALONE = new CheckInfo(
      "edge-without-partner", Severity.WARNING, "An edge between two planes is on one only");
  private static final CheckInfo PAIRED = new CheckInfo(
      "edge-paired-by-length", Severity.NOTE, "Two edges were taken for one by their length");
  private static final CheckInfo WAITS = new CheckInfo(
      "edge-waits-for-plane", Severity.NOTE, "An edge meets a plane that could not be read");

  private RoofFindings() {}

  static Finding plane(Where where, String says) {
    return new Finding(PLANE, where, says);
  }

  static Finding sameName(Where where, String says) {
    return new Finding(SAME_NAME, where, says);
  }

  static Finding edge(Where where, String says) {
    return new Finding(EDGE, where, says);
  }

  static Finding opening(Where where, String says) {
    return new Finding(OPENING, where, says);
  }

  static Finding notPlaced(Where where, String says) {
    return new Finding(NOT_PLACED, where, says);
  }

  static Finding againstSlope(Where where, String says) {
    return new Finding(AGAINST_SLOPE, where, says);
  }

  static Finding taped(Where where, String found, String expected, String says) {
    return new Finding(TAPED, where, found, expected, says, "");
  }

  static Finding disagrees(Where where, String found, String expected, String says) {
    return new Finding(DISAGREES, where, found, expected, says, "");
  }

  static Finding alone(Where where, String says) {
    return new Finding(ALONE, where, says);
  }

  static Finding waits(Where where, String says) {
    return new Finding(WAITS, where, says);
  }

  static Finding paired(Where where, String says) {
    return new Finding(PAIRED, where, says);
  }
}
