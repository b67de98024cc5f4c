package squaresheet.verify;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Calculation;
import squaresheet.sheet.Address;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Workbook;
import squaresheet.takeoff.Rulebook;

/**
 * What puts the wrong cells of a workbook right, as far as that is sure: the formula of the other rows where one was typed
 * over, the number that should be typed. Every change is tried first; one after which the pass still speaks of the cell, or
 * speaks of anything new, is in doubt and left alone.
 */
public final class Corrections {

  /** Putting one cell right may bring to light what it hid; so often is looked again. */
  private static final int ROUNDS = 4;

  /** So many cells are tried one by one where not all together are right. */
  private static final int MOST = 60;

  private final Function<Workbook, Verdict> pass;
  private final Rulebook rulebook;
  private final Map<Address, Change> changes = new LinkedHashMap<>();
  private final Set<String> doubted = new HashSet<>();
  private final List<Edit> edits = new ArrayList<>();
  private final Workbook original;
  private Workbook current;
  private Verdict verdict;

  private Corrections(Workbook book, Rulebook rulebook, Function<Workbook, Verdict> pass) {
    this.pass = pass;
    this.rulebook = rulebook;
    original = book;
    current = book;
    verdict = pass.apply(book);
  }

  /**
   * A cell that is put right.
   *
   * @param cell the cell
   * @param before what stood there, a formula with its equals sign; empty where nothing did
   * @param after what stands there then
   * @param check the check that spoke
   */
  public record Change(Address cell, String before, String after, String check) {

    /** For people: {@code Planes!O6  480 -> =B6*C6  [typed-over-formula]}. */
    @Override
    public String toString() {
      return cell + "  " + (before.isEmpty() ? "(empty)" : before) + " -> "
          + (after.isEmpty() ? "(empty)" : after) + "  [" + check + "]";
    }
  }

  /**
   * Looks for what puts a workbook right.
   *
   * @param rulebook the company's rules, whose formulas a job workbook gets back
   * @param pass the verify pass that fits the workbook
   */
  public static Corrections of(Workbook book, Rulebook rulebook, Function<Workbook, Verdict> pass) {
    Corrections corrections = new Corrections(book, rulebook, pass);
    int round = 0;
    while (round < ROUNDS && corrections.goOn()) {
      round++;
    }
    return corrections;
  }

  /** The changes, one for each cell. */
  public List<Change> changes() {
    return List.copyOf(changes.values());
  }

  /** All edits, with every formula's value worked out anew; empty where nothing is put right. */
  public List<Edit> edits() {
    return edits.isEmpty() ? List.of() : List.copyOf(Calculation.settled(original, edits));
  }

  /** What the pass says once that is done. */
  public Verdict verdict() {
    return verdict;
  }

  /** Puts right what can be; whether that was anything. */
  private boolean goOn() {
    Map<Finding, Remedial> remedies = remedies();
    if (remedies.isEmpty()) {
      return false;
    }
    Verdict together = tried(remedies);
    boolean right = isRight(remedies, together);
    Map<Finding, Remedial> good =
        right ? remedies : remedies.size() > MOST ? Map.of() : alone(remedies);
    good.forEach(this::take);
    remedies.keySet().stream()
        .filter(finding -> !good.containsKey(finding))
        .forEach(finding -> doubted.add(key(finding)));
    current = original.after(Calculation.settled(original, edits));
    verdict = right ? together : pass.apply(current);
    return !good.isEmpty();
  }

  private Map<Finding, Remedial> remedies() {
    Book book = Book.of(verdict.file(), current);
    Map<Finding, Remedial> remedies = new LinkedHashMap<>();
    for (Finding finding : verdict.findings()) {
      boolean latent = finding.info().id().endsWith("-latent");
      if ((finding.isError() || latent) && !doubted.contains(key(finding))) {
        Remedial.of(book, rulebook, finding).ifPresent(it -> remedies.put(finding, it));
      }
    }
    return remedies;
  }

  private static String key(Finding finding) {
    return finding.info().id() + " " + finding.where();
  }

  /** Those that are right each by itself. */
  private Map<Finding, Remedial> alone(Map<Finding, Remedial> remedies) {
    Map<Finding, Remedial> good = new LinkedHashMap<>();
    remedies.forEach((finding, remedy) -> {
      Map<Finding, Remedial> one = Map.of(finding, remedy);
      if (isRight(one, tried(one))) {
        good.put(finding, remedy);
      }
    });
    return good;
  }

  /** What the pass says with these. */
  private Verdict tried(Map<Finding, Remedial> remedies) {
    List<Edit> edited =
        remedies.values().stream().flatMap(it -> it.edits().stream()).toList();
    return pass.apply(current.after(Calculation.settled(current, edited)));
  }

  /** Whether the pass is silent where it spoke, and says nothing that it did not say before. */
  private boolean isRight(Map<Finding, Remedial> remedies, Verdict then) {
    Set<String> before = keys(verdict);
    remedies.keySet().forEach(finding -> before.remove(key(finding)));
    return before.containsAll(keys(then));
  }

  private static Set<String> keys(Verdict verdict) {
    Set<String> keys = new HashSet<>();
    verdict.findings().stream()
        .filter(finding ->
            finding.info().severity() != Severity.NOTE || finding.info().id().endsWith("-latent"))
        .forEach(finding -> keys.add(key(finding)));
    return keys;
  }

  private void take(Finding finding, Remedial remedy) {
    edits.addAll(remedy.edits());
    Workbook then = current.after(Calculation.settled(current, remedy.edits()));
    remedy
        .cells()
        .forEach(cell -> changes.merge(
            cell,
            change(original.cell(cell), then.cell(cell), cell, finding.info().id()),
            (one, later) -> new Change(cell, one.before(), later.after(), one.check())));
  }

  /** Where the formula stays, what it shows changes. */
  private static Change change(Cell before, Cell after, Address cell, String check) {
    boolean same = before.isFormula() && before.formula().equals(after.formula());
    return same
        ? new Change(cell, Shown.of(before.stored()), Shown.of(after.stored()), check)
        : new Change(cell, Shown.cell(before), Shown.cell(after), check);
  }
}
