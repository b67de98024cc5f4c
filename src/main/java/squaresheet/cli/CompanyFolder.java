package squaresheet.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import squaresheet.binding.Templates;
import squaresheet.estimate.PriceList;
import squaresheet.estimate.Rates;
import squaresheet.estimate.Terms;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.job.Company;
import squaresheet.product.Catalogue;
import squaresheet.sheet.Workbook;
import squaresheet.takeoff.RuleLine;
import squaresheet.takeoff.Rulebook;

/**
 * The folder in which a company keeps what it brings to every job: products, prices, rates, terms and, where it has rules of
 * its own, a rulebook; each as csv, or as a sheet of a workbook.
 */
final class CompanyFolder {

  /** A workbook with several of the lists. */
  private static final String ALL_IN_ONE = "company.xlsx";

  /** The headings by which a list is known on a sheet. */
  private static final Map<String, List<String>> NEEDED = Map.of(
      "products", List.of("id", "kind", "pack"),
      "prices", List.of("product", "price", "per"),
      "rates", List.of("item", "category", "quantity", "amount", "unit", "crew"),
      "terms", List.of("name", "value"),
      "rulebook", List.of("name", "per", "kind", "formula"));

  /** The file names of the templates. */
  private static final Map<String, String> TEMPLATES =
      Map.of("products", "product-list.xlsx", "rulebook", "company-rulebook.xlsx");

  private final Path folder;
  private final List<Finding> findings = new ArrayList<>();
  private final Map<Path, Workbook> books = new HashMap<>();

  private CompanyFolder(Path folder) {
    this.folder = folder;
  }

  static Read<Company> read(Path folder) {
    return new CompanyFolder(folder).read();
  }

  /** The standard rules, and the company's own before them; the folder must be there. */
  static Read<Rulebook> rulebook(Path folder) {
    if (!Files.isDirectory(folder)) {
      throw new CannotBeDone(
          Exit.WRONG_USE, "the company's folder must be a folder, but " + folder + " is not one");
    }
    CompanyFolder company = new CompanyFolder(folder);
    return Read.of(company.rulebook(), company.findings);
  }

  private Read<Company> read() {
    Catalogue catalogue = needed(
        "products",
        Catalogue::read,
        list -> Catalogue.read(list.headings(), list.rows(), list.table()));
    Terms terms = needed(
        "terms", Terms::read, list -> Terms.read(list.rows(), list.table(), folder.toString()));
    PriceList prices = needed(
        "prices",
        (text, file) -> PriceList.read(text, file, terms.currency()),
        list -> PriceList.read(list.rows(), list.table(), terms.currency()));
    findings.addAll(prices.without(catalogue));
    Rates rates = needed(
        "rates",
        (text, file) -> Rates.read(text, file, terms.currency()),
        list -> Rates.read(list.rows(), list.table(), terms.currency()));
    return Read.of(new Company(catalogue, rulebook(), prices, rates, terms), findings);
  }

  private Rulebook rulebook() {
    Rulebook standard = Rulebook.standard();
    return source("rulebook")
        .flatMap(file -> listen(read(
            file,
            "rulebook",
            standard::overriddenBy,
            list -> standard.overriddenBy(list.rows().stream()
                .map(row -> new RuleLine(row.cells(), row.places()))
                .toList()))))
        .orElse(standard);
  }

  /** The one file with the list; none where there is none, and a sentence where there are two. */
  private Optional<Path> source(String name) {
    List<Path> there = new ArrayList<>();
    List.of(name + ".csv", name + ".xlsx", TEMPLATES.getOrDefault(name, name + ".xlsx"), ALL_IN_ONE)
        .stream()
        .distinct()
        .map(folder::resolve)
        .filter(Files::isRegularFile)
        .filter(file -> !Books.name(file).equals(ALL_IN_ONE) || list(file, name).isPresent())
        .forEach(there::add);
    if (there.size() > 1) {
      throw new CannotBeDone(
          Exit.WRONG_USE,
          "the company's " + name + " must stand in one file, but stand in "
              + Books.name(there.get(0)) + " and in " + Books.name(there.get(1))
              + "; keep the one that holds");
    }
    return there.stream().findFirst();
  }

  private Optional<Templates.Rows> list(Path file, String name) {
    Workbook book = books.computeIfAbsent(file, it -> Books.read(it).value().orElseThrow());
    return Templates.list(book, file.toString(), NEEDED.get(name));
  }

  private <T> Read<T> read(
      Path file,
      String name,
      BiFunction<String, String, Read<T>> text,
      Function<Templates.Rows, Read<T>> sheet) {
    if (Books.name(file).endsWith(".csv")) {
      return text.apply(TextFile.read(file), file.toString());
    }
    return list(file, name)
        .map(sheet)
        .orElseThrow(() -> new CannotBeDone(
            Exit.FAILED,
            file + " must have a sheet with the headings " + String.join(", ", NEEDED.get(name))
                + " in one of its first rows, but has none"));
  }

  private <T> T needed(
      String name,
      BiFunction<String, String, Read<T>> text,
      Function<Templates.Rows, Read<T>> sheet) {
    Path file = source(name)
        .orElseThrow(() -> new CannotBeDone(
            Exit.WRONG_USE,
            "the company's folder must hold products.csv, prices.csv, rates.csv and terms.csv, but "
                + folder.toAbsolutePath().normalize() + " has no " + name
                + ".csv; name the folder with --company, or begin with a copy of demo-data (each list may"
                + " also be a workbook, " + name + ".xlsx)"));
    return listen(read(file, name, text, sheet))
        .orElseThrow(() -> new CannotBeDone(Exit.FAILED, file + " cannot be read: " + why()));
  }

  private String why() {
    return findings.isEmpty()
        ? "it is empty"
        : findings.get(findings.size() - 1).says();
  }

  private <T> Optional<T> listen(Read<T> read) {
    findings.addAll(read.findings());
    return read.value();
  }
}
