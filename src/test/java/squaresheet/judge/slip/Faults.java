package squaresheet.judge.slip;

import java.util.ArrayList;
import java.util.Comparator;
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
          FormulaFaults.all(),
          TypedFaults.all(),
          StructureFaults.all(),
          RoofFaults.all(),
          MoneyFaults.all(),
          BookFaults.all(),
          OwnFaults.all(),
          LookAlikes.all())
      .flatMap(List::stream)
      .toList();

  /** The ids of the list of slips that no fault here has, and why. */
  private static final Map<String, String> EXCUSED = Map.of(
      "STL-07",
          "one workbook is given at a time, and this shows against the copy of another job only",
      "DOM-19", "no made workbook orders metal panels",
      "OK-01", "the layouts with areas typed have it in every clean workbook",
      "OK-02", "the layouts with one factor for the job have it in every clean workbook",
      "OK-07", "every clean workbook has totals under products",
      "OK-13", "dormered roofs have ridges of one length in clean workbooks with listed edges",
      "OK-19", "every clean workbook has 12, 100 or 24 in its formulas",
      "OK-21", "the layouts with a hidden column of factors have it in every clean workbook",
      "OK-22", "clean workbooks of many seeds have whole feet");

  private Faults() {}

  /** Why no fault has an id of the list of slips, by id. */
  public static Map<String, String> excused() {
    return EXCUSED;
  }

  /** How many kinds there are. */
  public static int kinds() {
    return ALL.size();
  }

  /** Their ids, some of them twice. */
  public static List<String> ids() {
    return ALL.stream().map(Fault::id).toList();
  }

  /** Their numbers in an order that the seed draws; another kind more leaves the others in their order. */
  public static List<Integer> order(String made, long seed) {
    return IntStream.range(0, ALL.size())
        .boxed()
        .sorted(Comparator.comparingLong(at ->
            new Random(31L * (ALL.get(at).label() + "|" + made).hashCode() + seed).nextLong()))
        .toList();
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
      List<Fault.Done> all = new ArrayList<>();
      Set<String> taken = new HashSet<>();
      for (int kind : kinds) {
        Fault fault = ALL.get(kind);
        Optional<Fault.Done> done = fault.put().apply(book);
        if (done.isEmpty() || done.get().cells().stream().anyMatch(taken::contains)) {
          return Optional.empty();
        }
        taken.addAll(done.get().cells());
        slips.add(slip(fault, done.get(), done.get().moves().now(contents)));
        all.add(done.get());
      }
      long moving =
          all.stream().filter(done -> !done.moves().equals(Moves.NONE)).count();
      return moving > 0 && all.size() > 1
          ? Optional.empty()
          : Optional.of(new Pending(made, slips, book.bytes(), all));
    } catch (IllegalArgumentException
        | IllegalStateException
        | org.apache.poi.ss.formula.FormulaParseException e) {
      return Optional.empty(); // the other program refuses such a formula here
    }
  }

  /** A workbook with faults, before it is worked out. */
  public static final class Pending {

    private final MadeBook made;
    private final List<Slip> slips;
    private final byte[] file;
    private final List<Fault.Done> done;

    private Pending(MadeBook made, List<Slip> slips, byte[] file, List<Fault.Done> done) {
      this.made = made;
      this.slips = List.copyOf(slips);
      this.file = file;
      this.done = done;
    }

    /** What was put in. */
    public List<Slip> slips() {
      return slips;
    }

    /** The file with the values of before. */
    public byte[] file() {
      return file.clone();
    }

    /** The same, now that another program has worked it out. */
    public Spoilt calculated(byte[] calculated) {
      byte[] after = last(calculated);
      Moves moves = done.size() == 1 ? done.get(0).moves() : Moves.NONE;
      Map<String, Double> before = moves.now(shown(made, made.file()));
      Map<String, Double> now = shown(made, after);
      double money =
          made.total().map(moves::now).map(at -> more(at, before, now)).orElse(0.0);
      Map<String, Double> packs = new LinkedHashMap<>();
      made.orders().stream().map(moves::now).forEach(at -> packs.put(at, more(at, before, now)));
      packs.values().removeIf(each -> each == 0);
      List<Slip> priced = slips.size() == 1 ? List.of(slips.get(0).worth(money, packs)) : slips;
      Set<String> moved = moved(before, now);
      done.forEach(each -> moved.addAll(each.also()));
      return new Spoilt(made, priced, after, before, moved, moves);
    }

    private byte[] last(byte[] calculated) {
      try (OpenBook book = new OpenBook(made, calculated, new Random(0))) {
        done.forEach(each -> each.last().accept(book));
        return book.bytes();
      }
    }

    private static double more(String at, Map<String, Double> before, Map<String, Double> now) {
      return now.getOrDefault(at, 0.0) - before.getOrDefault(at, 0.0);
    }
  }

  /** What the cells of a workbook in order show, where that is a number. */
  public static Map<String, Double> shown(MadeBook made) {
    return shown(made, made.file());
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
