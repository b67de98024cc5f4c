package squaresheet.takeoff;

import java.util.List;
import java.util.Optional;
import squaresheet.formula.Scope;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.takeoff.Rule.Per;

/**
 * What names stand for in one row: a job name for its value, a name of the row's own table for the value in that row, a name
 * of another table for its whole column. Rules have no cells.
 */
final class RowScope implements Scope {

  private final Values values;
  private final Per per;
  private final int row;

  RowScope(Values values, Per per, int row) {
    this.values = values;
    this.per = per;
    this.row = row;
  }

  @Override
  public Value cell(Address cell) {
    return new Value.Fault("#REF!");
  }

  @Override
  public Value name(String name) {
    Optional<Rule> rule = values.rule(name);
    if (rule.isEmpty()) {
      return new Value.Fault("#NAME?");
    }
    if (rule.get().per() == Per.JOB) {
      return values.at(rule.get(), 0);
    }
    return rule.get().per() == per ? values.at(rule.get(), row) : column(rule.get());
  }

  private Value column(Rule rule) {
    List<Value> column = values.column(rule.name());
    return Value.Matrix.column(column.isEmpty() ? List.of(new Value.Blank()) : column);
  }
}
