package squaresheet.job;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import squaresheet.courses.EaveWander;
import squaresheet.courses.LayoutSettings;
import squaresheet.courses.LayoutSettings.Counting;
import squaresheet.courses.LayoutSettings.Hand;
import squaresheet.courses.LayoutSettings.Joints;
import squaresheet.courses.LayoutSettings.Overhang;
import squaresheet.courses.LayoutSettings.Reuse;
import squaresheet.courses.LayoutSettings.Spacing;
import squaresheet.courses.LayoutSettings.Starting;
import squaresheet.finding.Read;
import squaresheet.formula.Value;
import squaresheet.takeoff.Rule;
import squaresheet.units.Graduation;
import squaresheet.units.Length;

/** Turns the settings of a job that speak of the layout into the foreman's settings. */
final class LayoutChoices {

  private static final LayoutSettings USUAL = LayoutSettings.standard();

  /** So near a whole number of steps is that number, as in the rulebook's rule of the line interval. */
  private static final double SAME = 1e-9;

  private final JobInput input;

  LayoutChoices(JobInput input) {
    this.input = input;
  }

  /** The foreman's settings; first pieces that cannot be read are said. */
  Read<LayoutSettings> read() {
    Read<List<Length>> pieces = new FirstPieces(input.card()).read(text("stagger_pattern"));
    LayoutSettings settings = new LayoutSettings(
        overhang(), spacing(), joints(pieces.value().orElse(List.of())), starting(), counting());
    return Read.of(settings, pieces.findings());
  }

  private Overhang overhang() {
    Overhang usual = USUAL.overhang();
    return new Overhang(
        length("shingle_overhang", usual.eave()),
        length("rake_overhang", usual.rake()),
        length("valley_lap", usual.valley()),
        new EaveWander.Limits(
            length("least_overhang", usual.limits().least()),
            length("most_overhang", usual.limits().most())));
  }

  private Spacing spacing() {
    Spacing usual = USUAL.spacing();
    Graduation tape = input.card().isMetric() ? Graduation.MILLIMETRE : Graduation.SIXTEENTH;
    int every =
        number("courses_per_line").map(Double::intValue).orElse(USUAL.spacing().everyCourses());
    return new Spacing(
        every,
        wanted(),
        interval(every, tape),
        step(tape),
        tape,
        length("taper_shows", usual.taperShows()));
  }

  /** The exposure typed; empty for all that the product allows. */
  private Optional<Length> wanted() {
    return Optional.of(length("wanted_exposure", Length.ZERO)).filter(Length::isPositive);
  }

  /** The line interval that the rulebook comes to, where the step typed is no mark of a tape. */
  private Optional<Length> interval(int every, Graduation tape) {
    double step = number("tape_step").orElse(0.0);
    boolean isMark = Arrays.stream(Graduation.values())
        .filter(mark -> mark.isImperial() == tape.isImperial())
        .anyMatch(mark -> mark.mark().equals(Length.nearestInches(step)));
    if (isMark) {
      return Optional.empty();
    }
    return input
        .selection()
        .shingle()
        .map(shingle -> every * wanted().orElseGet(shingle::exposure).toInches())
        .map(spacing -> step == 0 ? spacing : Math.floor(spacing / step * (1 + SAME)) * step)
        .map(Length::nearestInches)
        .filter(Length::isPositive);
  }

  /** The coarsest mark that is no wider than the step typed; the tape's own mark where none was. */
  private Graduation step(Graduation tape) {
    Length typed = length("tape_step", tape.mark());
    return Arrays.stream(Graduation.values())
        .filter(mark -> mark.isImperial() == tape.isImperial())
        .filter(mark -> mark.mark().compareTo(typed) <= 0)
        .max(Comparator.comparing(Graduation::mark))
        .orElse(tape);
  }

  private Joints joints(List<Length> pieces) {
    Hand hand = is("lay_from", "right") ? Hand.RIGHT : Hand.LEFT;
    return new Joints(
        pieces,
        is("stagger_pattern", "search"),
        length("next_but_one", Length.ZERO),
        length("sliver_width", USUAL.joints().sliver()),
        hand);
  }

  private Starting starting() {
    Starting usual = USUAL.starting();
    return new Starting(
        length("starter_first_cut", usual.firstCut()),
        !is("starter_rakes", "no"),
        length("starter_joint_distance", usual.minimum()),
        length("nail_clear", usual.nailClear()));
  }

  private Counting counting() {
    Reuse reuse =
        is("cut_reuse", "none") ? Reuse.NONE : is("cut_reuse", "roof") ? Reuse.ROOF : Reuse.PLANE;
    return new Counting(reuse, length("cap_cover", Length.ZERO), is("exposure_choice", "as lined"));
  }

  /** A length setting, which the rulebook keeps in inches. */
  private Length length(String setting, Length usual) {
    return number(setting).map(Length::nearestInches).orElse(usual);
  }

  private Optional<Double> number(String setting) {
    return value(setting)
        .flatMap(it ->
            it instanceof Value.Number number ? Optional.of(number.value()) : Optional.empty());
  }

  private boolean is(String setting, String word) {
    return text(setting).equals(word);
  }

  /** What was said of a setting, without capitals. */
  private String text(String setting) {
    return value(setting)
        .flatMap(it -> it instanceof Value.Text said ? Optional.of(said.value()) : Optional.empty())
        .map(said -> said.strip().toLowerCase(Locale.ROOT))
        .orElse("");
  }

  /** What counts for a setting; empty where the company's rules have none of that name. */
  private Optional<Value> value(String setting) {
    return Optional.ofNullable(input.settings().get(setting))
        .or(() -> input.company().rulebook().rule(setting).map(Rule::usual));
  }
}
