package squaresheet.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import squaresheet.finding.Read;
import squaresheet.sheet.Workbook;
import squaresheet.takeoff.Rulebook;
import squaresheet.verify.Readings;
import squaresheet.verify.Verify;

/** Tells what the tape's tolerance does to the order. */
@Command(
    name = "readings",
    description =
        "Tell what the order may become when the tape was off, and which lengths alone could change it by a pack:"
            + " measure those again.",
    mixinStandardHelpOptions = true,
    footer = {"", "Example: squaresheet readings alder-lane.job.xlsx"})
final class ReadingsCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(paramLabel = "WORKBOOK", description = "The job workbook.")
  private Path file;

  @Mixin
  private CompanyOption company;

  ReadingsCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Read<Workbook> book = Books.read(file);
    Workbook workbook = book.value().orElseThrow();
    Rulebook rulebook = company.rulebook(console);
    Read<Readings> read = Readings.of(workbook, Books.name(file), rulebook);
    if (read.value().isEmpty()) {
      console.say(read.findings());
      return Exit.FAILED.code();
    }
    boolean passed =
        Books.isWhole(book) && Verify.of(workbook, Books.name(file), rulebook).isPassed();
    if (!passed) {
      console.say(
          "DOES NOT PASS: the orders below are those of a workbook that verify finds wrong");
    }
    say(read.value().orElseThrow());
    return (passed ? Exit.FINE : Exit.WITHHELD).code();
  }

  private void say(Readings readings) {
    console.say(readings.lengths() + " lengths, each of which may be off by " + readings.off()
        + ", half of what two readings may differ by. Pitches are taken as they stand.");
    List<Readings.Ordered> moving =
        readings.orders().stream().filter(order -> !order.range().isExact()).toList();
    moving.forEach(this::say);
    List<String> unknown = readings.orders().stream()
        .filter(order -> !order.isFollowed())
        .map(Readings.Ordered::label)
        .toList();
    console.say((readings.orders().size() - moving.size() - unknown.size()) + " of "
        + readings.orders().size() + " orders stay as they are, however the tape was off"
        + (unknown.isEmpty() ? "" : "; could not be followed: " + String.join(", ", unknown)));
  }

  private void say(Readings.Ordered order) {
    console.say(String.format(
        Locale.ROOT,
        "  %s (%s): %s %s as it stands; %s to %s if every length is off at once",
        order.label(),
        order.cell(),
        packs(order.now()),
        order.unit(),
        packs(order.range().low()),
        packs(order.range().high())));
    if (order.again().isEmpty()) {
      console.say("      no length alone changes it by a pack");
    } else {
      console.say("      alone changes it by a pack: " + String.join(", ", order.again()));
    }
  }

  private static String packs(double packs) {
    return String.format(Locale.ROOT, "%.0f", packs);
  }
}
