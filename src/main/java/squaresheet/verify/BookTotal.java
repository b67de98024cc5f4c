package squaresheet.verify;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import squaresheet.estimate.Category;
import squaresheet.finding.Finding;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;
import squaresheet.units.Money;

/**
 * The amounts of a workbook of foreign layout: its price, and the parts of it that are bound and of which it is sure that
 * they are in the price. What is left is said to be not split; the parts and the rest make the price to the cent.
 */
final class BookTotal {

  /** Half a cent for each amount that was rounded on the way. */
  private static final double HALF_CENT = 0.005;

  /** Over a list its titles and headings take up to so many rows. */
  private static final int TITLES = 8;

  /** Words in a row of a list that are no material. */
  private static final Pattern NO_MATERIAL = Pattern.compile(
      "(?i).*\\b(labou?r|crew|wages?|hours?|hrs?|install\\w*|tear.?off|remov\\w*|dumpster|container|disposal|haul\\w*"
          + "|dump\\w*|permits?|fees?|rental|hire|lift|crane|equipment|supervis\\w*|overhead|profit|markup|margin|tax"
          + "|discount|sub-?contract\\w*|insurance|warranty|delivery|freight)\\b.*");

  private final BookModel model;
  private final Book book;
  private final String currency;
  private final Set<Address> way;
  private final Map<Category.Known, Money> categories = new EnumMap<>(Category.Known.class);
  private final Map<String, Money> own = JobTotal.words();
  private final Map<String, Money> codes = new TreeMap<>();

  BookTotal(BookModel model) {
    this.model = model;
    book = model.book();
    currency = currency();
    way = MoneyPath.way(book, model.cell("job", "price_total").stream().toList());
  }

  /** The amounts; none where no price is bound or where it is not worked out to a number. */
  Optional<JobTotal> total(MoneyPath path) {
    OptionalDouble price = value("job", "price_total");
    if (price.isEmpty()) {
      return Optional.empty();
    }
    Money total = money(price.getAsDouble());
    lines(price.getAsDouble());
    rest(total, sum(categories).plus(sum(own)), own, JobTotal.NOT_SPLIT);
    rest(total, sum(codes), codes, "");
    return Optional.of(
        new JobTotal(identity(), book.file(), categories, own, codes, total, path.share()));
  }

  /** Why no price is sure: what may be one, each with what speaks against it. */
  static List<Finding> asked(Book book) {
    return book.layout().stream()
        .flatMap(layout -> layout.questions().stream())
        .filter(guess -> guess.property().equals("price_total"))
        .map(guess -> new Finding(
            Verdict.NO_TOTALS,
            book.where(guess.at()),
            "may be the price, but that is not sure, so no total is given: " + guess.why()
                + "; bind asks which cell is the price, and keeps the answer"))
        .toList();
  }

  private void lines(double price) {
    List<Part> lines = tables("estimate");
    double tax = tax();
    boolean told = lines.stream().anyMatch(line -> !line.category().isEmpty());
    if (isInThePrice(lines, price, tax)) {
      lines.stream()
          .filter(line -> !line.code().isEmpty())
          .forEach(line -> codes.merge(line.code(), money(line.amount()), Money::plus));
    }
    if (told && isInThePrice(lines, price, tax)) {
      lines.stream().filter(line -> !line.category().isEmpty()).forEach(this::category);
    } else {
      labels(price, tax);
    }
    if (tax != 0) {
      categories.merge(Category.Known.TAX, money(tax), Money::plus);
    }
  }

  /** The totals of material and labour beside their labels, or of a list of materials. */
  private void labels(double price, double tax) {
    List<Part> materials = single("material_total", "material");
    List<Part> parts = new ArrayList<>(materials.isEmpty() ? listed() : materials);
    parts.addAll(single("labour_total", "labour"));
    if (isInThePrice(parts, price, tax)) {
      parts.forEach(this::category);
    }
  }

  /** The rows of a list that says that it is of material, and in which nothing says otherwise of a row. */
  private List<Part> listed() {
    List<Part> rows = tables("materials");
    boolean material =
        rows.stream().noneMatch(row -> NO_MATERIAL.matcher(called(row)).matches())
            && rows.stream().limit(1).anyMatch(this::saysMaterial);
    return material ? rows.stream().map(row -> row.as("material")).toList() : List.of();
  }

  private String called(Part row) {
    return book.tab(row.at().sheet()).rowText(row.at().ref().row());
  }

  /** Whether the tab, or a title or heading over the first row of a list, speaks of material. */
  private boolean saysMaterial(Part first) {
    Tab tab = book.tab(first.at().sheet());
    int row = first.at().ref().row();
    return Stream.concat(
            Stream.of(tab.name()),
            IntStream.range(Math.max(0, row - TITLES), row).mapToObj(tab::rowText))
        .anyMatch(text -> text.toLowerCase(Locale.ROOT).contains("material"));
  }

  private List<Part> single(String property, String category) {
    OptionalDouble amount = value("job", property);
    return amount.isEmpty()
        ? List.of()
        : List.of(new Part(
            model.cell("job", property).orElseThrow(), amount.getAsDouble(), category, ""));
  }

  /** An amount that may be in the price. */
  private record Part(Address at, double amount, String category, String code) {
    Part as(String other) {
      return new Part(at, amount, other, code);
    }
  }

  private List<Part> tables(String name) {
    return model.bound().tables().stream()
        .filter(table -> table.name().equals(name))
        .flatMap(table -> table.rows().stream())
        .filter(row -> !row.isSum())
        .flatMap(row -> part(row.subject()).stream())
        .toList();
  }

  private Optional<Part> part(String subject) {
    OptionalDouble amount = value(subject, "amount");
    return amount.isEmpty()
        ? Optional.empty()
        : Optional.of(new Part(
            model.cell(subject, "amount").orElseThrow(),
            amount.getAsDouble(),
            text(subject, "category"),
            text(subject, "cost_code")));
  }

  /**
   * Whether the parts with the tax are all of the price, or are all read by it and no more than it: parts that hold a
   * subtotal too, or an offer that was not taken, are not.
   */
  private boolean isInThePrice(List<Part> parts, double price, double tax) {
    double sum = parts.stream().mapToDouble(Part::amount).sum() + tax;
    double rounded = HALF_CENT * (parts.size() + 2);
    boolean read = parts.stream().allMatch(part -> isRead(part.at()));
    return !parts.isEmpty()
        && (Math.abs(sum - price) <= rounded || (read && sum <= price + rounded));
  }

  /** Whether the price comes, over whatever steps, from the cell. */
  private boolean isRead(Address cell) {
    return way.contains(cell) || book.links().readers(cell).stream().anyMatch(way::contains);
  }

  private void category(Part part) {
    JobTotal.add(Category.meant(part.category()), money(part.amount()), categories, own);
  }

  /** The tax, where it is in the price: what the price reads, or what the price has over the subtotal. */
  private double tax() {
    OptionalDouble tax = value("job", "tax_total");
    if (tax.isEmpty()) {
      return 0;
    }
    Address at = model.cell("job", "tax_total").orElseThrow();
    double net = value("job", "subtotal").orElse(Double.NaN);
    boolean over =
        Math.abs(net + tax.getAsDouble() - value("job", "price_total").orElse(0)) <= 2 * HALF_CENT;
    return over || isRead(at) ? tax.getAsDouble() : 0;
  }

  private void rest(Money total, Money parts, Map<String, Money> to, String under) {
    Money rest = total.minus(parts);
    if (!rest.isZero()) {
      to.merge(under, rest, Money::plus);
    }
  }

  private Money sum(Map<?, Money> parts) {
    return parts.values().stream().reduce(Money.zero(currency), Money::plus);
  }

  private Money money(double amount) {
    return Money.of(currency, BigDecimal.valueOf(amount)).toCents();
  }

  private OptionalDouble value(String subject, String property) {
    return model.plainAsItStands(subject, property);
  }

  private String text(String subject, String property) {
    return model
        .cell(subject, property)
        .map(book::value)
        .filter(Value.Text.class::isInstance)
        .map(value -> ((Value.Text) value).value().strip())
        .orElseGet(() -> code(subject, property));
  }

  /** A cost code may be a number. */
  private String code(String subject, String property) {
    return value(subject, property).isPresent()
        ? Shown.plain(value(subject, property).getAsDouble())
        : "";
  }

  private JobIdentity identity() {
    return JobIdentity.of(text("job", "job"), text("job", "number"), book.file());
  }

  /** The currency whose sign stands in the price's cell or label; dollars where none does, as everywhere. */
  private String currency() {
    String unit = model.bound().units().entrySet().stream()
        .filter(entry -> entry.getKey().property().equals("price_total"))
        .map(Map.Entry::getValue)
        .findFirst()
        .orElse("");
    String format =
        model.cell("job", "price_total").map(at -> book.cell(at).format()).orElse("");
    String signs = unit + format;
    return signs.contains("€") ? "EUR" : signs.contains("£") ? "GBP" : "USD";
  }
}
