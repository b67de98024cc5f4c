package squaresheet.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import squaresheet.courses.CoursePlan;
import squaresheet.courses.RoofLayout;
import squaresheet.finding.Read;
import squaresheet.paper.CrewSheet;
import squaresheet.paper.Drawing;
import squaresheet.paper.Drawings;
import squaresheet.paper.OrderSheet;
import squaresheet.sheet.Workbook;
import squaresheet.verify.JobPapers;
import squaresheet.xlsx.SafeFolder;

/** Draws a job's roof, its course lines, the crew sheet and the order list. */
@Command(
    name = "draw",
    description =
        "Draw every plane with its course lines and joints, the crew sheet and the order list, as SVG files in a folder"
            + " of the job's own name. Of a workbook that does not pass the verify check no order list is written, and the"
            + " other sheets say so.",
    mixinStandardHelpOptions = true,
    footer = {"", "Example: squaresheet draw alder-lane.job.xlsx -o drawings"})
final class DrawCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(paramLabel = "WORKBOOK", description = "The job workbook.")
  private Path file;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FOLDER",
      description = "The folder in which the job's own folder is made; drawings unless given.")
  private Path folder = Path.of("drawings");

  @Option(
      names = "--force",
      description =
          "Draw the papers of this workbook anew where they are there already; those that were changed"
              + " since they were drawn are kept.")
  private boolean force;

  @Mixin
  private CompanyOption company;

  DrawCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Ending.folder(folder);
    Read<Workbook> read = Books.read(file);
    console.say(read.findings());
    JobPapers papers = JobBook.papers(file, read.value().orElseThrow(), company.rulebook(console));
    Drawing.obstacle().ifPresent(why -> {
      throw new CannotBeDone(Exit.FAILED, why);
    });
    console.say(papers.findings());
    boolean withheld = papers.isWithheld() || !Books.isWhole(read);
    RoofLayout layout = papers
        .layout()
        .orElseThrow(() -> new CannotBeDone(
            Exit.FAILED, "there is no layout to draw: no shingle is chosen in " + file));
    String job = papers.job().input().card().name();
    CrewSheet crew = CrewSheet.of(layout, job, deck(papers));
    List<Drawing> drawings = drawings(layout);
    drawings.add(crew.drawing());
    papers
        .order()
        .filter(it -> !withheld)
        .map(order -> OrderSheet.of(order, job).drawing())
        .ifPresent(drawings::add);
    write(drawings, job, withheld);
    crew.lines().forEach(console::say);
    return (withheld ? Exit.WITHHELD : Exit.FINE).code();
  }

  private static List<Drawing> drawings(RoofLayout layout) {
    List<Drawing> drawings = new ArrayList<>(Drawings.roof(layout));
    for (CoursePlan plan : layout.plans()) {
      drawings.add(Drawings.plane(plan));
      plan.starters().forEach(starter -> drawings.add(Drawings.starter(plan, starter)));
    }
    return drawings;
  }

  private static CrewSheet.Deck deck(JobPapers papers) {
    return new CrewSheet.Deck(papers.layersTornOff(), papers.doubledPlanes());
  }

  /** All of them, or none. */
  private void write(List<Drawing> drawings, String job, boolean withheld) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    for (Drawing drawing : drawings) {
      String name = SafeFolder.safeName(drawing.title());
      Drawing sheet = withheld ? drawing.stamped() : drawing;
      files.put(
          String.format("%02d-%s.svg", files.size() + 1, name),
          sheet.svg().getBytes(StandardCharsets.UTF_8));
    }
    String own = SafeFolder.safeName(job.isBlank() ? Books.bare(file) : job);
    new Saving(console, force).set(folder, own, file, files);
    if (withheld) {
      console.say(
          "DOES NOT PASS: no order list was written, and every sheet is stamped so; put right what verify"
              + " says and draw again");
    }
  }
}
