package squaresheet.judge.score;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import squaresheet.judge.slip.Slip;

/**
 * By what a finding names a slip: the checks that are about this slip alone, and the words for it. What only says that a cell
 * is not like its neighbours, or is not what the model makes, names none.
 */
final class SlipNames {

  private static final Map<String, Pattern> ALL = new HashMap<>();

  /** Checks that say what does not hold, and leave open by what slip. */
  private static final Set<String> OPEN = Set.of(
      "error-value",
      "result-in-other-unit",
      "amount-off-price",
      "total-passes-step",
      "total-off-parts");

  static {
    """
    MEC-01 ^(typed-over-formula|rule-typed-over|line-value-typed-over|typed-total-off|retyped-total|summary-off-sheets|factor-typed)
    MEC-02 ^(typed-over-formula|rule-typed-over|line-value-typed-over)
    MEC-03 ^(formula-cleared-in-row|row-without-formulas)
    MEC-04 ^row-without-formulas
    MEC-05 sorted alone
    MEC-06 ^plane-named-twice|the same plane twice
    MEC-07 ^ghost-row
    MEC-08 digits? swapped
    MEC-09 decimal point|ten times|10 times
    MEC-09b decimal point|a tenth
    MEC-10 one row (off|down|up)
    MEC-11 ^(copied-sheet-read|reference-to-like-sheet)
    TYP-01 digit (is )?(missing|dropped|lost)
    TYP-02 digit (is )?(doubled|too many)
    NEI-01 value of the (row|neighbour)
    FRM-01 ^total-stops-short|' left out
    FRM-01b ^total-stops-short|' left out
    FRM-02 ^(rate-added-as-amount|waste-added-as-amount)
    FRM-03 ^reference-drifts
    FRM-04 ^reference-held-to-row
    FRM-05 ^reference-off-by-one|read from
    FRM-06 ^(result-in-other-unit|plan-added-to-sloped|amount-off-price|price-unit-off|factor-nobody-uses)| taken for
    FRM-07 ^(reference-to-like-sheet|copied-sheet-read)
    FRM-08 ^broken-reference
    FRM-09 ^error-hidden-by-guard
    FRM-10 ^lookup-table-short
    FRM-11 ^odd-constant-in-run|looked up in the wrong column|column [A-Z0-9]+ of the table
    FRM-12 ^waste-added-as-amount|brackets lost
    FRM-13 ^sumif-ranges-differ
    FRM-14 ^key-misses-by-spelling
    FRM-15 ^packs-rounded-to-nearest|rounded to the nearest
    FRM-16 ^odd-constant-in-run
    FRM-17 ^circular-formula
    FRM-18 ^band-takes-in-limit|<=
    FRM-19 ^(term-added-after-sum|total-takes-part-twice)|(counted|added) twice
    FRM-20 ^name-points-elsewhere
    FRM-21 ^(flag-spelled-otherwise|key-misses-by-spelling|edge-not-understood)
    FRM-22 ^pitch-blank
    UNI-01 ^pitch-like-degrees|as degrees
    UNI-02 ^pitch-like-ratio
    UNI-03 ^square-feet-for-squares|square feet taken for squares
    UNI-04 ^divided-by-hundred-twice|divided by 100
    UNI-05 ^feet-inches|feet and inches
    UNI-06 inches (taken )?(for|in) (a )?feet
    UNI-07 met(re|er)s (taken )?for feet
    UNI-08 ^(price-unit-off|price-for-another-unit|amount-off-price|reference-off-by-one)|read from
    UNI-09 ^(reference-off-by-one|price-unit-off|price-for-another-unit|result-in-other-unit)
    UNI-10 ^(reference-off-by-one|price-unit-off|price-for-another-unit|result-in-other-unit)
    UNI-11 ^(reference-off-by-one|price-unit-off|price-for-another-unit|result-in-other-unit)
    UNI-12 ^(waste-twice|rate-unit-off)|with the waste
    UNI-13 factor of 12|^conversion-left-out
    UNI-14 ^trigonometry-on-degrees
    UNI-15 ^unlike-units-added
    UNI-16 ^(waste-typed-as-percent|percent-used-as-ratio|rate-typed-as-percent)
    RAT-01 ^(rate-out-of-reason|tax-typed-as-percent|rate-typed-as-percent|percent-used-as-ratio)
    LOG-01 ^factor-nobody-uses|(pitch factor|factor').* left out|plan measure taken
    LOG-02 ^pitch-factor-twice|pitch factor taken once more
    LOG-03 ^pitch-factor-twice|pitch factor taken once more|taken twice
    LOG-04 ^waste-twice|taken twice
    LOG-05 ^waste-after|waste.* after
    LOG-07 ^packs-rounded-down|rounded down
    LOG-08 ^average-of-factors
    LOG-12 ^waste-subtracted|taken off instead of added
    LOG-13 divided by .* instead
    LOG-14 1 \\+ rise/12
    LOG-16 ^vent-area-mixed-units|144
    DOM-01 ^hip-taken-in-plan
    DOM-02 ^hip-by-common-factor
    DOM-04 ^edge-against-slope|is an? (eave|rake)
    DOM-05 left out
    DOM-07 hips?.* left out
    DOM-08 left out
    DOM-09 left out
    DOM-10 left out
    DOM-11 left out|not taken off
    DOM-12 ^low-slope-single-layer|^rule-typed-over
    DOM-13 ^(pitch-under-product-minimum|shingles-too-flat)
    DOM-14 ^stated-coverage-off
    DOM-15 ^(edge-waits-for-plane|edge-not-understood)|no plane
    DOM-18 ^(total-leaves-out-part|sheet-left-out)
    ACC-02 ^tax-step-off|tax.* labou?r
    ACC-03 ^markup-used-for-margin
    ACC-05 ^(total-leaves-out-part|total-off-parts|total-passes-step)| left out
    ACC-06 ^(totals-do-not-cross-foot|estimate-does-not-cross-foot|typed-over-formula|typed-total-off|rule-typed-over|retyped-total|payment-shares-off)
    ACC-07 ^markup-twice
    ACC-08 ^option
    ACC-10 ^(payment-shares-not-whole|payment-shares-off)
    ACC-11 ^(sold-below-cost|price-below-cost)
    ACC-12 ^(amount-off-price|reference-off-by-one)|read from
    DAT-01 ^pitch-became-date
    DAT-02 ^pitch-became-time
    DAT-03 ^pitch-text-computed
    DAT-04 ^(number-stored-as-text|input-is-text)
    DAT-05 ^(key-with-stray-space|key-misses-by-spelling)
    DAT-06 ^decimal-comma-text
    DAT-07 ^negative-quantity
    DAT-08 ^dimension-missing
    DAT-09 ^note-in-number-cell
    DAT-10 ^duplicate-price-row
    DAT-11 ^unit-word-off
    DAT-12 ^value-under-merge
    DAT-13 ^feet-inches-text
    DAT-14 ^number-too-long-for-code
    DAT-15 ^formula-stored-as-text
    DAT-16 ten times|decimal point
    KEY-01 ^key-misses-by-spelling
    ITG-01 ^hidden-row-in-total
    ITG-02 ^hidden-sheet-feeds-total
    ITG-03 ^subtotal-under-filter
    ITG-04 ^subtotal-drops-hidden-rows
    ITG-05 ^dates-four-years-apart
    ITG-06 ^formulas-hidden
    ITG-07 ^name-is-broken
    ITG-08 ^format-hides-value
    ITG-09 ^typed-from-display
    ITG-10 ^error-value
    ITG-11 ^(input-nobody-reads|rate-nobody-reads)
    ITG-12 ^formula-not-checked
    STL-01 ^stale-value
    STL-02 ^manual-calculation
    STL-03 ^stored-values-missing
    STL-04 ^external-link
    STL-05 ^external-link-far-away
    STL-06 ^date-drives-amount
    STL-08 ^(edge-waits-for-plane|edge-not-understood)|no plane
    STL-09 ^price.*(old|valid)|valid until
    STL-10 ^precision-as-displayed
    STL-11 ^(retyped-total|typed-total-off)
    """.lines().forEach(line -> ALL.put(
        line.substring(0, line.indexOf(' ')),
        Pattern.compile(line.substring(line.indexOf(' ') + 1))));
  }

  private SlipNames() {}

  private static boolean names(String id, Heard heard) {
    Pattern pattern = ALL.get(id);
    return pattern != null && pattern.matcher(heard.id() + ": " + heard.says()).find();
  }

  /** Whether one of the findings names the slip that was made. */
  static boolean right(Slip slip, List<Heard> heard) {
    return heard.stream().anyMatch(each -> names(slip.id(), each));
  }

  /** Whether none of them does, and one names another slip. */
  static boolean wrong(Slip slip, List<Heard> heard) {
    return !right(slip, heard)
        && heard.stream()
            .filter(each -> !OPEN.contains(each.id()))
            .anyMatch(each -> ALL.keySet().stream().anyMatch(id -> names(id, each)));
  }
}
