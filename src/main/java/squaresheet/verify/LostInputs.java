package squaresheet.verify;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import squaresheet.finding.Finding;
import squaresheet.sheet.Address;

/**
 * Inputs that could not be read. The model leaves their rows out, so all that stands behind them disagrees with it: that is
 * one cause, told at the input, with its effects counted.
 */
final class LostInputs {

  /** What a plane, edge or opening that is left out makes the readings of its neighbours say. */
  private static final Set<String> OF_THE_ROOF = Set.of(
      "edge-without-partner",
      "edge-against-slope",
      "shared-edge-disagrees",
      "taped-edge-disagrees",
      "edge-paired-by-length",
      "edge-not-understood",
      "opening-not-understood",
      "opening-not-placed");

  private static final Set<String> OF_THE_PRODUCT = Set.of("layout-without-shingle");

  private static final Pattern NAME = Pattern.compile("[a-z]+(_[a-z]+)+");

  private final Book book;
  private final Optional<Model> model;
  private final Set<Finding> read;
  private final Set<String> consequences;
  /** The inputs that could not be read, each with the rows that are lost by it. */
  private final Map<Finding, Set<Address>> roots = new LinkedHashMap<>();

  private final Map<Finding, Set<Address>> behind = new LinkedHashMap<>();
  private final Map<Finding, Integer> effects = new LinkedHashMap<>();

  /**
   * Takes what was said while the inputs were read.
   *
   * @param read that
   * @param consequences the ids of the checks that hold cells against the model
   */
  LostInputs(Book book, Optional<Model> model, List<Finding> read, Set<String> consequences) {
    this.book = book;
    this.model = model;
    this.read = new HashSet<>(read);
    this.consequences = consequences;
  }

  /** What is said without what only follows from a lost input, each of which says how much that is. */
  List<Finding> fold(List<Finding> said) {
    LostNames names = new LostNames(book);
    List<Finding> left = new ArrayList<>(names.fold(said));
    effects.putAll(names.folded());
    left.stream()
        .filter(this::isLost)
        .sorted(Comparator.comparing(finding -> !isAPlane(finding)))
        .forEach(this::root);
    left.removeIf(
        finding -> read.contains(finding) && !roots.containsKey(finding) && mentions(finding));
    roots.forEach((root, rows) -> behind.put(root, book.links().dependents(rows)));
    left.removeIf(this::follows);
    return left.stream().map(this::counted).toList();
  }

  private boolean isLost(Finding finding) {
    return finding.isError()
        && (read.contains(finding) || LostNames.isCause(finding))
        && Folding.cell(finding).filter(at -> !book.cell(at).isFormula()).isPresent();
  }

  /** Another input that is lost, unless one before it says why. */
  private void root(Finding finding) {
    Optional<Finding> cause = cause(finding);
    Set<Address> rows = roots.computeIfAbsent(cause.orElse(finding), it -> new HashSet<>());
    Address at = Folding.cell(finding).orElseThrow();
    row(at).forEach(rows::add);
    rows.addAll(callers(key(finding)));
    cause.ifPresent(this::count);
  }

  /** The cells of all rows of the roof that call a plane by name. */
  private List<Address> callers(String plane) {
    return Stream.concat(LostNames.CALLERS.stream(), Stream.of("plane_name"))
        .flatMap(name -> book.named(name).stream())
        .flatMap(Cells::each)
        .filter(at -> !plane.isEmpty() && TextPlaces.text(book.cell(at)).equals(plane))
        .flatMap(this::row)
        .toList();
  }

  private Stream<Address> row(Address at) {
    return book.tab(at.sheet())
        .sheet()
        .row(at.ref().row())
        .map(placed -> new Address(at.sheet(), placed.ref()));
  }

  /** Whether it is a plane that is lost by its name. */
  private boolean isAPlane(Finding finding) {
    return book.named("plane_name").stream()
        .anyMatch(cells -> Folding.cell(finding).filter(cells::contains).isPresent());
  }

  private void count(Finding cause) {
    effects.merge(cause, 1, Integer::sum);
  }

  /** The lost input whose row this one speaks of. */
  private Optional<Finding> cause(Finding finding) {
    return roots.keySet().stream()
        .filter(root -> !root.equals(finding))
        .filter(root -> names(finding, key(root))
            || (isAPlane(root) && LostNames.unknown(finding).isPresent())
            || (OF_THE_ROOF.contains(finding.info().id()) && isOfTheRoof(root))
            || (OF_THE_PRODUCT.contains(finding.info().id()) && isOfAProduct(root)))
        .findFirst();
  }

  private boolean mentions(Finding finding) {
    Optional<Finding> cause = cause(finding);
    cause.ifPresent(this::count);
    return cause.isPresent();
  }

  /** What the row of the lost input is called: the first text in it. */
  private String key(Finding root) {
    Address at = Folding.cell(root).orElseThrow();
    return LostNames.isCause(root)
        ? root.expected().replace("'", "")
        : book.tab(at.sheet())
            .sheet()
            .row(at.ref().row())
            .map(placed -> TextPlaces.text(placed.cell()))
            .filter(text -> !text.isEmpty())
            .findFirst()
            .orElse("");
  }

  private static boolean names(Finding finding, String key) {
    return !key.isEmpty()
        && Pattern.compile("(?<![\\p{L}\\p{N}-])" + Pattern.quote(key) + "(?![\\p{L}\\p{N}-])")
            .matcher(finding.says())
            .find();
  }

  private boolean isOfTheRoof(Finding root) {
    return isOn(root, List.of("plane_name", "edge_name", "corner_plane", "opening_name"));
  }

  private boolean isOfAProduct(Finding root) {
    return isOn(root, List.of("catalogue_id", "shingle_product"));
  }

  private boolean isOn(Finding root, List<String> names) {
    String sheet = Folding.cell(root).orElseThrow().sheet();
    return names.stream()
        .flatMap(name -> book.named(name).stream())
        .anyMatch(cells -> cells.sheet().equals(sheet));
  }

  /** Whether it speaks of a formula behind a lost input, held against a model that leaves the input out. */
  private boolean follows(Finding finding) {
    if (roots.containsKey(finding)) {
      return false;
    }
    Optional<Finding> cause = behind.entrySet().stream()
        .filter(entry -> isBehind(finding, entry.getValue(), roots.get(entry.getKey())))
        .map(Map.Entry::getKey)
        .findFirst();
    cause.ifPresent(this::count);
    return cause.isPresent();
  }

  private boolean isBehind(Finding finding, Set<Address> behind, Set<Address> rows) {
    Optional<Address> at = Folding.cell(finding);
    if (at.isEmpty()) {
      return read.contains(finding) && namesOneOf(finding, behind);
    }
    boolean consequence =
        read.contains(finding) || consequences.contains(finding.info().id());
    return consequence
        && book.cell(at.get()).isFormula()
        && (behind.contains(at.get()) || rows.contains(at.get()));
  }

  /** Whether a quantity that it names stands behind the lost input. */
  private boolean namesOneOf(Finding finding, Set<Address> behind) {
    Matcher names = NAME.matcher(finding.says());
    return names
        .results()
        .map(found -> book.named(found.group()))
        .flatMap(Optional::stream)
        .anyMatch(cells -> behind.contains(cells.first()));
  }

  private Finding counted(Finding finding) {
    int count = effects.getOrDefault(finding, 0);
    if (!roots.containsKey(finding)) {
      return finding;
    }
    String says = finding.says()
        + (count == 0
            ? ""
            : "; " + Says.count(count, "more finding") + (count == 1 ? " follows" : " follow")
                + " from it and " + (count == 1 ? "is" : "are") + " not listed");
    Finding told = finding.saying(says);
    String worth = new Worth(book, model).hanging(roots.get(finding), behind.get(finding));
    return worth.isEmpty() || !told.worth().isEmpty() ? told : told.worth(worth);
  }

  /** The ids of what is said only because a cell before it is wrong. */
  static Set<String> consequences(List<Ask<?>> asks) {
    Set<String> ids = asks.stream().map(ask -> ask.check().info().id()).collect(Collectors.toSet());
    ids.addAll(Folding.CONSEQUENCES);
    ids.addAll(List.of("ghost-row", "reference-drifts"));
    return ids;
  }
}
