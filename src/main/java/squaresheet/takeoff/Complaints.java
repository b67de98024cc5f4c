package squaresheet.takeoff;

import squaresheet.finding.CheckInfo;
import squaresheet.finding.Severity;

/** The cards of what a rulebook and a takeoff can say. */
final class Complaints {

  static final CheckInfo NOT_READ =
      new CheckInfo("rule-not-read", Severity.ERROR, "A rule could not be read");
  static final CheckInfo OVERRIDDEN = new CheckInfo(
      "rule-overridden", Severity.NOTE, "A company rule stands in for the standard one");
  static final CheckInfo NAME_UNKNOWN =
      new CheckInfo("rule-name-unknown", Severity.ERROR, "A rule asks for a name that no rule has");
  static final CheckInfo CIRCULAR =
      new CheckInfo("rules-in-a-circle", Severity.ERROR, "Rules ask for each other in a circle");
  static final CheckInfo UNIT_OFF = new CheckInfo(
      "rule-unit-off",
      Severity.WARNING,
      "The units in a rule do not agree, or it does not come to its unit");
  static final CheckInfo NOT_WORKED_OUT = new CheckInfo(
      "quantity-not-worked-out", Severity.ERROR, "A quantity could not be worked out");
  static final CheckInfo SETTING_OFF =
      new CheckInfo("setting-not-allowed", Severity.ERROR, "A setting is not what it may be");
  static final CheckInfo SETTING_UNKNOWN =
      new CheckInfo("setting-not-known", Severity.ERROR, "A name is none of the settings");
  static final CheckInfo LIMIT_ERROR =
      new CheckInfo("limit-not-kept", Severity.ERROR, "A limit of the rulebook is not kept");
  static final CheckInfo LIMIT_WARNING =
      new CheckInfo("limit-in-doubt", Severity.WARNING, "A limit of the rulebook may not be kept");
  static final CheckInfo LIMIT_NOTE =
      new CheckInfo("limit-to-note", Severity.NOTE, "A limit of the rulebook is worth a look");

  private Complaints() {}
}
