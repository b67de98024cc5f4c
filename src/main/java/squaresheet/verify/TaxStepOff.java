package squaresheet.verify;

import java.util.Optional;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Node;
import squaresheet.sheet.Address;

/** Is an amount of tax worked out in another way than as its rate of its base? */
final class TaxStepOff implements Check<FormulaCell> {

  private static final CheckInfo INFO =
      new CheckInfo("tax-step-off", Severity.WARNING, "A tax is not its rate of its base");

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(FormulaCell cell) {
    Node tree = Nodes.isCall(cell.tree(), "ROUND") ? cell.tree().parts().get(0) : cell.tree();
    return RateWords.isTax(cell.label()) && tree instanceof Node.Binary binary
        ? why(cell, binary).stream()
            .map(why -> Says.about(INFO, cell.book(), cell.at(), "is " + cell.shown() + ", " + why))
        : Stream.empty();
  }

  private static Optional<String> why(FormulaCell cell, Node.Binary tax) {
    if (tax.operator() == Node.Operator.OVER) {
      return RateWords.rate(cell, tax.right())
          .map(rate -> "which divides by the rate at " + rate + "; a tax is multiplied with it");
    }
    if (tax.operator() != Node.Operator.TIMES) {
      return Optional.empty();
    }
    return holdsBase(cell, tax).or(() -> otherRate(cell, tax)).or(() -> base(cell, tax));
  }

  private static Optional<String> holdsBase(FormulaCell cell, Node.Binary tax) {
    return tax.parts().stream().anyMatch(side -> isOneAndRate(cell, side))
        ? Optional.of(
            "which is the amount together with the tax; the tax alone is the amount times the rate")
        : Optional.empty();
  }

  private static boolean isOneAndRate(FormulaCell cell, Node side) {
    return side instanceof Node.Binary sum
        && AmountParts.isOneAnd(sum)
        && RateWords.rate(cell, sum.right()).isPresent();
  }

  private static Optional<String> otherRate(FormulaCell cell, Node.Binary tax) {
    return tax.parts().stream()
        .flatMap(side -> RateWords.rate(cell, side).stream())
        .filter(rate -> !RateWords.saysTax(RateWords.label(cell.book(), rate)))
        .findFirst()
        .map(rate -> "which takes the rate '" + RateWords.label(cell.book(), rate) + "' at " + rate
            + ", not that of the tax");
  }

  private static Optional<String> base(FormulaCell cell, Node.Binary tax) {
    Optional<Address> rate = tax.parts().stream()
        .flatMap(side -> RateWords.rate(cell, side).stream())
        .findFirst();
    Optional<Address> base = tax.parts().stream()
        .flatMap(side -> RateWords.cell(cell, side).stream())
        .filter(at -> !rate.equals(Optional.of(at)))
        .findFirst();
    return rate.isEmpty()
        ? Optional.empty()
        : base.filter(at -> isLaborBesideMaterial(cell, at))
            .map(
                at -> "which taxes '" + RateWords.label(cell.book(), at)
                    + "' alone, while the material just beside it is untaxed; check what is taxed where the job is");
  }

  private static boolean isLaborBesideMaterial(FormulaCell cell, Address base) {
    Tab tab = cell.book().tab(base.sheet());
    return RateWords.saysLaborOnly(tab.label(base.ref()))
        && !RateWords.saysLaborOnly(cell.label())
        && Stream.of(-1, 1)
            .filter(step -> base.ref().row() + step >= 0)
            .map(step -> base.ref().plus(step, 0))
            .anyMatch(ref -> RateWords.saysMaterial(tab.label(ref))
                && cell.book().number(tab.at(ref)).isPresent());
  }
}
