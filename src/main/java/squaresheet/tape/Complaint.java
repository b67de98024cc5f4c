package squaresheet.tape;

import squaresheet.finding.CheckInfo;
import squaresheet.finding.Severity;

/** What a reader of people's notation can have to say. */
enum Complaint {
  LENGTH_MISSING("length-missing", Severity.ERROR, "A length is missing"),
  LENGTH_UNREADABLE("length-unreadable", Severity.ERROR, "A length could not be read"),
  LENGTH_AMBIGUOUS("length-ambiguous", Severity.ERROR, "A length can be read in two ways"),
  LENGTH_NOT_POSITIVE("length-not-positive", Severity.ERROR, "A length is zero or negative"),
  LENGTH_TOO_LONG("length-too-long", Severity.ERROR, "A length is longer than any roof"),
  LENGTH_BECAME_DATE("length-became-date", Severity.ERROR, "A length was turned into a date"),
  DECIMAL_MARK("wrong-decimal-mark", Severity.ERROR, "A decimal mark is not the sheet's own"),
  INCHES_PAST_TWELVE(
      "inches-past-twelve", Severity.WARNING, "Twelve inches or more stand beside feet"),
  NUMBER_UNREADABLE("number-unreadable", Severity.ERROR, "A number could not be read"),
  NUMBER_BECAME_DATE("number-became-date", Severity.ERROR, "A number was turned into a date"),
  BARE_UNIT("bare-number-unit", Severity.NOTE, "Bare numbers are read in the declared unit"),
  FEET_INCHES(
      "feet-inches-as-decimal",
      Severity.WARNING,
      "Decimals of feet look like inches (feet.inches?)"),
  PITCH_MISSING("pitch-missing", Severity.ERROR, "A pitch is missing"),
  PITCH_UNREADABLE("pitch-unreadable", Severity.ERROR, "A pitch could not be read"),
  PITCH_AMBIGUOUS("pitch-ambiguous", Severity.ERROR, "A pitch can be read in two ways"),
  PITCH_NOT_POSITIVE("pitch-not-positive", Severity.ERROR, "A pitch is zero or negative"),
  PITCH_TOO_STEEP("pitch-too-steep", Severity.ERROR, "A pitch is steeper than 24 in 12"),
  PITCH_AS_NAMED(
      "pitch-as-named",
      Severity.NOTE,
      "An angle or percent is taken as the pitch it was rounded from"),
  PITCH_LIKE_DEGREES(
      "pitch-like-degrees", Severity.WARNING, "A rise per 12 looks like an angle in degrees"),
  PITCH_LIKE_RATIO("pitch-like-ratio", Severity.WARNING, "A rise per 12 looks like rise over run"),
  PITCH_BECAME_DATE("pitch-became-date", Severity.ERROR, "A pitch was turned into a date"),
  PITCH_BECAME_TIME("pitch-became-time", Severity.ERROR, "A pitch was turned into a time of day");

  private final String id;
  private final Severity severity;
  private final String title;

  Complaint(String id, Severity severity, String title) {
    this.id = id;
    this.severity = severity;
    this.title = title;
  }

  CheckInfo info() {
    return new CheckInfo(id, severity, title);
  }
}
