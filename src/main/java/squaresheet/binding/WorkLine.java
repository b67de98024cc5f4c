package squaresheet.binding;

import java.util.Optional;
import squaresheet.estimate.Rate;
import squaresheet.takeoff.Rule;
import squaresheet.takeoff.Rulebook;
import squaresheet.units.Unit;

/** A line of work or hire as formulas of the estimate spell it: a rate over so much of its quantity as lies in its band. */
final class WorkLine {

  private final Rate rate;
  private final Optional<Rule> rule;
  private final Optional<Rate.Paid> paid;
  private final TableDraft table;
  private final int row;

  /**
   * The line of a rate.
   *
   * @param table the table of the rates
   * @param row the row of the rate in it, 0 and up
   */
  WorkLine(Rate rate, Rulebook rulebook, String currency, TableDraft table, int row) {
    this.rate = rate;
    this.table = table;
    this.row = row;
    rule = rulebook.rule(rate.quantity());
    paid = rate.paid(rule.map(Rule::unit).orElse(Unit.RATIO), currency);
  }

  private String there(String column) {
    return table.there(row, "rate_" + column);
  }

  private boolean isPer(Rule.Per per) {
    return rule.filter(it -> it.per() == per).isPresent();
  }

  String item() {
    String upTo = "IF(" + there("pitch_below") + "<" + Rate.Band.OPEN + ",\" to below \"&"
        + there("pitch_below") + "&\":12\",\"\")";
    String stories = "IF(" + there("stories_from") + ">0,\", from \"&" + there("stories_from")
        + "&\" stories\",\"\")";
    return isPer(Rule.Per.PLANE)
        ? there("item") + "&\", from \"&" + there("pitch_from") + "&\":12\"&" + upTo + "&" + stories
        : there("item");
  }

  String category() {
    return there("category");
  }

  String code() {
    return there("cost_code") + "&\"\"";
  }

  /** Hours, or how much is paid for. */
  String quantity() {
    String high = "AND(building_stories>=" + there("stories_from") + ",building_stories<"
        + there("stories_below") + ")";
    String much = "IF(" + high + "," + much() + ",0)" + size();
    return rate.isHours() ? much + "*" + there("amount") : much;
  }

  private String much() {
    if (rate.quantity().isEmpty()) {
      return "1";
    }
    if (isPer(Rule.Per.EDGE)) {
      return "SUM(" + rate.quantity() + ")";
    }
    if (isPer(Rule.Per.JOB)) {
      return rate.quantity();
    }
    return rule.isEmpty()
        ? "NA()"
        : "SUMIFS(" + rate.quantity() + ",pitch_rise,\">=\"&" + there("pitch_from")
            + ",pitch_rise,\"<\"&" + there("pitch_below") + ")";
  }

  /** A rate for each square of a quantity in square feet takes a hundredth of it. */
  private String size() {
    double size = paid.map(Rate.Paid::size).orElse(1.0);
    double parts = Math.rint(1 / size);
    if (size == 1) {
      return "";
    }
    return Math.abs(parts * size - 1) < 1e-12 ? "/" + Cells.plain(parts) : "*" + Cells.plain(size);
  }

  String unit() {
    String unit = rule.isEmpty()
        ? "job"
        : Entries.unit(
            rate.isHours() || size().isEmpty() || paid.isEmpty()
                ? rule.get().unit()
                : paid.get().unit().over(rate.unit()));
    return rate.isHours() ? "\"hour\"" : "\"" + unit + "\"";
  }

  String price() {
    return rate.isHours()
        ? "INDEX(crew_rate,MATCH(" + there("crew") + ",crew_name,0))"
        : there("amount");
  }
}
