package squaresheet.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import squaresheet.estimate.PriceList;
import squaresheet.estimate.Rates;
import squaresheet.estimate.Terms;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.job.Company;
import squaresheet.product.Catalogue;
import squaresheet.takeoff.Rulebook;

/**
 * The folder in which a company keeps what it brings to every job: {@code products.csv}, {@code prices.csv}, {@code
 * rates.csv}, {@code terms.csv} and, where it has rules of its own, {@code rulebook.csv}.
 */
final class CompanyFolder {

  private final Path folder;
  private final List<Finding> findings = new ArrayList<>();

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
    Catalogue catalogue = needed("products.csv", Catalogue::read);
    Terms terms = needed("terms.csv", Terms::read);
    PriceList prices =
        needed("prices.csv", (text, file) -> PriceList.read(text, file, terms.currency()));
    Rates rates = needed("rates.csv", (text, file) -> Rates.read(text, file, terms.currency()));
    return Read.of(new Company(catalogue, rulebook(), prices, rates, terms), findings);
  }

  private Rulebook rulebook() {
    Path own = folder.resolve("rulebook.csv");
    Rulebook standard = Rulebook.standard();
    return Files.exists(own)
        ? listen(standard.overriddenBy(TextFile.read(own), own.toString())).orElse(standard)
        : standard;
  }

  private <T> T needed(String name, BiFunction<String, String, Read<T>> reader) {
    Path file = folder.resolve(name);
    if (!Files.isRegularFile(file)) {
      throw new CannotBeDone(
          Exit.WRONG_USE,
          "the company's folder must hold products.csv, prices.csv, rates.csv and terms.csv, but "
              + folder.toAbsolutePath().normalize() + " has no " + name
              + "; name the folder with --company, or begin with a copy of demo-data");
    }
    return listen(reader.apply(TextFile.read(file), file.toString()))
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
