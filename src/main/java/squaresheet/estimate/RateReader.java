package squaresheet.estimate;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import squaresheet.finding.Finding;
import squaresheet.finding.OwnWords;
import squaresheet.tape.NumberReader;
import squaresheet.units.Money;
import squaresheet.units.Unit;

/** Reads one line of a table of rates. */
final class RateReader {

  private static final int DECIMALS = 6;

  private final Table.Line line;
  private final List<Finding> findings = new ArrayList<>();

  RateReader(Table.Line line) {
    this.line = line;
  }

  List<Finding> findings() {
    return findings;
  }

  /** Whether the line states what an hour of a crew costs. */
  boolean isCrew() {
    return line.text("category").equalsIgnoreCase("crew");
  }

  private void says(String column, String sentence) {
    String item = line.text("item").isEmpty() ? "" : line.text("item") + ": ";
    findings.add(new Finding(Complaints.RATE_NOT_READ, line.at(column), item + sentence));
  }

  Optional<BigDecimal> number(String column, BigDecimal usual) {
    String text = line.text(column);
    if (text.isEmpty() && !column.equals("amount")) {
      return Optional.of(usual);
    }
    Optional<BigDecimal> number = NumberReader.POINT.amount(text, DECIMALS);
    if (number.isEmpty()) {
      says(column, column + " must be a number like 1.75, but reads '" + text + "'");
    }
    return number;
  }

  /** A crew with the cost of its hour. */
  Optional<Rates.Crew> crew(String currency) {
    named();
    Unit hour = Unit.parse("$/hour");
    boolean other = !line.text("unit").isEmpty() && !unit().isLike(hour) && !isPerHour(currency);
    if (findings.isEmpty() && other) {
      says("unit", "unit must be $/hour for a crew, but reads '" + line.text("unit") + "'");
    }
    return number("amount", BigDecimal.ZERO)
        .filter(amount -> findings.isEmpty())
        .map(amount ->
            new Rates.Crew(line.text("item"), Money.of(currency, amount), line.at("item")));
  }

  private boolean isPerHour(String currency) {
    return line.text("unit").equalsIgnoreCase(currency + "/hour");
  }

  private void named() {
    if (line.text("item").isEmpty()) {
      says("item", "item must be named, but is empty");
    }
  }

  Optional<Rate> rate() {
    named();
    Category category = Category.meant(line.text("category"));
    if (!category.isCost() || category.toString().isEmpty()) {
      says(
          "category",
          "category must be crew, labour, equipment, disposal, subcontract, permit or material, but reads '"
              + line.text("category") + "'");
    }
    Optional<BigDecimal> amount = number("amount", BigDecimal.ZERO);
    Unit unit = unit();
    Rate.Band band = new Rate.Band(
        number("pitch_from_in_per_12", BigDecimal.ZERO).orElse(BigDecimal.ZERO),
        number("pitch_below_in_per_12", Rate.Band.OPEN).orElse(Rate.Band.OPEN),
        number("stories_from", BigDecimal.ZERO).orElse(BigDecimal.ZERO),
        number("stories_below", Rate.Band.OPEN).orElse(Rate.Band.OPEN));
    if (!findings.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new Rate(
        line.text("item"),
        category,
        line.text("cost_code"),
        line.text("quantity"),
        amount.orElseThrow(),
        unit,
        line.text("crew"),
        band,
        line::at));
  }

  private Unit unit() {
    try {
      return Unit.parse(line.text("unit"));
    } catch (IllegalArgumentException unreadable) {
      says("unit", OwnWords.of(unreadable));
      return Unit.RATIO;
    }
  }
}
