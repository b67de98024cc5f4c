package squaresheet.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import squaresheet.courses.CoursePlan;
import squaresheet.courses.RoofLayout;
import squaresheet.job.JobResult;
import squaresheet.paper.CrewSheet;
import squaresheet.paper.Drawing;
import squaresheet.paper.Drawings;
import squaresheet.paper.OrderSheet;

/** Draws a job's roof, its course lines, the crew sheet and the order list. */
@Command(
    name = "draw",
    description =
        "Draw every plane with its course lines and joints, the crew sheet and the order list, as SVG files.",
    mixinStandardHelpOptions = true,
    footer = {"", "Example: squaresheet draw alder-lane.job.xlsx -o drawings"})
final class DrawCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(paramLabel = "WORKBOOK", description = "The job workbook.")
  private Path file;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FOLDER",
      description = "The folder to write to; drawings unless given.")
  private Path folder = Path.of("drawings");

  @Mixin
  private ForceOption force;

  @Mixin
  private CompanyOption company;

  DrawCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    JobResult job = JobBook.result(file, company.rulebook(console));
    Optional<String> obstacle = Drawing.obstacle();
    if (obstacle.isPresent()) {
      throw new CannotBeDone(Exit.FAILED, obstacle.get());
    }
    RoofLayout layout = job.layout()
        .orElseThrow(() -> new CannotBeDone(
            Exit.FAILED, "there is no layout to draw: no shingle is chosen in " + file));
    List<Drawing> drawings = new ArrayList<>(Drawings.roof(layout));
    for (CoursePlan plan : layout.plans()) {
      drawings.add(Drawings.plane(plan));
      plan.starters().forEach(starter -> drawings.add(Drawings.starter(plan, starter)));
    }
    CrewSheet crew = CrewSheet.of(layout, job.input().card().name(), deck(job, layout));
    OrderSheet order = OrderSheet.of(job.orderList(), job.input().card().name());
    drawings.add(crew.drawing());
    drawings.add(order.drawing());
    write(drawings);
    crew.lines().forEach(console::say);
    return Exit.FINE.code();
  }

  private static CrewSheet.Deck deck(JobResult job, RoofLayout layout) {
    List<CoursePlan> plans = layout.plans();
    List<String> doubled = IntStream.range(0, plans.size())
        .filter(row -> job.takeoff().number("underlayment_layers", row).orElse(1.0) > 1)
        .mapToObj(row -> plans.get(row).plane().id())
        .toList();
    return new CrewSheet.Deck(job.takeoff().number("tear_off_layers").orElse(0.0), doubled);
  }

  private void write(List<Drawing> drawings) {
    try {
      Files.createDirectories(folder);
    } catch (IOException refused) {
      throw new CannotBeDone(
          Exit.FAILED, "the folder " + folder + " cannot be made: " + refused.getMessage());
    }
    Saving saving = force.saving(console);
    int number = 1;
    for (Drawing drawing : drawings) {
      String name = drawing
          .title()
          .toLowerCase(Locale.ROOT)
          .replaceAll("[^\\p{L}\\p{N}]+", "-")
          .replaceAll("^-|-$", "");
      saving.text(drawing.svg(), folder.resolve(String.format("%02d-%s.svg", number++, name)));
    }
  }
}
