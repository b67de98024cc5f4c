package squaresheet.cli;

import java.nio.file.Path;
import picocli.CommandLine.Option;
import squaresheet.takeoff.Rulebook;

/** The options that say how a field sheet is read: whose lists go with it, and how its numbers are written. */
final class FieldOption {

  @Option(
      names = "--company",
      paramLabel = "FOLDER",
      description =
          "The folder with products.csv, prices.csv, rates.csv, terms.csv and, if you have rules of your own,"
              + " rulebook.csv; the sheet's own folder unless given.")
  private Path company;

  @Option(
      names = "--locale",
      paramLabel = "TAG",
      description =
          "How numbers are written on the sheet, such as en-US or de-DE (decimal comma); en-US unless given.")
  private String locale = "en-US";

  /** The job of a field sheet. */
  Measured measured(Path sheet) {
    Path beside = sheet.toAbsolutePath().getParent();
    return Measured.of(sheet, company == null ? beside : company, WrittenLocale.of(locale));
  }

  /** The rules of the company, if one is named; what could not be read of them is said. */
  Rulebook rulebook(Console console) {
    return CompanyOption.rulebook(console, company);
  }
}
