package squaresheet.verify;

import java.util.Locale;
import java.util.regex.Pattern;

/** Words that estimators write to say what a cell, a row or a column is. */
final class Words {

  private static final Pattern TOTAL =
      words("totals?|sub ?-?totals?|sum|grand total|all together|altogether");
  private static final Pattern MEASURED = words(
      "measured|as measured|drawing|drawings|override|overridden|typed|by hand|from plan|per plan|survey(ed)?|locked?|fixed|waived?|waiver|actual|manual(ly)?");
  private static final Pattern OUTSIDE = words(
      "excluded|excl|by others|others|optional|option|alternate|not in contract|not included|n\\.?i\\.?c|not used|unused|spare|membrane");
  private static final Pattern CREDIT = words(
      "credits?|returns?|returned|refunds?|allowances?|discounts?|rebates?|deduct(ion)?s?|less|adjustments?");
  private static final Pattern FLAT = words(
      "flat|low[ -]?slope|dead level|membrane|roll(ed)? roofing|self[ -]?adhered|peel and stick|ice and water");
  private static final Pattern POLICY =
      words("local|stricter|manufacturer|maker|policy|county|city|our rule|by code|as required");
  private static final Pattern PITCH = words("pitch|slope|rise|x ?/ ?12|/ ?12|in 12");
  private static final Pattern DATE =
      words("date|day|survey|surveyed|time|hours?|when|valid|visit|start|finish");
  private static final Pattern CODE = words(
      "codes?|sku|ids?|item no|part no|no|number|nr|phone|tel|zip|ref|reference|drawing|plan|permit|account|invoice|cost code|name|item|plane");

  private Words() {}

  private static Pattern words(String any) {
    return Pattern.compile(
        "(?<![\\p{L}\\p{N}])(" + any + ")(?![\\p{L}\\p{N}])", Pattern.CASE_INSENSITIVE);
  }

  static boolean isTotal(String text) {
    return TOTAL.matcher(text).find();
  }

  /** Whether someone says that the number was measured or fixed on purpose. */
  static boolean saysMeasured(String text) {
    return MEASURED.matcher(text).find();
  }

  /** Whether someone says that the item is left out on purpose. */
  static boolean saysOutside(String text) {
    return OUTSIDE.matcher(text).find();
  }

  static boolean saysCredit(String text) {
    return CREDIT.matcher(text).find();
  }

  /** Whether someone says that the item has no shingles, or a covering of its own beneath them. */
  static boolean saysFlat(String text) {
    return FLAT.matcher(text).find();
  }

  /** Whether someone says that a stricter rule than the usual one holds. */
  static boolean saysPolicy(String text) {
    return POLICY.matcher(text).find();
  }

  static boolean isPitch(String heading) {
    return PITCH.matcher(heading).find()
        && !Pattern.compile(
                "factor|length|up the|on the|along|height|area", Pattern.CASE_INSENSITIVE)
            .matcher(heading)
            .find();
  }

  static boolean isDate(String heading) {
    return DATE.matcher(heading).find();
  }

  /** Whether the heading stands over names and codes, whose digits are no amounts. */
  static boolean isCode(String heading) {
    return CODE.matcher(heading).find();
  }

  /** A key as it should be compared: without outer spaces, hard spaces, capitals and a plural s. */
  static String stem(String key) {
    String bare = key.replace('\u00A0', ' ').strip().toLowerCase(Locale.ROOT);
    String single = bare.replaceAll("\\s+", " ");
    return single.endsWith("s") && single.length() > 3
        ? single.substring(0, single.length() - 1)
        : single;
  }
}
