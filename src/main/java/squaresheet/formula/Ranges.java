package squaresheet.formula;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import squaresheet.sheet.Address;

/**
 * What quantities may be when tape readings may be off by their tolerance: the same formulas, evaluated over intervals one
 * after the other. Quantities and readings go by name, or by the spelling of their cell, {@code Planes!C7}.
 */
public final class Ranges {

  /**
   * A reading that alone, off by its tolerance, changes a quantity.
   *
   * @param reading its name or cell
   * @param range what the quantity may be when only this reading is off
   * @param change how far that takes it from what it is now, at most
   */
  public record Deciding(String reading, Interval range, double change) {}

  private final Map<String, Formula> formulas;
  private final Function<String, Scope> scopes;
  private final Map<String, Interval> readings;
  private final Map<String, Interval> ranges;
  private final Set<String> lost = new HashSet<>();
  /** All quantities where one reading alone is off. */
  private final Map<String, Map<String, Interval>> alone = new LinkedHashMap<>();

  private Ranges(
      Map<String, Formula> formulas,
      Function<String, Scope> scopes,
      Map<String, Interval> readings) {
    this.formulas = formulas;
    this.scopes = scopes;
    this.readings = new LinkedHashMap<>(readings);
    this.ranges = computed(formulas, readings, lost);
  }

  /** Over the cells of a workbook: what its formulas may come to when typed cells may lie in these intervals. */
  public static Ranges of(Calculation calculation, Map<Address, Interval> readings) {
    Map<String, Formula> formulas = new LinkedHashMap<>();
    Map<String, Scope> scopes = new LinkedHashMap<>();
    calculation.order().forEach(cell -> {
      formulas.put(cell.toString(), calculation.formulas().get(cell));
      scopes.put(cell.toString(), calculation.scope(cell));
    });
    Map<String, Interval> spelled = new LinkedHashMap<>();
    readings.forEach((cell, interval) -> spelled.put(cell.toString(), interval));
    return new Ranges(formulas, scopes::get, spelled);
  }

  /**
   * Over named formulas, each after those it needs.
   *
   * @param scope the values as they are now, of the formulas' names too
   */
  public static Ranges of(
      Map<String, Formula> inOrder, Scope scope, Map<String, Interval> readings) {
    return new Ranges(new LinkedHashMap<>(inOrder), name -> scope, readings);
  }

  /** The values where only some readings are off. A formula that cannot be followed keeps its value unless a reading goes in. */
  private Map<String, Interval> computed(
      Map<String, Formula> formulas, Map<String, Interval> off, Set<String> lost) {
    Map<String, Interval> found = new LinkedHashMap<>(off);
    Function<String, Optional<Interval>> known = key -> {
      if (lost.contains(key)) {
        throw new IllegalArgumentException("no interval for " + key);
      }
      return Optional.ofNullable(found.get(key));
    };
    formulas.forEach((name, formula) -> {
      Scope scope = scopes.apply(name);
      if (IntervalWalk.isTouched(formula, scope, known)) {
        IntervalWalk.of(formula, scope, known)
            .ifPresentOrElse(range -> found.put(name, range), () -> lost.add(name));
      }
    });
    found.values().removeIf(Interval::isExact);
    return found;
  }

  /** With one reading off, no more formulas move than with all. */
  private Map<String, Interval> alone(String reading, Interval interval) {
    Map<String, Formula> moving = new LinkedHashMap<>(formulas);
    moving.keySet().removeIf(name -> !ranges.containsKey(name) && !lost.contains(name));
    return computed(moving, Map.of(reading, interval), new HashSet<>());
  }

  /** Whether the formulas behind a quantity could be followed over intervals; where not, it has no range, whatever the tape. */
  public boolean isFollowed(String quantity) {
    return !lost.contains(quantity);
  }

  /** What a quantity may be; empty where no reading goes in, or where its formula cannot be followed over intervals. */
  public Optional<Interval> range(String quantity) {
    return Optional.ofNullable(ranges.get(quantity));
  }

  /** Every quantity that a reading goes into, in the order of computing. */
  public Map<String, Interval> all() {
    return java.util.Collections.unmodifiableMap(ranges);
  }

  /**
   * The readings that alone change a quantity by a pack, the one that changes it most first.
   *
   * @param now what the quantity is with all readings as they are
   * @param pack how much of the quantity is worth a mention: 1 where it counts packs
   */
  public List<Deciding> deciding(String quantity, double now, double pack) {
    List<Deciding> deciding = new ArrayList<>();
    readings.forEach((reading, interval) -> {
      Interval range =
          alone.computeIfAbsent(reading, one -> alone(one, interval)).get(quantity);
      if (range != null) {
        double change = Math.max(range.high() - now, now - range.low());
        if (change >= pack) {
          deciding.add(new Deciding(reading, range, change));
        }
      }
    });
    deciding.sort(
        Comparator.comparingDouble(Deciding::change).reversed().thenComparing(Deciding::reading));
    return List.copyOf(deciding);
  }
}
