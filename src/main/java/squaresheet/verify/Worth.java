package squaresheet.verify;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;

/** What a finding is worth: what is ordered and charged now, against what it would be with the cell put right. */
final class Worth {

  private static final int MOST = 3;

  private final Book book;
  private final List<Output> outputs;

  /**
   * A result that leaves the office.
   *
   * @param cell the cell
   * @param name what it is called
   * @param unit what it counts, or empty
   */
  private record Output(Address cell, String name, String unit) {}

  Worth(Book book, Optional<Model> model) {
    this.book = book;
    List<Output> known = new ArrayList<>(model.map(Worth::orders).orElse(List.of()));
    book.named("estimate_total")
        .ifPresent(total -> known.add(
            new Output(total.first(), "Total", Shown.of(currency(book)).replace("'", ""))));
    outputs = known.isEmpty() ? results() : known;
  }

  private static Value currency(Book book) {
    return book.named("terms_currency")
        .map(it -> book.value(it.first()))
        .orElse(new Value.Text(""));
  }

  private static List<Output> orders(Model model) {
    return model.cells().values().stream()
        .filter(it -> !it.rule().orders().isEmpty())
        .map(it -> new Output(it.at(), it.rule().label(), it.rule().unit().toString()))
        .toList();
  }

  /** The formulas that nobody reads and that stand outside of tables: what a workbook is made for. */
  private List<Output> results() {
    return book.formulas().keySet().stream()
        .filter(cell -> !book.links().isRead(cell))
        .filter(cell -> book.tab(cell.sheet()).tableAt(cell.ref()).isEmpty())
        .map(cell -> new Output(cell, book.tab(cell.sheet()).label(cell.ref()), ""))
        .toList();
  }

  /** The finding with what it is worth; without, where the findings before it took all the work that is done for that. */
  Finding of(Finding finding) {
    if (!finding.worth().isEmpty() || finding.info().severity() == Severity.NOTE) {
      return finding;
    }
    try {
      return worked(finding);
    } catch (Looks.Spent spent) {
      return finding;
    }
  }

  private Finding worked(Finding finding) {
    Map<Address, Value> put = book.reckoning().values(finding.fix());
    String worth = put.isEmpty() ? "" : difference(put);
    return worth.isEmpty() ? finding : finding.worth(worth);
  }

  /** What is ordered and charged now, against what it would be with these values put; empty where that is the same. */
  String difference(Map<Address, Value> put) {
    book.looks().spend(book.formulas().size());
    Reckoning right = book.reckoning().putting(put);
    Map<Output, Double> more = new LinkedHashMap<>();
    for (Output output : outputs) {
      double now = book.number(output.cell()).orElse(0);
      double then = Shown.number(right.value(output.cell())).orElse(now);
      if (!Shown.near(new Value.Number(now), new Value.Number(then))) {
        more.put(output, then - now);
      }
    }
    List<String> words = new ArrayList<>();
    more.entrySet().stream()
        .sorted(Comparator.comparingDouble(
            (Map.Entry<Output, Double> entry) -> -Math.abs(entry.getValue())))
        .limit(MOST)
        .forEach(entry -> words.add(words(entry.getKey(), entry.getValue())));
    return String.join(", ", words)
        + (more.size() > MOST ? " and " + (more.size() - MOST) + " more" : "");
  }

  /** What hangs on inputs that cannot be read: what cannot be worked out at all, or else what counts without them. */
  String hanging(Set<Address> inputs, Set<Address> behind) {
    List<Output> all = outputs.stream()
        .filter(output -> behind.contains(output.cell()) || inputs.contains(output.cell()))
        .toList();
    List<Output> broken = all.stream()
        .filter(output -> book.value(output.cell()) instanceof Value.Fault)
        .toList();
    List<Output> told = broken.isEmpty() ? all : broken;
    List<String> names = new ArrayList<>(told.stream()
        .sorted(Comparator.comparing(output -> !output.name().equals("Total")))
        .limit(MOST)
        .map(Output::name)
        .toList());
    String more = told.size() > MOST ? " and " + (told.size() - MOST) + " more" : "";
    String what = broken.isEmpty() ? "hanging on it: " : "cannot be worked out: ";
    return names.isEmpty() ? "" : what + String.join(", ", names) + more;
  }

  private static String plural(String unit, String number) {
    return number.equals("1") || isMoney(unit)
        ? unit
        : unit.endsWith("x") ? unit + "es" : unit + "s";
  }

  private static boolean isMoney(String unit) {
    return unit.matches("[A-Z]{3}");
  }

  private static String words(Output output, double more) {
    double size = Math.abs(more);
    String number =
        isMoney(output.unit()) ? String.format(Locale.ROOT, "%,.2f", size) : Shown.number(size);
    String unit = output.unit().isEmpty() ? "" : " " + plural(output.unit(), number);
    String name = output.name().isEmpty() ? output.cell().toString() : output.name();
    return name + ": " + number + unit + (more > 0 ? " too little" : " too much");
  }
}
