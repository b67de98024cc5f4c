package squaresheet.verify;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Node;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.sheet.Ref;

/** Does a lookup take the first of two different prices of one item? */
final class DuplicatePriceRow implements Check<FormulaCell> {

  private static final CheckInfo INFO =
      new CheckInfo("duplicate-price-row", Severity.WARNING, "An item has two prices");

  private static final Pattern PRICE = Pattern.compile(
      "(?<!\\p{L})(prices?|costs?|rates?|each|amount)(?!\\p{L})|\\$", Pattern.CASE_INSENSITIVE);

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(FormulaCell cell) {
    return cell.calls("VLOOKUP", "XLOOKUP", "MATCH")
        .flatMap(call -> twice(cell, call))
        .limit(1);
  }

  private static Stream<Finding> twice(FormulaCell cell, Node.Call call) {
    if (call.arguments().size() < 2 || !isExact(cell, call)) {
      return Stream.empty();
    }
    Value key = cell.book().reckoning().evaluate(call.arguments().get(0), cell.at());
    Optional<Cells> table = cell.cells(call.arguments().get(1));
    if (table.isEmpty() || !(key instanceof Value.Text text) || text.value().isEmpty()) {
      return Stream.empty();
    }
    List<Address> rows = table
        .get()
        .each()
        .filter(at -> at.ref().column() == table.get().block().first().column())
        .filter(at -> cell.book().value(at) instanceof Value.Text there
            && there.value().equalsIgnoreCase(text.value()))
        .toList();
    return rows.size() > 1 ? differing(cell, rows) : Stream.empty();
  }

  private static boolean isExact(FormulaCell cell, Node.Call call) {
    int last = call.function().equals("VLOOKUP") ? 3 : 2;
    if (call.function().equals("XLOOKUP")) {
      return true;
    }
    if (call.arguments().size() <= last) {
      return false;
    }
    Value way = cell.book().reckoning().evaluate(call.arguments().get(last), cell.at());
    return way.equals(new Value.Truth(false)) || way.equals(new Value.Number(0));
  }

  /** Rows of one key that differ in a number; rows told apart by another text, such as a unit, are two items. */
  private static Stream<Finding> differing(FormulaCell cell, List<Address> rows) {
    Address one = rows.get(0);
    Address other = rows.get(1);
    boolean texts = false;
    Optional<Address> number = Optional.empty();
    for (int right = 1; right <= 8; right++) {
      Address a = new Address(one.sheet(), one.ref().plus(0, right));
      Address b = new Address(other.sheet(), other.ref().plus(0, right));
      boolean differ = !Shown.same(cell.book().value(a), cell.book().value(b));
      texts |= differ
          && cell.book().value(a) instanceof Value.Text
          && cell.book().value(b) instanceof Value.Text;
      if (differ
          && number.isEmpty()
          && cell.book().value(b) instanceof Value.Number
          && isPrice(cell, b)) {
        number = Optional.of(b);
      }
    }
    return texts ? Stream.empty() : number.stream().map(at -> says(cell, one, other, at));
  }

  private static boolean isPrice(FormulaCell cell, Address at) {
    String heading = cell.book().tab(at.sheet()).headings(at.ref());
    return PRICE.matcher(heading).find();
  }

  private static Finding says(FormulaCell cell, Address one, Address other, Address price) {
    Address first =
        new Address(one.sheet(), new Ref(one.ref().row(), price.ref().column()));
    String says = "is a second price, " + Shown.of(cell.book().value(price)) + ", for "
        + Shown.of(cell.book().value(other)) + "; the lookup at " + cell.at() + " takes the first, "
        + Shown.of(cell.book().value(first)) + " at " + first + "; keep the one that holds";
    return Says.about(INFO, cell.book(), price, says);
  }
}
