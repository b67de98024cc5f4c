package squaresheet.finding;

/**
 * One thing said about a user's input. Sentences have no final period.
 *
 * @param info the check or reader that speaks
 * @param where the place
 * @param found the value there, as the user would recognise it; empty where there is none to show
 * @param expected the value it should be; empty where that is not known
 * @param says the sentence: what it is, what it must be, why
 * @param worth what it is worth in packs or money, such as {@code 5 bundles}; empty where that is not known
 * @param fix what puts it right, exactly
 */
public record Finding(
    CheckInfo info,
    Where where,
    String found,
    String expected,
    String says,
    String worth,
    Fix fix) {

  /** A finding that knows nothing to put right. */
  public Finding(
      CheckInfo info, Where where, String found, String expected, String says, String worth) {
    this(info, where, found, expected, says, worth, Fix.NONE);
  }

  /** A finding that shows no values beside its sentence. */
  public Finding(CheckInfo info, Where where, String says) {
    this(info, where, "", "", says, "");
  }

  /** Whether this withholds the totals. */
  public boolean isError() {
    return info.severity() == Severity.ERROR;
  }

  /** The same finding at another place. */
  public Finding at(Where place) {
    return new Finding(info, place, found, expected, says, worth, fix);
  }

  /** The same finding, with more said behind it. */
  public Finding adding(String more) {
    return new Finding(info, where, found, expected, says + more, worth);
  }

  /** The same finding, worth so much. */
  public Finding worth(String packsOrMoney) {
    return new Finding(info, where, found, expected, says, packsOrMoney, fix);
  }

  /** The same finding in other words. */
  public Finding saying(String sentence) {
    return new Finding(info, where, found, expected, sentence, worth, fix);
  }

  /** The same finding, put right by this. */
  public Finding with(Fix remedy) {
    return new Finding(info, where, found, expected, says, worth, remedy);
  }
}
