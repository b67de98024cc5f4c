package squaresheet.estimate;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import squaresheet.finding.Finding;
import squaresheet.tape.NumberReader;
import squaresheet.units.Unit;

/** Reads one line of a table of rates. */
final class RateReader {

  /** Past the steepest pitch and the tallest house. */
  private static final BigDecimal NO_END = BigDecimal.valueOf(1000);

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
    return line.text("category").equals("crew");
  }

  private void says(String column, String sentence) {
    findings.add(new Finding(
        Complaints.RATE_NOT_READ, line.at(column), line.text("item") + ": " + sentence));
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

  Optional<Rate> rate() {
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
        number("pitch_below_in_per_12", NO_END).orElse(NO_END),
        number("stories_from", BigDecimal.ZERO).orElse(BigDecimal.ZERO),
        number("stories_below", NO_END).orElse(NO_END));
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
        band));
  }

  private Unit unit() {
    try {
      return Unit.parse(line.text("unit"));
    } catch (IllegalArgumentException unreadable) {
      says("unit", unreadable.getMessage());
      return Unit.RATIO;
    }
  }
}
