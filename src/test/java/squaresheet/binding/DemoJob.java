package squaresheet.binding;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import squaresheet.product.Catalogue;
import squaresheet.product.Selection;
import squaresheet.roof.Roof;
import squaresheet.takeoff.Rulebook;

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

  static JobParts parts() {
    FieldNotes notes = notes();
    Catalogue catalogue =
        Catalogue.read(Path.of("demo-data/products.csv")).value().orElseThrow();
    return new JobParts(
        Map.of("job_name", "Alder Lane house", "job_measured_by", "Foreman"),
        notes.roof(),
        Roof.resolve(notes.roof()).value().orElseThrow(),
        Optional.of(notes),
        catalogue,
        Selection.firstOfEach(catalogue),
        Rulebook.standard(),
        Map.of());
  }
}
