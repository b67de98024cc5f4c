package squaresheet.verify;

import java.util.stream.Stream;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.formula.Value;

/** What is said of a rate that is put on a second time. */
final class RateTwice {

  private RateTwice() {}

  static Stream<Finding> of(
      RateUse use, Rate.Kind kind, CheckInfo info, String name, String already) {
    boolean again = use.rate().kind() == kind && use.isAgain() && RunStart.is(use.cell());
    return again ? Stream.of(says(use, info, name, already)) : Stream.empty();
  }

  private static Finding says(RateUse use, CheckInfo info, String name, String already) {
    String says = "is " + use.cell().shown() + ", which multiplies with " + name + " ("
        + Shown.number(use.rate().times()) + ") " + already + ": " + use.first()
        + " did so before; once is enough";
    Value now = use.cell().value();
    boolean whole = Nodes.any(use.cell().tree(), node -> Nodes.isCall(node, "ROUNDUP", "CEILING"));
    return now instanceof Value.Number number && !whole
        ? Says.about(
            info,
            use.cell().book(),
            use.cell().at(),
            new Value.Number(number.value() / use.rate().times()),
            says)
        : Says.about(info, use.cell().book(), use.cell().at(), says);
  }
}
