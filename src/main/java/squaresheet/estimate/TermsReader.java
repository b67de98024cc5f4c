package squaresheet.estimate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import squaresheet.estimate.Tax.RoundingPoint;
import squaresheet.finding.Finding;
import squaresheet.finding.Neighbours;
import squaresheet.finding.OwnWords;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.product.Catalogue;
import squaresheet.tape.NumberReader;
import squaresheet.units.Money;
import squaresheet.units.Ratio;

/** Reads the terms of a company, line by line; what cannot be read is said, and then there are no terms. */
final class TermsReader {

  private static final int CENTS = 2;
  private static final String PAYMENT = "payment: ";
  private static final List<String> NAMES = List.of(
      "currency",
      "overhead",
      "profit",
      "discount_share",
      "discount_amount",
      "discount_when",
      "tax_rate",
      "tax_on",
      "tax_not_on",
      "tax_rounding",
      "payment: …");

  private static final Table.Shape SHAPE = new Table.Shape(
      "the terms",
      Complaints.TERMS,
      List.of("name", "value"),
      List.of("cost_code", "source", "note"));

  private final String file;
  private final Map<String, Table.Line> lines = new LinkedHashMap<>();
  private final List<Terms.Share> payments = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();

  TermsReader(String file) {
    this.file = file;
  }

  Read<Terms> read(String text) {
    return read(Table.read(text, file, SHAPE));
  }

  /** The same of rows that stand elsewhere, such as on a sheet. */
  Read<Terms> read(List<Catalogue.Row> rows, Where table) {
    return read(Table.of(rows, table, SHAPE));
  }

  private Read<Terms> read(Read<List<Table.Line>> table) {
    if (table.value().isEmpty()) {
      return Read.nothing(table.findings());
    }
    table.value().get().forEach(this::take);
    Optional<Terms> terms = terms();
    boolean whole = terms.isPresent() && findings.isEmpty();
    findings.addAll(table.findings());
    return whole ? Read.of(terms.get(), findings) : Read.nothing(findings);
  }

  private void take(Table.Line line) {
    String name = line.text("name");
    if (name.startsWith(PAYMENT)) {
      understood(
          line,
          value ->
              payments.add(new Terms.Share(name.substring(PAYMENT.length()), Ratio.parse(value))));
    } else if (!NAMES.contains(name)) {
      says(line.at("name"), "no term '" + name + "'" + Neighbours.sentence(name, NAMES));
    } else if (lines.putIfAbsent(name, line) != null) {
      says(line.at("name"), "name must be used once, but '" + name + "' stands above already");
    }
  }

  private void says(Where where, String sentence) {
    findings.add(new Finding(Complaints.TERMS, where, sentence));
  }

  private <T> Optional<T> understood(Table.Line line, Function<String, T> parse) {
    try {
      return Optional.of(parse.apply(line.text("value")));
    } catch (IllegalArgumentException refused) {
      says(line.at("value"), line.text("name") + ": " + OwnWords.of(refused));
      return Optional.empty();
    }
  }

  private <T> T of(String name, T usual, Function<String, T> parse) {
    Table.Line line = lines.get(name);
    return line == null || line.text("value").isEmpty()
        ? usual
        : understood(line, parse).orElse(usual);
  }

  private Optional<Terms> terms() {
    try {
      String currency = of("currency", "USD", TermsReader::currency);
      Ratio overhead = of("overhead", Ratio.ZERO, Ratio::parse);
      Profit profit = of("profit", new Profit.Markup(Ratio.ZERO), Profit::parse);
      return Optional.of(
          new Terms(currency, overhead, profit, discount(currency), tax(), payments, codes()));
    } catch (IllegalArgumentException refused) {
      says(new Where.InFile(file), OwnWords.of(refused));
      return Optional.empty();
    }
  }

  private static String currency(String text) {
    return Money.zero(text).currency();
  }

  private Discount discount(String currency) {
    return new Discount(
        of("discount_share", Ratio.ZERO, Ratio::parse),
        of("discount_amount", Money.zero(currency), text -> amount(text, currency)),
        of("discount_when", true, TermsReader::isBefore));
  }

  private static Money amount(String text, String currency) {
    return NumberReader.POINT
        .amount(text, CENTS)
        .map(amount -> Money.of(currency, amount))
        .orElseThrow(() ->
            new IllegalArgumentException("amount must read like 250.00, but reads '" + text + "'"));
  }

  private static boolean isBefore(String text) {
    if (!text.equals("before tax") && !text.equals("after tax")) {
      throw new IllegalArgumentException(
          "it must be before tax or after tax, but reads '" + text + "'");
    }
    return text.equals("before tax");
  }

  private Tax tax() {
    return new Tax(
        of("tax_rate", Ratio.ZERO, Ratio::parse),
        of("tax_on", Set.of(), TermsReader::categories),
        of("tax_not_on", Set.of(), TermsReader::categories),
        of("tax_rounding", RoundingPoint.INVOICE, TermsReader::point));
  }

  private static Set<Category> categories(String text) {
    Set<Category> categories = new TreeSet<>(Category.order());
    for (String word : text.split("\\|")) {
      if (word.isBlank()) {
        throw new IllegalArgumentException(
            "categories must read like material|equipment, but one of '" + text + "' is empty");
      }
      categories.add(Category.meant(word));
    }
    return categories;
  }

  private static RoundingPoint point(String text) {
    if (!text.equals("line") && !text.equals("invoice")) {
      throw new IllegalArgumentException("it must be line or invoice, but reads '" + text + "'");
    }
    return text.equals("line") ? RoundingPoint.LINE : RoundingPoint.INVOICE;
  }

  private Terms.Codes codes() {
    return new Terms.Codes(
        code("overhead"), code("profit"), code("discount_share"), code("tax_rate"));
  }

  private String code(String name) {
    Table.Line line = lines.get(name);
    return line == null ? "" : line.text("cost_code");
  }
}
