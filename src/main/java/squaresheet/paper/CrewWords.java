package squaresheet.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import squaresheet.courses.CoursePlan;
import squaresheet.courses.EaveStarter;
import squaresheet.courses.LayoutSettings;
import squaresheet.courses.Lines;
import squaresheet.courses.RoofLayout;
import squaresheet.courses.StarterJoints;
import squaresheet.product.Shingle;
import squaresheet.roof.EdgeKind;
import squaresheet.units.Direction;
import squaresheet.units.Graduation;
import squaresheet.units.Length;
import squaresheet.units.Pitch;

/** The words of the crew sheet. */
final class CrewWords {

  /** Planes listed by name; a roof of more is read from the plane sheets. */
  private static final int MOST_PLANES = 8;

  /** So many cut pieces of one eave are told on the crew sheet itself. */
  private static final int MOST_CUTS = 4;

  /** Slopes above this are steep. Source: OSHA 29 CFR 1926.500(b). */
  private static final Pitch STEEP = Pitch.of(4);

  /** A taper of less than one sixteenth of an inch a line is not told. */
  private static final int TAPE_MARKS = 16;

  private final RoofLayout layout;
  private final CrewSheet.Deck deck;
  private final LayoutSettings settings;
  private final Graduation tape;

  CrewWords(RoofLayout layout, CrewSheet.Deck deck) {
    this.layout = layout;
    this.deck = deck;
    this.settings = layout.settings();
    this.tape = settings.spacing().tape();
  }

  List<CrewSheet.Section> sections() {
    return List.of(
        new CrewSheet.Section("Stay on the roof", staying()),
        new CrewSheet.Section("Order of work: all of one before the next", order()),
        new CrewSheet.Section("Lines, up the slope", lines()),
        new CrewSheet.Section("First piece of each course", firstPieces()),
        new CrewSheet.Section("Starter", starter()),
        new CrewSheet.Section("Nails", nails()),
        new CrewSheet.Section("Over the edge", overhang()),
        new CrewSheet.Section("Courses on each plane", planes()));
  }

  private List<String> staying() {
    List<String> lines = new ArrayList<>();
    boolean steep =
        layout.plans().stream().anyMatch(plan -> plan.plane().pitch().compareTo(STEEP) > 0);
    lines.add("Fall protection from " + high("6 ft", "1.8 m") + " up."
        + (steep ? " This roof is steep: over 4:12." : ""));
    lines.add("Ladder: foot out a quarter of its length, " + high("3 ft", "0.9 m")
        + " above the landing, tied.");
    lines.add("Keep clear of power lines. Spread bundles over the deck. Water and shade.");
    if (deck.layersTornOff() > 0) {
      lines.add("Old material may contain asbestos: have it tested before tear-off.");
    }
    lines.add("The product's printed instructions and local code come first.");
    return lines;
  }

  private List<String> order() {
    List<String> steps = new ArrayList<>(List.of(
        "Eave metal, then ice barrier and underlayment, then rake metal." + doubled(),
        "Snap every line."));
    steps.add("Starter on every eave"
        + (settings.starting().onRakes() && has(EdgeKind.RAKE) ? " and rake." : "."));
    steps.add("First course along the whole eave.");
    steps.add("Courses from line to line, first pieces ahead of the rest.");
    if (has(EdgeKind.SIDEWALL)) {
      steps.add("At walls, step flashing with every course.");
    }
    if (has(EdgeKind.VALLEY)) {
      steps.add("Trim the valleys.");
    }
    steps.add("Cap last.");
    List<String> numbered = new ArrayList<>();
    steps.forEach(step -> numbered.add(numbered.size() + 1 + ". " + step));
    return numbered;
  }

  private String doubled() {
    return deck.doubled().isEmpty()
        ? ""
        : " Underlayment doubled, low slope: " + String.join(", ", deck.doubled()) + ".";
  }

  private boolean has(EdgeKind kind) {
    return layout.plans().stream().anyMatch(plan -> !plan.plane().sides(kind).isEmpty());
  }

  private List<String> lines() {
    List<String> lines = new ArrayList<>();
    if (layout.plans().isEmpty()) {
      return List.of("No plane to lay out.");
    }
    Lines tallest = layout.plans().stream()
        .map(CoursePlan::lines)
        .max(java.util.Comparator.comparingInt(one -> one.marks().get(0).at().size()))
        .orElseThrow();
    lines.add("Starter line: " + show(tallest.starterLine()) + " up from the eave edge.");
    lines.add("First-course line: " + show(tallest.firstCourse()) + " up from the eave edge.");
    lines.add("From that line, every " + Words.courses(layout.interval().courses()) + ": "
        + longestMarks(tallest).show(tape) + ".");
    lines.add("Never more than " + atMost(layout.shingle().exposure()) + " to the weather. Laid at "
        + Words.exposure(layout.interval(), tape) + ".");
    return lines;
  }

  private static Lines.Marks longestMarks(Lines lines) {
    return lines.marks().stream()
        .max(java.util.Comparator.comparing(marks -> marks.station().up()))
        .orElseThrow();
  }

  private List<String> firstPieces() {
    List<String> cuts = new ArrayList<>();
    for (int course = 0; course < layout.stagger().repeat(); course++) {
      Length cut = layout.stagger().firstPiece(course);
      cuts.add((course + 1) + ": " + (cut.equals(layout.stagger().piece()) ? "whole" : show(cut)));
    }
    String hand = settings.joints().from().name().toLowerCase(Locale.ROOT);
    return List.of(
        "From the " + hand + ": " + String.join(",  ", cuts) + ". Then again from 1.",
        "Joints at least " + atLeast(layout.stagger().minimum()) + " from those below.");
  }

  private List<String> starter() {
    List<String> lines = new ArrayList<>();
    lines.add("Begin with a piece cut to " + show(settings.starting().firstCut()) + ".");
    lines.add("Joints at least " + atLeast(settings.starting().minimum())
        + " from those of the first course. Nails "
        + atLeast(settings.starting().nailClear())
        + " clear of a joint below.");
    List<String> instead = layout.plans().stream()
        .filter(plan -> !plan.isTooFlat())
        .flatMap(plan -> plan.starters().stream()
            .filter(eave -> eave.joints().firstClash().isPresent())
            .map(eave -> clash(plan, eave)))
        .toList();
    if (instead.size() > MOST_PLANES) {
      lines.add("Joints clash on " + instead.size() + " eaves: begin there as their strips say.");
    } else if (!instead.isEmpty()) {
      lines.add("Begin otherwise on " + String.join("; ", instead) + ".");
    }
    return lines;
  }

  private String clash(CoursePlan plan, EaveStarter eave) {
    String where =
        plan.plane().id() + (plan.starters().size() > 1 ? ", " + Words.eave(plan, eave) : "");
    return where + ": "
        + eave.joints()
            .cuts(tape.mark(), settings.joints().sliver())
            .map(this::cuts)
            .orElse("no cut pieces keep the joints clear, ask before laying");
  }

  private String cuts(List<StarterJoints.Cut> cuts) {
    return cuts.size() > MOST_CUTS
        ? cuts.size() + " pieces to cut, as its strip says"
        : Words.cuts(cuts, tape);
  }

  private List<String> nails() {
    Shingle.Nailing nails = layout.shingle().nails();
    String highWind =
        nails.highWind() > nails.usual() ? ", " + nails.highWind() + " in high wind" : "";
    return List.of(
        nails.usual() + " a shingle" + highWind + ", on the maker's nail line.",
        "Straight, heads flush, into sound deck. None in a joint.");
  }

  private List<String> overhang() {
    LayoutSettings.Overhang past = settings.overhang();
    List<String> lines = new ArrayList<>();
    lines.add("Eave: " + show(past.eave()) + ", nowhere under "
        + atLeast(past.limits().least()) + " or over " + atMost(past.limits().most()) + ".");
    if (has(EdgeKind.RAKE)) {
      lines.add("Rakes: " + show(past.rake()) + ".");
    }
    if (has(EdgeKind.VALLEY)) {
      lines.add(
          past.valley().isZero()
              ? "Valleys: cut at the line."
              : "Valleys: " + show(past.valley()) + " past the line.");
    }
    return lines;
  }

  private List<String> planes() {
    List<String> lines = new ArrayList<>();
    boolean many = layout.plans().size() > MOST_PLANES;
    lines.add(
        many
            ? layout.plans().size() + " planes: see the plane sheets."
            : layout.plans().stream().map(this::plane).collect(Collectors.joining(";  ")) + ".");
    String tooFlat = names(CoursePlan::isTooFlat);
    if (many && !tooFlat.isEmpty()) {
      lines.add("TOO FLAT, NO SHINGLES: " + tooFlat + ".");
    }
    String crooked = names(plan -> plan.lines().taperPerLine().inches() * TAPE_MARKS >= 1);
    if (!crooked.isEmpty()) {
      lines.add("Ends differ on " + crooked + ": use the marks of its own sheet.");
    }
    return lines;
  }

  private String names(Predicate<CoursePlan> which) {
    return layout.plans().stream()
        .filter(which)
        .map(plan -> plan.plane().id())
        .collect(Collectors.joining(", "));
  }

  private String plane(CoursePlan plan) {
    if (plan.isTooFlat()) {
      return plan.plane().id() + ": TOO FLAT, NO SHINGLES";
    }
    return plan.plane().id() + ": " + Words.counted(plan.courses()) + ", last shows "
        + plan.reach().lastCourse().show(tape);
  }

  private String high(String feet, String metres) {
    return tape.isImperial() ? feet : metres;
  }

  /** On a mark of the tape that is not less. */
  private String atLeast(Length length) {
    return show(length.roundedTo(tape, Direction.UP));
  }

  /** On a mark of the tape that is not more. */
  private String atMost(Length length) {
    return show(length.roundedTo(tape, Direction.DOWN));
  }

  private String show(Length length) {
    return length.showOnTape(tape);
  }
}
