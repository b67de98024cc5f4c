package squaresheet.verify;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import squaresheet.finding.Finding;
import squaresheet.finding.Fix;
import squaresheet.formula.Formula;
import squaresheet.formula.Node;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.sheet.Cell;
import squaresheet.sheet.Content;
import squaresheet.sheet.Edit;

/**
 * What speaks against putting a finding right without asking a person. A cell is only touched where two sources that know
 * nothing of each other say that it is wrong and agree on what it should be, and where nothing else explains it as well.
 */
final class Doubts {

  /** What names the slip by which a formula was changed, so that its shape may be put back. */
  private static final Set<String> NAMED =
      Set.of("known-slip-in-rule", "rule-typed-over", "rule-typed-over-latent");

  private static final String OLD_WASTE = "simulated-waste-old";

  /** What people write beside a number that is not what a formula would make, and is meant so. */
  private static final Pattern MEANT = Pattern.compile(
      "(?<!\\p{L})(agreed|agreement|minimum|min|maximum|max|at least|at most|lump|flat|sum|contingency|negotiated|quoted?"
          + "|special|adjusted|rounded|approx|about|estimated|say|capped|promised|as per|per contract|trip"
          + "|charges?|fees?|deposit|down payment|tbd|by owner|owner|set|gift|free)(?!\\p{L})",
      Pattern.CASE_INSENSITIVE);

  private static final String MEANT_SO = "the words beside it may mean it so";

  private final Book book;
  private final Map<Address, List<Finding>> said;

  Doubts(Book book, Verdict verdict) {
    this.book = book;
    said = verdict.said().stream()
        .filter(finding -> Folding.cell(finding).isPresent())
        .collect(Collectors.groupingBy(finding -> Folding.cell(finding).orElseThrow()));
  }

  /** The finding with the best remedy that is known for its cell: of a job's own workbook its rule. */
  Finding best(Finding finding) {
    Address cell = Folding.cell(finding).orElseThrow();
    if (Proposal.isStale(finding)) {
      return finding;
    }
    return said.getOrDefault(cell, List.of()).stream()
        .map(Finding::fix)
        .filter(Fix::isRule)
        .findFirst()
        .map(finding::with)
        .or(() -> likeCell(finding, cell))
        .orElseGet(() -> finding.fix().isKnown() ? finding : otherwise(finding, cell));
  }

  /** A finding that knows no remedy, with that of another error at its cell. */
  private Finding otherwise(Finding finding, Address cell) {
    return said.getOrDefault(cell, List.of()).stream()
        .filter(other -> other.isError() && other.fix().isKnown())
        .findFirst()
        .map(other -> finding.with(other.fix()))
        .orElse(finding);
  }

  /** A number that a cell should hold, where a formula close by makes it: that formula. */
  private Optional<Finding> likeCell(Finding finding, Address cell) {
    boolean held =
        Witness.HEADINGS.says(finding.info().id()) && !book.cell(cell).isFormula();
    return held
        ? Shown.number(book.reckoning().values(finding.fix()).get(cell)).stream()
            .boxed()
            .flatMap(wanted -> LikeCell.formula(book, cell, wanted).stream())
            .map(formula -> finding.with(Fix.formula(cell, formula.toFile())))
            .findFirst()
        : Optional.empty();
  }

  /** Why a finding should not be put right without asking; nothing where it is sure. */
  Optional<String> of(Finding finding) {
    if (Proposal.isStale(finding)) {
      return Optional.empty();
    }
    Address cell = Folding.cell(finding).orElseThrow();
    if (finding.info().id().equals(OLD_WASTE)) {
      return Optional.empty();
    }
    return finding.fix().isRule()
        ? ofTheRules(finding, cell)
        : latent(finding).or(() -> disputed(finding)).or(() -> alone(finding, cell));
  }

  /** The rule of the workbook and the model agree: two sources. A formula that somebody wrote is another matter. */
  private Optional<String> ofTheRules(Finding finding, Address cell) {
    boolean named = said.getOrDefault(cell, List.of()).stream()
        .anyMatch(other -> NAMED.contains(other.info().id()));
    return Words.saysMeasured(book.tab(cell.sheet()).wordsAbout(cell.ref()))
        ? Optional.of(MEANT_SO)
        : named ? Optional.empty() : reshaped(finding, cell);
  }

  private static boolean restores(Finding finding) {
    return finding.fix().isKnown() && finding.fix().edits().get(0) instanceof Edit.SetFormula;
  }

  /** A number that is right today is nothing wrong. */
  private static Optional<String> latent(Finding finding) {
    return Proposal.isLatent(finding) ? Optional.of("the number is right today") : Optional.empty();
  }

  /** A cell before it that is itself said to be wrong may be the cause. */
  private Optional<String> disputed(Finding finding) {
    List<Address> cells = Folding.cell(finding).stream().toList();
    return behind(finding.fix(), cells.get(0))
        .filter(at -> !cells.contains(at))
        .filter(at ->
            said.getOrDefault(at, List.of()).stream().anyMatch(other -> !Proposal.isLatent(other)))
        .findFirst()
        .map(at -> "what it is worked out from is in doubt itself, at " + at);
  }

  private Stream<Address> behind(Fix fix, Address cell) {
    List<Address> reads = fix.edits().stream()
        .filter(Edit.SetFormula.class::isInstance)
        .map(Edit.SetFormula.class::cast)
        .flatMap(edit -> book.references().read(Formula.of(edit.formula()).tree(), cell).stream())
        .flatMap(Cells::each)
        .toList();
    List<Address> formulas = reads.stream().filter(book.formulas()::containsKey).toList();
    return Stream.concat(
        reads.stream(),
        book.links().behind(formulas).stream()
            .flatMap(at -> Stream.concat(
                Stream.of(at), book.links().reads(at).stream().flatMap(Cells::each))));
  }

  /** Where only one source says so, or the words beside it, or a slip in another cell, explain it. */
  private Optional<String> alone(Finding finding, Address cell) {
    Value wanted = book.reckoning().values(finding.fix()).get(cell);
    Set<Witness> sources = sources(cell, wanted);
    boolean slip = isSlip(cell, wanted);
    if (slip) {
      sources.add(Witness.SLIP);
    }
    if (restores(finding) && !sources.contains(Witness.OTHER_ROWS)) {
      sources.add(Witness.LIKE_CELL);
    }
    String words = book.tab(cell.sheet()).wordsAbout(cell.ref());
    if (sources.size() < 2 || !restores(finding)) {
      return Optional.of(
          sources.isEmpty()
              ? "only one source says so"
              : "only " + sources.iterator().next() + " say so");
    }
    if (MEANT.matcher(words).find() || Words.saysMeasured(words) || Words.saysCredit(words)) {
      return Optional.of(MEANT_SO);
    }
    return reshaped(finding, cell).or(() -> otherCause(finding, cell, wanted, slip));
  }

  private boolean isSlip(Address cell, Value wanted) {
    return typed(cell).isPresent()
        && wanted instanceof Value.Number number
        && MistypedDigits.is(typed(cell).getAsDouble(), number.value());
  }

  private OptionalDouble typed(Address cell) {
    Cell there = book.cell(cell);
    return !there.isFormula() && there.stored() instanceof Content.Numeric number
        ? OptionalDouble.of(number.value())
        : OptionalDouble.empty();
  }

  /** Who says that the cell should hold exactly this. */
  private Set<Witness> sources(Address cell, Value wanted) {
    Set<Witness> sources = EnumSet.noneOf(Witness.class);
    for (Finding other : said.getOrDefault(cell, List.of())) {
      Value its = book.reckoning().values(other.fix()).get(cell);
      if (its != null && isOne(its, wanted)) {
        Stream.of(Witness.values())
            .filter(witness -> witness.says(other.info().id()))
            .forEach(sources::add);
      }
    }
    return sources;
  }

  /** Whether two sources mean one value: what rests on lengths kept to 1/320 mm differs in the last digits. */
  private static boolean isOne(Value one, Value other) {
    if (one instanceof Value.Number a && other instanceof Value.Number b) {
      return Math.abs(a.value() - b.value()) <= Modelled.KEPT * Math.max(1, Math.abs(b.value()));
    }
    return Shown.same(one, other);
  }

  /** A formula of another shape was written so by somebody; one that reads another cell may be a slip. */
  private Optional<String> reshaped(Finding finding, Address cell) {
    Optional<Formula> there = book.formula(cell);
    Optional<Formula> wanted = finding.fix().edits().stream()
        .filter(Edit.SetFormula.class::isInstance)
        .map(edit -> Formula.of(((Edit.SetFormula) edit).formula()))
        .findFirst();
    boolean alike = there.isEmpty()
        || wanted.isEmpty()
        || Nodes.differences(wanted.get().tree(), there.get().tree()).stream()
            .allMatch(it ->
                it.wanted() instanceof Node.Reference && it.found() instanceof Node.Reference);
    return alike ? Optional.empty() : Optional.of("somebody wrote another formula there");
  }

  private Optional<String> otherCause(Finding finding, Address cell, Value wanted, boolean slip) {
    boolean other = typed(cell).isPresent()
        && wanted instanceof Value.Number
        && MistypedInput.explains(book, cell, typed(cell).getAsDouble(), finding.fix(), slip);
    return other
        ? Optional.of("a number that it is worked out from may be wrong instead")
        : Optional.empty();
  }
}
