package squaresheet.verify;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.formula.Calculation;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.sheet.Edit;
import squaresheet.sheet.Workbook;

/**
 * What puts the wrong cells of a workbook right, as far as that is sure: the formula where one was typed over, the value that
 * two sources agree on. Every change is tried first; where the pass still speaks of the cell afterwards, or speaks of
 * anything new, it is taken back. What is in doubt is proposed to a person.
 */
public final class Corrections {

  private final Function<Workbook, Verdict> pass;
  private final Predicate<Address> taken;
  private final Workbook original;
  private final Map<Address, Change> changes = new LinkedHashMap<>();
  private final Map<String, String> failed = new HashMap<>();
  private final List<Edit> edits = new ArrayList<>();
  private Outcome outcome;
  private Verdict verdict;
  private Book current;

  private Corrections(Workbook book, Function<Workbook, Verdict> pass, Predicate<Address> taken) {
    this.pass = pass;
    this.taken = taken;
    original = book;
    verdict = pass.apply(book);
    current = Book.of(verdict.file(), Marks.unmarked(book));
    outcome = new Outcome(current);
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
   * A change that is left to a person.
   *
   * @param change what it would be
   * @param why what speaks against making it without asking
   * @param isNeeded whether the cell is wrong today
   */
  public record Left(Change change, String why, boolean isNeeded) {

    /** For people: the change, then why it is not made. */
    @Override
    public String toString() {
      return change + ": " + why;
    }
  }

  /**
   * Looks for what puts a workbook right.
   *
   * @param pass the verify pass that fits the workbook
   * @param taken the cells in which a person wants what is proposed, whatever is in doubt about it
   */
  public static Corrections of(
      Workbook book, Function<Workbook, Verdict> pass, Predicate<Address> taken) {
    Corrections corrections = new Corrections(book, pass, taken);
    while (corrections.take(corrections.proposals(corrections::isTaken))) {
      // what a person takes may bring more to light
    }
    corrections.outcome = new Outcome(corrections.current);
    while (corrections.take(corrections.sure())) {
      // as may what is sure
    }
    return corrections;
  }

  /** The changes, one for each cell. */
  public List<Change> changes() {
    return List.copyOf(changes.values());
  }

  /** What could be changed and is left to a person. */
  public List<Left> left() {
    List<Left> left = new ArrayList<>();
    for (Proposal proposal : proposals(it -> true)) {
      String why = Optional.ofNullable(failed.get(proposal.key()))
          .or(proposal::doubt)
          .or(() -> outcome.much(current, values(proposal)))
          .orElse("together with others it would change the total by more than a quarter");
      Workbook then = settled(List.of(proposal));
      proposal
          .cells()
          .forEach(cell -> left.add(new Left(
              proposal.change(current.cell(cell), then.cell(cell), cell),
              why,
              proposal.isWrong())));
    }
    return left;
  }

  /** All edits, with every formula's value worked out anew; empty where nothing is put right. */
  public List<Edit> edits() {
    return edits.isEmpty() ? List.of() : List.copyOf(Calculation.settled(original, edits));
  }

  /** What the pass says once that is done. */
  public Verdict verdict() {
    return verdict;
  }

  /** What the pass says of a file after it was changed that it did not say of the workbook with these changes made. */
  public List<Finding> isNewIn(Verdict other) {
    Set<String> before = keys(verdict);
    return other.findings().stream()
        .filter(it -> !before.contains(Proposal.key(it)))
        .toList();
  }

  private List<Proposal> proposals(Predicate<Proposal> which) {
    return Proposal.of(current, verdict)
        .filter(it -> it.cells().stream().noneMatch(changes::containsKey))
        .filter(which)
        .toList();
  }

  private boolean isTaken(Proposal proposal) {
    return !failed.containsKey(proposal.key()) && proposal.cells().stream().anyMatch(taken);
  }

  /** Those that nothing speaks against, not even what all of them together do to the total. */
  private List<Proposal> sure() {
    List<Proposal> sure = proposals(it -> it.doubt().isEmpty()
        && !failed.containsKey(it.key())
        && outcome.much(current, values(it)).isEmpty());
    boolean much =
        !sure.isEmpty() && outcome.much(Book.of(verdict.file(), settled(sure))).isPresent();
    return much
        ? sure.stream().filter(it -> !outcome.isMoved(current, values(it))).toList()
        : sure;
  }

  private Map<Address, Value> values(Proposal proposal) {
    return Proposal.isStale(proposal.finding())
        ? Map.of()
        : current.reckoning().values(proposal.finding().fix());
  }

  /** Makes these changes, or as many of them as are right; whether that was any. */
  private boolean take(List<Proposal> proposals) {
    if (proposals.isEmpty()) {
      return false;
    }
    Optional<Verdict> then = right(proposals);
    if (then.isPresent()) {
      made(proposals, then.get());
      return true;
    }
    if (proposals.size() == 1) {
      return false;
    }
    int half = proposals.size() / 2;
    boolean some = take(proposals.subList(0, half));
    return take(proposals.subList(half, proposals.size())) || some;
  }

  /** The workbook with these changes and the values that follow. */
  private Workbook settled(List<Proposal> proposals) {
    List<Edit> made = proposals.stream().flatMap(it -> it.edits().stream()).toList();
    Workbook now = current.workbook();
    return now.after(Calculation.settled(now, made));
  }

  /** What the pass says with these; nothing where it says more than before, or the same, or the total is not explained. */
  private Optional<Verdict> right(List<Proposal> proposals) {
    Workbook changed = settled(proposals);
    Verdict then = pass.apply(changed);
    Set<String> allowed = allowed(proposals);
    Map<Address, Severity> known = known(proposals);
    Optional<Finding> wrong = then.said().stream()
        .filter(it -> !allowed.contains(Proposal.key(it)) && !Proposal.isRuleMissing(it))
        .filter(it -> Folding.cell(it)
            .map(known::get)
            .filter(weight -> weight.compareTo(it.info().severity()) >= 0)
            .isEmpty())
        .findFirst();
    boolean explained = outcome.isExplained(
        current,
        Book.of(then.file(), changed),
        proposals.stream().map(this::values).toList());
    if (proposals.size() == 1 && (wrong.isPresent() || !explained)) {
      failed.put(
          proposals.get(0).key(),
          wrong
              .map(it -> "with it verify would say " + it.info().id() + " at " + it.where())
              .orElse("it moves the total by more than it is worth"));
    }
    return wrong.isEmpty() && explained ? Optional.of(then) : Optional.empty();
  }

  /** What the pass may go on saying: all that it says now, but for errors in the cells that are put right. */
  private Set<String> allowed(List<Proposal> proposals) {
    Set<String> allowed = keys(verdict);
    proposals.forEach(it -> allowed.remove(it.key()));
    Set<Address> touched =
        proposals.stream().flatMap(it -> it.cells().stream()).collect(Collectors.toSet());
    verdict.said().stream()
        .filter(it -> it.isError() && Folding.cell(it).filter(touched::contains).isPresent())
        .forEach(it -> allowed.remove(Proposal.key(it)));
    return allowed;
  }

  /** The other cells of which something is said, and how grave: that more checks say as much then is nothing new. */
  private Map<Address, Severity> known(List<Proposal> proposals) {
    Map<Address, Severity> known = new HashMap<>();
    verdict.said().forEach(it -> Folding.cell(it)
        .ifPresent(cell -> known.merge(
            cell, it.info().severity(), (one, other) -> one.compareTo(other) >= 0 ? one : other)));
    proposals.forEach(it -> it.cells().forEach(known::remove));
    return known;
  }

  private static Set<String> keys(Verdict verdict) {
    Set<String> keys = new HashSet<>();
    verdict.said().forEach(finding -> keys.add(Proposal.key(finding)));
    verdict.findings().forEach(finding -> keys.add(Proposal.key(finding)));
    return keys;
  }

  private void made(List<Proposal> proposals, Verdict then) {
    Workbook changed = settled(proposals);
    for (Proposal proposal : proposals) {
      edits.addAll(proposal.edits());
      proposal.cells().stream()
          .map(cell -> proposal.change(original.cell(cell), changed.cell(cell), cell))
          .filter(change -> !change.before().equals(change.after()))
          .forEach(change -> changes.put(change.cell(), change));
    }
    verdict = then;
    current = Book.of(then.file(), changed);
  }
}
