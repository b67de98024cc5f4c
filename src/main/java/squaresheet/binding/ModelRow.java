package squaresheet.binding;

import java.util.Map;
import java.util.function.Predicate;

/**
 * An item of the model, as a row of a table may hold it.
 *
 * @param name what it is called
 * @param kind of which kind it is; rows of the same kind have like formulas
 * @param isOn whether the row of this name is its own
 * @param values by property
 * @param ifNew what only a row that was empty gets
 */
record ModelRow(
    String name,
    String kind,
    Predicate<String> isOn,
    Map<String, Known> values,
    Map<String, Known> ifNew) {

  ModelRow {
    values = Map.copyOf(values);
    ifNew = Map.copyOf(ifNew);
  }

  /** An item that is known by its name, in any letter case. */
  static ModelRow named(String name, String kind, Map<String, Known> values) {
    String plain = Tokens.plain(name);
    return new ModelRow(name, kind, text -> Tokens.plain(text).equals(plain), values, Map.of());
  }

  ModelRow ifNew(Map<String, Known> more) {
    return new ModelRow(name, kind, isOn, values, more);
  }
}
