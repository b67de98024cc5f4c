package squaresheet.judge.slip;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import squaresheet.judge.made.MadeBook;

/** Puts faults into made workbooks, and keeps what is true of each. */
public final class Faults {

  private static final List<Fault> ALL = Stream.of(
          FormulaFaults.all(), TypedFaults.all(), StructureFaults.all())
      .flatMap(List::stream)
      .toList();

  private Faults() {}

  /** How many kinds there are. */
  public static int kinds() {
    return ALL.size();
  }

  /** The number of a slip's kind. */
  public static int kind(Slip slip) {
    return IntStream.range(0, ALL.size())
        .filter(at -> ALL.get(at).id().equals(slip.id()) && ALL.get(at).name().equals(slip.name()))
        .findFirst()
        .orElseThrow();
  }

  /** A workbook with one fault of the kind of that number; nothing where it has no place for one. */
  public static Optional<Pending> one(MadeBook made, int kind, long seed) {
    return several(made, List.of(kind % ALL.size()), seed);
  }

  /** A workbook with a fault of each of these kinds, each at a cell of its own; not yet worked out. */
  public static Optional<Pending> several(MadeBook made, List<Integer> kinds, long seed) {
    try (OpenBook book = new OpenBook(made, made.file(), new Random(seed))) {
      Map<String, String> contents = contents(book);
      List<Slip> slips = new ArrayList<>();
      Set<String> taken = new HashSet<>();
      for (int kind : kinds) {
        Fault fault = ALL.get(kind);
        Optional<Fault.Done> done = fault.put().apply(book);
        if (done.isEmpty() || done.get().cells().stream().anyMatch(taken::contains)) {
          return Optional.empty();
        }
        taken.addAll(done.get().cells());
        slips.add(slip(fault, done.get(), contents));
      }
      return Optional.of(new Pending(made, slips, book.bytes()));
    } catch (IllegalArgumentException
        | IllegalStateException
        | org.apache.poi.ss.formula.FormulaParseException e) {
      return Optional.empty(); // the other program refuses such a formula here
    }
  }

  /**
   * A workbook with faults, before it is worked out.
   *
   * @param made as it was
   * @param slips what was put in
   * @param file the file with the values of before
   */
  @SuppressWarnings("ArrayRecordComponent") // the bytes of a file, never compared
  public record Pending(MadeBook made, List<Slip> slips, byte[] file) {

    /** The same, now that another program has worked it out. */
    public Spoilt calculated(byte[] calculated) {
      Map<String, Double> before = shown(made, made.file());
      Map<String, Double> after = shown(made, calculated);
      double money = made.total()
          .map(at -> after.getOrDefault(at, 0.0) - before.getOrDefault(at, 0.0))
          .orElse(0.0);
      Map<String, Double> packs = new LinkedHashMap<>();
      made.orders()
          .forEach(at -> packs.put(at, after.getOrDefault(at, 0.0) - before.getOrDefault(at, 0.0)));
      packs.values().removeIf(each -> each == 0);
      List<Slip> priced = slips.size() == 1 ? List.of(slips.get(0).worth(money, packs)) : slips;
      return new Spoilt(made, priced, calculated, before, moved(before, after));
    }
  }

  private static Map<String, Double> shown(MadeBook made, byte[] file) {
    try (OpenBook book = new OpenBook(made, file, new Random(0))) {
      return book.shown();
    }
  }

  private static Map<String, String> contents(OpenBook book) {
    Map<String, String> contents = new HashMap<>();
    book.made.cells().forEach(cell -> contents.put(cell.at(), book.content(cell.at())));
    return contents;
  }

  private static Slip slip(Fault fault, Fault.Done done, Map<String, String> contents) {
    Map<String, String> right = new LinkedHashMap<>();
    done.cells().forEach(at -> right.put(at, contents.getOrDefault(at, "")));
    return new Slip(
        fault.id(),
        done.cells(),
        fault.name(),
        right,
        0,
        Map.of(),
        done.identifiable(),
        done.harmless());
  }

  private static Set<String> moved(Map<String, Double> before, Map<String, Double> after) {
    Set<String> moved = new HashSet<>();
    Stream.concat(before.keySet().stream(), after.keySet().stream()).forEach(at -> {
      if (!before.getOrDefault(at, Double.NaN).equals(after.getOrDefault(at, Double.NaN))) {
        moved.add(at);
      }
    });
    return moved;
  }
}
