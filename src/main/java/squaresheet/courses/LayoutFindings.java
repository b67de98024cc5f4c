package squaresheet.courses;

import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.finding.Where;

/** The cards of what is said while courses are laid out. */
final class LayoutFindings {

  static final CheckInfo NO_SHINGLE =
      new CheckInfo("layout-without-shingle", Severity.ERROR, "No shingle is chosen to lay out");
  static final CheckInfo STRETCHED =
      new CheckInfo("interval-stretches-exposure", Severity.ERROR, "Lines stand too far apart");
  static final CheckInfo OVERHANG = new CheckInfo(
      "eave-overhang-outside-limits",
      Severity.WARNING,
      "Overhang at the eave is not within limits");
  static final CheckInfo STAGGER = new CheckInfo(
      "stagger-under-minimum", Severity.WARNING, "Joints of neighbouring courses stand too near");
  static final CheckInfo NEXT_BUT_ONE = new CheckInfo(
      "joints-line-up-next-but-one",
      Severity.NOTE,
      "Joints two courses apart stand nearer than the setting says");
  static final CheckInfo FIRST_PIECE = new CheckInfo(
      "first-piece-too-long", Severity.WARNING, "A first piece is no part of a shingle");
  static final CheckInfo LOW_PLANE =
      new CheckInfo("plane-under-one-course", Severity.WARNING, "A plane is lower than one course");
  static final CheckInfo LONG_STARTER = new CheckInfo(
      "starter-longer-than-eave", Severity.NOTE, "A starter piece is longer than the eave");
  static final CheckInfo LOW_PITCH = new CheckInfo(
      "pitch-under-product-minimum", Severity.WARNING, "A plane is too flat for the product");
  static final CheckInfo CLASH = new CheckInfo(
      "starter-joints-clash",
      Severity.WARNING,
      "Starter joints lie near joints of the first course");
  static final CheckInfo TAPER =
      new CheckInfo("course-taper-shows", Severity.WARNING, "Lines out of parallel can be seen");
  static final CheckInfo SLIVERS =
      new CheckInfo("slivers-at-rake", Severity.NOTE, "Narrow pieces end at a rake");

  private LayoutFindings() {}

  static Finding of(CheckInfo card, String plane, String property, String says) {
    return new Finding(card, where(plane, property), says);
  }

  static Finding of(
      CheckInfo card, String plane, String property, String found, String expected, String says) {
    return new Finding(card, where(plane, property), found, expected, says, "");
  }

  static Where where(String plane, String property) {
    return new Where.OfItem("plane " + plane, property);
  }
}
