package squaresheet.courses;

import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.product.Cap;
import squaresheet.product.Role;
import squaresheet.product.Selection;
import squaresheet.product.Shingle;
import squaresheet.roof.EdgeKind;
import squaresheet.roof.Roof;
import squaresheet.roof.SharedEdge;
import squaresheet.units.Graduation;
import squaresheet.units.Length;
import squaresheet.units.Ratio;

/** The courses of a whole roof, and what waste really is: the pieces its planes take over their net area. */
public final class RoofLayout {

  private final Pattern pattern;
  private final List<CoursePlan> plans;
  private final Optional<Cap> cap;
  private final List<Length> capped;
  private final List<Finding> findings;

  private RoofLayout(
      Pattern pattern,
      List<CoursePlan> plans,
      Optional<Cap> cap,
      List<Length> capped,
      List<Finding> before) {
    this.pattern = pattern;
    this.plans = List.copyOf(plans);
    this.cap = cap;
    this.capped = List.copyOf(capped);
    this.findings = Stream.of(
            before.stream(),
            pattern.findings().stream(),
            plans.stream().flatMap(plan -> plan.findings().stream()))
        .flatMap(said -> said)
        .toList();
  }

  /**
   * Lays out a roof with the products chosen. Without a shingle there is nothing to lay; without a starter it is taken to
   * be cut from shingles; without a cap none is counted. What is wrong with the settings is said and replaced, and the rest
   * laid out.
   */
  public static Read<RoofLayout> of(Roof roof, Selection chosen, LayoutSettings settings) {
    Optional<Shingle> shingle = chosen.shingle();
    if (shingle.isEmpty()) {
      return Read.nothing(new Finding(
          LayoutFindings.NO_SHINGLE,
          new Where.OfItem("layout", "shingle"),
          "a shingle must be chosen for courses to be laid out, but none is"));
    }
    Pattern pattern = searched(roof, Pattern.of(shingle.get(), chosen.starter(), settings));
    List<Finding> exposure = settings
        .spacing()
        .exposure()
        .map(shown -> chosen.exposureFindings(shown, new Where.OfItem("layout", "exposure")))
        .orElseGet(List::of);
    RoofLayout layout = new RoofLayout(
        pattern,
        roof.planes().stream().map(plane -> CoursePlan.of(plane, pattern)).toList(),
        chosen.of(Role.CAP).map(Cap.class::cast),
        capped(roof),
        exposure);
    return Read.of(layout, layout.findings());
  }

  /** With first pieces looked for on the whole roof, where the settings ask for it. */
  private static Pattern searched(Roof roof, Pattern pattern) {
    if (!pattern.settings().joints().isSearched()) {
      return pattern;
    }
    List<CoursePlan> plans =
        roof.planes().stream().map(plane -> CoursePlan.of(plane, pattern)).toList();
    boolean imperial = pattern.settings().spacing().tape().isImperial();
    Length mark = imperial ? Length.ofInches(1) : Graduation.MILLIMETRE.mark().times(25);
    return pattern.with(StaggerSearch.over(plans, pattern).best(mark));
  }

  /** Every ridge and hip once; one measured on two planes halfway between, rounded up to 1/320 mm. */
  private static List<Length> capped(Roof roof) {
    Stream<Length> shared =
        roof.sharedEdges().stream().filter(edge -> isCapped(edge.kind())).map(RoofLayout::between);
    Stream<Length> alone = roof.sides()
        .filter(side -> isCapped(side.kind()) && roof.sharedBy(side).isEmpty())
        .map(Measure::of);
    return Stream.concat(shared, alone).toList();
  }

  private static boolean isCapped(EdgeKind kind) {
    return kind == EdgeKind.RIDGE || kind == EdgeKind.HIP;
  }

  private static Length between(SharedEdge edge) {
    long both = Measure.of(edge.one()).units() + Measure.of(edge.other()).units();
    return new Length((both + 1) / 2);
  }

  /** The planes, in the order of the roof. */
  public List<CoursePlan> plans() {
    return plans;
  }

  /** The plan of the plane of this name. */
  public Optional<CoursePlan> plan(String plane) {
    return plans.stream().filter(plan -> plan.plane().id().equals(plane)).findFirst();
  }

  /** The settings it was laid out by. */
  public LayoutSettings settings() {
    return pattern.settings();
  }

  /** The shingle. */
  public Shingle shingle() {
    return pattern.shingle();
  }

  /** The interval between snapped lines, the same on every plane. */
  public Interval interval() {
    return pattern.interval();
  }

  /** The stagger, the same on every plane. */
  public Stagger stagger() {
    return pattern.stagger();
  }

  /** The shingles of all planes, by the reuse that the settings ask for. */
  public Pieces pieces() {
    return pieces(settings().counting().reuse());
  }

  /** The shingles of all planes. */
  public Pieces pieces(LayoutSettings.Reuse reuse) {
    return switch (reuse) {
      case NONE -> sum(plans.stream().map(CoursePlan::piecesWithoutReuse));
      case PLANE -> sum(plans.stream().map(plan -> plan.tally().paired()));
      case ROOF ->
        together(plans.stream().map(CoursePlan::tally), shingle().length()).paired();
    };
  }

  private static Pieces sum(Stream<Pieces> pieces) {
    return pieces.reduce(Pieces.NONE, Pieces::plus);
  }

  private static Tally together(Stream<Tally> tallies, Length piece) {
    Tally all = new Tally(piece.units(), 0);
    tallies.forEach(all::add);
    return all;
  }

  /** Simulated waste, by the reuse that the settings ask for: the value that a waste rule may use. */
  public Ratio simulatedWaste() {
    return waste(settings().counting().reuse());
  }

  /** What the pieces cover over the net area of the roof, less one. */
  public Ratio waste(LayoutSettings.Reuse reuse) {
    BigInteger net =
        plans.stream().map(CoursePlan::doubledNet).reduce(BigInteger.ZERO, BigInteger::add);
    return Waste.ofArea(pieces(reuse).used(), pattern.cover(), shingle().length(), net);
  }

  /** Pieces narrower than a sliver that end at a rake. */
  public long slivers() {
    return plans.stream().mapToLong(CoursePlan::slivers).sum();
  }

  /** The starter of all planes, along eaves and, where set, rakes. */
  public Strip starter() {
    Length run = plans.stream().map(plan -> plan.starter().run()).reduce(Length.ZERO, Length::plus);
    Pieces pieces =
        switch (settings().counting().reuse()) {
          case NONE -> sum(plans.stream().map(plan -> plan.starterTally().unpaired()));
          case PLANE -> sum(plans.stream().map(plan -> plan.starterTally().paired()));
          case ROOF ->
            together(plans.stream().map(CoursePlan::starterTally), pattern.starterLength())
                .paired();
        };
    return new Strip(pieces, pattern.starterLength(), run);
  }

  /** The cap on every ridge and hip, each begun with a whole piece; no pieces where no cap was chosen. */
  public Strip cap() {
    Length run = capped.stream().reduce(Length.ZERO, Length::plus);
    return cap.map(chosen -> new Strip(caps(chosen.exposure()), chosen.exposure(), run))
        .orElseGet(() -> new Strip(Pieces.NONE, Length.ofInches(1), Length.ZERO));
  }

  private Pieces caps(Length exposure) {
    long full =
        capped.stream().mapToLong(edge -> edge.units() / exposure.units()).sum();
    long cut =
        capped.stream().filter(edge -> edge.units() % exposure.units() != 0).count();
    return new Pieces(full, cut, 0);
  }

  /** What there is to say about the settings and about every plane. */
  public List<Finding> findings() {
    return findings;
  }
}
