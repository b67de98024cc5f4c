package squaresheet.binding;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import squaresheet.estimate.PriceList;
import squaresheet.estimate.Rates;
import squaresheet.estimate.Terms;
import squaresheet.job.Company;
import squaresheet.job.JobCard;
import squaresheet.job.JobInput;
import squaresheet.job.JobResult;
import squaresheet.product.Catalogue;
import squaresheet.takeoff.Rulebook;
import squaresheet.tape.TapeUnit;

/** The demo house, from its tape sheet. */
final class DemoJob {

  private DemoJob() {}

  static FieldNotes notes() {
    return FieldSheet.read(text("demo-data/tape-sheet.csv"), "tape-sheet.csv", Locale.ENGLISH)
        .value()
        .orElseThrow();
  }

  static String text(String file) {
    try {
      return Files.readString(Path.of(file));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  static JobInput input() {
    Company company = new Company(
        Catalogue.read(Path.of("demo-data/products.csv")).value().orElseThrow(),
        Rulebook.standard(),
        PriceList.read(text("demo-data/prices.csv"), "prices.csv", "USD")
            .value()
            .orElseThrow(),
        Rates.read(text("demo-data/rates.csv"), "rates.csv", "USD").value().orElseThrow(),
        Terms.read(text("demo-data/terms.csv"), "terms.csv").value().orElseThrow());
    JobCard card = new JobCard("Alder Lane house", "Foreman", "2026-05-04", TapeUnit.FEET);
    return new JobInput(card, notes().roof(), company)
        .with("eave_overhang", 18)
        .with("tear_off_layers", 1)
        .with("waste_choice", "simulated");
  }

  static JobResult result() {
    return JobResult.of(input()).value().orElseThrow();
  }

  static JobParts parts() {
    return JobParts.of(input(), result(), Optional.of(notes()));
  }
}
